/** Lists of the audit pack that say what is kept up: reviews, outside documents, temporary changes, feedback. */

import type { Feedback, OutsideDocument, ResolvedShop } from '../resolve/types.ts';
import { type AuditTable, BETWEEN, days, type Names } from './audit-table.ts';
import type { ControlView, EditionState, Ledger, TemporaryEntry } from './types.ts';

export type ReviewKey = 'doc' | 'title' | 'owner' | 'interval' | 'last' | 'due' | 'state' | 'done';

export function reviewsTable(view: ControlView, names: Names): AuditTable<ReviewKey> {
  const states = new Map(view.documents.map((d) => [d.doc, d]));
  return {
    name: 'reviews',
    title: 'Reviews',
    says: 'When each document is to be looked through again, and the reviews that left it as it was.',
    empty: 'No document has a review due.',
    columns: [
      ['doc', 'Document'],
      ['title', 'Title'],
      ['owner', 'Owner'],
      ['interval', 'Interval'],
      ['last', 'Last'],
      ['due', 'Due'],
      ['state', 'State'],
      ['done', 'Reviews entered'],
    ],
    rows: view.reviews.map((r) => ({
      doc: r.doc,
      title: r.title,
      owner: names.person(r.owner),
      interval: r.interval,
      last: r.last,
      due: r.due,
      state: r.state,
      done: (states.get(r.doc)?.reviews ?? [])
        .map((e) => `${e.on}, Rev ${e.rev}, ${names.person(e.by)}: ${e.finding}`)
        .join(BETWEEN),
    })),
  };
}

export type OutsideKey =
  | 'id'
  | 'document'
  | 'kind'
  | 'edition'
  | 'owner'
  | 'received'
  | 'kept'
  | 'doc'
  | 'rests'
  | 'numbers'
  | 'confirmed';

/** One row for each procedure that rests on an older edition or was confirmed; a document without any has one row. */
export function outsideTable(view: ControlView, shop: ResolvedShop, names: Names): AuditTable<OutsideKey> {
  const registered = new Map(shop.outside.map((o) => [o.id, o]));
  const states = new Map(view.editions.map((e) => [e.id, e]));
  const ids = [...new Set([...registered.keys(), ...states.keys()])].sort();
  return {
    name: 'outside-documents',
    title: 'Outside documents',
    says: "Makers' manuals, standards and the like with the edition that the works holds, and every procedure whose numbers rest on an older one.",
    empty: 'No outside document is registered.',
    columns: [
      ['id', 'Id'],
      ['document', 'Document'],
      ['kind', 'Kind'],
      ['edition', 'Edition held'],
      ['owner', 'Owner'],
      ['received', 'Received'],
      ['kept', 'Kept'],
      ['doc', 'Procedure'],
      ['rests', 'Rests on edition'],
      ['numbers', 'Numbers that rest on it'],
      ['confirmed', 'Compared with the edition held'],
    ],
    rows: ids.flatMap((id) => {
      const own = outsideRow(id, registered.get(id), states.get(id), names);
      const rests = restRows(registered.get(id), states.get(id), names);
      return rests.length === 0
        ? [{ ...own, doc: '', rests: 'nothing rests on an older edition', numbers: '', confirmed: '' }]
        : rests.map((r) => ({ ...own, ...r }));
    }),
  };
}

type OwnKey = 'id' | 'document' | 'kind' | 'edition' | 'owner' | 'received' | 'kept';

function outsideRow(
  id: string,
  register: OutsideDocument | undefined,
  state: EditionState | undefined,
  names: Names,
): Record<OwnKey, string> {
  const facts = state ?? register;
  return {
    id,
    document: facts?.document ?? '',
    kind: facts?.kind ?? '',
    edition: facts?.edition ?? '',
    owner: names.person(facts?.owner),
    received: register?.received ?? '',
    kept: facts?.kept ?? '',
  };
}

function restRows(
  register: OutsideDocument | undefined,
  state: EditionState | undefined,
  names: Names,
): Record<'doc' | 'rests' | 'numbers' | 'confirmed', string>[] {
  const confirmation = (c: { by: string; on: string; finding: string } | undefined): string =>
    c === undefined ? 'not yet: it is not issued again before that' : `${c.on}, ${names.person(c.by)}: ${c.finding}`;
  const resting = (state?.rests ?? []).map((r) => ({
    doc: r.doc,
    rests: r.edition,
    numbers: r.numbers.join(BETWEEN),
    confirmed: confirmation(r.confirmed),
  }));
  const named = new Set(resting.map((r) => r.doc));
  const others = (register?.confirmed ?? [])
    .filter((c) => !named.has(c.doc))
    .map((c) => ({ doc: c.doc, rests: '', numbers: '', confirmed: confirmation(c) }));
  return [...resting, ...others];
}

export type TemporaryKey =
  | 'number'
  | 'doc'
  | 'rev'
  | 'step'
  | 'text'
  | 'reason'
  | 'scope'
  | 'author'
  | 'approver'
  | 'approved'
  | 'from'
  | 'until'
  | 'state';

/** Every temporary change that was ever approved, in the order of the ledger. */
export function temporaryTable(view: ControlView, ledger: Ledger, names: Names): AuditTable<TemporaryKey> {
  return {
    name: 'temporary-changes',
    title: 'Temporary changes',
    says: 'Every temporary change that was approved, with its period and what became of it.',
    empty: 'No temporary change has been approved.',
    columns: [
      ['number', 'Number'],
      ['doc', 'Document'],
      ['rev', 'Revision'],
      ['step', 'Before step'],
      ['text', 'What is done otherwise'],
      ['reason', 'Reason'],
      ['scope', 'Scope'],
      ['author', 'Author'],
      ['approver', 'Approver'],
      ['approved', 'Approved'],
      ['from', 'From'],
      ['until', 'Until'],
      ['state', 'State'],
    ],
    rows: ledger.entries.flatMap((e) =>
      e.kind !== 'temporary'
        ? []
        : [
            {
              number: e.number,
              doc: e.doc,
              rev: e.rev,
              step: String(e.step),
              text: e.text,
              reason: e.reason,
              scope: scopeText(e, view, names),
              author: names.person(e.author),
              approver: names.person(e.approver),
              approved: e.approved,
              from: e.from,
              until: e.until,
              state: stateOf(e, view, ledger, names),
            },
          ],
    ),
  };
}

/** `benches Heat exchange, Deck gear; variants large; serial numbers 1001 to 1040` */
function scopeText({ scope, doc, rev }: TemporaryEntry, view: ControlView, names: Names): string {
  const issue = view.documents.find((d) => d.doc === doc)?.issues.find((i) => i.rev === rev);
  const label = (key: string): string => issue?.cards.find((c) => c.variant === key)?.label ?? key;
  const parts = [
    scope.benches === undefined ? '' : `benches ${scope.benches.map(names.bench).join(', ')}`,
    scope.variants === undefined ? '' : `variants ${scope.variants.map(label).join(', ')}`,
    scope.serials === undefined ? '' : `serial numbers ${scope.serials.from} to ${scope.serials.to}`,
  ].filter((t) => t !== '');
  return parts.length === 0 ? 'everywhere' : parts.join(BETWEEN);
}

function stateOf(e: TemporaryEntry, view: ControlView, ledger: Ledger, names: Names): string {
  const document = view.documents.find((d) => d.doc === e.doc);
  const open = document?.temporaries.find((t) => t.number === e.number);
  if (open !== undefined) return `open, ${days(open.daysLeft)} left`;
  const end = ledger.entries.find((x) => x.kind === 'temporary-end' && x.number === e.number);
  if (end?.kind === 'temporary-end') return `ended ${end.recorded} by ${names.person(end.by)}: ${end.reason}`;
  const next = document?.issues.find((i) => i.seq > e.seq && i.effective <= view.asOf && i.effective <= e.until);
  if (next !== undefined) return `ended with Rev ${next.rev} on ${next.effective}`;
  if (view.asOf < e.from) return 'not begun';
  return view.asOf > e.until ? `expired after ${e.until}` : 'not open';
}

export type FeedbackKey = 'number' | 'doc' | 'rev' | 'step' | 'from' | 'on' | 'text' | 'state' | 'answer';

/** What benches have said about cards: what waits for an answer first, each part by date and number. */
export function feedbackTable(shop: ResolvedShop, names: Names): AuditTable<FeedbackKey> {
  const order = (f: Feedback): string => `${f.answer === undefined ? 0 : 1} ${f.on} ${f.number}`;
  return {
    name: 'feedback',
    title: 'Feedback from the benches',
    says: 'What benches have said about a card, with what still waits for an answer first.',
    empty: 'No feedback is open, and none has been answered.',
    columns: [
      ['number', 'Number'],
      ['doc', 'Document'],
      ['rev', 'Revision'],
      ['step', 'Step'],
      ['from', 'From'],
      ['on', 'Date'],
      ['text', 'What it says'],
      ['state', 'State'],
      ['answer', 'Answer'],
    ],
    rows: [...shop.feedback]
      .sort((a, b) => (order(a) < order(b) ? -1 : 1))
      .map((f) => ({
        number: f.number,
        doc: f.doc,
        rev: f.rev,
        step: f.step === undefined ? '' : String(f.step),
        from: names.bench(names.person(f.from)),
        on: f.on,
        text: f.text,
        state: f.answer === undefined ? 'open' : 'answered',
        answer: f.answer === undefined ? '' : `${f.answer.on}, ${names.person(f.answer.by)}: ${f.answer.text}`,
      })),
  };
}
