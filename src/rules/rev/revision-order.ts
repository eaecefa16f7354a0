/** Revisions of a document must follow each other. */

import type { Rule } from '../rule.ts';

export const revisionOrder: Rule = {
  code: 'REV001',
  why: 'Nobody can say which card on the wall is the newer one.',
  check: (shop, report) => {
    for (const d of shop.documents) {
      d.revisions.forEach((r, i) => {
        const before = d.revisions[i - 1];
        if (before === undefined) return;
        if (d.revisions.slice(0, i).some((x) => x.rev === r.rev)) {
          report('REV001', r.range, `revision ${r.rev} of ${d.doc} stands twice`, {
            hint: 'a revision mark is never used again',
          });
        } else if (r.effective < before.effective) {
          report(
            'REV001',
            r.range,
            `revision ${r.rev} of ${d.doc} takes effect on ${r.effective}, before revision ${before.rev} on ${before.effective}`,
            {
              related: [{ range: before.range, message: `revision ${before.rev}` }],
              hint: 'write the oldest revision first',
            },
          );
        }
      });
    }
  },
};
