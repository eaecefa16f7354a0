/** Rounds outside the marked range of the torque wrench. */

import type { JointPlan, Tool } from '../../resolve/index.ts';
import { wrenchFits } from '../../torque/index.ts';
import { formatLimit, formatQuantity, type Limit } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint, isSuspect, lookUp } from '../rule.ts';

export const wrenchRange: Check = {
  code: 'TRQ005',
  name: 'wrench-range',
  severity: 'error',
  title: 'A round lies outside the marked range of the torque wrench.',
  why: 'The wrench cannot be set to it, so the mechanic guesses or takes another one that nobody checked.',
  sources: ['ISO 6789-1:2017, 5.1.3: a wrench is calibrated from its lowest to its highest marking (read second-hand)'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    rounds: [30 %, 70 %, 100 %]\n    circular_passes: 1\n    wrench: wrench-40-200\n',
        to: '    rounds: [20 %, 60 %, 100 %]\n    circular_passes: 1\n    wrench: «wrench-40-200»\n',
      },
    ],
  },
  found: eachJoint((plan, shop) => {
    const range = torqueRange(lookUp(shop).tool(plan.wrench));
    if (range === undefined || isSuspect(plan)) return undefined;
    for (const round of plan.rounds) {
      const fit = wrenchFits(round.setting.si, range);
      if (fit !== 'under marked range' && fit !== 'over marked range') continue;
      const side = fit === 'over marked range' ? 'above' : 'below';
      return {
        range: plan.ranges['wrench'] ?? plan.range,
        message: `round ${round.number} of \`${plan.id}\`, ${formatQuantity(round.setting)}${corrected(plan)}, is ${side} the range of \`${plan.wrench}\`, ${formatLimit(range)}`,
        hint: better(
          shop.tools,
          plan.rounds.map((r) => r.setting.si),
        ),
      };
    }
    return undefined;
  }),
};

/** Says why the setting is not the torque at the bolt. */
function corrected({ adapter, runDown }: JointPlan): string {
  const by = [...(runDown === undefined ? [] : ['run-down torque']), ...(adapter === undefined ? [] : ['adapter'])];
  return by.length === 0 ? '' : ` with ${by.join(' and ')}`;
}

/** The range of a torque wrench; undefined for every other tool. */
export function torqueRange(tool: Tool | undefined): Limit<'torque'> | undefined {
  const range = tool?.range;
  const dimension = (range?.max ?? range?.min)?.dimension;
  return tool?.kind === 'torque wrench' && dimension === 'torque' ? (range as Limit<'torque'>) : undefined;
}

/** Names the wrenches of the register that cover every round within 20 to 100 % of their maximum. */
function better(tools: readonly Tool[], torques: readonly number[]): string {
  const fitting = tools.filter((t) => {
    const range = torqueRange(t);
    return range !== undefined && torques.every((nm) => wrenchFits(nm, range) === 'fits');
  });
  if (fitting.length === 0)
    return 'no torque wrench of the register covers every round: choose other rounds, or add a wrench';
  return `write one that covers every round: ${fitting.map((t) => `\`${t.id}\``).join(' or ')}`;
}
