/** A revision may take effect on the day of its approval or later. */

import type { Rule } from '../rule.ts';

export const earlyEffectiveDate: Rule = {
  code: 'REV002',
  why: 'A card would have been in force before anybody had approved it.',
  check: (shop, report) => {
    for (const d of shop.documents) {
      for (const r of d.revisions) {
        if (r.effective >= r.approved) continue;
        report(
          'REV002',
          r.range,
          `revision ${r.rev} of ${d.doc} takes effect on ${r.effective}, and is approved on ${r.approved}`,
          { hint: 'the effective date is the approval date or later' },
        );
      }
    }
  },
};
