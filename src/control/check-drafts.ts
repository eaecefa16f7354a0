/** The content beside the ledger: what was issued is not rewritten in the change records, and a withdrawn number is not used again. */

import type { Report } from '../diagnostics/index.ts';
import { type Document, placeOf, type ResolvedShop } from '../resolve/index.ts';
import type { Entry, IssueEntry, Ledger } from './types.ts';

type RecordKey = 'what' | 'why' | 'class' | 'author' | 'approver' | 'approved' | 'effective';

export function checkDrafts(shop: ResolvedShop, { entries }: Ledger, report: Report): void {
  if (entries.length === 0) return;
  const issues = new Map<string, IssueEntry[]>();
  const withdrawn = new Map<string, Extract<Entry, { kind: 'withdraw' }>>();
  for (const e of entries) {
    if (e.kind === 'issue') issues.set(e.doc, [...(issues.get(e.doc) ?? []), e]);
    else if (e.kind === 'withdraw') withdrawn.set(e.doc, e);
  }
  for (const document of shop.documents) {
    const gone = withdrawn.get(document.doc);
    if (gone !== undefined) {
      report(
        'LDG013',
        placeOf(document, 'doc'),
        `${document.doc} was withdrawn${gone.replacement === undefined ? '' : ` in favour of ${gone.replacement}`} (${gone.effective}), and its number is not used again`,
        { hint: 'take the file out of `procedures/`; give a new procedure a number of its own' },
      );
      continue;
    }
    for (const issue of issues.get(document.doc) ?? []) checkRecord(document, issue, report);
  }
}

function checkRecord(document: Document, issue: IssueEntry, report: Report): void {
  const index = document.revisions.findIndex((r) => r.rev === issue.rev);
  const record = document.revisions[index];
  if (record === undefined) {
    report(
      'LDG012',
      placeOf(document, 'revisions'),
      `revision ${issue.rev} of ${document.doc} was issued on ${issue.recorded}, and its change record is missing here`,
      { hint: 'take it back from version control' },
    );
    return;
  }
  const issued: Readonly<Record<RecordKey, string>> = {
    what: issue.change.what,
    why: issue.change.why,
    class: issue.change.class,
    author: issue.author,
    approver: issue.approver,
    approved: issue.approved,
    effective: issue.effective,
  };
  for (const [key, was] of Object.entries(issued)) {
    const is = record[key as RecordKey];
    if (is === was) continue;
    report(
      'LDG012',
      placeOf(document, 'revisions', index, key),
      `\`${key}\` of revision ${issue.rev} of ${document.doc} is \`${is}\` here, and it was issued with \`${was}\``,
      { hint: 'take the words of the issue back; what is to be otherwise takes a new revision' },
    );
  }
}
