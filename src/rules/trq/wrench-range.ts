/** Rounds outside the marked range of the torque wrench. */

import { wrenchFits } from '../../torque/index.ts';
import type { Limit } from '../../units/index.ts';
import { formatLimit, formatQuantity } from '../../units/index.ts';
import { eachJoint, type Rule } from '../rule.ts';

export const wrenchRange: Rule = {
  code: 'TRQ005',
  why: 'The wrench cannot be set to it, so the mechanic guesses or takes another one that nobody checked.',
  check: (shop, report) => {
    const tools = new Map(shop.tools.map((t) => [t.id, t]));
    eachJoint(shop, (plan, variant) => {
      const range = tools.get(plan.wrench)?.range as Limit<'torque'> | undefined;
      if (range === undefined) return;
      for (const round of plan.rounds) {
        const fit = wrenchFits(round.torque.si, range);
        if (fit !== 'under marked range' && fit !== 'over marked range') continue;
        report(
          'TRQ005',
          plan.ranges['wrench'] ?? plan.range,
          `round ${round.number} of \`${plan.id}\`, ${formatQuantity(round.torque)}, is ${fit === 'over marked range' ? 'above' : 'below'} the range of \`${plan.wrench}\`, ${formatLimit(range)}${variant}`,
          {
            hint: better(
              shop.tools,
              plan.rounds.map((r) => r.torque.si),
            ),
          },
        );
        return;
      }
    });
  },
};

/** Names the wrenches of the register that cover every round within 20 to 100 % of their maximum. */
function better(tools: Parameters<Rule['check']>[0]['tools'], torques: readonly number[]): string {
  const fitting = tools.filter(
    (t) =>
      t.kind === 'torque wrench' &&
      t.range !== undefined &&
      torques.every((nm) => wrenchFits(nm, t.range as Limit<'torque'>) === 'fits'),
  );
  if (fitting.length === 0)
    return 'no torque wrench of the register covers every round: choose other rounds, or add a wrench';
  return `these cover every round: ${fitting.map((t) => `\`${t.id}\``).join(', ')}`;
}
