/** How many pieces of each part come off, go back, are thrown away, and are fitted new: counted through the steps. */

import type { PartMove, Step } from '../resolve/types.ts';

export interface PartFlow {
  readonly id: string;
  readonly name: string;
  /** Pieces that come off and are inspected, thrown away, or kept to go back. */
  readonly inspected: number;
  readonly discarded: number;
  readonly reused: number;
  /** Pieces fitted that were not among those that came off: they must be bought. */
  readonly fresh: number;
  readonly steps: readonly number[];
}

type Moving = Pick<Step, 'number'> & {
  readonly remove: readonly PartMove[];
  readonly fit: readonly PartMove[];
};

interface Count {
  readonly name: string;
  /** Pieces in the machine; undefined until it is known. */
  inPlace: number;
  /** How many the machine holds; fitted ones beyond it are a second look at the same piece. */
  readonly most: number;
  /** Taken off and kept. */
  kept: number;
  inspected: number;
  discarded: number;
  reused: number;
  fresh: number;
  steps: number[];
}

/**
 * Follows every part through the steps. Within a step things come off before they go on. A part that comes off before it
 * is first fitted was in the machine at the start; one fitted twice in trial is counted once. In the order of first use.
 */
export function partFlow(steps: readonly Moving[]): readonly PartFlow[] {
  const counts = new Map<string, Count>();
  for (const { number, remove, fit } of steps) {
    for (const move of remove) take(countOf(counts, steps, move), move, number);
    for (const move of fit) put(countOf(counts, steps, move), move, number);
  }
  return [...counts].map(([id, { name, inspected, discarded, reused, fresh, steps: numbers }]) => ({
    id,
    name,
    inspected,
    discarded,
    reused,
    fresh,
    steps: [...new Set(numbers)],
  }));
}

function countOf(counts: Map<string, Count>, steps: readonly Moving[], { id, name }: PartMove): Count {
  const known = counts.get(id);
  if (known !== undefined) return known;
  const first = steps.find((s) => [...s.remove, ...s.fit].some((m) => m.id === id));
  const comesOffFirst = first?.remove.some((m) => m.id === id) ?? false;
  const removed = steps.flatMap((s) => s.remove.filter((m) => m.id === id).map((m) => m.quantity));
  const most = removed.length === 0 ? Number.POSITIVE_INFINITY : Math.max(...removed);
  const made: Count = {
    name,
    inPlace: comesOffFirst ? most : 0,
    most,
    kept: 0,
    inspected: 0,
    discarded: 0,
    reused: 0,
    fresh: 0,
    steps: [],
  };
  counts.set(id, made);
  return made;
}

function take(count: Count, { quantity, fate = 'inspect' }: PartMove, step: number): void {
  count.steps.push(step);
  const off = Math.min(quantity, count.inPlace);
  count.inPlace -= off;
  if (fate === 'discard') {
    count.discarded += off;
    return;
  }
  count.kept += off;
  // The same piece may come off twice: no more are looked at than the machine holds.
  if (fate === 'inspect') count.inspected = Math.min(count.most, count.inspected + off);
  else count.reused = Math.min(count.most, count.reused + off);
}

function put(count: Count, { quantity }: PartMove, step: number): void {
  count.steps.push(step);
  const on = Math.min(quantity, count.most - count.inPlace);
  count.inPlace += on;
  const old = Math.min(count.kept, on);
  count.kept -= old;
  count.fresh += on - old;
}
