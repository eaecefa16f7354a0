/** Slips of unit and decimal point as factors: what a wrong torque is divided by to give the right one. */

import { quantity, valueIn } from '../units/index.ts';

export interface FactorSlip {
  readonly factor: number;
  readonly verdict: 'unit slip' | 'digit slip';
  /** What probably happened: `lbf·ft written as N·m`. */
  readonly likely: string;
}

function slip(factor: number, likely: string, verdict: FactorSlip['verdict'] = 'unit slip'): FactorSlip {
  return { factor, verdict, likely };
}

const NM_PER_LBF_FT = inNm('lbf·ft');
const NM_PER_LBF_IN = inNm('lbf·in');
const NM_PER_KGF_M = inNm('kgf·m');
const NM_PER_KGF_CM = inNm('kgf·cm');

function inNm(unit: string): number {
  return valueIn(quantity('torque', 1, unit), 'N·m');
}

/** Factors from the exact definitions, NIST SP 811 App. B. */
const SLIPS: readonly FactorSlip[] = [
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

/** Fits about as well as the best: nearer than this share to the best one's error. Practice. */
const ABOUT_AS_WELL = 0.05;

/**
 * The likeliest slip behind a torque that is `ratio` times the expected one: the nearest factor within the share
 * `tolerance`; `likely` names with `or` every one that fits about as well. Undefined where none fits.
 */
export function factorSlip(ratio: number, tolerance: number): FactorSlip | undefined {
  const fits = SLIPS.map((s) => ({ ...s, error: Math.abs(ratio / s.factor - 1) }))
    .filter((s) => s.error <= tolerance)
    .sort((a, b) => a.error - b.error);
  const best = fits[0];
  if (best === undefined) return undefined;
  const likely = fits.filter((s) => s.error <= best.error + ABOUT_AS_WELL).map((s) => s.likely);
  return { factor: best.factor, verdict: best.verdict, likely: likely.join(', or ') };
}
