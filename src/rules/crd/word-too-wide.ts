/** A word or number is wider than its place on the card. */

import type { Check } from '../check.ts';

export const wordTooWide: Check = {
  code: 'CRD003',
  name: 'word-too-wide',
  severity: 'error',
  title: 'A word or number is wider than its place on the card.',
  why: 'A number that runs over the edge is cut off in the printer, and what is left reads as another number.',
  sources: ['the width of the place on the card'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: «Wipe both faces beside the groove ________________________________________________________________________________________________________________________»\n        use: [wipe]\n',
      },
    ],
  },
  found: 'laying out cards',
};
