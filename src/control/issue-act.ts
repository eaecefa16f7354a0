/** Whether the draft of a procedure, or a temporary change, may be issued, and the line and files that issue it. */

import { didYouMean } from '../diagnostics/index.ts';
import type { Document, ResolvedShop, TemporaryDraft } from '../resolve/types.ts';
import { type ActFacts, approval, distributionOf, refuseWithdrawn, stateOf } from './acts.ts';
import { canonical, sha256 } from './canonical.ts';
import { compareIssues } from './compare/index.ts';
import { addDays, daysBetween } from './dates.ts';
import { sideOf } from './drafts.ts';
import { nextRevision } from './next-revision.ts';
import { editionStates } from './rests-on.ts';
import { freeze, SNAPSHOT_FORMAT } from './snapshot.ts';
import { documentStates } from './state.ts';
import type { Comparison, IssueEntry, Snapshot } from './types.ts';
import { type Act, ControlFault } from './write-ledger.ts';

/** What the document wants to be issued as. */
export function draftOf(shop: ResolvedShop, doc: string): Document {
  const document = shop.documents.find((d) => d.doc === doc);
  if (document !== undefined) return document;
  const known = [...shop.documents.map((d) => d.doc), ...shop.temporaryChanges.map((t) => t.number)];
  throw new ControlFault(
    `there is no procedure or temporary change ${doc}`,
    didYouMean(doc, known) ?? `there are ${known.join(', ')}`,
  );
}

/** The latest issue of a document, whether in force or not. */
export function latestIssue({ ledger }: Pick<ActFacts, 'ledger'>, doc: string): IssueEntry | undefined {
  return ledger.entries.filter((e): e is IssueEntry => e.kind === 'issue' && e.doc === doc).at(-1);
}

/** Throws ControlFault with the first thing that stands in the way. */
export function checkIssue(facts: ActFacts, document: Document): void {
  const { shop, today } = facts;
  const { doc, revision } = document;
  refuseWithdrawn(facts, doc);
  const latest = latestIssue(facts, doc);
  if (latest?.rev === revision.rev) {
    throw new ControlFault(
      `revision ${revision.rev} of ${doc} is issued already, on ${latest.recorded}`,
      'a change takes a new revision: add its change record at the end of `revisions` in the procedure',
    );
  }
  if (latest !== undefined) {
    const { scheme } = shop.info.control;
    const next = nextRevision(latest.rev, scheme);
    if (next !== undefined && revision.rev !== next) {
      throw new ControlFault(
        `after revision ${latest.rev} of ${doc} comes ${next}, and the draft asks for ${revision.rev}`,
        `name the new revision ${next}; one revision is issued at a time`,
      );
    }
  }
  approval(facts, revision.author, revision.approver, revision.class, 'has written it');
  if (revision.approved > today) {
    throw new ControlFault(
      `revision ${revision.rev} of ${doc} is approved on ${revision.approved}, and today is ${today}`,
      'issue it when it has been approved',
    );
  }
  if (revision.effective < revision.approved) {
    throw new ControlFault(
      `revision ${revision.rev} of ${doc} takes effect before it was approved`,
      'give an effective date on or after the approval',
    );
  }
  // The first line about a document may record what hung on the wall before the ledger was begun.
  if (latest !== undefined && revision.effective < today) {
    throw new ControlFault(
      `revision ${revision.rev} of ${doc} would have been in force since ${revision.effective}, and nobody was told`,
      `let it take effect today (${today}) or later`,
    );
  }
  const old = editionStates(shop).flatMap((e) =>
    e.rests.filter((r) => r.doc === doc && r.confirmed === undefined && r.edition !== e.edition).map((r) => ({ e, r })),
  );
  const [first] = old;
  if (first !== undefined) {
    const numbers = first.r.numbers.length === 0 ? '' : ` (${first.r.numbers.join('; ')})`;
    throw new ControlFault(
      `${doc} rests on the ${first.r.edition} of \`${first.e.document}\`, and the shop holds the ${first.e.edition}${numbers}`,
      'compare these numbers with the new edition; then name it in the sources, or confirm in outside.yaml that nothing has changed',
    );
  }
}

/** The frozen draft and how it differs from the issue before. */
export interface Frozen {
  readonly text: string;
  readonly comparison: Comparison | undefined;
}

export function freezeDraft(
  shop: ResolvedShop,
  document: Document,
  engine: string,
  before: Snapshot | undefined,
): Frozen {
  return {
    text: freeze(shop, document, engine),
    comparison: before === undefined ? undefined : compareIssues(before, sideOf(shop, document)),
  };
}

/** sides: printed sides of each card, by variant. */
export function issueAct(
  facts: ActFacts,
  document: Document,
  frozen: Frozen,
  engine: string,
  sides: ReadonlyMap<string, number>,
): { readonly act: Act; readonly files: readonly { readonly file: string; readonly text: string }[] } {
  const { doc, title, revision, variants } = document;
  const { rev } = revision;
  const snapshot = { file: `${doc}/${rev}.json`, text: frozen.text };
  const comparison =
    frozen.comparison === undefined
      ? undefined
      : { file: `${doc}/${rev}.changes.json`, text: `${canonical(frozen.comparison)}\n` };
  const act: Act = {
    kind: 'issue',
    doc,
    rev,
    title,
    change: { class: revision.class, what: revision.what, why: revision.why },
    affects: revision.affects,
    author: revision.author,
    approver: revision.approver,
    approved: revision.approved,
    effective: revision.effective,
    snapshot: { file: snapshot.file, sha256: sha256(snapshot.text), format: SNAPSHOT_FORMAT, engine },
    ...(comparison === undefined ? {} : { comparison: { file: comparison.file, sha256: sha256(comparison.text) } }),
    cards: variants.map((v) => ({
      variant: v.key,
      label: v.label,
      path: v.path,
      fingerprint: v.fingerprint,
      digest: v.digest,
      sides: sides.get(v.key) ?? 1,
    })),
    distribution: distributionOf(facts, doc),
  };
  return { act, files: comparison === undefined ? [snapshot] : [snapshot, comparison] };
}

/** current: snapshot of the issue that it changes. */
export function temporaryAct(facts: ActFacts, draft: TemporaryDraft, current: Snapshot | undefined): Act {
  const { ledger, shop, today } = facts;
  const { number, doc, rev, step } = draft;
  const rules = shop.info.control;
  const state = stateOf(facts, doc);
  refuseWithdrawn(facts, doc);
  if (ledger.entries.some((e) => e.kind === 'temporary' && e.number === number)) {
    throw new ControlFault(
      `temporary change ${number} is issued already`,
      'a further change takes a number of its own',
    );
  }
  if (state.current?.rev !== rev || current === undefined) {
    throw new ControlFault(
      `${number} changes revision ${rev} of ${doc}, and ${state.current === undefined ? 'none' : `revision ${state.current.rev}`} is in force`,
      'write it for the revision in force',
    );
  }
  approval(facts, draft.author, draft.approver, 'major', 'has written it');
  if (draft.approved > today)
    throw new ControlFault(
      `${number} is approved on ${draft.approved}, and today is ${today}`,
      'issue it when it has been approved',
    );
  if (draft.until < today)
    throw new ControlFault(
      `${number} ends on ${draft.until}, which is past`,
      'give it a last day that is still to come',
    );
  if (daysBetween(draft.from, draft.until) + 1 > rules.temporaryDays) {
    throw new ControlFault(
      `${number} holds for ${daysBetween(draft.from, draft.until) + 1} days, and the shop allows ${rules.temporaryDays}`,
      `end it by ${addDays(draft.from, rules.temporaryDays - 1)}, or issue a revision`,
    );
  }
  const open = documentStates(ledger.entries, today)
    .find((s) => s.doc === doc)
    ?.temporaries.map((t) => t.number);
  if ((open?.length ?? 0) >= rules.temporaryMost) {
    throw new ControlFault(
      `${doc} has ${open?.length ?? 0} temporary changes open (${open?.join(', ') ?? ''}), and the shop allows ${rules.temporaryMost}`,
      'issue a revision that takes them in, or end one of them',
    );
  }
  checkTarget(draft, current.document);
  const { benches, variants, serials } = draft;
  return {
    kind: 'temporary',
    number,
    doc,
    rev,
    step,
    text: draft.text,
    reason: draft.reason,
    scope: {
      ...(benches === undefined ? {} : { benches }),
      ...(variants === undefined ? {} : { variants }),
      ...(serials === undefined ? {} : { serials }),
    },
    author: draft.author,
    approver: draft.approver,
    approved: draft.approved,
    from: draft.from,
    until: draft.until,
    distribution: distributionOf(facts, doc),
  };
}

/** Step numbers differ over the variants: the change must stand before the same step on all its cards. */
function checkTarget({ number, step, variants }: TemporaryDraft, document: Document): void {
  const cards = document.variants.filter((v) => variants === undefined || variants.includes(v.key));
  if (cards.length === 0) {
    throw new ControlFault(
      `${number} names no variant of ${document.doc}`,
      `there are ${document.variants.map((v) => `\`${v.key}\``).join(', ')}`,
    );
  }
  const texts = new Set<string>();
  for (const card of cards) {
    const found = card.stages.flatMap((s) => s.steps).find((s) => s.number === step);
    if (found === undefined) {
      throw new ControlFault(
        `${document.doc}${card.label === '' ? '' : ` (${card.label})`} has no step ${step}`,
        `its steps are 1 to ${card.stepCount}`,
      );
    }
    texts.add(found.text.map((p) => p.runs.map((r) => r.text).join('')).join(' '));
  }
  if (texts.size > 1) {
    throw new ControlFault(
      `step ${step} of ${document.doc} is not the same in all variants: ${[...texts].map((t) => `\`${t}\``).join(' and ')}`,
      'write one temporary change for each variant, with `scope: { variants: [...] }`',
    );
  }
}
