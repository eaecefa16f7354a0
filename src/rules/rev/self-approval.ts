/** The author of a revision is not its approver. */

import type { Rule } from '../rule.ts';

export const selfApproval: Rule = {
  code: 'REV003',
  why: 'Nobody sees the slip of one’s own hand; approval by a second person is what catches it.',
  check: (shop, report) => {
    for (const d of shop.documents) {
      for (const r of d.revisions) {
        if (r.author !== r.approver) continue;
        report('REV003', r.range, `revision ${r.rev} of ${d.doc} is approved by its author \`${r.author}\``, {
          hint: 'name another person as approver',
        });
      }
    }
  },
};
