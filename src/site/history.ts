/** The history of a document as rows: from the ledger where there is one, else from its change records. */

import type { IssueEntry } from '../control/types.ts';
import type { Document } from '../resolve/types.ts';
import { comparisonTo, control, stateOf } from './control-data.ts';
import type { StandingWord } from './control-words.ts';
import type { Cell, Column } from './register.ts';
import { personName } from './shop-data.ts';

export const HISTORY_COLUMNS: readonly Column[] = [
  { label: 'Rev', head: true },
  { label: 'Effective' },
  { label: 'Standing' },
  { label: 'What changed' },
  { label: 'Why' },
  { label: 'Approved by' },
];

/** Newest first. go makes addresses relative to the page. */
export function historyRows(document: Document, go: (to: string) => string): readonly (readonly Cell[])[] {
  const state = document.standing === 'draft' ? undefined : stateOf(document.doc);
  if (control === undefined || state === undefined) {
    return [...document.revisions]
      .reverse()
      .map((r) => [
        { text: r.rev },
        { text: r.effective },
        { text: '' },
        { text: r.what },
        { text: r.why },
        { text: personName(r.approver), sub: `on\u00a0${r.approved}` },
      ]);
  }
  // Twice the same revision letter stands only for an issue whose day had not come.
  return [...state.issues].reverse().map((issue) => issueRow(issue, standingOf(issue, document), go));
}

function standingOf(issue: IssueEntry, document: Document): StandingWord | undefined {
  const state = stateOf(document.doc);
  if (state?.coming.some((c) => c.seq === issue.seq)) return 'not yet effective';
  return state?.current?.seq === issue.seq ? 'in force' : undefined;
}

function issueRow(issue: IssueEntry, standing: StandingWord | undefined, go: (to: string) => string): readonly Cell[] {
  const comparison = comparisonTo(issue.doc, issue.rev);
  return [
    { text: issue.rev },
    { text: issue.effective },
    standing === undefined
      ? { text: 'superseded' }
      : { text: standing === 'in force' ? 'current' : 'not yet effective', sign: standing },
    {
      text: issue.change.what,
      ...(comparison === undefined ? {} : { links: [{ text: 'Compare with the issue before', to: go(comparison) }] }),
    },
    { text: issue.change.why },
    {
      text: personName(issue.approver),
      sub: `on\u00a0${issue.approved}${issue.signature === undefined ? '' : ', signed'}`,
    },
  ];
}
