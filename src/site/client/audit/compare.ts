/** What hangs in a binder against what must hang there. Pure functions: the page shows them, a file carries them away. */

import type { PrintedCard } from '../control/cards.ts';

/** A card that must hang in the binder. */
export interface Expected {
  readonly path: string;
  readonly doc: string;
  readonly rev: string;
  /** Of the variant; empty when there are none. */
  readonly label: string;
  readonly fingerprint: string;
}

/** A card that was scanned or typed in; written by this page and by `scan-mark.js`. */
export interface Mark {
  readonly standing: PrintedCard['standing'] | 'unknown';
  /** Empty for what no card of the shop bears, as `rev`, `label` and `fingerprint` then are. */
  readonly doc: string;
  readonly rev: string;
  readonly label: string;
  readonly fingerprint: string;
  /** Date and time in ISO 8601. */
  readonly at: string;
}

/** By the path of the card, `C/OF-204/B/LARGE`, or by what was typed. */
export type Marks = Readonly<Record<string, Mark>>;

export interface FoundRow {
  readonly card: Expected;
  /** The standing of what hangs in its place, else `missing`. */
  readonly state: Mark['standing'] | 'missing';
  /** What hangs in its place. */
  readonly mark?: Mark;
}

export interface OtherCard {
  readonly path: string;
  readonly mark: Mark;
  /** `strange` when the binder holds no such document or variant. */
  readonly kind: 'old' | 'strange';
}

export interface Outcome {
  readonly rows: readonly FoundRow[];
  /** Everything that must come out, in the order in which it was found. */
  readonly others: readonly OtherCard[];
  readonly current: number;
  readonly wrong: number;
  readonly missing: number;
  readonly strange: number;
}

/**
 * Each expected card is current when its own page was seen to be current; wrong when another revision of the same document
 * and variant hangs in its place; missing else. Every card seen beyond the current ones must come out.
 */
export function compareBinder(expected: readonly Expected[], marks: Marks): Outcome {
  const seen = Object.entries(marks).sort(([a, x], [b, y]) => (x.at < y.at ? -1 : x.at > y.at ? 1 : a < b ? -1 : 1));
  const wanted = new Set(expected.map((c) => c.path));
  const isCurrent = (path: string, mark: Mark) => wanted.has(path) && mark.standing === 'current';
  const inPlace = (card: Expected, mark: Mark) => mark.doc === card.doc && mark.label === card.label;
  const rows = expected.map((card): FoundRow => {
    const own = marks[card.path];
    if (own?.standing === 'current') return { card, state: 'current', mark: own };
    const [, old] = seen.find(([path, mark]) => !isCurrent(path, mark) && inPlace(card, mark)) ?? [];
    return old === undefined ? { card, state: 'missing' } : { card, state: old.standing, mark: old };
  });
  const others = seen
    .filter(([path, mark]) => !isCurrent(path, mark))
    .map(
      ([path, mark]): OtherCard => ({
        path,
        mark,
        kind: expected.some((card) => inPlace(card, mark)) ? 'old' : 'strange',
      }),
    );
  const of = (test: (row: FoundRow) => boolean) => rows.filter(test).length;
  return {
    rows,
    others,
    current: of((r) => r.state === 'current'),
    wrong: of((r) => r.state !== 'current' && r.state !== 'missing'),
    missing: of((r) => r.state === 'missing'),
    strange: others.filter((o) => o.kind === 'strange').length,
  };
}
