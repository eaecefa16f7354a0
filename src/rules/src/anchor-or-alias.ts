/** A content file uses a YAML anchor, alias, merge key or tag. */

import type { Check } from '../check.ts';

export const anchorOrAlias: Check = {
  code: 'SRC008',
  name: 'anchor-or-alias',
  severity: 'error',
  title: 'A content file uses a YAML anchor, alias, merge key or tag.',
  why: 'An alias puts one value into many places at once: whoever mends it at one step mends it unseen at all the others, and no card says where its number was written.',
  sources: [
    'YAML 1.2.2, 6.9 and 7.1: node properties and alias nodes (memory)',
    'common practice: what repeats is a shared stage or a register entry with a name',
  ],
  example: {
    bad: [
      {
        file: 'benches.yaml',
        from: '  place: Hall 1\n  lead: ada\n',
        to: '  place: &hall «Hall 1»\n  lead: ada\n',
      },
    ],
  },
  found: 'reading files',
};
