/** The author of a revision is not its approver. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { approverHint } from './approvers.ts';

export const selfApproval: Check = {
  code: 'REV003',
  name: 'self-approval',
  severity: 'error',
  title: 'A revision is approved by its own author.',
  why: 'Nobody sees the slip of one’s own hand; approval by a second person is what catches it.',
  sources: ['common practice; 10 CFR 71.121: the inspector is not the one who did the work'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n',
        to: '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ben, approver: «ben», what: First issue, why: New pump }\n',
      },
    ],
  },
  found: (shop, tell) => {
    for (const d of shop.documents) {
      for (const [i, r] of d.revisions.entries()) {
        if (r.author !== r.approver) continue;
        tell(
          placeOf(d, 'revisions', i, 'approver'),
          `revision ${r.rev} of ${d.doc} is approved by its author \`${r.author}\``,
          {
            hint: approverHint(shop, r.author, r.class, ''),
          },
        );
      }
    }
  },
};
