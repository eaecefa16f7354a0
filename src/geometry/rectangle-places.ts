/** Places along the edges of a rectangle. */

import { finite, type Place, whole } from './places.ts';

/**
 * Clockwise from the top left along the edge; a row (`across` 1) left to right, a column (`along` 1) top to bottom; mm about
 * the centre. Throws RangeError on counts that are not whole or lengths that are no number.
 */
export function rectanglePlaces(lengthMm: number, widthMm: number, along: number, across: number): readonly Place[] {
  const xs = spread(finite(lengthMm), whole(along));
  const ys = spread(finite(widthMm), whole(across)).reverse();
  const [left = 0, right = 0] = [xs[0], xs.at(-1)];
  const [top = 0, bottom = 0] = [ys[0], ys.at(-1)];
  if (across === 1) return xs.map((x) => [x, 0] as const);
  if (along === 1) return ys.map((y) => [0, y] as const);
  return [
    ...xs.map((x) => [x, top] as const),
    ...ys.slice(1, -1).map((y) => [right, y] as const),
    ...[...xs].reverse().map((x) => [x, bottom] as const),
    ...[...ys.slice(1, -1)].reverse().map((y) => [left, y] as const),
  ];
}

/** `count` places evenly from -length/2 to length/2; one place stands in the middle. */
function spread(length: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => (count === 1 ? 0 : (i / (count - 1) - 0.5) * length));
}
