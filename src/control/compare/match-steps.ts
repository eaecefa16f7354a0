/** Matches the steps of two issues: the same content first, then the most alike; and tells which of them moved. */

import type { Step } from '../../resolve/types.ts';
import { risingRows } from './pairing.ts';
import { Sketch, saysTheSame, similarity } from './sketch.ts';
import type { StepPair } from './types.ts';

export interface MatchedPair extends StepPair {
  /** Its order among the steps that stayed is another one now. */
  readonly moved: boolean;
  /** Both say the same, numbers of steps apart. */
  readonly alike: boolean;
}

export interface StepMatch {
  /** In the order of the newer issue. */
  readonly pairs: readonly MatchedPair[];
  readonly removed: readonly Step[];
  readonly added: readonly Step[];
}

/** Least likeness of two steps taken for one: anywhere, and between the same neighbours. Tried on edits of the demo shop. */
const LEAST = 0.5;
const LEAST_IN_PLACE = 0.34;

/** Steps in the order of work, numbers aside; the same result for the same steps. */
export function matchSteps(older: readonly Step[], newer: readonly Step[]): StepMatch {
  const { start, end } = equalEnds(older, newer);
  const middle = matchMiddle(older.slice(start, older.length - end), newer.slice(start, newer.length - end));
  const rows = newer.flatMap((step, j): readonly (MatchedPair & { readonly i: number; readonly j: number })[] => {
    const inMiddle = j >= start && j < newer.length - end;
    const found = inMiddle ? middle.get(j - start) : undefined;
    const i = j < start ? j : inMiddle ? (found === undefined ? -1 : found.i + start) : older.length - newer.length + j;
    const former = older[i];
    if (former === undefined) return [];
    return [{ i, j, older: former, newer: step, alike: found?.alike ?? true, moved: false }];
  });
  const stays = risingRows(
    rows.map((r) => r.i),
    (row) => rows[row]?.i === rows[row]?.j,
  );
  const kept = new Set(rows.map((r) => r.i));
  const known = new Set(rows.map((r) => r.j));
  return {
    pairs: rows.map(({ i: _i, j: _j, ...pair }, row) => ({ ...pair, moved: stays[row] === false })),
    removed: older.filter((_, i) => !kept.has(i)),
    added: newer.filter((_, j) => !known.has(j)),
  };
}

/** How many steps are the same from the beginning and from the end on: most issues differ in a few steps. */
function equalEnds(older: readonly Step[], newer: readonly Step[]): { readonly start: number; readonly end: number } {
  const most = Math.min(older.length, newer.length);
  let start = 0;
  while (start < most && saysTheSame(older[start], newer[start])) start += 1;
  let end = 0;
  while (end < most - start && saysTheSame(older[older.length - 1 - end], newer[newer.length - 1 - end])) end += 1;
  return { start, end };
}

/** By index in `newer`: the index in `older`, and whether both say the same. */
function matchMiddle(
  older: readonly Step[],
  newer: readonly Step[],
): ReadonlyMap<number, { readonly i: number; readonly alike: boolean }> {
  const olds = older.map((s) => new Sketch(s));
  const news = newer.map((s) => new Sketch(s));
  /** Index in `newer` for each older step; -1 for none. */
  const partner = olds.map(() => -1);
  const taken = news.map(() => false);
  const join = (i: number, j: number): void => {
    partner[i] = j;
    taken[j] = true;
  };
  for (const key of [(s: Sketch) => s.content, (s: Sketch) => s.words]) {
    matchInOrder(olds.map(key), news.map(key), partner, taken, join);
    matchAnywhere(olds.map(key), news.map(key), partner, taken, join);
  }
  matchAlike(olds, news, partner, taken, join);
  return new Map(
    partner.flatMap((j, i) => (j < 0 ? [] : [[j, { i, alike: olds[i]?.content === news[j]?.content }] as const])),
  );
}

type Join = (i: number, j: number) => void;

/** Longest common subsequence over the free steps: repeated steps keep their order. */
function matchInOrder(
  olds: readonly string[],
  news: readonly string[],
  partner: readonly number[],
  taken: readonly boolean[],
  join: Join,
): void {
  const rows = olds.flatMap((key, at) => (partner[at] === -1 ? [{ key, at }] : []));
  const columns = news.flatMap((key, at) => (taken[at] === true ? [] : [{ key, at }]));
  // Most issues share all but a few steps: what is equal at both ends needs no table.
  let start = 0;
  while (rows[start] !== undefined && rows[start]?.key === columns[start]?.key) start += 1;
  let end = 0;
  while (
    rows.length - end > start &&
    columns.length - end > start &&
    rows[rows.length - 1 - end]?.key === columns[columns.length - 1 - end]?.key
  ) {
    end += 1;
  }
  const pair = (r: number, c: number): void => {
    const row = rows[r];
    const column = columns[c];
    if (row !== undefined && column !== undefined) join(row.at, column.at);
  };
  for (let i = 0; i < start; i++) pair(i, i);
  for (let i = 1; i <= end; i++) pair(rows.length - i, columns.length - i);
  const height = rows.length - end - start;
  const width = columns.length - end - start;
  if (height <= 0 || width <= 0) return;
  const lengths = new Uint32Array((height + 1) * (width + 1));
  const at = (r: number, c: number): number => lengths[r * (width + 1) + c] ?? 0;
  const equal = (r: number, c: number): boolean => rows[start + r]?.key === columns[start + c]?.key;
  for (let r = height - 1; r >= 0; r--) {
    for (let c = width - 1; c >= 0; c--) {
      lengths[r * (width + 1) + c] = equal(r, c) ? at(r + 1, c + 1) + 1 : Math.max(at(r + 1, c), at(r, c + 1));
    }
  }
  for (let r = 0, c = 0; r < height && c < width; ) {
    if (equal(r, c)) {
      pair(start + r, start + c);
      r += 1;
      c += 1;
    } else if (at(r + 1, c) >= at(r, c + 1)) r += 1;
    else c += 1;
  }
}

/** What moved: the same key anywhere, the first with the first. */
function matchAnywhere(
  olds: readonly string[],
  news: readonly string[],
  partner: readonly number[],
  taken: readonly boolean[],
  join: Join,
): void {
  const open = new Map<string, number[]>();
  for (const [i, key] of olds.entries()) if (partner[i] === -1) open.set(key, [...(open.get(key) ?? []), i]);
  for (const [j, key] of news.entries()) {
    const i = taken[j] === true ? undefined : open.get(key)?.shift();
    if (i !== undefined) join(i, j);
  }
}

/** The rest by likeness, the most alike first; between the same neighbours less is asked for. */
function matchAlike(
  olds: readonly Sketch[],
  news: readonly Sketch[],
  partner: readonly number[],
  taken: readonly boolean[],
  join: Join,
): void {
  const rows = olds.flatMap((sketch, i) => (partner[i] === -1 ? [{ sketch, i, gap: gapBefore(partner, i) }] : []));
  const columns = news.flatMap((sketch, j) =>
    taken[j] === true ? [] : [{ sketch, j, gap: taken.lastIndexOf(true, j) }],
  );
  const candidates = rows.flatMap((row) =>
    columns.flatMap((column) => {
      const score = similarity(row.sketch, column.sketch);
      const inPlace = row.gap === column.gap;
      if (score < (inPlace ? LEAST_IN_PLACE : LEAST)) return [];
      return [{ i: row.i, j: column.j, score: score + (inPlace ? 0.1 : 0) }];
    }),
  );
  const far = (c: { readonly i: number; readonly j: number }): number => Math.abs(c.i - c.j);
  candidates.sort((a, b) => b.score - a.score || far(a) - far(b) || a.i - b.i || a.j - b.j);
  for (const { i, j } of candidates) if (partner[i] === -1 && taken[j] === false) join(i, j);
}

/** Newer place of the matched step next before the older one; -1 at the beginning. */
function gapBefore(partner: readonly number[], i: number): number {
  for (let at = i - 1; at >= 0; at--) {
    const j = partner[at];
    if (j !== undefined && j >= 0) return j;
  }
  return -1;
}
