/** Two entries have the same id or document number. */

import type { Check } from '../check.ts';

export const duplicateIdentifier: Check = {
  code: 'REF011',
  name: 'duplicate-identifier',
  severity: 'error',
  title: 'Two entries have the same id or document number.',
  why: 'Two entries with one number: one of them is on the card, and which one depends on the order of the files.',
  sources: ['ISO 9001:2015, 7.5.2: a document is identified by its number (read second-hand)'],
  example: {
    bad: [
      {
        file: 'stages/close-out.yaml',
        from: '  - do: Refit every guard.\n',
        to: '  - do: Refit every guard.\n    id: «locked»\n',
      },
    ],
    good: [
      {
        file: 'stages/close-out.yaml',
        from: '  - do: Refit every guard.\n',
        to: '  - do: Refit every guard.\n    id: guarded\n',
      },
    ],
  },
  found: 'resolving',
};
