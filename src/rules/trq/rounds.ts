/** The rounds of a joint as the checks look at them. */

import type { Range } from '../../diagnostics/index.ts';
import { isWritten, type JointPlan, placeOf } from '../../resolve/index.ts';

/** With fewer bolts rounds matter little. */
const MANY = 4;

export function isMany({ count }: JointPlan): boolean {
  return count >= MANY;
}

/** Rounds in tightening order, without the circular passes. */
export function sequenceRounds({ rounds }: JointPlan): JointPlan['rounds'] {
  return rounds.filter((r) => r.pass === 'sequence');
}

/** Place of round `i` from 0, of all rounds without `i`; of the joint's key where they are not written. */
export function roundPlace(plan: JointPlan, i?: number): Range {
  if (!isWritten(plan, 'rounds')) return plan.range;
  return i === undefined ? placeOf(plan, 'rounds') : placeOf(plan, 'rounds', i);
}
