/** Scatter of preload, as a symmetric share or as the ratio of largest to smallest. */

import { positive } from './band.ts';

/** ± share of the mean from alpha_A = Fmax/Fmin: (a - 1)/(a + 1). Source: definition in VDI 2230 Part 1. */
export function scatterFromAlpha(alphaA: number): number {
  return (positive('alpha_A', alphaA) - 1) / (alphaA + 1);
}

/** alpha_A from a symmetric ± share below 1. */
export function alphaFromScatter(share: number): number {
  if (!(share >= 0 && share < 1)) throw new RangeError(`scatter must lie from 0 to below 1, not ${share}`);
  return (1 + share) / (1 - share);
}

/** Permissible deviation of a setting torque wrench as a share, ISO 6789: 0.06 up to 10 N·m of range, 0.04 above. */
export function isoWrenchDeviation(rangeMaximumNm: number): number {
  return rangeMaximumNm <= 10 ? 0.06 : 0.04;
}
