/** A line of the ledger records what no command allows. */

import type { Check } from '../check.ts';
import type { Edit } from '../example/example.ts';
import { issued, ledgerAside, lineEdit, lineOf, lines, markedLine, reinstated, suspended } from './example-ledger.ts';

/** by: who asks for the reinstatement that ben approves. */
function ledger(by: string) {
  return lines([issued(), suspended(), reinstated(by)]);
}

export const unlawfulAct: Check = {
  code: 'LDG010',
  name: 'unlawful-act',
  severity: 'error',
  title: 'A line of the ledger records what no command allows.',
  why: 'Somebody has written the line past the commands: a document approved by its own author, a date set back, or a withdrawn number used again.',
  sources: [
    '21 CFR 820.40, 2015 text: approval before issue, by designated persons',
    'common practice: the author is not the sole approver, a retired number is not used again',
  ],
  example: {
    get bad(): readonly Edit[] {
      const all = ledger('ben');
      return [...ledgerAside(all), lineEdit([lineOf(all, 3)], markedLine(lineOf(all, 3)))];
    },
    get good(): readonly Edit[] {
      const all = ledger('ada');
      return [...ledgerAside(all), lineEdit([lineOf(all, 3)])];
    },
  },
  found: 'reading the ledger',
};
