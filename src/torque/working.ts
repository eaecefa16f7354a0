/** The worksheet of a joint: each formula, the same with its numbers, and the result, to follow with a pocket calculator. */

import type { TorqueInput, TorqueResult } from './compute.ts';
import { bearingDiameterMm, stressDiameterMm, threadLeverMm } from './formulas.ts';

export interface WorkingLine {
  readonly name: string;
  /** In letters: `T = K × d × F`. */
  readonly formula: string;
  /** The right-hand side with numbers, rounded as printed; × / + − √( ) are all the signs used. */
  readonly withNumbers: string;
  /** Number and unit. */
  readonly result: string;
}

/** Four significant figures, no exponent, trailing zeros of the decimals kept off. */
export function figures(value: number, significant = 4): string {
  if (value === 0) return '0';
  const decimals = Math.max(0, significant - 1 - Math.floor(Math.log10(Math.abs(value))));
  return String(Number(value.toFixed(Math.min(decimals, 12))));
}

/** Lines in the order of reckoning. Numbers are printed to four figures, so a hand result may differ in the fourth. */
export function writeWorking(input: TorqueInput, r: Omit<TorqueResult, 'working'>): readonly WorkingLine[] {
  const { thread, strength, condition, bearing } = input;
  const n = figures;
  const prevailing = input.prevailingNm ?? 0;
  const K = condition.nutFactor;
  const mu = condition.friction.nominal;
  const basis = r.preloadBasis === 'proof' ? (strength.proofMPa ?? 0) : strength.yieldMPa;
  const symbol = r.preloadBasis === 'proof' ? 'Sp' : 'Re';
  const d = n(thread.diameterMm);
  const d0 = stressDiameterMm(thread);
  const lever = threadLeverMm(thread, mu);
  const factor = n(1 + r.wrenchDeviation);
  const lines: WorkingLine[] = [
    {
      name: r.preloadBasis === 'proof' ? 'proof load' : 'yield load (the grade has no proof stress)',
      formula: `F0 = ${symbol} × As`,
      withNumbers: `${n(basis)} × ${n(thread.stressAreaMm2)}`,
      result: `${n(r.basisLoadN)} N`,
    },
    {
      name: 'preload asked for',
      formula: 'F = share × F0',
      withNumbers: `${n(input.preloadShare)} × ${n(r.basisLoadN)}`,
      result: `${n(r.askedPreloadN)} N`,
    },
    {
      name: 'torque, short form',
      formula: 'T = K × d × F / 1000',
      withNumbers: `${n(K.nominal)} × ${d} × ${n(r.askedPreloadN)} / 1000`,
      result: `${n(r.shortForm.nominal)} N·m`,
    },
    {
      name: 'mean bearing diameter',
      formula: 'DKm = (dw + dh) / 2',
      withNumbers: `(${n(bearing.faceMm)} + ${n(bearing.holeMm)}) / 2`,
      result: `${n(bearingDiameterMm(bearing))} mm`,
    },
    {
      name: 'torque, long form',
      formula: 'T = F × (0.16 × P + 0.58 × d2 × µ + DKm / 2 × µ) / 1000',
      withNumbers:
        `${n(r.askedPreloadN)} × (0.16 × ${n(thread.pitchMm)} + 0.58 × ${n(thread.pitchDiameterMm)} × ${n(mu)}` +
        ` + ${n(bearingDiameterMm(bearing))} / 2 × ${n(mu)}) / 1000`,
      result: `${n(r.longForm.nominal)} N·m`,
    },
    {
      name: 'nut factor that the long form amounts to',
      formula: 'K = T × 1000 / (d × F)',
      withNumbers: `${n(r.longForm.nominal)} × 1000 / (${d} × ${n(r.askedPreloadN)})`,
      result: n(r.effectiveNutFactor, 3),
    },
  ];
  if (prevailing > 0) {
    lines.push({
      name: 'wrench setting',
      formula: 'Ts = T + run-down torque',
      withNumbers: `${n(r.targetNm)} + ${n(prevailing)}`,
      result: `${n(r.settingNm)} N·m`,
    });
  }
  const rundown = prevailing > 0 ? ` − ${n(prevailing)}` : '';
  const loss = prevailing > 0 ? ' − run-down torque' : '';
  lines.push(
    {
      name: input.statedNm === undefined ? 'preload at the computed torque' : 'preload at the stated torque',
      formula: 'F = T × 1000 / (K × d)',
      withNumbers: `${n(r.targetNm)} × 1000 / (${n(K.nominal)} × ${d})`,
      result: `${n(r.preloadN.nominal)} N`,
    },
    {
      name: 'lowest preload (highest K, wrench on the low side)',
      formula: `F = (Ts × (1 − e)${loss}) × 1000 / (K × d)`,
      withNumbers: `(${n(r.settingNm)} × ${n(1 - r.wrenchDeviation)}${rundown}) × 1000 / (${n(K.high)} × ${d})`,
      result: `${n(r.preloadN.low)} N`,
    },
    {
      name: 'highest preload (lowest K, wrench on the high side)',
      formula: `F = (Ts × (1 + e)${loss}) × 1000 / (K × d)`,
      withNumbers: `(${n(r.settingNm)} × ${factor}${rundown}) × 1000 / (${n(K.low)} × ${d})`,
      result: `${n(r.preloadN.high)} N`,
    },
    {
      name: 'tension at nominal preload',
      formula: 'σ = F / As',
      withNumbers: `${n(r.preloadN.nominal)} / ${n(thread.stressAreaMm2)}`,
      result: `${n(r.tensionMPa)} MPa`,
    },
    {
      name: 'torque that twists the shank',
      formula: `MG = F × (0.16 × P + 0.58 × d2 × µ) / 1000${prevailing > 0 ? ' + run-down torque' : ''}`,
      withNumbers:
        `${n(r.preloadN.nominal)} × (0.16 × ${n(thread.pitchMm)} + 0.58 × ${n(thread.pitchDiameterMm)} × ${n(mu)})` +
        ` / 1000${prevailing > 0 ? ` + ${n(prevailing)}` : ''}`,
      result: `${n((r.preloadN.nominal * lever) / 1000 + prevailing)} N·m`,
    },
    {
      name: 'torsion, on the plastic modulus π d0³ / 12',
      formula: 'τ = MG × 1000 × 12 / (π × d0 × d0 × d0)',
      withNumbers: `${n((r.preloadN.nominal * lever) / 1000 + prevailing)} × 1000 × 12 / (3.1416 × ${n(d0)} × ${n(d0)} × ${n(d0)})`,
      result: `${n(r.torsionMPa)} MPa`,
    },
    {
      name: 'combined stress while tightening (von Mises)',
      formula: 'σred = √(σ × σ + 3 × τ × τ)',
      withNumbers: `√(${n(r.tensionMPa)} × ${n(r.tensionMPa)} + 3 × ${n(r.torsionMPa)} × ${n(r.torsionMPa)})`,
      result: `${n(r.equivalentMPa)} MPa`,
    },
    {
      name: 'share of yield',
      formula: 'σred / Re × 100',
      withNumbers: `${n(r.equivalentMPa)} / ${n(strength.yieldMPa)} × 100`,
      result: `${n(r.yieldUse.nominal * 100)} %`,
    },
  );
  return lines;
}
