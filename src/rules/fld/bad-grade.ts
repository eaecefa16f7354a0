/** A property class or grade is not known, or does not cover the size. */

import type { Check } from '../check.ts';

export const badGrade: Check = {
  code: 'FLD010',
  name: 'bad-grade',
  severity: 'error',
  title: 'A property class or grade is not known, or does not cover the size.',
  why: 'The torque follows from the strength of the screw. For a class that does not exist there is none, and a neighbour of it may be half as strong.',
  sources: [
    'ISO 898-1:2013, tables 3 and 5: property classes of bolts and screws',
    'ISO 3506-1, SAE J429, ASTM A193, ASTM A320: the other grades known here',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '  screw: { name: cover screw, kind: screw, number: MW-102 }\n',
        to: '  screw: { name: cover screw, kind: screw, number: MW-102, grade: «"8.7"» }\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '  screw: { name: cover screw, kind: screw, number: MW-102 }\n',
        to: '  screw: { name: cover screw, kind: screw, number: MW-102, grade: "8.8" }\n',
      },
    ],
  },
  found: 'reading values',
};
