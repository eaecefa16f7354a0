/** The two routes to a torque: short form with nut factor, long form with friction coefficients. */

import { formatDecimal } from '../../units/index.ts';
import { jointRule } from '../rule.ts';

export const routesDisagree = jointRule(
  'TRQ007',
  'When two independent computations part, one of the inputs is wrong, and the printed number rests on it.',
  (plan) => {
    const { routesAgree, shortForm, longForm } = plan.result;
    if (routesAgree) return undefined;
    return {
      range: plan.ranges['thread'] ?? plan.range,
      message: `the two torque equations give ${formatDecimal(shortForm.nominal, 1)} and ${formatDecimal(longForm.nominal, 1)} N·m for \`${plan.id}\``,
      hint: 'check thread, head and condition; the long form uses the bearing face of this head',
    };
  },
);
