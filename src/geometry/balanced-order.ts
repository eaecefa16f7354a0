/** An order for holes that have no opposites: each next one brings the middle of those before it back to the centre. */

import { distanceMm } from './chord.ts';
import type { Hole } from './pattern.ts';
import type { SequenceParts } from './sequence.ts';

/** Sums and distances within this share of the pattern count as equal: rounding must not choose the order. */
const EQUAL = 1e-6;

/**
 * From hole number `first`; next comes the hole that brings the sum of the tightened ones' places nearest to the centroid of
 * all, among equals the one farthest from the last, then the lowest number. Source: own rule, statics of equal forces; `balance`
 * measures what it gives, and tests compare it with every other order for small counts.
 */
export function balancedOrder(holes: readonly Hole[], first: number): SequenceParts {
  const arms = fromCentroid(holes);
  const slack = EQUAL * Math.max(...arms.map((h) => Math.hypot(h.xMm, h.yMm)));
  const free = new Set(arms);
  const order: number[] = [];
  let sum: Place = { xMm: 0, yMm: 0 };
  let next = arms.find((h) => h.number === first);
  while (next !== undefined) {
    const last: Hole = next;
    free.delete(last);
    order.push(last.number);
    sum = { xMm: sum.xMm + last.xMm, yMm: sum.yMm + last.yMm };
    next = undefined;
    for (const hole of free) {
      if (next === undefined || isBetter(hole, next, last, sum, slack)) next = hole;
    }
  }
  return { order, rule: 'Crosswise: the next bolt is always the one that best balances those before it.' };
}

function fromCentroid(holes: readonly Hole[]): readonly Hole[] {
  const x = holes.reduce((sum, h) => sum + h.xMm, 0) / holes.length;
  const y = holes.reduce((sum, h) => sum + h.yMm, 0) / holes.length;
  return holes.map(({ number, xMm, yMm }) => ({ number, xMm: xMm - x, yMm: yMm - y }));
}

type Place = Pick<Hole, 'xMm' | 'yMm'>;

function isBetter(a: Hole, b: Hole, last: Hole, sum: Place, slack: number): boolean {
  const gain = leanWith(a, sum) - leanWith(b, sum);
  if (Math.abs(gain) > slack) return gain < 0;
  const away = distanceMm(last, a) - distanceMm(last, b);
  return Math.abs(away) > slack ? away > 0 : a.number < b.number;
}

function leanWith(hole: Hole, sum: Place): number {
  return Math.hypot(sum.xMm + hole.xMm, sum.yMm + hole.yMm);
}
