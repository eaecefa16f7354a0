/** Thread or grade of a fastener differ between the parts list and its joint. */

import type { Check } from '../check.ts';

export const fastenerDiffers: Check = {
  code: 'PRT002',
  name: 'fastener-differs',
  severity: 'error',
  title: 'Thread or grade of a fastener differ between the parts list and its joint.',
  why: 'Stores hand out one thread or class, and the torque on the card is for another.',
  sources: ['common practice: one of the two was copied wrongly'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '  screw: { name: cover screw, kind: screw, number: MW-102 }\n',
        to: '  screw: { name: cover screw, kind: screw, thread: «M16x1.5», number: MW-102 }\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '  screw: { name: cover screw, kind: screw, number: MW-102 }\n',
        to: '  screw: { name: cover screw, kind: screw, thread: M16, number: MW-102 }\n',
      },
    ],
  },
  found: 'resolving',
};
