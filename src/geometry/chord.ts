/** Distances between holes. */

import { type Hole, type Pattern, patternHoles } from './pattern.ts';

/**
 * Distance in the unit of `diameterMm` between holes `steps` pitches apart on a circle of `count`: D sin(pi steps/count).
 * Throws RangeError on a count below 2 or a length that is no number. Source: plane trigonometry.
 */
export function chordMm(diameterMm: number, count: number, steps = 1): number {
  if (!Number.isFinite(diameterMm) || !Number.isInteger(count) || count < 2) {
    throw new RangeError(`no chord for ${count} holes on ${diameterMm} mm`);
  }
  return diameterMm * Math.abs(Math.sin((Math.PI * steps) / count));
}

/** Centre to centre, mm. */
export function distanceMm(a: Hole, b: Hole): number {
  return Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm);
}

/** Smallest distance between any two holes, mm: what a socket must pass between. 0 for a pattern of one hole. */
export function neighbourChordMm(p: Pattern): number {
  if (p.kind === 'circle' && p.count > 1) return chordMm(p.diameterMm, p.count);
  const holes = patternHoles(p);
  let least = Number.POSITIVE_INFINITY;
  for (const [i, hole] of holes.entries()) {
    for (const other of holes.slice(i + 1)) least = Math.min(least, distanceMm(hole, other));
  }
  return Number.isFinite(least) ? least : 0;
}

/** Greatest distance between any two holes, mm. 0 for a pattern of one hole. */
export function acrossMm(p: Pattern): number {
  const holes = patternHoles(p);
  let most = 0;
  for (const [i, hole] of holes.entries()) {
    for (const other of holes.slice(i + 1)) most = Math.max(most, distanceMm(hole, other));
  }
  return most;
}
