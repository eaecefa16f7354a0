/** A line of the ledger is missing, stands in another place, or stands there twice. */

import type { Check } from '../check.ts';
import type { Edit } from '../example/example.ts';
import { issued, ledgerAside, lineEdit, lineOf, lines, markedLine, reviewed, suspended } from './example-ledger.ts';

/** The suspension is taken out; the line after it tells. */
function ledger() {
  const all = lines([issued(), suspended(), reviewed('2026-06-01', 'Still cracked')]);
  return { all, stop: lineOf(all, 2), last: lineOf(all, 3) };
}

export const missingLedgerLine: Check = {
  code: 'LDG003',
  name: 'missing-ledger-line',
  severity: 'error',
  title: 'A line of the ledger is missing, stands in another place, or stands there twice.',
  why: 'A suspension that is taken out of the ledger lets a card that may kill hang on as current; an older copy of the ledger brings a superseded revision back.',
  sources: [
    'FIPS 180-4: SHA-256 chains each line to the one before it',
    'ISO 9001:2015, 7.5.3.1: records are protected from unintended alteration (memory)',
  ],
  example: {
    get bad(): readonly Edit[] {
      const { all, stop, last } = ledger();
      return [...ledgerAside(all), lineEdit([stop, last], markedLine(last))];
    },
    get good(): readonly Edit[] {
      const { all, stop, last } = ledger();
      return [...ledgerAside(all), lineEdit([stop, last])];
    },
  },
  found: 'reading the ledger',
};
