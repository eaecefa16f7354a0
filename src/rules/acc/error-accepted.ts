/** An error is accepted, and errors cannot be. */

import type { Check } from '../check.ts';

export const errorAccepted: Check = {
  code: 'ACC002',
  name: 'error-accepted',
  severity: 'error',
  title: 'An error is accepted, and errors cannot be.',
  why: 'A card that cannot hold would hang on the wall because somebody wrote a reason beside it.',
  sources: ['common practice'],
  example: {
    bad: [
      {
        file: 'consumables.yaml',
        from: 'wipe: { name: lint-free wipe, kind: wipe }',
        to: 'wipe: { name: lint-free wipe, kind: wipe } «# accept REF001: bought next week»',
      },
    ],
  },
  found: 'comparing acceptances',
};
