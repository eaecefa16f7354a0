/** The cover's summary of an audit pack: what is in order and what is not, counted and named. */

import type { AuditTable } from '../../control/audit-table.ts';
import type { ControlView, DocumentState, Notice } from '../../control/types.ts';
import type { ResolvedShop } from '../../resolve/types.ts';

/** What is counted, how many, and which: numbers of documents, notices, changes. */
export type StandingRow = readonly [what: string, count: string, which: string];

/** More would not fit the cover; the list itself names them all. */
const MOST_NAMED = 6;

export function standingRows(
  view: ControlView,
  shop: ResolvedShop,
  tables: readonly AuditTable[],
): readonly StandingRow[] {
  const documents = (standing: DocumentState['standing']): string[] =>
    view.documents.filter((d) => d.standing === standing).map((d) => d.doc);
  const coming = view.documents.flatMap((d) => d.coming.map((i) => `${d.doc} Rev ${i.rev} (${i.effective})`));
  const overdue = view.open.filter((n) => n.overdue);
  const unconfirmed = view.editions.flatMap((e) => e.rests.filter((r) => r.confirmed === undefined).map((r) => r.doc));
  const numberOf = (n: Notice): string => `${n.number} copy ${n.copy}`;
  const approvals = tables.find((t) => t.name === 'approvals')?.rows ?? [];
  return [
    row('Documents in force', documents('in force'), false),
    row('Suspended', documents('suspended')),
    row('Withdrawn', documents('withdrawn')),
    row('Revisions not yet effective', coming),
    row(
      'Temporary changes open',
      view.documents.flatMap((d) => d.temporaries.map((t) => `${t.number} (${t.doc})`)),
    ),
    row('Receipts open', view.open.map(numberOf)),
    row('Receipts overdue', overdue.map(numberOf)),
    row(
      'Reviews overdue',
      view.reviews.filter((r) => r.state === 'overdue').map((r) => r.doc),
    ),
    row(
      'Reviews due soon',
      view.reviews.filter((r) => r.state === 'due soon').map((r) => r.doc),
    ),
    row('Procedures that rest on an older edition, not confirmed', [...new Set(unconfirmed)].sort()),
    row(
      'Feedback open',
      shop.feedback.filter((f) => f.answer === undefined).map((f) => f.number),
    ),
    [
      'Approvals',
      String(approvals.length),
      `${approvals.filter((a) => a['signed'] === 'yes').length} of them signed with a key`,
    ],
  ];
}

function row(what: string, which: readonly string[], named = true): StandingRow {
  const more = which.length - MOST_NAMED;
  const words = more > 0 ? `${which.slice(0, MOST_NAMED).join(', ')} and ${more} more` : which.join(', ');
  return [what, which.length === 0 ? 'none' : String(which.length), named ? words : ''];
}
