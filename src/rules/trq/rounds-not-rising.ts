/** The rounds do not rise to 100 %. */

import type { Check } from '../check.ts';

export const roundsNotRising: Check = {
  code: 'TRQ008',
  name: 'rounds-not-rising',
  severity: 'error',
  title: 'The rounds do not rise to 100 %.',
  why: 'The bolts are left below their torque, or eased again in the last round; the joint weeps on the first warm day.',
  sources: ['ASME PCC-1-2019, Table 1: rounds rise to the whole torque'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    rounds: [30 %, 70 %, 100 %]\n',
        to: '    rounds: «[30 %, 70 %, 90 %]»\n',
      },
    ],
  },
  found: 'resolving',
};
