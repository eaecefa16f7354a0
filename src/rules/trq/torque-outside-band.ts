/** A stated torque outside the band that the condition of the joint allows. */

import { compareStated } from '../../torque/index.ts';
import { formatQuantity } from '../../units/index.ts';
import { jointRule } from '../rule.ts';
import { computedBand } from './computed-band.ts';

export const torqueOutsideBand = jointRule(
  'TRQ002',
  'The torque was perhaps written for another lubricant, class or size; the clamp is then not what the joint needs.',
  (plan) => {
    if (plan.origin !== 'stated' || plan.reason !== undefined) return undefined;
    const { verdict, likely } = compareStated(plan.target, plan.result);
    if (verdict !== 'outside the band') return undefined;
    return {
      range: plan.ranges['torque'] ?? plan.range,
      message: `\`${plan.id}\` states ${formatQuantity(plan.target)}, outside the computed ${computedBand(plan)}`,
      hint: `${likely === undefined ? '' : `perhaps ${likely}: `}check thread, grade, condition and preload; if the maker wants it so, say why in \`reason\``,
    };
  },
);
