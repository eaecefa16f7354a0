/** Which holes of a pattern are neighbours. */

import { distanceMm } from './chord.ts';
import { isClosed, type Pattern, patternCount, patternHoles } from './pattern.ts';

/** Distances within this share of each other count as equal: rounding of coordinates. */
const EQUAL = 1e-6;

/**
 * Are holes a and b neighbours? Along the line by number where the pattern has a line; on the same circle of several
 * circles; listed points: when no other hole is nearer to both than they are to each other (relative neighbourhood graph,
 * Toussaint 1980, memory).
 */
export function neighbourTest(p: Pattern): (a: number, b: number) => boolean {
  if (p.kind === 'points') return nearestTest(p);
  if (p.kind !== 'circles') return (a, b) => areNext(a, b, patternCount(p), isClosed(p));
  let before = 0;
  const rings = p.circles.map(({ count }) => {
    const first = before;
    before += count;
    return { first, count };
  });
  return (a, b) => {
    const ring = rings.find(({ first, count }) => a > first && a <= first + count && b > first && b <= first + count);
    return ring !== undefined && areNext(a, b, ring.count, ring.count > 2);
  };
}

function areNext(a: number, b: number, count: number, closed: boolean): boolean {
  const step = Math.abs(a - b);
  return step === 1 || (closed && step === count - 1);
}

function nearestTest(p: Pattern): (a: number, b: number) => boolean {
  const holes = patternHoles(p);
  return (a, b) => {
    const [one, two] = [holes[a - 1], holes[b - 1]];
    if (one === undefined || two === undefined || one === two) return false;
    const apart = distanceMm(one, two) * (1 - EQUAL);
    return !holes.some((h) => h !== one && h !== two && distanceMm(h, one) < apart && distanceMm(h, two) < apart);
  };
}
