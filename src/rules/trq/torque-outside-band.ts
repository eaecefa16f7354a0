/** A stated torque outside the band that the condition of the joint allows. */

import { compareStated } from '../../torque/index.ts';
import { formatQuantity } from '../../units/index.ts';
import { eachJoint, type Rule } from '../rule.ts';
import { computedBand } from './computed-band.ts';

export const torqueOutsideBand: Rule = {
  code: 'TRQ002',
  why: 'The torque was perhaps written for another lubricant, class or size; the clamp is then not what the joint needs.',
  check: (shop, report) =>
    eachJoint(shop, (plan, variant) => {
      if (plan.origin !== 'stated' || plan.reason !== undefined) return;
      if (compareStated(plan.target.si, plan.result).verdict !== 'outside the band') return;
      report(
        'TRQ002',
        plan.ranges['torque'] ?? plan.range,
        `\`${plan.id}\` states ${formatQuantity(plan.target)}, outside the computed ${computedBand(plan)}${variant}`,
        {
          hint: 'check thread, grade, condition and preload; if the maker wants it so, say why in `reason`',
        },
      );
    }),
};
