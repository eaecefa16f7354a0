/** A joint is used that the machine does not have. */

import type { Check } from '../check.ts';

export const undefinedJoint: Check = {
  code: 'REF004',
  name: 'undefined-joint',
  severity: 'error',
  title: 'A joint is used that the machine does not have.',
  why: 'Torque, order and wrench of the step come from the joint. Without it the card says `tighten` and nothing more.',
  sources: ['common practice'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '        tighten: cover\n',
        to: '        tighten: «covers»\n',
      },
    ],
  },
  found: 'resolving',
};
