/** A warning is accepted without a reason. */

import type { Check } from '../check.ts';

export const acceptanceWithoutReason: Check = {
  code: 'ACC003',
  name: 'acceptance-without-reason',
  severity: 'error',
  title: 'A warning is accepted without a reason.',
  why: 'Nobody can judge later whether the fault was seen or only silenced.',
  sources: ['ISO 9001:2015 8.7: a concession is documented (memory)'],
  example: {
    bad: [
      {
        file: 'consumables.yaml',
        from: 'wipe: { name: lint-free wipe, kind: wipe }',
        to: 'wipe: { name: lint-free wipe, kind: wipe } «# accept CSM006:»',
      },
    ],
  },
  found: 'comparing acceptances',
};
