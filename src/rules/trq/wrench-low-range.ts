/** Rounds under 20 % of the largest marking of the torque wrench. */

import { wrenchFits } from '../../torque/index.ts';
import type { Limit } from '../../units/index.ts';
import { formatQuantity } from '../../units/index.ts';
import { eachJoint, type Rule } from '../rule.ts';

export const wrenchLowRange: Rule = {
  code: 'TRQ006',
  why: 'Under 20 % of full scale a click wrench is not held to its accuracy (ISO 6789:2003 begins there).',
  check: (shop, report) => {
    const tools = new Map(shop.tools.map((t) => [t.id, t]));
    eachJoint(shop, (plan, variant) => {
      const range = tools.get(plan.wrench)?.range as Limit<'torque'> | undefined;
      const max = range?.max;
      if (range === undefined || max === undefined) return;
      const low = plan.rounds.find((r) => wrenchFits(r.torque.si, range) === 'under 20 % of maximum');
      if (low === undefined) return;
      report(
        'TRQ006',
        plan.ranges['wrench'] ?? plan.range,
        `round ${low.number} of \`${plan.id}\`, ${formatQuantity(low.torque)}, is under 20 % of the ${formatQuantity(max)} of \`${plan.wrench}\`${variant}`,
        {
          hint: 'use a smaller wrench, or begin with a larger first round',
        },
      );
    });
  },
};
