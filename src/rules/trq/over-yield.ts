/** The combined stress at the highest preload against yield. */

import type { Code } from '../../diagnostics/index.ts';
import { YIELD_CEILING } from '../../torque/index.ts';
import { formatDecimal, formatQuantity } from '../../units/index.ts';
import { isSuspect, jointRule, type Rule } from '../rule.ts';

function stressRule(code: Code, why: string, isTold: (yieldUse: number) => boolean): Rule {
  return jointRule(code, why, (plan) => {
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
      hint: `low friction and the deviation of the wrench are counted in${twist}: aim at a lower preload, or use a lubricant with less scatter`,
    };
  });
}

export const overYield = stressRule(
  'TRQ017',
  'Tension and twist add while the wrench turns; little is left for a wrench that reads low.',
  (use) => use > YIELD_CEILING && use <= 1,
);

export const pastYield = stressRule(
  'TRQ018',
  'A bolt that yields under the wrench has lost its reserve for good, and looks like a sound one.',
  (use) => use > 1,
);
