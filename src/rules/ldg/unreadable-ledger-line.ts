/** A line of the ledger is not one that a command wrote. */

import type { Check } from '../check.ts';
import type { Edit } from '../example/example.ts';
import { issued, type Line, ledgerAside, lineEdit, lineOf, lines, lineText, reviewed } from './example-ledger.ts';

/** The last line was cut short by a hand or a copy. */
function ledger(): readonly [all: readonly Line[], last: Line] {
  const all = lines([issued(), reviewed('2026-06-01', 'Nothing to change')]);
  return [all, lineOf(all, 2)];
}

export const unreadableLedgerLine: Check = {
  code: 'LDG001',
  name: 'unreadable-ledger-line',
  severity: 'error',
  title: 'A line of the ledger is not one that a command wrote.',
  why: 'The ledger says which revision is in force; with a line that cannot be read, a suspension or a new revision may be missing from every answer at the bench.',
  sources: [
    'RFC 8259: JSON (memory)',
    'ISO 9001:2015, 7.5.3.1: records are protected from unintended alteration (memory)',
  ],
  example: {
    get bad(): readonly Edit[] {
      const [all, last] = ledger();
      return [...ledgerAside(all), lineEdit([last], `«${lineText(last).slice(0, 60)}»`)];
    },
    get good(): readonly Edit[] {
      const [all, last] = ledger();
      return [...ledgerAside(all), lineEdit([last])];
    },
  },
  found: 'reading the ledger',
};
