/** The shop as it is published on a day: issues in force in place of the drafts, and everything about control beside them. */

import type { Report } from '../diagnostics/index.ts';
import { type Document, READ_FROM, type ResolvedShop, whereUsed } from '../resolve/index.ts';
import { answersOf, type DraftCard, fingerprintsOf } from './answers.ts';
import { draftDifferences } from './drafts.ts';
import type { ControlFiles } from './files.ts';
import { readComparison, snapshotOf } from './issued-files.ts';
import { noticesOf } from './notices.ts';
import { type PublishedDocument, publishedDocument } from './published-document.ts';
import { editionStates } from './rests-on.ts';
import { reviewStates } from './reviews.ts';
import { strangerIn } from './snapshot.ts';
import { comparisonPath, documentStates, issueBefore } from './state.ts';
import type { Comparison, ControlView, IssueEntry, Snapshot } from './types.ts';
import type { ControlRead } from './verify-ledger.ts';

export interface PublishOptions {
  readonly asOf: string;
  /** Drafts are shown as well, marked. */
  readonly drafts: boolean;
  /** The shop folder's name in diagnostics. */
  readonly shown: string;
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
