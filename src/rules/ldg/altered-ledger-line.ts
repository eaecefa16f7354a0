/** A line of the ledger was altered after it was written. */

import type { Check } from '../check.ts';
import type { Edit } from '../example/example.ts';
import {
  altered,
  issued,
  type Line,
  ledgerAside,
  lineEdit,
  lineOf,
  lines,
  markedLine,
  reviewed,
} from './example-ledger.ts';

/** The day of the review is set back, so that it was done in time. */
function ledger(): readonly [all: readonly Line[], last: Line] {
  const all = lines([issued(), reviewed('2026-06-01', 'Nothing to change')]);
  return [all, lineOf(all, 2)];
}

export const alteredLedgerLine: Check = {
  code: 'LDG002',
  name: 'altered-ledger-line',
  severity: 'error',
  title: 'A line of the ledger was altered after it was written.',
  why: 'Whoever alters a reason, a date or a digest alters what was approved; the auditor reads a record that nobody made, and the bench follows it.',
  sources: [
    'FIPS 180-4: SHA-256',
    'RFC 8785, section 3.2: the one spelling over which the seal is made',
    'ISO 9001:2015, 7.5.3.1: records are protected from unintended alteration (memory)',
  ],
  example: {
    get bad(): readonly Edit[] {
      const [all, last] = ledger();
      return [...ledgerAside(all), lineEdit([last], markedLine(altered(last, { on: '2026-05-01' })))];
    },
    get good(): readonly Edit[] {
      const [all, last] = ledger();
      return [...ledgerAside(all), lineEdit([last])];
    },
  },
  found: 'reading the ledger',
};
