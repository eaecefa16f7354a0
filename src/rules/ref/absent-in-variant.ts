/** A part or joint is used in a variant that does not have it. */

import type { Check } from '../check.ts';

export const absentInVariant: Check = {
  code: 'REF015',
  name: 'absent-in-variant',
  severity: 'error',
  title: 'A part or joint is used in a variant that does not have it.',
  why: 'The mechanic with the small pump in the vice looks for a plug that only the large one has, or fits one that does not belong there.',
  sources: ['common practice: one card for each variant, so that nobody reads `if large` at the bench'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Fit the <part:plug>.\n        only: { size: large }\n        fit: [plug]\n',
        to: '      - do: Fit the <«part:plug»>.\n        fit: [«plug»]\n',
      },
    ],
  },
  found: 'resolving',
};
