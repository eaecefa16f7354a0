/** Rounds under 20 % of the largest marking of the torque wrench. */

import { wrenchFits } from '../../torque/index.ts';
import { formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint, isSuspect, lookUp } from '../rule.ts';
import { torqueRange } from './wrench-range.ts';

export const wrenchLowRange: Check = {
  code: 'TRQ006',
  name: 'wrench-low-range',
  severity: 'warning',
  title: 'A round lies under 20 % of the largest marking of the torque wrench.',
  why: 'Under 20 % of full scale a click wrench is not held to its accuracy (ISO 6789:2003 begins there).',
  sources: ['ISO 6789:2003: calibration begins at 20 % of the largest torque (read second-hand)'],
  example: {
    bad: [
      {
        file: 'tools.yaml',
        from: 'name: torque wrench 40 to 200, kind: torque wrench, range: 40 to 200 N·m',
        to: 'name: torque wrench 40 to 340, kind: torque wrench, range: 40 to 340 N·m',
      },
      { file: 'machines/pump.yaml', from: '    wrench: wrench-40-200\n', to: '    wrench: «wrench-40-200»\n' },
    ],
  },
  found: eachJoint((plan, shop) => {
    const range = torqueRange(lookUp(shop).tool(plan.wrench));
    if (range?.max === undefined || isSuspect(plan)) return undefined;
    const low = plan.rounds.find((r) => wrenchFits(r.setting.si, range) === 'under 20 % of maximum');
    if (low === undefined) return undefined;
    return {
      range: plan.ranges['wrench'] ?? plan.range,
      message: `round ${low.number} of \`${plan.id}\`, ${formatQuantity(low.setting)}, is under 20 % of the ${formatQuantity(range.max)} of \`${plan.wrench}\``,
      hint: 'name a smaller wrench in `wrench`, or begin `rounds` with a larger first one',
    };
  }),
};
