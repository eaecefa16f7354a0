/** A signature does not hold, or is not the approver’s. */

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
  resealed,
  suspended,
} from './example-ledger.ts';

const KEY = () => exampleKey(1);

/** The reinstatement is signed; its reason is then exchanged. */
function ledger() {
  const all = lines([issued(), suspended(), reinstated('ada', KEY())]);
  return { all, last: lineOf(all, 3) };
}

export const falseSignature: Check = {
  code: 'LDG007',
  name: 'false-signature',
  severity: 'error',
  title: 'A signature does not hold, or is not the approver’s.',
  why: 'A forged or a copied signature makes it look as if the approver had read what stands there; the change goes to every bench unread.',
  sources: [
    'RFC 8032, section 5.1: Ed25519',
    'RFC 8785, section 3.2: the one spelling that is signed',
    '21 CFR 820.40(a), 2015 text: date and signature of the approver',
  ],
  example: {
    get bad(): readonly Edit[] {
      const { all, last } = ledger();
      const forged = resealed(last, { reason: 'It was never cracked' });
      return [
        ...ledgerAside([...all.slice(0, 2), forged]),
        aside(keyEdit(KEY())),
        lineEdit([forged], markedLine(forged)),
      ];
    },
    get good(): readonly Edit[] {
      const { all, last } = ledger();
      return [...ledgerAside(all), aside(keyEdit(KEY())), lineEdit([last])];
    },
  },
  found: 'reading the ledger',
};
