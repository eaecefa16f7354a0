/** Two branches have both written to the ledger. */

import type { Check } from '../check.ts';
import type { Edit } from '../example/example.ts';
import { issued, ledgerAside, ledgerText, lineEdit, lineOf, lines, markedLine, reviewed } from './example-ledger.ts';

/** Both branches have written a second line. */
function ledger() {
  const first = lines([issued()]);
  const all = [...first, ...lines([reviewed('2026-06-01', 'Nothing to change')], first)];
  const theirs = lineOf(lines([reviewed('2026-06-02', 'One word is worn')], first), 2);
  return { all, ours: lineOf(all, 2), theirs };
}

export const forkedLedger: Check = {
  code: 'LDG004',
  name: 'forked-ledger',
  severity: 'error',
  title: 'Two branches have both written to the ledger.',
  why: 'Each branch has judged its act by a ledger without the other one: two revisions may carry one letter, and a document may be issued in one that the other has withdrawn.',
  sources: ['common practice: numbers are given out at one place'],
  example: {
    get bad(): readonly Edit[] {
      const { all, ours, theirs } = ledger();
      return [...ledgerAside([...all, theirs]), lineEdit([ours, theirs], `${ledgerText([ours])}${markedLine(theirs)}`)];
    },
    get good(): readonly Edit[] {
      const { all, ours } = ledger();
      const again = lines([reviewed('2026-06-02', 'One word is worn')], all);
      return [...ledgerAside([...all, ...again]), lineEdit([ours, ...again])];
    },
  },
  found: 'reading the ledger',
};
