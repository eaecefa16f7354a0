/** A snapshot or a comparison is missing, or is not the one that was issued. */

import type { Check } from '../check.ts';
import type { Edit } from '../example/example.ts';
import {
  issued,
  type Line,
  ledgerAside,
  lineEdit,
  lineOf,
  lines,
  markedLine,
  SNAPSHOT,
  SNAPSHOT_FILE,
} from './example-ledger.ts';

function ledger(): readonly [all: readonly Line[], first: Line] {
  const all = lines([issued()]);
  return [all, lineOf(all, 1)];
}

export const alteredIssuedFile: Check = {
  code: 'LDG005',
  name: 'altered-issued-file',
  severity: 'error',
  title: 'A snapshot or a comparison is missing, or is not the one that was issued.',
  why: 'The card would be printed with a number that nobody approved, under the letter and the name of a revision that somebody did.',
  sources: ['FIPS 180-4: SHA-256', '21 CFR 820.40(a), 2015 text: documents are approved before they are issued'],
  example: {
    get bad(): readonly Edit[] {
      const [all, first] = ledger();
      return [
        ...ledgerAside(all),
        { file: SNAPSHOT_FILE, from: SNAPSHOT, to: SNAPSHOT.replace('160', '190') },
        lineEdit([first], markedLine(first)),
      ];
    },
    get good(): readonly Edit[] {
      const [all] = ledger();
      return [...ledgerAside(all), { file: SNAPSHOT_FILE, from: SNAPSHOT, to: SNAPSHOT }];
    },
  },
  found: 'reading the ledger',
};
