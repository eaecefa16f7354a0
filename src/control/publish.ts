/** The shop as it is published on a day: issues in force in place of the drafts, and everything about control beside them. */

import type { Report } from '../diagnostics/index.ts';
import {
  type Document,
  READ_FROM,
  type ResolvedShop,
  type Step,
  type TemporaryNote,
  whereUsed,
} from '../resolve/index.ts';
import { answersOf, type DraftCard, fingerprintsOf } from './answers.ts';
import { panelOf } from './compare/index.ts';
import { draftDifferences } from './drafts.ts';
import { type ControlFiles, ISSUED } from './files.ts';
import { noticesOf } from './notices.ts';
import { editionStates } from './rests-on.ts';
import { reviewStates } from './reviews.ts';
import { shopOf, strangerIn, thaw } from './snapshot.ts';
import { comparisonPath, documentStates, issueBefore } from './state.ts';
import type { Comparison, ControlView, DocumentState, FileSeal, IssueEntry, OpenTemporary, Snapshot } from './types.ts';
import type { ControlRead } from './verify-ledger.ts';

export interface PublishOptions {
  readonly asOf: string;
  /** Drafts are shown as well, marked. */
  readonly drafts: boolean;
  /** The shop folder's name in diagnostics. */
  readonly shown: string;
}

/** A document with the shop of which its cards are laid out. */
export interface PublishedDocument {
  readonly document: Document;
  readonly shop: ResolvedShop;
  /** Temporary changes that hold at one bench only, for the cards of its binder; by bench. */
  readonly atBench: ReadonlyMap<string, Document>;
}

export interface PublishedShop {
  /** For the pages: registers of today, documents in force, and drafts where they are wanted. */
  readonly shop: ResolvedShop;
  readonly documents: readonly PublishedDocument[];
  /** Issues that do not hold yet: their cards are printed beforehand. */
  readonly coming: readonly PublishedDocument[];
  readonly view: ControlView;
  /** Comparisons of all neighbouring issues, by the path of their page. */
  readonly comparisons: () => Iterable<{
    readonly path: string;
    readonly comparison: Comparison;
    readonly issue: IssueEntry;
  }>;
}

/**
 * draft: the compiled content. Reports a snapshot that this version cannot read. Only what is in force, or about to be, is parsed;
 * history costs its digests and no more.
 */
export function publishShop(
  draft: ResolvedShop,
  { ledger, placeOf }: ControlRead,
  files: ControlFiles,
  { asOf, drafts, shown }: PublishOptions,
  report: Report,
): PublishedShop {
  const states = documentStates(ledger.entries, asOf);
  const readSnapshot = (issue: IssueEntry): Snapshot | undefined => {
    const snapshot = snapshotOf(files, issue, shown);
    if (snapshot === undefined) {
      report(
        'LDG011',
        placeOf(issue),
        `the snapshot of ${issue.doc} Rev ${issue.rev} has the format ${issue.snapshot.format}, written by version ${issue.snapshot.engine}, and this version does not know it`,
        { hint: 'build with the version that wrote it, or a later one' },
      );
      return undefined;
    }
    // Bytes that were sealed anew are told by what they say.
    const comparison = readComparison(files, issue);
    const strange =
      strangerIn(snapshot, issue) ??
      (comparison === undefined || (comparison.doc === issue.doc && comparison.to === issue.rev)
        ? undefined
        : `its comparison is of ${comparison.doc} Rev ${comparison.to}`);
    if (strange === undefined) return snapshot;
    report('LDG005', placeOf(issue), `what was issued as ${issue.doc} Rev ${issue.rev} was exchanged: ${strange}`, {
      hint: 'take the file back from version control or from the last backup: what is issued is never edited',
    });
    return undefined;
  };
  const current = new Map<string, Snapshot>();
  for (const state of states) {
    if (state.current === undefined || state.withdrawn !== undefined) continue;
    const snapshot = readSnapshot(state.current);
    if (snapshot !== undefined) current.set(state.doc, snapshot);
  }
  const published = states.flatMap((state): readonly PublishedDocument[] => {
    const snapshot = current.get(state.doc);
    if (snapshot === undefined || state.current === undefined || state.standing !== 'in force') return [];
    return [publishedDocument(draft, files, snapshot, state.current, state)];
  });
  const comingOf = new Map<string, Snapshot>();
  const coming = states.flatMap((state) =>
    state.withdrawn !== undefined
      ? []
      : state.coming.flatMap((issue): readonly PublishedDocument[] => {
          const snapshot = readSnapshot(issue);
          if (snapshot === undefined) return [];
          comingOf.set(state.doc, snapshot);
          const made = publishedDocument(draft, files, snapshot, issue, undefined);
          return [{ ...made, document: { ...made.document, standing: 'not yet effective' } }];
        }),
  );
  const differences = draftDifferences(draft, states, readSnapshot, current);
  const shownDrafts = drafts ? differences.flatMap((d) => asDraft(draft, d.doc)) : [];
  const documents = [...published.map((p) => p.document), ...shownDrafts].sort((a, b) =>
    a.doc === b.doc ? 0 : a.doc < b.doc ? -1 : 1,
  );
  const shop: ResolvedShop = { ...draft, documents, whereUsed: whereUsed(documents) };
  const { open, received } = noticesOf({
    entries: ledger.entries,
    states,
    benches: draft.benches,
    rules: draft.info.control,
    asOf,
  });
  const inForce = new Map([...current].map(([doc, s]) => [doc, s.document]));
  const last = ledger.entries.at(-1)?.recorded;
  const view: ControlView = {
    asOf,
    ledger: { entries: ledger.entries.length, head: ledger.head, ...(last === undefined ? {} : { last }) },
    documents: states.map((state) => {
      const machine = (current.get(state.doc) ?? comingOf.get(state.doc))?.document.machine;
      return machine === undefined ? state : { ...state, machine };
    }),
    answers: answersOf(states, draftCards(draft, new Set(shownDrafts.map((d) => d.doc)))),
    open,
    received,
    reviews: reviewStates(states, inForce, asOf, draft.info.control.dueSoonDays),
    editions: editionStates({ ...draft, documents: [...inForce.values()] }),
    drafts: differences,
    fingerprints: fingerprintsOf(states),
    comparisons: states.flatMap((state) =>
      state.issues.flatMap((issue) => {
        const before = issueBefore(state, issue);
        return before === undefined || issue.comparison === undefined
          ? []
          : [
              {
                doc: state.doc,
                from: before.rev,
                to: issue.rev,
                path: comparisonPath(state.doc, before.rev, issue.rev),
              },
            ];
      }),
    ),
  };
  return {
    shop,
    documents: [
      ...published,
      ...shownDrafts.map((document) => ({ document, shop: draft, atBench: new Map<string, Document>() })),
    ],
    coming,
    view,
    *comparisons() {
      for (const state of states) {
        for (const issue of state.issues) {
          const before = issueBefore(state, issue);
          const comparison = readComparison(files, issue);
          if (before === undefined || comparison === undefined) continue;
          yield { path: comparisonPath(state.doc, before.rev, issue.rev), comparison, issue };
        }
      }
    },
  };
}

function textOf(files: ControlFiles, seal: FileSeal): string | undefined {
  const bytes = files.read(`${ISSUED}/${seal.file}`);
  return bytes === undefined ? undefined : new TextDecoder().decode(bytes);
}

/** The snapshot of an issue; undefined when this version does not know its format. */
export function snapshotOf(files: ControlFiles, issue: IssueEntry, shown: string): Snapshot | undefined {
  const text = textOf(files, issue.snapshot);
  return text === undefined ? undefined : thaw(text, `${shown}/${ISSUED}/${issue.snapshot.file}`);
}

/** The comparison that was frozen with the issue. */
export function readComparison(files: ControlFiles, issue: IssueEntry): Comparison | undefined {
  const text = issue.comparison === undefined ? undefined : textOf(files, issue.comparison);
  return text === undefined ? undefined : (JSON.parse(text) as Comparison);
}

/** state: for the temporary changes that are open on it. */
function publishedDocument(
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

/** A document as a draft: at an address of its own, so that no printed draft is taken for an issue. */
function asDraft(shop: ResolvedShop, doc: string): readonly Document[] {
  const document = shop.documents.find((d) => d.doc === doc);
  if (document === undefined) return [];
  return [
    {
      ...document,
      slug: `${document.slug}-draft`,
      standing: 'draft',
      variants: document.variants.map((v) => {
        const path = draftPath(doc, v.key);
        const { digest, fingerprint, ...rest } = v;
        const address = v.address.slice(0, v.address.length - v.path.length - 1);
        return { ...rest, digest, fingerprint, path, address: `${address}${path}/`, cardName: `${v.cardName}-DRAFT` };
      }),
      [READ_FROM]: document[READ_FROM],
    },
  ];
}

function draftPath(doc: string, variant: string): string {
  return ['C', doc, 'DRAFT', ...(variant === '' ? [] : [variant.toUpperCase()])].join('/');
}

/** Cards that somebody may have printed from a draft, but for those that are shown as pages. */
function draftCards(draft: ResolvedShop, shown: ReadonlySet<string>): readonly DraftCard[] {
  return draft.documents.flatMap((d) =>
    (shown.has(d.doc) ? [] : d.variants).map((v) => ({
      doc: d.doc,
      title: d.title,
      variant: v.key,
      label: v.label,
      path: draftPath(d.doc, v.key),
    })),
  );
}
