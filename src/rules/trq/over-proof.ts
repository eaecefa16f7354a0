/** The highest preload of a joint against its proof load. */

import { formatDecimal } from '../../units/index.ts';
import { isSuspect, jointRule } from '../rule.ts';

export const overProof = jointRule(
  'TRQ004',
  'A bolt past its proof load stays stretched; it loses clamp, and it must not be used again.',
  (plan) => {
    const { high } = plan.result.preloadShare;
    if (high <= 1 || isSuspect(plan)) return undefined;
    return {
      range: plan.ranges[plan.origin === 'stated' ? 'torque' : 'preload'] ?? plan.range,
      message: `\`${plan.id}\` may reach ${formatDecimal(high * 100, 0)} % of its ${plan.result.preloadBasis} load`,
      hint: 'low friction and the deviation of the wrench are counted in: aim at a lower preload, or use a lubricant with less scatter',
    };
  },
);
