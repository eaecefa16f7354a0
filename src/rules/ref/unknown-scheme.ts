/** A link in text is neither one of our references nor a web address. */

import type { Check } from '../check.ts';

export const unknownScheme: Check = {
  code: 'REF014',
  name: 'unknown-scheme',
  severity: 'error',
  title: 'A link in text is neither one of our references nor a web address.',
  why: 'The words stay, and what they were to lead to is gone: no tool list, no parts list and no page knows of it.',
  sources: ['common practice'],
  example: {
    bad: [
      {
        file: 'stages/close-out.yaml',
        from: '  - do: Refit every guard.\n',
        to: '  - do: Refit every [guard](«prt:cover») of the pump.\n',
      },
    ],
  },
  found: 'resolving',
};
