/** Scatter of preload, as a symmetric share or as the ratio of largest to smallest. */

import { positive } from './band.ts';

/**
 * ± share of the mean from alpha_A = Fmax/Fmin, 1 or more: (a - 1)/(a + 1). Source: definition in VDI 2230 Part 1. Throws
 * RangeError below 1, where the greatest preload would be less than the least.
 */
export function scatterFromAlpha(alphaA: number): number {
  if (!(Number.isFinite(alphaA) && alphaA >= 1)) throw new RangeError(`alpha_A must be 1 or more, not ${alphaA}`);
  return (alphaA - 1) / (alphaA + 1);
}

/** alpha_A from a symmetric ± share, 0 to below 1: the inverse. Throws RangeError on another share. */
export function alphaFromScatter(share: number): number {
  if (!(share >= 0 && share < 1)) throw new RangeError(`scatter must lie from 0 to below 1, not ${share}`);
  return (1 + share) / (1 - share);
}

/**
 * Permissible deviation of a setting torque wrench as a share, ISO 6789: 0.06 up to and including a range of 10 N·m, 0.04
 * above. rangeMaximumNm: largest marked torque; where the range is not known, the setting itself, which errs to the wider
 * side. Throws RangeError on a torque not above zero.
 */
export function isoWrenchDeviation(rangeMaximumNm: number): number {
  return positive('wrench torque', rangeMaximumNm) <= 10 ? 0.06 : 0.04;
}
