/** A bench is named that the shop does not have. */

import type { Check } from '../check.ts';

export const undefinedBench: Check = {
  code: 'REF008',
  name: 'undefined-bench',
  severity: 'error',
  title: 'A bench is named that the shop does not have.',
  why: 'The machine would be overhauled at a bench that has no binder, no set-up list and nobody who leads it.',
  sources: ['ISO 9001:2015, 7.5.3.1: documents are available where they are needed (read second-hand)'],
  example: {
    bad: [{ file: 'machines/pump.yaml', from: 'bench: pumps\n', to: 'bench: «pump»\n' }],
  },
  found: 'resolving',
};
