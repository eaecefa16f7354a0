/** An approver’s key is not in the shop’s folder, or a file among the keys is none. */

import type { Check } from '../check.ts';
import type { Edit } from '../example/example.ts';
import {
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

/** Signed with a key that somebody has exchanged since. */
function ledger() {
  const all = lines([issued(), suspended(), reinstated('ada', exampleKey(1))]);
  return { all, last: lineOf(all, 3) };
}

export const approverKeyUnknown: Check = {
  code: 'LDG009',
  name: 'approver-key-unknown',
  severity: 'error',
  title: 'An approver’s key is not in the shop’s folder, or a file among the keys is none.',
  why: 'Without the key nobody can tell whether the approver signed; with another one in its place, somebody else signs in the approver’s name.',
  sources: ['RFC 8032, section 5.1.5: public keys of Ed25519', 'RFC 8410, section 4: their form in a file (memory)'],
  example: {
    get bad(): readonly Edit[] {
      const { all, last } = ledger();
      return [...ledgerAside(all), keyEdit(exampleKey(2)), lineEdit([last], markedLine(last))];
    },
    get good(): readonly Edit[] {
      const { all, last } = ledger();
      return [...ledgerAside(all), keyEdit(exampleKey(1)), lineEdit([last])];
    },
  },
  found: 'reading the ledger',
};
