/** Sound patterns of every kind, drawn at random, and what tests say about any of them. */

import fc from 'fast-check';
import type { Hole, Numbering, Pattern, Sequence } from '../../src/geometry/index.ts';

const length = fc.double({ min: 50, max: 3000, noNaN: true });
export const angles = fc.double({ min: -720, max: 720, noNaN: true });
const numbering = fc.constantFrom<Numbering>('clockwise', 'anticlockwise');

export function circle(count: number, more: { firstDeg?: number; numbering?: Numbering } = {}): Pattern {
  return { kind: 'circle', diameterMm: 200, count, firstDeg: 0, ...more };
}

export const circlePatterns: fc.Arbitrary<Pattern> = fc.record({
  kind: fc.constant('circle' as const),
  diameterMm: length,
  count: fc.integer({ min: 2, max: 200 }),
  firstDeg: angles,
  numbering,
});

export const arcPatterns: fc.Arbitrary<Pattern> = fc.record({
  kind: fc.constant('arc' as const),
  diameterMm: length,
  count: fc.integer({ min: 2, max: 80 }),
  firstDeg: angles,
  spanDeg: fc.double({ min: 5, max: 350, noNaN: true }),
  numbering,
});

export const circlesPatterns: fc.Arbitrary<Pattern> = fc
  .tuple(
    numbering,
    fc.array(fc.record({ count: fc.integer({ min: 2, max: 40 }), firstDeg: fc.integer({ min: -180, max: 180 }) }), {
      minLength: 2,
      maxLength: 3,
    }),
    fc.boolean(),
  )
  .map(([way, rings, outerFirst]) => {
    const circles = rings.map((ring, i) => ({ ...ring, diameterMm: 900 - 200 * i }));
    return { kind: 'circles', numbering: way, circles: outerFirst ? circles : circles.reverse() };
  });

export const slotPatterns: fc.Arbitrary<Pattern> = fc
  .record({
    widthMm: length,
    longer: fc.double({ min: 1, max: 2000, noNaN: true }),
    count: fc.integer({ min: 2, max: 120 }),
    straddle: fc.boolean(),
    numbering,
  })
  .map(({ longer, widthMm, ...rest }) => ({ kind: 'slot', lengthMm: widthMm + longer, widthMm, ...rest }));

export const rectanglePatterns: fc.Arbitrary<Pattern> = fc.record({
  kind: fc.constant('rectangle' as const),
  lengthMm: length,
  widthMm: length,
  along: fc.integer({ min: 2, max: 30 }),
  across: fc.integer({ min: 2, max: 30 }),
  numbering,
});

export const pointsPatterns: fc.Arbitrary<Pattern> = fc.record({
  kind: fc.constant('points' as const),
  points: fc.array(fc.record({ xMm: fc.integer({ min: -500, max: 500 }), yMm: fc.integer({ min: -500, max: 500 }) }), {
    minLength: 2,
    maxLength: 60,
  }),
});

export const anyPattern: fc.Arbitrary<Pattern> = fc.oneof(
  circlePatterns,
  arcPatterns,
  circlesPatterns,
  slotPatterns,
  rectanglePatterns,
  pointsPatterns,
);

/** Each hole once, both inverses right, and the moves in a row are the order. */
export function isComplete(sequence: Sequence, count: number): boolean {
  const { order, orderAt, moves, moveAt, tools } = sequence;
  const sorted = [...order].sort((a, b) => a - b);
  return (
    sorted.length === count &&
    sorted.every((n, i) => n === i + 1) &&
    orderAt.length === count &&
    orderAt.every((place, i) => order[place - 1] === i + 1) &&
    moves.every((move) => move.length === tools) &&
    moves.flat().join() === order.join() &&
    moveAt.every((move, i) => moves[move - 1]?.includes(i + 1) === true)
  );
}

/** Largest distance between the same holes of two lists, mm. */
export function mismatchMm(a: readonly Hole[], b: readonly Hole[]): number {
  if (a.length !== b.length) return Number.POSITIVE_INFINITY;
  return Math.max(...a.map((h, i) => Math.hypot(h.xMm - (b[i]?.xMm ?? 1e9), h.yMm - (b[i]?.yMm ?? 1e9))));
}

/** Turned clockwise by an angle about the origin: the rotation matrix, not the code's own angles. */
export function turned(holes: readonly Hole[], deg: number): readonly Hole[] {
  const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  return holes.map(({ number, xMm, yMm }) => ({ number, xMm: c * xMm + s * yMm, yMm: -s * xMm + c * yMm }));
}
