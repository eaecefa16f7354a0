/** An id of one register stands where another register is meant. */

import type { Check } from '../check.ts';

export const wrongKind: Check = {
  code: 'REF012',
  name: 'wrong-kind',
  severity: 'error',
  title: 'An id of one register stands where another register is meant.',
  why: 'A grease in the tool list is not drawn from the stores, and a gauge among the consumables is not calibrated: each list is drawn up by the kind of its entries.',
  sources: ['common practice'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          with: feeler\n',
        to: '          with: «wipe»\n',
      },
    ],
  },
  found: 'resolving',
};
