/** An issued document as it is published: change bars, panel, and the temporary changes that are open on it. */

import type { Document, ResolvedShop, Step, TemporaryNote } from '../resolve/index.ts';
import { panelOf } from './compare/index.ts';
import type { ControlFiles } from './files.ts';
import { readComparison } from './issued-files.ts';
import { shopOf } from './snapshot.ts';
import type { Comparison, DocumentState, IssueEntry, OpenTemporary, Snapshot } from './types.ts';

/** A document with the shop of which its cards are laid out. */
export interface PublishedDocument {
  readonly document: Document;
  readonly shop: ResolvedShop;
  /** Temporary changes that hold at one bench only, for the cards of its binder; by bench. */
  readonly atBench: ReadonlyMap<string, Document>;
}

/** state: for the temporary changes that are open on it. */
export function publishedDocument(
  draft: ResolvedShop,
  files: ControlFiles,
  snapshot: Snapshot,
  issue: IssueEntry,
  state: DocumentState | undefined,
): PublishedDocument {
  const comparison = readComparison(files, issue);
  const marked = withMarks(snapshot.document, comparison);
  const benches = draft.benches.filter((b) => b.binder.includes(issue.doc)).map((b) => b.id);
  const open = state?.temporaries ?? [];
  const note = (t: OpenTemporary): TemporaryNote => temporaryNote(draft, t);
  const everywhere = open.filter((t) => t.scope.benches === undefined);
  const base = { ...marked, benches };
  const atBench = new Map<string, Document>();
  for (const bench of benches) {
    const here = open.filter((t) => t.scope.benches === undefined || t.scope.benches.includes(bench));
    if (here.length > everywhere.length) atBench.set(bench, withTemporaries(base, here, note));
  }
  // The page is one for all benches: it shows every change, and says where it holds.
  return {
    document: withTemporaries(base, open, note),
    shop: shopOf(snapshot, draft),
    atBench: atBench.size > 0 ? new Map([...atBench, ['', withTemporaries(base, everywhere, note)]]) : atBench,
  };
}

/** Change bars and panel against the issue before. */
export function withMarks(document: Document, comparison: Comparison | undefined): Document {
  if (comparison === undefined) return document;
  const panel = panelOf(comparison);
  return {
    ...document,
    ...(panel === undefined ? {} : { changes: panel }),
    variants: document.variants.map((v) => {
      const marks = comparison.marks[v.key] ?? {};
      return mapSteps(v, (step) => {
        const own = marks[String(step.number)];
        return own === undefined ? step : { ...step, marks: own };
      });
    }),
  };
}

function withTemporaries(
  document: Document,
  open: readonly OpenTemporary[],
  note: (t: OpenTemporary) => TemporaryNote,
): Document {
  if (open.length === 0) return document;
  return {
    ...document,
    variants: document.variants.map((v) => {
      const own = open.filter((t) => t.scope.variants === undefined || t.scope.variants.includes(v.key));
      return mapSteps(v, (step) => {
        const here = own.filter((t) => t.step === step.number);
        return here.length === 0 ? step : { ...step, temporary: here.map(note) };
      });
    }),
  };
}

function mapSteps(variant: Document['variants'][number], change: (step: Step) => Step): Document['variants'][number] {
  const { digest, fingerprint, ...rest } = variant;
  const stages = variant.stages.map((stage) => ({ ...stage, steps: stage.steps.map(change) }));
  return { ...rest, stages, digest, fingerprint };
}

function temporaryNote(draft: ResolvedShop, t: OpenTemporary): TemporaryNote {
  const { benches, serials } = t.scope;
  const names = benches?.map((id) => draft.benches.find((b) => b.id === id)?.name ?? id);
  const scope = [
    ...(names === undefined
      ? []
      : [`at ${names.length === 1 ? 'the bench' : 'the benches'} ${names.join(' and ')} only`]),
    ...(serials === undefined ? [] : [`serial numbers ${serials.from} to ${serials.to} only`]),
  ].join('; ');
  return {
    number: t.number,
    text: [{ kind: 'paragraph', runs: [{ text: t.text }] }],
    reason: t.reason,
    scope,
    until: t.until,
    approver: draft.people.find((p) => p.id === t.approver)?.name ?? t.approver,
  };
}
