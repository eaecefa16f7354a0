/** A warning is accepted on a line where it does not stand. */

import type { Check } from '../check.ts';

export const idleAcceptance: Check = {
  code: 'ACC001',
  name: 'idle-acceptance',
  severity: 'warning',
  title: 'A warning is accepted on a line where it does not stand.',
  why: 'The reason of a fault that was mended long ago stays in the file and hides the next one.',
  sources: ['common practice: a concession holds for one deviation, and ends with it'],
  example: {
    bad: [
      {
        file: 'consumables.yaml',
        from: 'wipe: { name: lint-free wipe, kind: wipe }',
        to: 'wipe: { name: lint-free wipe, kind: wipe } «# accept CSM006: burnt in the shop stove»',
      },
    ],
  },
  found: 'comparing acceptances',
};
