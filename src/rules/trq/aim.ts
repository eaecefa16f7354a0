/** How tight a joint would have to be to keep a force: the value that an author writes to mend it. */

import type { Range } from '../../diagnostics/index.ts';
import type { JointPlan, ResolvedShop } from '../../resolve/index.ts';
import { formatQuantity, quantity, roundToStep, valueIn } from '../../units/index.ts';
import { lookUp } from '../rule.ts';

/** Where the author said how tight: the torque, or the share of the preload; the joint itself where neither is written. */
export function aimPlace(plan: JointPlan): Range {
  return plan.ranges[plan.origin === 'stated' ? 'torque' : 'preload'] ?? plan.range;
}

/**
 * Torque at the bolt, N·m, at which friction and wrench leave at least (`least`) or at most (`most`) `preloadN` in each
 * bolt. The inverse of the preload's scatter: high friction and a wrench that clicks early for the least, low friction and
 * one that clicks late for the most; run-down torque is part of the setting and makes no preload.
 */
export function torqueFor({ result, thread, runDown }: JointPlan, preloadN: number, end: 'least' | 'most'): number {
  const { nutFactor, wrenchDeviation } = result;
  const K = end === 'least' ? nutFactor.high : nutFactor.low;
  const share = end === 'least' ? 1 - wrenchDeviation : 1 + wrenchDeviation;
  const drag = runDown?.si ?? 0;
  return ((K * thread.diameterMm * preloadN) / 1000 + drag) / share - drag;
}

/**
 * What the author does who needs `torqueNm`: `write `preload: 55 %` or more` where the torque is computed (it is set down
 * to a mark of the wrench, which is counted in). A stated one is never changed without asking where it came from.
 */
export function aimWords(shop: ResolvedShop, plan: JointPlan, torqueNm: number, end: 'least' | 'most'): string {
  const direction = end === 'least' ? 'up' : 'down';
  const than = end === 'least' ? 'or more' : 'or less';
  if (plan.origin === 'computed') {
    const { nutFactor, basisLoadN } = plan.result;
    const mark = end === 'least' ? (lookUp(shop).tool(plan.wrench)?.step?.si ?? 0) : 0;
    const share = ((torqueNm + mark) * 1000) / (nutFactor.nominal * plan.thread.diameterMm * basisLoadN);
    return `write \`preload: ${roundToStep(share * 100, 1, direction)} %\` ${than}`;
  }
  const { unit } = plan.target;
  const value = valueIn(quantity('torque', torqueNm, 'N·m'), unit);
  const step = value < 20 ? 0.1 : 1;
  return `ask whoever gave the torque whether \`torque: ${formatQuantity(quantity('torque', roundToStep(value, step, direction), unit))}\` ${than} is right`;
}

/** What the author does whose joint is too tight. */
export function lessOf({ origin }: JointPlan): string {
  return origin === 'stated'
    ? 'compare torque, thread, grade and condition with the source; if they are right, ask whoever gave the torque'
    : 'write a lower `preload`, or use a lubricant with less scatter';
}

/** Room for the last bits of a product: 48.6 kN kept is kept. */
const BITS = 1e-9;

export function exceeds(value: number, limit: number): boolean {
  return value > limit * (1 + BITS);
}

/** Whether the bolt itself bears that torque: its highest preload stays below the proof load. */
export function bears(plan: JointPlan, torqueNm: number): boolean {
  return torqueNm <= torqueFor(plan, plan.result.basisLoadN, 'most');
}
