/** Rounds under 20 % of the largest marking of the torque wrench. */

import { wrenchFits } from '../../torque/index.ts';
import { formatQuantity } from '../../units/index.ts';
import { isSuspect, jointRule } from '../rule.ts';
import { torqueRange } from './wrench-range.ts';

export const wrenchLowRange = jointRule(
  'TRQ006',
  'Under 20 % of full scale a click wrench is not held to its accuracy (ISO 6789:2003 begins there).',
  (plan, shop) => {
    const range = torqueRange(shop.tools.find((t) => t.id === plan.wrench));
    if (range?.max === undefined || isSuspect(plan)) return undefined;
    const low = plan.rounds.find((r) => wrenchFits(r.setting.si, range) === 'under 20 % of maximum');
    if (low === undefined) return undefined;
    return {
      range: plan.ranges['wrench'] ?? plan.range,
      message: `round ${low.number} of \`${plan.id}\`, ${formatQuantity(low.setting)}, is under 20 % of the ${formatQuantity(range.max)} of \`${plan.wrench}\``,
      hint: 'use a smaller wrench, or begin with a larger first round',
    };
  },
);
