/** Standard pipe flanges: bolt circle, count, thread and hole by designation. */

import { FLANGES_ASME } from './flange-asme.ts';
import { FLANGES_EN } from './flange-en.ts';
import type { Flange } from './flange-type.ts';

/** Every flange known here: EN 1092-1 by PN and DN, then ASME B16.5 by class and NPS. */
export const FLANGES: readonly Flange[] = [...FLANGES_EN, ...FLANGES_ASME];

/** Room for the rounding of a printed bolt circle; common practice, no source. */
const SAME_MM = 0.2;

/**
 * Whether a bolt circle, mm, is that of `flange`. ASME B16.5 circles are accepted as printed in inches and in
 * millimetres, which differ by up to 0.2 mm (2.38 in is 60.45 mm, and the metric table prints 60.3 mm).
 */
export function sameBoltCircle(flange: Flange, circleMm: number): boolean {
  const printed = [
    flange.boltCircleMm,
    ...(flange.boltCircleMmPrinted === undefined ? [] : [flange.boltCircleMmPrinted]),
  ];
  return printed.some((mm) => Math.abs(mm - circleMm) <= SAME_MM);
}
