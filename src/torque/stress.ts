/** Stress in the shank of a joint while it is tightened, at its nominal preload and at both ends of its scatter. */

import type { Strength, Thread } from '../fasteners/index.ts';
import type { Band } from './band.ts';
import { type CombinedStress, combinedStress, threadLeverMm } from './formulas.ts';

/** VDI 2230: 90 % of Rp0.2 is the ceiling of assembly. */
export const YIELD_CEILING = 0.9;

export interface JointStress extends CombinedStress {
  /** Combined stress over yield, plastic modulus: low preload with high friction, nominal, high preload with low friction. */
  readonly yieldUse: Band;
  /** Combined stress over yield at nominal preload on the elastic modulus. */
  readonly yieldUseElastic: number;
}

/**
 * preloadN: N. mu: friction in the thread. The shank is twisted by the thread's part of the torque and by all of the
 * run-down torque, N·m. Source: VDI 2230 Part 1.
 */
export function stressOf(
  thread: Thread,
  strength: Strength,
  preloadN: Band,
  mu: Band,
  prevailingNm: number,
): JointStress {
  const at = (F: number, friction: number) =>
    combinedStress(thread, F, (F * threadLeverMm(thread, friction)) / 1000 + prevailingNm);
  const nominal = at(preloadN.nominal, mu.nominal);
  const use = (stress: CombinedStress) => stress.equivalentMPa / strength.yieldMPa;
  return {
    ...nominal,
    yieldUse: {
      low: use(at(preloadN.low, mu.high)),
      nominal: use(nominal),
      high: use(at(preloadN.high, mu.low)),
    },
    yieldUseElastic: nominal.equivalentElasticMPa / strength.yieldMPa,
  };
}
