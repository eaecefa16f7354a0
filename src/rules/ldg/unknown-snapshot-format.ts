/** A snapshot was written by a later version of this program. */

import type { Check } from '../check.ts';
import type { Edit } from '../example/example.ts';
import { issued, ledgerAside, lineEdit, lineOf, lines, markedLine } from './example-ledger.ts';

export const unknownSnapshotFormat: Check = {
  code: 'LDG011',
  name: 'unknown-snapshot-format',
  severity: 'error',
  title: 'A snapshot was written by a later version of this program.',
  why: 'A reader that guesses would leave out what it does not know: a limit or a warning would be missing from the card without a word.',
  sources: ['common practice: a format that is kept for years carries its number'],
  example: {
    get bad(): readonly Edit[] {
      const all = lines([issued(2)]);
      return [...ledgerAside(all), lineEdit(all, markedLine(lineOf(all, 1)))];
    },
    get good(): readonly Edit[] {
      const all = lines([issued()]);
      return [...ledgerAside(all), lineEdit(all)];
    },
  },
  found: 'reading the ledger',
};
