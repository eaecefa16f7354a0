/** The two routes to a torque: short form with nut factor, long form with friction coefficients. */

import { formatDecimal } from '../../units/index.ts';
import { eachJoint, type Rule } from '../rule.ts';

export const routesDisagree: Rule = {
  code: 'TRQ007',
  why: 'When two independent computations part, one of the inputs is wrong, and the printed number rests on it.',
  check: (shop, report) =>
    eachJoint(shop, (plan, variant) => {
      const { routesAgree, shortForm, longForm } = plan.result;
      if (routesAgree) return;
      report(
        'TRQ007',
        plan.ranges['thread'] ?? plan.range,
        `the two torque equations give ${formatDecimal(shortForm.nominal, 1)} and ${formatDecimal(longForm.nominal, 1)} N·m for \`${plan.id}\`${variant}`,
        {
          hint: 'check thread, head and condition; the long form uses the bearing face of this head',
        },
      );
    }),
};
