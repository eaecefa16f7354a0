/** The count in the parts list differs from the joints that the part fastens. */

import type { Check } from '../check.ts';

export const fastenerCount: Check = {
  code: 'PRT001',
  name: 'fastener-count',
  severity: 'error',
  title: 'The count in the parts list differs from the joints that the part fastens.',
  why: 'The kit is short by some screws, or some are left over at the end and the machine is searched for their holes.',
  sources: ['common practice: bolt pattern, parts list and order agree'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '  screw: { name: cover screw, kind: screw, number: MW-102 }\n',
        to: '  screw: { name: cover screw, kind: screw, quantity: «8», number: MW-102 }\n',
      },
    ],
  },
  found: 'resolving',
};
