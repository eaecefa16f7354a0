/** A thread designation is not a standard one. */

import type { Check } from '../check.ts';

export const badThread: Check = {
  code: 'FLD009',
  name: 'bad-thread',
  severity: 'error',
  title: 'A thread designation is not a standard one.',
  why: 'A pitch that no standard has is a slip of the pen: the stores hand out the nearest one, and it strips the hole.',
  sources: ['ISO 261: diameters and pitches of metric threads', 'ASME B1.1: diameters and pitches of unified threads'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '  screw: { name: cover screw, kind: screw, number: MW-102 }\n',
        to: '  screw: { name: cover screw, kind: screw, number: MW-102, thread: «M16x1.7» }\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '  screw: { name: cover screw, kind: screw, number: MW-102 }\n',
        to: '  screw: { name: cover screw, kind: screw, number: MW-102, thread: M16 }\n',
      },
    ],
  },
  found: 'reading values',
};
