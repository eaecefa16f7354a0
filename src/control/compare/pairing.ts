/** Pairs the items of two lists, and tells which rows kept their order. */

export interface Pairing<T> {
  readonly both: readonly (readonly [T, T])[];
  readonly removed: readonly T[];
  readonly added: readonly T[];
}

/** Items with the same key belong together, the first with the first. Order of the lists is kept. */
export function paired<T>(older: readonly T[], newer: readonly T[], keyOf: (item: T) => string): Pairing<T> {
  const open = new Map<string, T[]>();
  for (const item of older) {
    const key = keyOf(item);
    const known = open.get(key);
    if (known === undefined) open.set(key, [item]);
    else known.push(item);
  }
  const both: (readonly [T, T])[] = [];
  const added: T[] = [];
  const taken = new Set<T>();
  for (const item of newer) {
    const partner = open.get(keyOf(item))?.shift();
    if (partner === undefined) added.push(item);
    else {
      both.push([partner, item]);
      taken.add(partner);
    }
  }
  return { both, removed: older.filter((item) => !taken.has(item)), added };
}

/** Takes pairs out of what was removed and added: each removed item with the first added one that suits it. */
export function exchanged<T>(
  { removed, added }: Pick<Pairing<T>, 'removed' | 'added'>,
  suits: (removed: T, added: T) => boolean,
): Pairing<T> {
  const both: (readonly [T, T])[] = [];
  const left = [...added];
  const gone = removed.filter((item) => {
    const at = left.findIndex((other) => suits(item, other));
    const [partner] = at < 0 ? [] : left.splice(at, 1);
    if (partner === undefined) return true;
    both.push([item, partner]);
    return false;
  });
  return { both, removed: gone, added: left };
}

/**
 * A rising subsequence of the greatest weight: the rows that kept their order, so that as little as possible is said to have
 * moved. Among equals the one in which more rows kept their very number.
 *
 * places: former place of each row, all different. weight: of each row, above zero; default 1. kept: whether the row kept its
 * number. Returns for each row whether it belongs to the subsequence. Time grows with the square of the rows.
 */
export function risingRows(
  places: readonly number[],
  kept: (row: number) => boolean = () => false,
  weight: (row: number) => number = () => 1,
): readonly boolean[] {
  const stays = places.map(() => false);
  if (places.every((p, i) => i === 0 || p > (places[i - 1] ?? 0))) return stays.fill(true);
  const best: { readonly sum: number; readonly kept: number; readonly from: number }[] = [];
  for (const [row, place] of places.entries()) {
    let from = -1;
    for (let i = 0; i < row; i++) if ((places[i] ?? 0) < place && isBetter(best[i], best[from])) from = i;
    const before = best[from];
    best.push({ sum: (before?.sum ?? 0) + weight(row), kept: (before?.kept ?? 0) + (kept(row) ? 1 : 0), from });
  }
  let at = -1;
  for (let i = 0; i < best.length; i++) if (isBetter(best[i], best[at])) at = i;
  while (at >= 0) {
    stays[at] = true;
    at = best[at]?.from ?? -1;
  }
  return stays;
}

function isBetter(
  a: { readonly sum: number; readonly kept: number } | undefined,
  b: { readonly sum: number; readonly kept: number } | undefined,
): boolean {
  if (a === undefined || b === undefined) return a !== undefined;
  return a.sum > b.sum || (a.sum === b.sum && a.kept > b.kept);
}
