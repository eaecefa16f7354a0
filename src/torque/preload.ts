/** Preload at the target torque: what friction and wrench do to it, apart and together. */

import type { Band } from './band.ts';
import { type JointFriction, longFormPreload, shortFormPreload } from './formulas.ts';
import type { WrenchAtWork } from './wrench.ts';

/** Preload over nominal preload, each cause alone and both together. */
export interface Scatter {
  /** Nut factor at its high and low end: K/Khigh, 1, K/Klow. */
  readonly friction: Band;
  /** Wrench off by its deviation; run-down torque is part of the setting but makes no preload, which widens this. */
  readonly wrench: Band;
  /** Friction times wrench: both at their worst together, the outer limit and not the likely scatter. */
  readonly total: Band;
  /** alpha_A = Fmax/Fmin, as VDI 2230 Part 1 defines it; absent when the lowest preload is zero. */
  readonly alphaA?: number;
  /** (Fmax - Fmin)/(Fmax + Fmin), which is (alpha_A - 1)/(alpha_A + 1). */
  readonly plusMinus: number;
}

/**
 * Preload by short and long form, N, with its scatter. Low: high friction and a wrench that clicks early; high: low
 * friction and a wrench that clicks late. The deviation acts on the setting; an adapter passes it on as a share. What is
 * left for the bolt is never less than nothing.
 */
export function preloadAt(
  dMm: number,
  K: Band,
  joints: { readonly [end in keyof Band]: JointFriction },
  targetNm: number,
  wrench: WrenchAtWork,
): { readonly preloadN: Band; readonly longPreloadN: Band; readonly scatter: Scatter } {
  const { boltNm, prevailingNm, deviation } = wrench;
  const lowNm = Math.max(0, boltNm * (1 - deviation) - prevailingNm);
  const highNm = boltNm * (1 + deviation) - prevailingNm;
  const preloadN = {
    low: shortFormPreload(K.high, dMm, lowNm),
    nominal: shortFormPreload(K.nominal, dMm, targetNm),
    high: shortFormPreload(K.low, dMm, highNm),
  };
  const longPreloadN = {
    low: longFormPreload(joints.high, lowNm),
    nominal: longFormPreload(joints.nominal, targetNm),
    high: longFormPreload(joints.low, highNm),
  };
  const total = { low: preloadN.low / preloadN.nominal, nominal: 1, high: preloadN.high / preloadN.nominal };
  const scatter: Scatter = {
    friction: { low: K.nominal / K.high, nominal: 1, high: K.nominal / K.low },
    wrench: { low: lowNm / targetNm, nominal: 1, high: highNm / targetNm },
    total,
    ...(total.low > 0 ? { alphaA: total.high / total.low } : {}),
    plusMinus: (total.high - total.low) / (total.high + total.low),
  };
  return { preloadN, longPreloadN, scatter };
}
