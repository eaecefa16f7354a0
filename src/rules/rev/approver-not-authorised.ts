/** The approver of the revision in force may approve a change of its class. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { lookUp } from '../rule.ts';
import { approverHint, rightsInWords } from './approvers.ts';

export const approverNotAuthorised: Check = {
  code: 'REV004',
  name: 'approver-not-authorised',
  severity: 'error',
  title: 'The revision in force is approved by somebody who may not approve a change of its class.',
  why: 'A card stands in the binder under a name that stands for nothing, and the first audit takes it off the wall.',
  sources: [
    '21 CFR 820.40(a), 2015 text: named persons review and approve before issue',
    'DOE-STD-1073-2003, 6.3.5: major and minor changes are defined, and major ones need the approval of the owner',
    'ISO 9001:2015, 7.5.2: review and approval (read second-hand)',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n',
        to: '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ben, approver: «ada», what: First issue, why: New pump }\n',
      },
    ],
  },
  found: (shop, tell) => {
    for (const d of shop.documents) {
      // Who approved an older revision may have been entitled to it then.
      const { revision } = d;
      const approver = lookUp(shop).person(revision.approver);
      if (approver === undefined || approver.approves.includes(revision.class) || revision.author === revision.approver)
        continue;
      tell(
        placeOf(d, 'revisions', d.revisions.length - 1, 'approver'),
        `revision ${revision.rev} of ${d.doc}, a ${revision.class} change, is approved by \`${approver.id}\`, and people.yaml lets ${approver.name} approve ${rightsInWords(approver.approves)}`,
        {
          related: [{ range: approver.keyRange, message: `\`${approver.id}\` in people.yaml` }],
          hint: approverHint(
            shop,
            revision.author,
            revision.class,
            `; or give \`${approver.id}\` the right with \`approves: [${revision.class}]\` in people.yaml`,
          ),
        },
      );
    }
  },
};
