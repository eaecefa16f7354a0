/** Compares a torque copied from a document with the computed one and recognises slips of unit and digit. */

import { quantity, valueIn } from '../units/index.ts';
import { positive } from './band.ts';
import type { TorqueResult } from './compute.ts';

export interface StatedCheck {
  /** Stated over computed (short form, nominal). */
  readonly ratio: number;
  readonly verdict: 'inside' | 'outside the band' | 'unit slip' | 'digit slip' | 'far off';
  /** What probably happened, with `or` where several fit: `lbf·ft written as N·m`. */
  readonly likely?: string;
  /** The stated torque with the likeliest slip undone, N·m. */
  readonly correctedNm?: number;
}

interface Slip {
  readonly factor: number;
  readonly verdict: 'unit slip' | 'digit slip';
  readonly likely: string;
}

function slip(factor: number, likely: string, verdict: Slip['verdict'] = 'unit slip'): Slip {
  return { factor, verdict, likely };
}

const NM_PER_LBF_FT = inNm('lbf·ft');
const NM_PER_LBF_IN = inNm('lbf·in');
const NM_PER_KGF_M = inNm('kgf·m');
const NM_PER_KGF_CM = inNm('kgf·cm');

function inNm(unit: string): number {
  return valueIn(quantity('torque', 1, unit), 'N·m');
}

const SLIPS: readonly Slip[] = [
  slip(12, 'lbf·in written as lbf·ft'),
  slip(1 / 12, 'lbf·ft written as lbf·in'),
  slip(1 / NM_PER_LBF_IN, 'lbf·in written as N·m'),
  slip(NM_PER_LBF_IN, 'N·m written as lbf·in'),
  slip(NM_PER_LBF_FT, 'N·m written as lbf·ft'),
  slip(1 / NM_PER_LBF_FT, 'lbf·ft written as N·m'),
  slip(NM_PER_KGF_M, 'N·m written as kgf·m'),
  slip(1 / NM_PER_KGF_M, 'kgf·m written as N·m'),
  slip(1 / NM_PER_KGF_CM, 'kgf·cm written as N·m'),
  slip(NM_PER_KGF_CM, 'N·m written as kgf·cm'),
  slip(100, 'kgf·cm written as kgf·m'),
  slip(1 / 100, 'kgf·m written as kgf·cm'),
  slip(10, 'decimal point one place too far right', 'digit slip'),
  slip(1 / 10, 'decimal point one place too far left', 'digit slip'),
];

/** How near the corrected value must come to the computed one: the scatter of a joint, at most 15 %. Practice. */
const FIT = 0.15;
/** Beyond this ratio, or below its inverse, a stated torque is no longer a matter of friction. Practice. */
const FAR = 2;

/**
 * statedNm: N·m. `inside`: within the short-form band of the asked preload. A slip is reported when undoing it brings
 * the value within 15 % of the computed torque; the nearest slip gives verdict and corrected value, `likely` names every
 * slip that fits about as well. `far off`: above twice or below half. Throws RangeError on a torque not above zero.
 */
export function compareStated(statedNm: number, result: TorqueResult): StatedCheck {
  const computed = result.shortForm.nominal;
  const ratio = positive('stated torque', statedNm) / computed;
  if (statedNm >= result.shortForm.low && statedNm <= result.shortForm.high) return { ratio, verdict: 'inside' };
  const fits = SLIPS.map((s) => ({ ...s, error: Math.abs(ratio / s.factor - 1) }))
    .filter((s) => s.error <= FIT)
    .sort((a, b) => a.error - b.error);
  const best = fits[0];
  if (best !== undefined) {
    const likely = fits.filter((s) => s.error <= best.error + 0.05).map((s) => s.likely);
    return { ratio, verdict: best.verdict, likely: likely.join(', or '), correctedNm: statedNm / best.factor };
  }
  return { ratio, verdict: ratio > FAR || ratio < 1 / FAR ? 'far off' : 'outside the band' };
}

/**
 * Do two printed values of one torque agree? a and b: N·m; halfDigitA, halfDigitB: half a unit of the last printed digit
 * of each, N·m. Apart by more than 1 % plus those halves means that one of them is wrong. Practice.
 */
export function unitPairAgrees(aNm: number, bNm: number, halfDigitA: number, halfDigitB: number): boolean {
  return Math.abs(aNm - bNm) <= 0.01 * Math.max(Math.abs(aNm), Math.abs(bNm)) + halfDigitA + halfDigitB;
}
