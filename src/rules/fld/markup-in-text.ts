/** Text holds a picture, a heading or another construct that cards cannot show. */

import type { Check } from '../check.ts';

export const markupInText: Check = {
  code: 'FLD011',
  name: 'markup-in-text',
  severity: 'error',
  title: 'Text holds a picture, a heading or another construct that cards cannot show.',
  why: 'A card shows words, lists and references. A picture or a table in a text field would be left out, and with it perhaps the one dimension that matters.',
  sources: ['CommonMark 0.31: what the marks in a text stand for'],
  example: {
    bad: [
      {
        file: 'stages/close-out.yaml',
        from: '  - do: Refit every guard.\n',
        to: '  - do: «Refit every guard as in ![guards](guards.png).»\n',
      },
    ],
  },
  found: 'reading values',
};
