/** A shared stage is used that the shop does not have. */

import type { Check } from '../check.ts';

export const undefinedStage: Check = {
  code: 'REF010',
  name: 'undefined-stage',
  severity: 'error',
  title: 'A shared stage is used that the shop does not have.',
  why: 'The stage that isolates the machine is mostly a shared one. If its name leads nowhere, the card begins with an open machine.',
  sources: ['29 CFR 1910.147(d): isolation comes before work'],
  example: {
    bad: [{ file: 'procedures/mw-1.yaml', from: '  - use: isolate\n', to: '  - use: «isolation»\n' }],
  },
  found: 'resolving',
};
