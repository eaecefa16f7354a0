/** The master list as rows: every document that the shop ever issued or drafts, with the revision in force. */

import type { ControlView, DocumentState } from '../control/types.ts';
import { comparisonTo, reviewOf } from './control-data.ts';
import { STANDING_TEXT, sentence } from './control-words.ts';
import type { Cell, Column } from './register.ts';
import { landingPath, personName } from './shop-data.ts';

export const MASTER_COLUMNS: readonly Column[] = [
  { label: 'Document', head: true },
  { label: 'Title' },
  { label: 'Standing' },
  { label: 'Rev' },
  { label: 'Effective' },
  { label: 'Approved by' },
  { label: 'Review due' },
];

type Go = (to: string) => string;

function linked(doc: string, go: Go): { readonly to?: string } {
  const path = landingPath(doc);
  return path === undefined ? {} : { to: go(path) };
}

/** What stands beside the word: since when, why, what comes. */
function standingNote(state: DocumentState): string | undefined {
  const { suspended, withdrawn, coming } = state;
  if (state.standing === 'withdrawn' && withdrawn !== undefined) {
    const instead = withdrawn.replacement === undefined ? '' : ` Use ${withdrawn.replacement}.`;
    return `since ${withdrawn.effective}. ${sentence(withdrawn.reason)}${instead}`;
  }
  if (state.standing === 'suspended' && suspended !== undefined)
    return `since ${suspended.recorded}. ${sentence(suspended.reason)}`;
  const [next] = coming;
  return next === undefined ? undefined : `Rev\u00a0${next.rev} from ${next.effective}`;
}

function reviewCell(doc: string): Cell {
  const review = reviewOf(doc);
  if (review === undefined) return { text: '' };
  if (review.state === 'in order') return { text: review.due };
  return review.state === 'overdue'
    ? { text: review.due, sub: 'OVERDUE', weight: 'late' }
    : { text: review.due, sub: 'due soon', weight: 'soon' };
}

export function masterRows(view: ControlView, go: Go): readonly (readonly Cell[])[] {
  return view.documents.map((state) => {
    // While suspended its issue stays the one to which it will return, and is not shown as in force.
    const issue = state.standing === 'in force' || state.standing === 'suspended' ? state.current : undefined;
    const note = standingNote(state);
    return [
      { text: state.doc, ...linked(state.doc, go) },
      { text: state.title },
      {
        text: STANDING_TEXT[state.standing].toLowerCase(),
        sign: state.standing,
        ...(note === undefined ? {} : { sub: note }),
      },
      issue === undefined ? { text: '' } : { text: issue.rev },
      { text: issue?.effective ?? '' },
      issue === undefined
        ? { text: '' }
        : {
            text: personName(issue.approver),
            sub: issue.signature === undefined ? `on\u00a0${issue.approved}` : 'signed',
          },
      state.standing === 'withdrawn' ? { text: '' } : reviewCell(state.doc),
    ];
  });
}

/** Every issue, the latest effective date first, with the way to its comparison. */
export function changeRows(view: ControlView, go: Go): readonly (readonly Cell[])[] {
  return view.documents
    .flatMap((state) => state.issues)
    .sort((a, b) => (a.effective < b.effective ? 1 : a.effective > b.effective ? -1 : b.seq - a.seq))
    .map((issue) => {
      const comparison = comparisonTo(issue.doc, issue.rev);
      return [
        { text: issue.effective },
        { text: `${issue.doc}\u00a0Rev\u00a0${issue.rev}`, ...linked(issue.doc, go) },
        {
          text: issue.change.what,
          ...(comparison === undefined ? {} : { links: [{ text: 'Compare', to: go(comparison) }] }),
        },
        { text: issue.change.why },
        { text: personName(issue.author) },
        { text: personName(issue.approver), sub: `on\u00a0${issue.approved}` },
      ];
    });
}
