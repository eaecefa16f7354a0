/** Tightening order for rows, rectangles and listed points: from the centre outwards, changing sides. */

import { circleOrder } from './circle-order.ts';
import type { Hole } from './pattern.ts';
import type { SequenceParts } from './sequence.ts';

interface Place {
  readonly hole: Hole;
  /** From the centroid of all holes. */
  readonly x: number;
  readonly y: number;
  readonly distance: number;
}

/** Distances closer than this share of the largest count as one ring: rounding of the author's coordinates. */
const SAME_RING = 1e-6;
/** Angles closer than this count as equal, rad. */
const SAME_ANGLE = 1e-6;
/** A ring of more holes than this is a bolt circle of its own. */
const MOST_IN_RING = 4;

/**
 * Holes by rising distance from their centroid. Holes at one distance form a ring: in a ring of up to four, next comes
 * the hole across the long axis and as nearly as possible opposite the last; a larger ring goes crosswise as a circle.
 * Source: common practice for heads and covers, no published order.
 */
export function spiralOrder(holes: readonly Hole[]): SequenceParts {
  const places = fromCentroid(holes);
  const isWide = span(places.map((p) => p.x)) >= span(places.map((p) => p.y));
  const order: Place[] = [];
  for (const ring of rings(places)) {
    if (ring.length > MOST_IN_RING) order.push(...crosswise(ring, order.at(-1)));
    else pick(ring, order, isWide);
  }
  return {
    order: order.map((p) => p.hole.number),
    rule: 'From the centre outwards, changing sides each time.',
  };
}

/** Takes the places of a small ring one by one into `order`. */
function pick(ring: readonly Place[], order: Place[], isWide: boolean): void {
  const free = [...ring];
  while (free.length > 0) {
    const last = order.at(-1);
    const next = free.reduce((best, place) => (isBetter(place, best, last, isWide) ? place : best));
    free.splice(free.indexOf(next), 1);
    order.push(next);
  }
}

function isBetter(a: Place, b: Place, last: Place | undefined, isWide: boolean): boolean {
  if (last === undefined) return a.hole.number < b.hole.number;
  const sides = changesSide(a, last, isWide) - changesSide(b, last, isWide);
  if (sides !== 0) return sides > 0;
  const turn = turnFrom(last, a) - turnFrom(last, b);
  if (Math.abs(turn) > SAME_ANGLE) return turn > 0;
  return a.hole.number < b.hole.number;
}

/** 1 when the hole lies on the other side of the long axis than the last one, 0 on the axis, -1 on the same side. */
function changesSide(place: Place, last: Place, isWide: boolean): number {
  const [here, there] = isWide ? [place.y, last.y] : [place.x, last.x];
  const slack = SAME_RING * Math.max(place.distance, last.distance);
  if (Math.abs(here) <= slack || Math.abs(there) <= slack) return 0;
  return here * there < 0 ? 1 : -1;
}

/** Angle between the directions of two holes as seen from the centre, 0 to pi; a hole at the centre has none: 0. */
function turnFrom(a: Place, b: Place): number {
  if (a.distance === 0 || b.distance === 0) return 0;
  return Math.abs(Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y));
}

/** A ring of many holes: clockwise by angle from 12 o'clock, turned so that it starts opposite the last hole, then as a circle. */
function crosswise(ring: readonly Place[], last: Place | undefined): readonly Place[] {
  const clockwise = [...ring].sort((a, b) => clock(a) - clock(b));
  const start = clockwise.reduce((best, place) => (isBetter(place, best, last, true) ? place : best));
  const from = clockwise.indexOf(start);
  return circleOrder(ring.length).order.map((n) => clockwise[(from + n - 1) % ring.length] ?? start);
}

function clock(place: Place): number {
  return (Math.atan2(place.x, place.y) + 2 * Math.PI) % (2 * Math.PI);
}

function fromCentroid(holes: readonly Hole[]): readonly Place[] {
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / Math.max(1, values.length);
  const cx = mean(holes.map((h) => h.xMm));
  const cy = mean(holes.map((h) => h.yMm));
  const size = Math.max(...holes.map((h) => Math.hypot(h.xMm - cx, h.yMm - cy)));
  return holes.map((hole) => {
    const [x, y] = [hole.xMm - cx, hole.yMm - cy];
    const distance = Math.hypot(x, y);
    return distance <= SAME_RING * size ? { hole, x: 0, y: 0, distance: 0 } : { hole, x, y, distance };
  });
}

function rings(places: readonly Place[]): readonly (readonly Place[])[] {
  const sorted = [...places].sort((a, b) => a.distance - b.distance || a.hole.number - b.hole.number);
  const slack = SAME_RING * (sorted.at(-1)?.distance ?? 0);
  const found: Place[][] = [];
  for (const place of sorted) {
    const ring = found.at(-1);
    if (ring?.[0] !== undefined && place.distance - ring[0].distance <= slack) ring.push(place);
    else found.push([place]);
  }
  return found;
}

function span(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
