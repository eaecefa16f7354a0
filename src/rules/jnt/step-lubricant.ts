/** A step puts another lubricant onto a joint than the one its torque is for. */

import type { Check } from '../check.ts';
import { labelled } from '../prt/life-check.ts';
import { eachVariant } from '../rule.ts';
import { lubricantFaults } from './lubricant-faults.ts';
import { clampWords, nutFactorOf } from './lubrication.ts';

const MOLY = `moly: { name: moly paste, kind: lubricant, condition: moly, hazards: [irritates the skin], ppe: [gloves], safety_data: folder L2, shelf_life: 3 years, waste: metal-paste can }
`;

export const stepLubricant: Check = {
  code: 'JNT006',
  name: 'step-lubricant',
  severity: 'error',
  title: 'A step puts another lubricant onto a joint than the one for which its torque is reckoned.',
  why: 'The wrench clicks at the right torque, and the bolt is stretched half as much again, or holds a third less.',
  sources: [
    'T = K d F, with the nut factors of the conditions as the torque pages list them',
    'handbook test, 3/8-24 at 75 % of proof: 28.9 lbf·ft dry against 19.9 lbf·ft with moly paste, a factor of 1.45',
  ],
  example: {
    bad: [
      { file: 'consumables.yaml', from: 'wipe: { name', to: `${MOLY}wipe: { name` },
      {
        file: 'procedures/mw-1.yaml',
        from: '        lubricate: { with: oil, where: thread and under the head }\n',
        to: '        lubricate: { with: «moly», where: thread and under the head }\n',
      },
    ],
  },
  found: eachVariant(function* (scene) {
    for (const { kind, at, applied } of lubricantFaults(scene)) {
      if (kind !== 'other condition') continue;
      const { plan } = at.life;
      const { consumable, step } = applied;
      const given = nutFactorOf(consumable);
      const clamps = given === undefined ? '' : `: ${clampWords(plan.condition.nutFactor, given)}`;
      yield labelled(step, {
        range: applied.range,
        message: `the torque of \`${plan.id}\` is for ${plan.condition.name} (\`${plan.condition.id}\`), and \`${consumable.id}\` gives \`${consumable.condition}\`${clamps}`,
        related: [{ range: plan.ranges['condition'] ?? plan.range, message: 'condition of the joint' }],
        hint:
          plan.lubricant === undefined
            ? `name a lubricant for \`${plan.condition.id}\` or none in the step, or give the joint \`condition: ${consumable.condition}\` with the torque that its source gives for it`
            : `write \`${plan.lubricant}\`, the lubricant of the joint, in the step; or give the joint \`condition: ${consumable.condition}\` with the torque that its source gives for it`,
      });
    }
  }),
};
