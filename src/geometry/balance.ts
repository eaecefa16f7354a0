/** How evenly an order brings a joint down: two sums of directions and the longest walk along the edge. */

import { isClosed, type Pattern, patternHoles } from './pattern.ts';

export interface Balance {
  /**
   * After each fastener: length of the sum of unit vectors from the centroid to the holes tightened so far. 0 is even;
   * 1 is one fastener's worth of one-sidedness. A hole at the centroid adds nothing.
   */
  readonly offsetAfter: readonly number[];
  readonly largestOffset: number;
  /** The same with each direction's angle doubled: 0 when the tightened ones are spread over both axes alike. */
  readonly doubledAfter: readonly number[];
  /** Most fasteners tightened in a row that are neighbours along the pattern; 1 when none are. */
  readonly longestRun: number;
}

/** Holes nearer to the centroid than this share of the pattern lie in the centre. */
const CENTRE = 1e-6;

/**
 * order: hole numbers. Throws RangeError on a number that the pattern has not.
 * Source: statics of equal forces; a sum of zero is a pair of opposite fasteners, or any even star.
 */
export function balance(p: Pattern, order: readonly number[]): Balance {
  const directions = anglesFromCentroid(p);
  const angles = order.map((n) => {
    const angle = directions[n - 1];
    if (angle === undefined) throw new RangeError(`the pattern has no hole ${n}`);
    return angle;
  });
  const offsetAfter = runningSum(angles, 1);
  return {
    offsetAfter,
    largestOffset: Math.max(0, ...offsetAfter),
    doubledAfter: runningSum(angles, 2),
    longestRun: longestRun(order, directions.length, isClosed(p)),
  };
}

/** Angles in rad by hole; null for a hole at the centroid. */
function anglesFromCentroid(p: Pattern): readonly (number | null)[] {
  const holes = patternHoles(p);
  const cx = holes.reduce((sum, h) => sum + h.xMm, 0) / holes.length;
  const cy = holes.reduce((sum, h) => sum + h.yMm, 0) / holes.length;
  const size = Math.max(...holes.map((h) => Math.hypot(h.xMm - cx, h.yMm - cy)));
  return holes.map((h) => {
    const [x, y] = [h.xMm - cx, h.yMm - cy];
    return Math.hypot(x, y) <= CENTRE * size ? null : Math.atan2(y, x);
  });
}

function runningSum(angles: readonly (number | null)[], times: number): readonly number[] {
  let [x, y] = [0, 0];
  return angles.map((angle) => {
    if (angle !== null) {
      x += Math.cos(times * angle);
      y += Math.sin(times * angle);
    }
    const sum = Math.hypot(x, y);
    return sum < 1e-9 ? 0 : sum;
  });
}

function longestRun(order: readonly number[], count: number, closed: boolean): number {
  let longest = order.length === 0 ? 0 : 1;
  let run = 1;
  for (let i = 1; i < order.length; i++) {
    const step = Math.abs((order[i] ?? 0) - (order[i - 1] ?? 0));
    run = step === 1 || (closed && step === count - 1) ? run + 1 : 1;
    longest = Math.max(longest, run);
  }
  return longest;
}
