/** The lubricant of a joint against the condition for which its torque is reckoned. */

import { findCondition } from '../../torque/index.ts';
import { jointRule } from '../rule.ts';

export const lubricantCondition = jointRule(
  'TRQ014',
  'A torque for a dry thread put on a greased one stretches the bolt by nearly half as much again.',
  (plan, shop) => {
    const lubricant = shop.consumables.find((c) => c.id === plan.lubricant);
    if (lubricant?.condition === undefined || lubricant.condition === plan.condition.id) return undefined;
    const given = findCondition(lubricant.condition);
    return {
      range: plan.ranges['condition'] ?? plan.range,
      message: `\`${plan.id}\` is reckoned ${plan.condition.name}, and \`${lubricant.id}\` gives ${given?.name ?? lubricant.condition}`,
      related: [{ range: plan.ranges['lubricant'] ?? plan.range, message: 'the lubricant' }],
      hint: `write \`condition: ${lubricant.condition}\` with a torque for it, or name the lubricant that the torque is for`,
    };
  },
);
