/** A revision may take effect on the day of its approval or later. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';

export const earlyEffectiveDate: Check = {
  code: 'REV002',
  name: 'early-effective-date',
  severity: 'error',
  title: 'A revision takes effect before it is approved.',
  why: 'A card would have been in force before anybody had approved it.',
  sources: ['21 CFR 820.40(b), 2015 text: the change record holds the approval date and the date it takes effect'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n',
        to: '  - { rev: A, effective: «2026-01-07», approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n',
      },
    ],
  },
  found: (shop, tell) => {
    for (const d of shop.documents) {
      for (const [i, r] of d.revisions.entries()) {
        if (r.effective >= r.approved) continue;
        tell(
          placeOf(d, 'revisions', i, 'effective'),
          `revision ${r.rev} of ${d.doc} takes effect on ${r.effective}, and is approved on ${r.approved}`,
          {
            hint: 'look both days up and correct the one that was mistyped; a revision takes effect on the day of its approval or later',
          },
        );
      }
    }
  },
};
