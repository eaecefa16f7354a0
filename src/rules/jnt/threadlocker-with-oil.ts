/** Threadlocker and oil, grease or anti-seize on one joint. */

import type { Check } from '../check.ts';
import { labelled } from '../prt/life-check.ts';
import { eachVariant } from '../rule.ts';
import { lubricantFaults } from './lubricant-faults.ts';

export const threadlockerWithOil: Check = {
  code: 'JNT009',
  name: 'threadlocker-with-oil',
  severity: 'error',
  title: 'Threadlocker comes together with oil, grease or anti-seize on one joint.',
  why: 'Locker does not cure on an oily thread: the screw feels tight, and backs out in the first week.',
  sources: [
    "anaerobic threadlocker makers' data sheets: clean dry thread, never with oil or anti-seize (common practice)",
  ],
  example: {
    bad: [
      {
        file: 'consumables.yaml',
        from: 'wipe: { name',
        to: `locker: { name: medium threadlocker, kind: threadlocker, condition: threadlocked, hazards: [irritates the skin], ppe: [gloves], safety_data: folder T1, shelf_life: use-by date on the bottle, waste: chemical waste }
wipe: { name`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: When <step:locked> is done, tighten the <joint:cover>.
        fit: [screw]
`,
        to: `      - do: Run the <part:screw>s in by hand.
        fit: [screw]
        lubricate: { with: «locker», where: first four threads }
      - do: When <step:locked> is done, tighten the <joint:cover>.
`,
      },
    ],
  },
  found: eachVariant(function* (scene) {
    for (const { kind, at, applied, against } of lubricantFaults(scene)) {
      if (kind !== 'locker with oil' || against === undefined) continue;
      const { plan } = at.life;
      yield labelled(applied.step, {
        range: applied.range,
        message: `\`${applied.consumable.id}\` comes together with \`${against.consumable.id}\` on \`${plan.id}\`, and locker does not cure on oil`,
        related: [
          { range: against.range, message: `\`${against.consumable.id}\` is named here` },
          { range: plan.ranges['condition'] ?? plan.range, message: `the torque is for \`${plan.condition.id}\`` },
        ],
        hint:
          plan.condition.id === 'threadlocked'
            ? `take \`${applied.consumable.id}\` out of the step: the thread stays clean and dry`
            : `take \`${applied.consumable.id}\` out of the step, or give the joint \`condition: threadlocked\` with the torque that its source gives for it, and no oil`,
      });
    }
  }),
};
