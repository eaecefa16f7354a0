/** Places of bolts for the tests of the elastic model. */

/** `count` places evenly along a line, mm: the first at 0. */
export function evenPositions(count: number, lineLengthMm: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => (i * lineLengthMm) / count);
}
