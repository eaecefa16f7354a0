/** What follows from the ledger on a given day: which issue of each document is in force, and what every printed card is. */

import { daysBetween } from './dates.ts';
import type { CardStanding, DocumentState, Entry, IssueEntry, OpenTemporary } from './types.ts';

type Writable<T> = { -readonly [K in keyof T]: T[K] };

/**
 * States of all documents that were ever issued, sorted by number. asOf: a day; what was written after it does not count.
 * An issue holds from its effective date on, until one that was issued later holds.
 */
export function documentStates(entries: readonly Entry[], asOf: string): readonly DocumentState[] {
  const states = new Map<string, Writable<DocumentState>>();
  const ended = new Set<string>();
  const temporaries: OpenTemporary[] = [];
  for (const entry of entries) {
    if (entry.recorded > asOf || entry.kind === 'receipt') continue;
    if (entry.kind === 'temporary-end') {
      ended.add(entry.number);
      continue;
    }
    const state = states.get(entry.doc) ?? {
      doc: entry.doc,
      title: '',
      standing: 'draft only' as const,
      issues: [],
      coming: [],
      temporaries: [],
      reviews: [],
    };
    states.set(entry.doc, state);
    switch (entry.kind) {
      case 'issue':
        state.issues = [...state.issues, entry];
        break;
      case 'suspend':
        state.suspended = entry;
        break;
      case 'reinstate':
        delete state.suspended;
        break;
      case 'withdraw':
        if (entry.effective <= asOf) state.withdrawn = entry;
        break;
      case 'review':
        state.reviews = [...state.reviews, entry];
        break;
      case 'temporary':
        temporaries.push({ ...entry, daysLeft: daysBetween(asOf, entry.until) + 1 });
        break;
    }
  }
  for (const state of states.values()) {
    const current = state.issues.filter((i) => i.effective <= asOf).at(-1);
    if (current !== undefined) state.current = current;
    state.coming = state.issues.filter((i) => i.effective > asOf);
    state.title = (current ?? state.issues.at(-1))?.title ?? '';
    state.standing = standingOf(state);
    state.temporaries = temporaries.filter(
      (t) => t.doc === state.doc && t.rev === current?.rev && t.from <= asOf && asOf <= t.until && !ended.has(t.number),
    );
  }
  return [...states.values()].sort((a, b) => (a.doc < b.doc ? -1 : 1));
}

function standingOf(state: DocumentState): DocumentState['standing'] {
  if (state.withdrawn !== undefined) return 'withdrawn';
  if (state.suspended !== undefined) return 'suspended';
  if (state.current !== undefined) return 'in force';
  return state.coming.length > 0 ? 'not yet effective' : 'draft only';
}

/** What a card of this issue is on the day of the state. */
export function cardStanding(state: DocumentState, issue: IssueEntry): Exclude<CardStanding, 'draft'> {
  if (state.withdrawn !== undefined) return 'withdrawn';
  if (state.suspended !== undefined) return 'suspended';
  if (state.current?.seq === issue.seq) return 'current';
  return state.coming.includes(issue) ? 'not yet effective' : 'superseded';
}

/** The issue before this one, whether it ever was in force or not. */
export function issueBefore(state: DocumentState, issue: IssueEntry): IssueEntry | undefined {
  return state.issues[state.issues.indexOf(issue) - 1];
}

/** `OF-204-LARGE`: stem of the card's file. */
export function cardName(doc: string, variant: string): string {
  return variant === '' ? doc : `${doc}-${variant.toUpperCase()}`;
}

/** Where the card of an issue lies in the published folder. */
export function cardFile(issue: IssueEntry, variant: string, coming: boolean): string {
  const name = cardName(issue.doc, variant);
  return coming ? `cards/coming/${name}-${issue.rev}.pdf` : `cards/${name}.pdf`;
}

/** Folder of the comparison's page. */
export function comparisonPath(doc: string, from: string, to: string): string {
  return `compare/${doc}/${from}-${to}/`.toLowerCase();
}
