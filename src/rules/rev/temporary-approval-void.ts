/** A temporary change is approved by a second person, with the authority that the original needed. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { lookUp } from '../rule.ts';
import { approverHint, rightsInWords } from './approvers.ts';
import { exampleChange } from './temporary.ts';

export const temporaryApprovalVoid: Check = {
  code: 'REV016',
  name: 'temporary-approval-void',
  severity: 'error',
  title: 'A temporary change is approved by its author, or by somebody who may not approve a major change.',
  why: 'A slip beside the card outranks the card: one hand alone has then changed what two had approved.',
  sources: [
    'common practice: a temporary change is approved with the authority of the original; the author is not the approver',
    '21 CFR 820.40(b), 2015 text: a change is approved by the function that approved the original',
  ],
  example: {
    bad: [{ file: 'temporary.yaml', to: exampleChange({ author: 'ben', approver: '«ada»' }) }],
    good: [{ file: 'temporary.yaml', to: exampleChange() }],
  },
  found: (shop, tell) => {
    for (const t of shop.temporaryChanges) {
      const approver = lookUp(shop).person(t.approver);
      const own = t.author === t.approver;
      // An unknown person has its own report.
      if (!own && (approver === undefined || approver.approves.includes('major'))) continue;
      const problem = own
        ? `is approved by its author \`${t.author}\``
        : `is approved by \`${t.approver}\`, and people.yaml lets ${approver?.name ?? t.approver} approve ${rightsInWords(approver?.approves ?? [])}`;
      tell(placeOf(t, 'approver'), `${t.number} ${problem}`, {
        ...(own || approver === undefined
          ? {}
          : { related: [{ range: approver.keyRange, message: `\`${approver.id}\` in people.yaml` }] }),
        hint: approverHint(shop, t.author, 'major', ''),
      });
    }
  },
};
