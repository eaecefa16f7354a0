/** Revisions of a document must follow each other. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';

export const revisionOrder: Check = {
  code: 'REV001',
  name: 'revision-order',
  severity: 'error',
  title: 'The revisions of a document are not in order.',
  why: 'Nobody can say which card on the wall is the newer one.',
  sources: [
    'ISO 9001:2015, 7.5.2 and 7.5.3: identification and control of changes (read second-hand)',
    'ASME Y14.35: a revision mark is used once (memory)',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n',
        to: '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n  - { rev: B, effective: «2025-11-03», approved: 2025-11-02, author: ada, approver: ben, what: Gap limit, why: Manual edition 3 }\n',
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n',
        to: '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n  - { rev: B, effective: 2026-11-03, approved: 2026-11-02, author: ada, approver: ben, what: Gap limit, why: Manual edition 3 }\n',
      },
    ],
  },
  found: (shop, tell) => {
    for (const d of shop.documents) {
      d.revisions.forEach((r, i) => {
        const before = d.revisions[i - 1];
        if (before === undefined) return;
        if (d.revisions.slice(0, i).some((x) => x.rev === r.rev)) {
          tell(r.range, `revision ${r.rev} of ${d.doc} stands twice`, {
            hint: 'give the later one the next mark: a mark is never used again',
          });
        } else if (r.effective < before.effective) {
          tell(
            placeOf(d, 'revisions', i, 'effective'),
            `revision ${r.rev} of ${d.doc} takes effect on ${r.effective}, before revision ${before.rev} on ${before.effective}`,
            {
              related: [{ range: before.range, message: `revision ${before.rev}` }],
              hint: 'look both days up: correct the one that was mistyped, or write the oldest revision first',
            },
          );
        }
      });
    }
  },
};
