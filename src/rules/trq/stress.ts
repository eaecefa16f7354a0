/** The combined stress at the highest preload against yield: a matter of two checks. */

import { formatDecimal, formatQuantity } from '../../units/index.ts';
import type { Run } from '../check.ts';
import { eachJoint, isSuspect } from '../rule.ts';
import { lessOf } from './aim.ts';

/** Reports joints whose share of yield at the highest preload is one that `isTold`. */
export function stressBeyond(isTold: (yieldUse: number) => boolean): Run {
  return eachJoint((plan) => {
    const { high } = plan.result.yieldUse;
    // Past the proof load the error of that check says it already.
    if (!isTold(high) || plan.result.preloadShare.high > 1 || isSuspect(plan)) return undefined;
    const twist =
      plan.runDown === undefined
        ? ''
        : `, and the ${formatQuantity(plan.runDown)} of run-down torque, which twists the shank without clamping`;
    return {
      range: plan.ranges[plan.origin === 'stated' ? 'torque' : 'preload'] ?? plan.range,
      message: `tension and twist in \`${plan.id}\` may reach ${formatDecimal(high * 100, 0)} % of yield while tightening`,
      hint: `low friction and the deviation of the wrench are counted in${twist}: ${lessOf(plan)}`,
    };
  });
}
