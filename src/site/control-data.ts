/** Document control as the pages use it: look-ups over the view of the day, once for all pages of a build. */

import virtualControl from 'virtual:control';
import type {
  ControlView,
  DocumentState,
  EditionState,
  IssueEntry,
  Notice,
  OpenTemporary,
  ReviewState,
} from '../control/types.ts';
import { proseText } from '../render/html/index.ts';
import type { Document, Feedback } from '../resolve/types.ts';
import { joinClauses, scopeClauses } from './control-words.ts';
import { findDocument, shop } from './shop-data.ts';

/** Undefined for a shop compiled without control: its pages then show nothing of it. */
export const control: ControlView | undefined = virtualControl ?? undefined;

const stateByDoc = new Map(control?.documents.map((s) => [s.doc, s]));
const reviewByDoc = new Map(control?.reviews.map((r) => [r.doc, r]));

/** Undefined for a document that is not in the ledger, and without control. */
export function stateOf(doc: string): DocumentState | undefined {
  return stateByDoc.get(doc);
}

export function reviewOf(doc: string): ReviewState | undefined {
  return reviewByDoc.get(doc);
}

/** Issued documents that nobody may work from now: their pages say why. */
export const stopped: readonly DocumentState[] =
  control?.documents.filter((d) => d.standing !== 'in force' && d.standing !== 'draft only') ?? [];

/** The line of the ledger that a page is made from; undefined for a draft and without control. */
export function issueOf(document: Document): IssueEntry | undefined {
  if (document.standing === 'draft') return undefined;
  return stateOf(document.doc)?.issues.findLast((i) => i.rev === document.revision.rev);
}

/** Page of the comparison of a revision with the one before it, from the root; undefined for a first issue. */
export function comparisonTo(doc: string, rev: string): string | undefined {
  return control?.comparisons.find((c) => c.doc === doc && c.to === rev)?.path;
}

/** Cards that must hang at a bench: of every document of the binder that is in force, in binder order. */
export function expectedCards(binder: readonly string[]) {
  return binder.flatMap((doc) => {
    const document = findDocument(doc);
    if (document === undefined || document.standing !== undefined) return [];
    const issue = issueOf(document);
    return document.variants.map((variant) => ({
      document,
      variant,
      sides: issue?.cards.find((c) => c.variant === variant.key)?.sides,
    }));
  });
}

export function openNoticesOf(bench: string): readonly Notice[] {
  return control?.open.filter((n) => n.bench === bench) ?? [];
}

export function openNoticesOn(doc: string): readonly Notice[] {
  return control?.open.filter((n) => n.doc === doc) ?? [];
}

/** Every temporary change that holds on the day, the one that ends first before the others. */
export const temporaries: readonly { readonly change: OpenTemporary; readonly title: string }[] = (
  control?.documents ?? []
)
  .flatMap((s) => s.temporaries.map((change) => ({ change, title: s.title })))
  .sort((a, b) => a.change.daysLeft - b.change.daysLeft || (a.change.number < b.change.number ? -1 : 1));

/** `at the bench Heat exchange only; serial numbers 1001 to 1040 only`; empty for everywhere. */
export function scopeOf({ doc, scope }: OpenTemporary): string {
  const document = findDocument(doc);
  return joinClauses(
    scopeClauses(scope, {
      bench: (id) => shop.benches.find((b) => b.id === id)?.name ?? id,
      variant: (key) => document?.variants.find((v) => v.key === key)?.label ?? key,
    }),
  );
}

/** Its words without marks: as its step shows them, else as they were approved. */
export function temporaryText(change: OpenTemporary): string {
  const steps = findDocument(change.doc)?.variants.flatMap((v) => v.stages.flatMap((s) => s.steps)) ?? [];
  const note = steps.flatMap((s) => s.temporary ?? []).find((t) => t.number === change.number);
  return note === undefined ? change.text : proseText(note.text);
}

/** Temporary changes that hold at a bench. */
export function temporariesAt(bench: string, binder: readonly string[]) {
  return temporaries.filter(
    ({ change }) => binder.includes(change.doc) && (change.scope.benches?.includes(bench) ?? true),
  );
}

/** Feedback that nobody has answered, oldest first. */
export const openFeedback: readonly Feedback[] = shop.feedback
  .filter((f) => f.answer === undefined)
  .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.number < b.number ? -1 : 1));

/** Documents that still rest on an older edition and were not compared with the present one. */
export function unconfirmed(edition: EditionState): EditionState['rests'] {
  return edition.rests.filter((r) => r.confirmed === undefined);
}

/** Issues whose day comes within so many days of the view's day, the next one first. */
export const coming: readonly { readonly issue: IssueEntry; readonly state: DocumentState }[] = (
  control?.documents ?? []
)
  .flatMap((state) => state.coming.map((issue) => ({ issue, state })))
  .sort((a, b) => (a.issue.effective < b.issue.effective ? -1 : a.issue.effective > b.issue.effective ? 1 : 0));
