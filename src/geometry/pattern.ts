/** Bolt patterns and their holes: x right, y up, mm, seen from the tightening side. */

import { type Place, type Ring, ringPlaces, roundPlaces } from './places.ts';
import { rectanglePlaces } from './rectangle-places.ts';
import { slotPlaces } from './slot-places.ts';

/** Direction in which holes are counted, seen in the view that the joint names. */
export type Numbering = 'clockwise' | 'anticlockwise';

/** Holes at equal pitch on a full circle; `firstDeg` is hole 1. */
export interface CirclePattern extends Ring {
  readonly kind: 'circle';
  readonly numbering?: Numbering;
}

/** Holes at equal pitch from `firstDeg` (hole 1) over `spanDeg` in the direction of counting, both ends drilled; 0 < span < 360. */
export interface ArcPattern extends Ring {
  readonly kind: 'arc';
  readonly spanDeg: number;
  readonly numbering?: Numbering;
}

/** Two or three circles about one centre, numbered circle after circle as listed. */
export interface CirclesPattern {
  readonly kind: 'circles';
  readonly circles: readonly Ring[];
  readonly numbering?: Numbering;
}

/**
 * Holes along the edges of a rectangle only: `along` on each long (x) side and `across` on each short (y) side, corners
 * counted in both. `along` 1 is a single column, `across` 1 a single row.
 */
export interface RectanglePattern {
  readonly kind: 'rectangle';
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly along: number;
  readonly across: number;
  readonly numbering?: Numbering;
}

/**
 * Holes at equal distance along an obround line: two straight sides and two half circles of diameter `widthMm`, `lengthMm`
 * over all along x. Hole 1 at the top middle, or half a pitch clockwise from it when `straddle`.
 */
export interface SlotPattern {
  readonly kind: 'slot';
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly count: number;
  readonly straddle: boolean;
  readonly numbering?: Numbering;
}

export interface PointsPattern {
  readonly kind: 'points';
  readonly points: readonly { readonly xMm: number; readonly yMm: number }[];
}

/** Angles clockwise from 12 o'clock, in degrees; lengths in mm, hole centre to hole centre. */
export type Pattern = CirclePattern | ArcPattern | CirclesPattern | RectanglePattern | SlotPattern | PointsPattern;

export interface Hole {
  /** From 1. */
  readonly number: number;
  readonly xMm: number;
  readonly yMm: number;
}

/** Number of holes. A rectangle of at least 2 by 2 has 2 (along + across) - 4. */
export function patternCount(p: Pattern): number {
  switch (p.kind) {
    case 'circle':
    case 'arc':
    case 'slot':
      return p.count;
    case 'circles':
      return p.circles.reduce((sum, c) => sum + c.count, 0);
    case 'rectangle':
      return p.along < 2 || p.across < 2 ? p.along * p.across : 2 * (p.along + p.across) - 4;
    case 'points':
      return p.points.length;
  }
}

/**
 * Hole centres in number order; the origin is the centre of the circle, rectangle or slot, or that of the author's points.
 * Circle and arc: from the first hole in the direction of counting. Rectangle: from the top left along the edge; a row runs
 * left to right, a column top to bottom. Slot: along the line. Points: as listed. Counting anticlockwise leaves hole 1 and
 * the drilling of every closed pattern where they are; an arc runs the other way from hole 1.
 * Throws RangeError on counts or lengths that `checkPattern` refuses. Source: plane trigonometry.
 */
export function patternHoles(p: Pattern): readonly Hole[] {
  return placesOf(p).map(([xMm, yMm], i) => ({ number: i + 1, xMm, yMm }));
}

function placesOf(p: Pattern): readonly Place[] {
  switch (p.kind) {
    case 'circle':
      return ringPlaces(p, countingSign(p));
    case 'arc':
      return roundPlaces(p, countingSign(p) * (p.count > 1 ? p.spanDeg / (p.count - 1) : 0));
    case 'circles':
      return p.circles.flatMap((c) => ringPlaces(c, countingSign(p)));
    case 'rectangle':
      return counted(rectanglePlaces(p.lengthMm, p.widthMm, p.along, p.across), p);
    case 'slot':
      return counted(slotPlaces(p.lengthMm, p.widthMm, p.count, p.straddle), p);
    case 'points':
      return p.points.map(({ xMm, yMm }) => {
        if (!Number.isFinite(xMm) || !Number.isFinite(yMm)) throw new RangeError(`no hole at ${xMm}, ${yMm}`);
        return [xMm, yMm] as const;
      });
  }
}

/** 1 when holes are counted clockwise, -1 when anticlockwise. */
export function countingSign(p: { readonly numbering?: Numbering }): 1 | -1 {
  return p.numbering === 'anticlockwise' ? -1 : 1;
}

/** Places listed clockwise, renumbered the other way round from hole 1 where the closed pattern asks for it. */
function counted(places: readonly Place[], p: RectanglePattern | SlotPattern): readonly Place[] {
  if (countingSign(p) === 1 || !isClosed(p)) return places;
  return [...places.slice(0, 1), ...places.slice(1).reverse()];
}

/** Does the numbering close on itself, so that the last hole is a neighbour of hole 1? For circles: each on its own. */
export function isClosed(p: Pattern): boolean {
  switch (p.kind) {
    case 'circle':
    case 'slot':
      return p.count > 2;
    case 'circles':
      return true;
    case 'rectangle':
      return p.along > 1 && p.across > 1;
    case 'arc':
    case 'points':
      return false;
  }
}
