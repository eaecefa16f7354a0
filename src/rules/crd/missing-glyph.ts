/** A character is in none of the card faces. */

import type { Check } from '../check.ts';

export const missingGlyph: Check = {
  code: 'CRD002',
  name: 'missing-glyph',
  severity: 'error',
  title: 'A character is in none of the card faces.',
  why: 'An empty box stands on the card where a sign was meant, and the mechanic guesses.',
  sources: ['the printed faces: Source Sans 3, DejaVu Sans Condensed'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: «Wipe both faces 🧽 with a <consumable:wipe>.»\n',
      },
    ],
  },
  found: 'laying out cards',
};
