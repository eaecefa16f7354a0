/** What the printed address of each card answers on a given day. */

import { cardStanding, comparisonPath, issueBefore } from './state.ts';
import type { Answer, ControlView, DocumentState, IssueEntry, WithdrawEntry } from './types.ts';

export function slugOf(doc: string): string {
  return doc.toLowerCase();
}

/** Answers of every card that was ever issued and is not in force, and of drafts. */
export function answersOf(states: readonly DocumentState[], drafts: readonly DraftCard[]): readonly Answer[] {
  const byDoc = new Map(states.map((s) => [s.doc, s]));
  const issued = states.flatMap((state) =>
    state.issues.flatMap((issue) => {
      const standing = cardStanding(state, issue);
      return standing === 'current' ? [] : issue.cards.map((card) => answer(state, issue, card, standing, byDoc));
    }),
  );
  const draft = drafts.map((d): Answer => {
    const state = byDoc.get(d.doc);
    const use = state && inUse(state, d.variant);
    return {
      path: d.path,
      doc: d.doc,
      slug: slugOf(d.doc),
      title: d.title,
      rev: '',
      label: d.label,
      fingerprint: '',
      standing: 'draft',
      later: [],
      ...(use === undefined ? {} : { use }),
    };
  });
  return [...issued, ...draft];
}

/** Where a card that was printed from a draft leads. */
export interface DraftCard {
  readonly doc: string;
  readonly title: string;
  readonly variant: string;
  readonly label: string;
  readonly path: string;
}

function answer(
  state: DocumentState,
  issue: IssueEntry,
  card: IssueEntry['cards'][number],
  standing: Exclude<Answer['standing'], 'draft'>,
  byDoc: ReadonlyMap<string, DocumentState>,
): Answer {
  const { suspended, withdrawn } = state;
  const why =
    standing === 'withdrawn' && withdrawn !== undefined
      ? { reason: withdrawn.reason, since: withdrawn.effective }
      : standing === 'suspended' && suspended !== undefined
        ? { reason: suspended.reason, since: suspended.recorded }
        : {};
  const use = standing === 'withdrawn' ? replacement(withdrawn, byDoc) : inUse(state, card.variant);
  return {
    path: card.path,
    doc: state.doc,
    slug: slugOf(state.doc),
    title: issue.title,
    rev: issue.rev,
    label: card.label,
    fingerprint: card.fingerprint,
    standing,
    effective: issue.effective,
    ...why,
    ...(use === undefined ? {} : { use }),
    later: laterThan(state, issue, standing).map((i) => {
      const before = issueBefore(state, i);
      return {
        rev: i.rev,
        effective: i.effective,
        what: i.change.what,
        why: i.change.why,
        ...(before === undefined || i.comparison === undefined
          ? {}
          : { compare: comparisonPath(i.doc, before.rev, i.rev) }),
      };
    }),
  };
}

/** Of a superseded card, what came after it; of one that does not hold yet, what it brings. */
function laterThan(state: DocumentState, issue: IssueEntry, standing: Answer['standing']): readonly IssueEntry[] {
  if (standing === 'not yet effective') return [issue];
  if (standing !== 'superseded' || state.current === undefined) return [];
  return state.issues.slice(state.issues.indexOf(issue) + 1, state.issues.indexOf(state.current) + 1);
}

/** The card in force for the same variant, or the document's page. A suspended or withdrawn document has none. */
function inUse(state: DocumentState, variant: string): Answer['use'] {
  const { current } = state;
  if (current === undefined || state.standing !== 'in force') return undefined;
  const same = current.cards.find((c) => c.variant === variant);
  return {
    doc: state.doc,
    title: current.title,
    rev: current.rev,
    path: same === undefined ? `procedures/${slugOf(state.doc)}/` : `${same.path}/`,
  };
}

function replacement(withdrawn: WithdrawEntry | undefined, byDoc: ReadonlyMap<string, DocumentState>): Answer['use'] {
  const state = withdrawn?.replacement === undefined ? undefined : byDoc.get(withdrawn.replacement);
  if (state?.current === undefined || state.standing !== 'in force') return undefined;
  return {
    doc: state.doc,
    title: state.current.title,
    rev: state.current.rev,
    path: `procedures/${slugOf(state.doc)}/`,
  };
}

/** Every fingerprint that was ever printed. */
export function fingerprintsOf(states: readonly DocumentState[]): ControlView['fingerprints'] {
  return states.flatMap((state) =>
    state.issues.flatMap((issue) =>
      issue.cards.map((card) => ({
        fingerprint: card.fingerprint,
        doc: state.doc,
        rev: issue.rev,
        label: card.label,
        path: card.path,
        standing: cardStanding(state, issue),
      })),
    ),
  );
}
