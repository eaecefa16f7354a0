/** A card address is too long for a symbol that scans well on a laminated card. */

import type { Check } from '../check.ts';

export const longAddress: Check = {
  code: 'CRD004',
  name: 'long-address',
  severity: 'error',
  title: 'A card address is too long for a symbol that scans well on a laminated card.',
  why: 'A symbol of many small modules does not scan through a scratched film, and the card cannot be compared with the revision in force.',
  sources: [
    'ISO/IEC 18004: modules by version and error level',
    'measured: modules of half a millimetre scan through laminate',
  ],
  example: {
    bad: [
      {
        file: 'shop.yaml',
        from: 'address: https://binder.mini.example/',
        to: 'address: https://binder.mini-works-of-the-northern-harbour.example/procedures/',
      },
      { file: 'procedures/mw-1.yaml', from: 'doc: MW-1\ntitle', to: 'doc: ««MW-1»»\ntitle' },
    ],
  },
  found: 'laying out cards',
};
