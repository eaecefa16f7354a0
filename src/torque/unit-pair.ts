/** One torque printed in two units: do the two numbers belong together? */

import { quantity, type Torque, valueIn } from '../units/index.ts';

/**
 * Do two printed values of one torque agree? a and b: N·m; halfDigitA, halfDigitB: half a unit of the last printed digit
 * of each, N·m. Apart by more than 1 % plus those halves means that one of them is wrong. Practice.
 */
export function unitPairAgrees(aNm: number, bNm: number, halfDigitA: number, halfDigitB: number): boolean {
  return Math.abs(aNm - bNm) <= 0.01 * Math.max(Math.abs(aNm), Math.abs(bNm)) + halfDigitA + halfDigitB;
}

/** Half a unit of the last printed digit, N·m; trailing zeros of a whole number count as printed digits. */
export function halfDigitNm(torque: Torque): number {
  return valueIn(quantity('torque', 10 ** -torque.decimals / 2, torque.unit), 'N·m');
}
