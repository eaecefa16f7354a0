/** An acceptance names no check that there is. */

import type { Check } from '../check.ts';

export const unknownAcceptance: Check = {
  code: 'ACC004',
  name: 'unknown-acceptance',
  severity: 'error',
  title: 'An acceptance names no check that there is.',
  why: 'The author believes a warning dealt with that stands in the next report.',
  sources: ['common practice'],
  example: {
    bad: [
      {
        file: 'consumables.yaml',
        from: 'wipe: { name: lint-free wipe, kind: wipe }',
        to: 'wipe: { name: lint-free wipe, kind: wipe } «# accept CSM066: burnt in the shop stove»',
      },
    ],
  },
  found: 'comparing acceptances',
};
