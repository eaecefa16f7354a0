/** The lubricant of a joint against the condition for which its torque is reckoned. */

import { findCondition } from '../../torque/index.ts';
import type { Check } from '../check.ts';
import { eachJoint, lookUp } from '../rule.ts';

export const lubricantCondition: Check = {
  code: 'TRQ014',
  name: 'lubricant-condition',
  severity: 'error',
  title: 'The lubricant gives another condition than the one the torque is for.',
  why: 'A torque for a dry thread put on a greased one stretches the bolt by nearly half as much again.',
  sources: [
    'VDI 2230 Part 1: friction by surface and lubricant',
    'FAA AC 43.13-1B, 7-40: lubrication changes the torque',
  ],
  example: {
    bad: [
      {
        file: 'consumables.yaml',
        from: 'oil: { name: machine oil, kind: lubricant, condition: oiled,',
        to: 'oil: { name: machine oil, kind: lubricant, condition: anti-seize,',
      },
      {
        file: 'machines/pump.yaml',
        from: '    condition: oiled\n    lubricant: oil\n',
        to: '    condition: «oiled»\n    lubricant: oil\n',
      },
    ],
  },
  found: eachJoint((plan, shop) => {
    const lubricant = plan.lubricant === undefined ? undefined : lookUp(shop).consumable(plan.lubricant);
    if (lubricant?.condition === undefined || lubricant.condition === plan.condition.id) return undefined;
    const given = findCondition(lubricant.condition);
    return {
      range: plan.ranges['condition'] ?? plan.range,
      message: `the torque of \`${plan.id}\` is for ${plan.condition.name} (\`${plan.condition.id}\`), and \`${lubricant.id}\` gives ${given?.name ?? lubricant.condition}`,
      related: [{ range: plan.ranges['lubricant'] ?? plan.range, message: 'the lubricant' }],
      hint: `look up which of the two the source of the torque means: name the lubricant that it is for, or write \`condition: ${lubricant.condition}\` with the torque that the source gives for it`,
    };
  }),
};
