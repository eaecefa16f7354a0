/** A procedure has the number of a document that was withdrawn. */

import type { Check } from '../check.ts';
import type { Edit } from '../example/example.ts';
import { issued, ledgerAside, lines, withdrawn } from './example-ledger.ts';

const DOC = { file: 'procedures/mw-1.yaml', from: 'doc: MW-1\n' };

export const withdrawnNumberUsed: Check = {
  code: 'LDG013',
  name: 'withdrawn-number-used',
  severity: 'warning',
  title: 'A procedure has the number of a document that was withdrawn.',
  why: 'A scan of an old card of that number says withdrawn for ever; under the same number, a new procedure would be taken for the old one, or the old card for a new one.',
  sources: ['common practice: a retired number is not used again'],
  example: {
    get bad(): readonly Edit[] {
      return [...ledgerAside(lines([issued(), withdrawn()])), { ...DOC, to: 'doc: «MW-1»\n' }];
    },
    get good(): readonly Edit[] {
      return [
        ...ledgerAside(lines([issued(), withdrawn()])),
        { ...DOC, to: 'doc: MW-2\n' },
        { file: 'benches.yaml', from: 'binder: [MW-1]', to: 'binder: [MW-2]' },
      ];
    },
  },
  found: 'reading the ledger',
};
