/** How evenly an order brings a joint down: sums of directions, the clamped centroid, the longest walk along the line. */

import { neighbourTest } from './neighbours.ts';
import { type Pattern, patternCount, patternHoles } from './pattern.ts';

export interface Balance {
  /**
   * After each fastener: length of the sum of unit vectors from the centroid to the holes tightened so far. 0 is even;
   * 1 is one fastener's worth of one-sidedness. A hole at the centroid adds nothing.
   */
  readonly offsetAfter: readonly number[];
  readonly largestOffset: number;
  /** The same with each direction's angle doubled: 0 when the tightened ones are spread over both axes alike. */
  readonly doubledAfter: readonly number[];
  /** After each fastener: distance of the centroid of the holes tightened so far from the centroid of all, mm. */
  readonly centroidMm: readonly number[];
  /** `centroidMm` as a share of the distance of the farthest hole from the centroid of all: 0 to 1. */
  readonly centroidShare: readonly number[];
  /** Largest `centroidShare` from the moment that half of the fasteners are tight. */
  readonly largestCentroidShareAfterHalf: number;
  /** After each move, where several fasteners are tightened at the same moment; the states that the joint really passes. */
  readonly afterMove: readonly MoveBalance[];
  /** Most fasteners tightened in a row that are neighbours along the pattern; 1 when none are. */
  readonly longestRun: number;
}

export interface MoveBalance {
  /** Fasteners tight after the move. */
  readonly tight: number;
  readonly offset: number;
  readonly centroidShare: number;
}

/** Holes nearer to the centroid than this share of the pattern lie in the centre. */
const CENTRE = 1e-6;
/** Sums and shares below this are rounding. */
const ROUNDING = 1e-9;

/** A hole from the centroid of all: mm, and its direction in rad; null at the centroid. */
interface Arm {
  readonly x: number;
  readonly y: number;
  readonly angle: number | null;
}

/**
 * order: hole numbers. moves: the same numbers in sets tightened together; default one by one.
 * Throws RangeError on a number that the pattern has not, or moves that are not the order.
 * Source: statics of equal forces; a sum of zero is a pair of opposite fasteners, or any even star.
 */
export function balance(p: Pattern, order: readonly number[], moves?: readonly (readonly number[])[]): Balance {
  if (moves !== undefined && moves.flat().join() !== order.join()) throw new RangeError('moves are not the order');
  const all = armsOf(p);
  const arms = order.map((n) => {
    const arm = all[n - 1];
    if (arm === undefined) throw new RangeError(`the pattern has no hole ${n}`);
    return arm;
  });
  const size = Math.max(...all.map((a) => Math.hypot(a.x, a.y)));
  const offsetAfter = runningSum(arms, 1);
  const centroidMm = runningCentroid(arms, size);
  const centroidShare = centroidMm.map((mm) => (size > 0 ? mm / size : 0));
  return {
    offsetAfter,
    largestOffset: Math.max(0, ...offsetAfter),
    doubledAfter: runningSum(arms, 2),
    centroidMm,
    centroidShare,
    largestCentroidShareAfterHalf: Math.max(0, ...centroidShare.slice(Math.ceil(patternCount(p) / 2) - 1)),
    afterMove: tightAfterMoves(moves ?? order.map((n) => [n])).map((tight) => ({
      tight,
      offset: offsetAfter[tight - 1] ?? 0,
      centroidShare: centroidShare[tight - 1] ?? 0,
    })),
    longestRun: longestRun(p, order),
  };
}

/** The balance of an order (and its moves) beside that of going round hole by hole in number order. */
export function compareWithRound(
  p: Pattern,
  order: readonly number[],
  moves?: readonly (readonly number[])[],
): { readonly order: Balance; readonly circular: Balance } {
  const round = Array.from({ length: patternCount(p) }, (_, i) => i + 1);
  return { order: balance(p, order, moves), circular: balance(p, round) };
}

function armsOf(p: Pattern): readonly Arm[] {
  const holes = patternHoles(p);
  const cx = holes.reduce((sum, h) => sum + h.xMm, 0) / holes.length;
  const cy = holes.reduce((sum, h) => sum + h.yMm, 0) / holes.length;
  const size = Math.max(...holes.map((h) => Math.hypot(h.xMm - cx, h.yMm - cy)));
  return holes.map((h) => {
    const [x, y] = [h.xMm - cx, h.yMm - cy];
    return { x, y, angle: Math.hypot(x, y) <= CENTRE * size ? null : Math.atan2(y, x) };
  });
}

function runningSum(arms: readonly Arm[], times: number): readonly number[] {
  let [x, y] = [0, 0];
  return arms.map(({ angle }) => {
    if (angle !== null) {
      x += Math.cos(times * angle);
      y += Math.sin(times * angle);
    }
    const sum = Math.hypot(x, y);
    return sum < ROUNDING ? 0 : sum;
  });
}

function runningCentroid(arms: readonly Arm[], size: number): readonly number[] {
  let [x, y] = [0, 0];
  return arms.map((arm, i) => {
    x += arm.x;
    y += arm.y;
    const mm = Math.hypot(x, y) / (i + 1);
    return mm < ROUNDING * size ? 0 : mm;
  });
}

function tightAfterMoves(moves: readonly (readonly number[])[]): readonly number[] {
  let tight = 0;
  return moves.map((move) => {
    tight += move.length;
    return tight;
  });
}

function longestRun(p: Pattern, order: readonly number[]): number {
  const areNeighbours = neighbourTest(p);
  let longest = order.length === 0 ? 0 : 1;
  let run = 1;
  for (let i = 1; i < order.length; i++) {
    run = areNeighbours(order[i - 1] ?? 0, order[i] ?? 0) ? run + 1 : 1;
    longest = Math.max(longest, run);
  }
  return longest;
}
