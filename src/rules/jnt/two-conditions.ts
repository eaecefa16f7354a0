/** Two steps put lubricants of different condition onto one joint. */

import type { Check } from '../check.ts';
import { labelled } from '../prt/life-check.ts';
import { eachVariant } from '../rule.ts';
import { lubricantFaults } from './lubricant-faults.ts';

export const twoConditions: Check = {
  code: 'JNT007',
  name: 'two-conditions',
  severity: 'error',
  title: 'Two steps put lubricants of different condition onto one joint.',
  why: 'Some of the bolts carry oil and some paste; at one torque they pull differently, and the joint closes crooked.',
  sources: [
    'common practice: one lubricant for all fasteners of a joint',
    'T = K d F: the clamp force follows the nut factor of each bolt',
  ],
  example: {
    bad: [
      {
        file: 'consumables.yaml',
        from: 'wipe: { name',
        to: `paste: { name: nickel paste, kind: anti-seize, condition: anti-seize, hazards: [irritates the skin], ppe: [gloves], safety_data: folder L2, shelf_life: 3 years, waste: metal-paste can }
wipe: { name`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: When <step:locked> is done, tighten the <joint:cover>.
        fit: [screw]
`,
        to: `      - do: Run the <part:screw>s in by hand.
        fit: [screw]
        lubricate: { with: «paste», where: thread }
      - do: When <step:locked> is done, tighten the <joint:cover>.
`,
      },
    ],
  },
  found: eachVariant(function* (scene) {
    for (const { kind, at, applied, against } of lubricantFaults(scene)) {
      if (kind !== 'two conditions' || against === undefined) continue;
      const { plan } = at.life;
      yield labelled(applied.step, {
        range: applied.range,
        message: `\`${plan.id}\` gets \`${applied.consumable.id}\` (\`${applied.consumable.condition}\`) here and \`${against.consumable.id}\` (\`${against.consumable.condition}\`) in another step`,
        related: [
          { range: against.range, message: `\`${against.consumable.id}\` is put on here` },
          { range: plan.ranges['condition'] ?? plan.range, message: `the torque is for \`${plan.condition.id}\`` },
        ],
        hint: `write one lubricant in both steps${plan.lubricant === undefined ? '' : `: \`${plan.lubricant}\``}`,
      });
    }
  }),
};
