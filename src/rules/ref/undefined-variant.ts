/** A variant axis or value is named that the machine does not have. */

import type { Check } from '../check.ts';

export const undefinedVariant: Check = {
  code: 'REF013',
  name: 'undefined-variant',
  severity: 'error',
  title: 'A variant axis or value is named that the machine does not have.',
  why: 'A step marked for a variant that does not exist stands on no card at all.',
  sources: ['common practice: a card says for which model and serial numbers it holds'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Fit the <part:plug>.\n        only: { size: large }\n',
        to: '      - do: Fit the <part:plug>.\n        only: { size: «larg» }\n',
      },
    ],
  },
  found: 'resolving',
};
