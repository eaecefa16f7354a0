/** An id or document number is written in a way that cannot serve as an address. */

import type { Check } from '../check.ts';

export const badIdentifier: Check = {
  code: 'FLD007',
  name: 'bad-identifier',
  severity: 'error',
  title: 'An id or document number is written in a way that cannot serve as an address.',
  why: 'Ids become file names and the addresses in the QR symbols. One with a blank or a capital gives a symbol that leads nowhere, on a card that is laminated by then.',
  sources: ['RFC 3986, 2.3: characters that stand in an address as they are (memory)'],
  example: {
    bad: [
      {
        file: 'benches.yaml',
        from: '  lead: ada\n',
        to: '  lead: «Ada Fern»\n',
      },
    ],
  },
  found: 'reading values',
};
