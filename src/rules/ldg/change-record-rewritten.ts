/** A change record in the content says otherwise than the revision that was issued. */

import type { Check } from '../check.ts';
import type { Edit } from '../example/example.ts';
import { issued, ledgerAside, lines } from './example-ledger.ts';

const LINE =
  '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n';
const record = { file: 'procedures/mw-1.yaml', from: LINE, to: LINE };

export const changeRecordRewritten: Check = {
  code: 'LDG012',
  name: 'change-record-rewritten',
  severity: 'error',
  title: 'A change record in the content says otherwise than the revision that was issued.',
  why: 'Card and change record part: the auditor asks what changed in revision A and gets two answers, and nobody knows which one was approved.',
  sources: [
    '21 CFR 820.40(b), 2015 text: what a change record holds',
    'common practice: a record is not rewritten, a new one is made',
  ],
  example: {
    get bad(): readonly Edit[] {
      return [
        ...ledgerAside(lines([issued()])),
        { ...record, to: record.to.replace('First issue', '«First issue with a higher torque»') },
      ];
    },
    get good(): readonly Edit[] {
      return [...ledgerAside(lines([issued()])), record];
    },
  },
  found: 'reading the ledger',
};
