/** The highest preload of a joint against its proof load. */

import { formatDecimal } from '../../units/index.ts';
import { eachJoint, type Rule } from '../rule.ts';

export const overProof: Rule = {
  code: 'TRQ004',
  why: 'A bolt past its proof load stays stretched; it loses clamp, and it must not be used again.',
  check: (shop, report) =>
    eachJoint(shop, (plan, variant) => {
      const { high } = plan.result.preloadShare;
      if (high <= 1) return;
      const field = plan.origin === 'stated' ? 'torque' : 'preload';
      report(
        'TRQ004',
        plan.ranges[field] ?? plan.range,
        `\`${plan.id}\` may reach ${formatDecimal(high * 100, 0)} % of its ${plan.result.preloadBasis} load${variant}`,
        {
          hint: 'the low end of friction and the deviation of the wrench are counted in: aim at a lower preload, or use a lubricant with less scatter',
        },
      );
    }),
};
