/** An act that the shop has signed is not signed. */

import type { Check } from '../check.ts';
import type { Edit } from '../example/example.ts';
import {
  aside,
  exampleKey,
  issued,
  keyEdit,
  ledgerAside,
  lineEdit,
  lineOf,
  lines,
  markedLine,
  reinstated,
  suspended,
} from './example-ledger.ts';

/** Two acts were recorded before the rule. */
const rule: Edit = {
  file: 'shop.yaml',
  from: 'card: { format: A4 }\n',
  to: 'card: { format: A4 }\ncontrol: { signed: [major], signed_since: 2026-02-02 }\n',
};

function ledger(key?: ReturnType<typeof exampleKey>) {
  return lines([issued(), suspended(), reinstated('ada', key)]);
}

export const missingSignature: Check = {
  code: 'LDG008',
  name: 'missing-signature',
  severity: 'error',
  title: 'An act that the shop has signed is not signed.',
  why: 'A name that is typed proves little: anybody who can write the file could have approved it, and the auditor cannot be shown that the approver did.',
  sources: [
    '21 CFR 820.40(a), 2015 text: date and signature of the approver',
    'common practice: the shop’s own rule says what a record of approval is',
  ],
  example: {
    get bad(): readonly Edit[] {
      const all = ledger();
      return [
        rule,
        ...ledgerAside(all),
        aside(keyEdit(exampleKey(1))),
        lineEdit([lineOf(all, 3)], markedLine(lineOf(all, 3))),
      ];
    },
    get good(): readonly Edit[] {
      const all = ledger(exampleKey(1));
      return [rule, ...ledgerAside(all), aside(keyEdit(exampleKey(1))), lineEdit([lineOf(all, 3)])];
    },
  },
  found: 'reading the ledger',
};
