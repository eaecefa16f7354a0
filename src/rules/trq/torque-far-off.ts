/** A stated torque more than twice or less than half the computed one. */

import { compareStated } from '../../torque/index.ts';
import { formatQuantity } from '../../units/index.ts';
import { eachJoint, type Rule } from '../rule.ts';
import { computedBand } from './computed-band.ts';

export const torqueFarOff: Rule = {
  code: 'TRQ003',
  why: 'At twice the torque the bolt yields; at half of it the joint opens in service.',
  check: (shop, report) =>
    eachJoint(shop, (plan, variant) => {
      if (plan.origin !== 'stated' || plan.reason !== undefined) return;
      if (compareStated(plan.target.si, plan.result).verdict !== 'far off') return;
      report(
        'TRQ003',
        plan.ranges['torque'] ?? plan.range,
        `\`${plan.id}\` states ${formatQuantity(plan.target)}, far from the computed ${computedBand(plan)}${variant}`,
        {
          hint: 'check thread, grade, condition and preload; if the maker wants it so, say why in `reason`',
        },
      );
    }),
};
