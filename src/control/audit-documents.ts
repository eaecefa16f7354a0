/** Lists of the audit pack that say what holds: the register of documents, the list of effective pages, the copies. */

import type { ResolvedShop } from '../resolve/types.ts';
import { type AuditTable, BETWEEN, type Names } from './audit-table.ts';
import type { ControlView, DocumentState, IssuedCard, IssueEntry } from './types.ts';

export type RegisterKey =
  | 'doc'
  | 'title'
  | 'standing'
  | 'detail'
  | 'rev'
  | 'effective'
  | 'approver'
  | 'owner'
  | 'reviewDue'
  | 'reviewState'
  | 'benches'
  | 'fingerprints'
  | 'snapshot';

/** The issue that stands for a document: the one in force, else the next to come, else the latest. */
export function issueShown(state: DocumentState): IssueEntry | undefined {
  return state.current ?? state.coming[0] ?? state.issues.at(-1);
}

/** Every document with its revision, its standing in words and its checksums. */
export function registerTable(view: ControlView, shop: ResolvedShop, names: Names): AuditTable<RegisterKey> {
  const reviews = new Map(view.reviews.map((r) => [r.doc, r]));
  const documents = new Map(shop.documents.map((d) => [d.doc, d]));
  return {
    name: 'register',
    title: 'Register of documents',
    says: 'Every document that the works has issued or drafted, by number, with the revision in force.',
    empty: 'No document has been issued.',
    columns: [
      ['doc', 'Document'],
      ['title', 'Title'],
      ['standing', 'Standing'],
      ['detail', 'Since, why, what comes'],
      ['rev', 'Revision'],
      ['effective', 'Effective'],
      ['approver', 'Approved by'],
      ['owner', 'Owner'],
      ['reviewDue', 'Review due'],
      ['reviewState', 'Review'],
      ['benches', 'Benches'],
      ['fingerprints', 'Fingerprints of its cards'],
      ['snapshot', 'SHA-256 of the snapshot'],
    ],
    rows: view.documents.map((state) => {
      const issue = issueShown(state);
      const review = reviews.get(state.doc);
      const document = documents.get(state.doc);
      return {
        doc: state.doc,
        title: state.title,
        standing: state.standing,
        detail: detailOf(state),
        rev: issue?.rev ?? '',
        effective: issue?.effective ?? '',
        approver: names.person(issue?.approver),
        owner: names.person(review?.owner ?? document?.owner),
        reviewDue: review?.due ?? '',
        reviewState: review?.state ?? '',
        benches: shop.benches
          .filter((b) => b.binder.includes(state.doc))
          .map((b) => b.name)
          .join(BETWEEN),
        fingerprints: (issue?.cards ?? []).map((c) => c.fingerprint).join(BETWEEN),
        snapshot: issue?.snapshot.sha256 ?? '',
      };
    }),
  };
}

/** `since 2026-03-02: wrong torque at step 12`, `Rev C not before 2026-12-01`, `with temporary change TC-07` */
function detailOf(state: DocumentState): string {
  const { suspended, withdrawn, standing } = state;
  const parts: string[] = [];
  if (suspended !== undefined && standing === 'suspended')
    parts.push(`since ${suspended.recorded}: ${suspended.reason}`);
  if (withdrawn !== undefined) {
    const instead = withdrawn.replacement === undefined ? '' : `, use ${withdrawn.replacement} instead`;
    const when = standing === 'withdrawn' ? 'since' : 'withdrawn from';
    parts.push(`${when} ${withdrawn.effective}: ${withdrawn.reason}${instead}`);
  }
  for (const issue of state.coming) parts.push(`Rev ${issue.rev} not before ${issue.effective}`);
  for (const t of state.temporaries) parts.push(`with temporary change ${t.number} until ${t.until}`);
  if (standing === 'draft only') parts.push('never issued');
  return parts.join(BETWEEN);
}

export type PageKey =
  | 'doc'
  | 'title'
  | 'variant'
  | 'rev'
  | 'effective'
  | 'sides'
  | 'fingerprint'
  | 'temporary'
  | 'path'
  | 'digest';

/** Every card that holds on the day. Documents that are suspended, withdrawn or not yet effective have none. */
export function effectivePagesTable(view: ControlView, names: Names): AuditTable<PageKey> {
  return {
    name: 'effective-pages',
    title: 'List of effective pages',
    says: 'Every card that may be worked from on this day. A card that stands here with another revision, number of sides or fingerprint, or does not stand here at all, is not to be used.',
    empty: 'No card is in force.',
    columns: [
      ['doc', 'Document'],
      ['title', 'Title'],
      ['variant', 'Variant'],
      ['rev', 'Revision'],
      ['effective', 'Effective'],
      ['sides', 'Sides'],
      ['fingerprint', 'Fingerprint'],
      ['temporary', 'With temporary change'],
      ['path', 'Address on the site'],
      ['digest', 'SHA-256 of what the card says'],
    ],
    rows: view.documents.flatMap((state) => {
      const { current, standing } = state;
      if (current === undefined || standing !== 'in force') return [];
      return current.cards.map((card) => ({
        doc: state.doc,
        title: state.title,
        variant: card.label,
        rev: current.rev,
        effective: current.effective,
        sides: String(card.sides),
        fingerprint: card.fingerprint,
        temporary: temporaryText(state, card, names),
        path: card.path,
        digest: card.digest,
      }));
    }),
  };
}

/** `TC-07 (Heat exchange); TC-09`: open changes in whose scope the card lies, with their benches where it is not all of them. */
function temporaryText({ temporaries }: DocumentState, card: IssuedCard, names: Names): string {
  return temporaries
    .filter(({ scope }) => scope.variants === undefined || scope.variants.includes(card.variant))
    .map(({ number, scope }) =>
      scope.benches === undefined ? number : `${number} (${scope.benches.map(names.bench).join(', ')})`,
    )
    .join(BETWEEN);
}

export type CopyKey = 'copy' | 'bench' | 'place' | 'lead' | 'holds' | 'notHung';

/** Who holds which copies: a bench a row, by copy number. */
export function copiesTable(view: ControlView, shop: ResolvedShop, names: Names): AuditTable<CopyKey> {
  const states = new Map(view.documents.map((d) => [d.doc, d]));
  const inForce = (doc: string): boolean => states.get(doc)?.standing === 'in force';
  return {
    name: 'copies',
    title: 'Controlled copies',
    says: 'A bench holds one binder, and all cards in it bear its copy number.',
    empty: 'No bench is registered.',
    columns: [
      ['copy', 'Copy number'],
      ['bench', 'Bench'],
      ['place', 'Place'],
      ['lead', 'Lead'],
      ['holds', 'Documents in force in its binder'],
      ['notHung', 'Not to hang there now'],
    ],
    rows: [...shop.benches]
      .sort((a, b) => a.copy - b.copy)
      .map((bench) => ({
        copy: String(bench.copy),
        bench: bench.name,
        place: bench.place,
        lead: names.person(bench.lead),
        holds: bench.binder
          .filter(inForce)
          .map((doc) => `${doc} Rev ${states.get(doc)?.current?.rev ?? ''}`)
          .join(BETWEEN),
        notHung: bench.binder
          .filter((doc) => !inForce(doc))
          .map((doc) => `${doc} ${states.get(doc)?.standing ?? 'draft only'}`)
          .join(BETWEEN),
      })),
  };
}
