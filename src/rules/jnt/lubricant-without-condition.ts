/** A consumable goes onto the threads of a joint, and nothing says which condition it gives. */

import type { Check } from '../check.ts';
import { labelled } from '../prt/life-check.ts';
import { both, eachJoint, eachVariant, lookUp } from '../rule.ts';
import { lubricationOf } from './lubrication.ts';

const NO_CONDITION = 'and its entry states no `condition`, so that its torque cannot be judged';

function hint(id: string): string {
  return `give \`${id}\` in consumables.yaml its \`condition\` by its data sheet (oiled, anti-seize, moly, wax or threadlocked), or name the lubricant that the torque is for`;
}

const ofJoints = eachJoint((plan, shop) => {
  const lubricant = plan.lubricant === undefined ? undefined : lookUp(shop).consumable(plan.lubricant);
  if (lubricant === undefined || lubricant.condition !== undefined) return undefined;
  return {
    range: plan.ranges['lubricant'] ?? plan.range,
    message: `\`${lubricant.id}\` goes onto the threads of \`${plan.id}\`, ${NO_CONDITION}`,
    related: [{ range: lubricant.keyRange, message: 'the consumable' }],
    hint: hint(lubricant.id),
  };
});

const ofSteps = eachVariant(function* (scene) {
  for (const { life, applied, late } of lubricationOf(scene)) {
    const { plan } = life;
    for (const { step, consumable, range } of [...applied, ...late]) {
      if (consumable.condition !== undefined || consumable.id === plan.lubricant) continue;
      yield labelled(step, {
        range,
        message: `\`${consumable.id}\` goes onto the threads of \`${plan.id}\`, ${NO_CONDITION}`,
        related: [{ range: consumable.keyRange, message: 'the consumable' }],
        hint: hint(consumable.id),
      });
    }
  }
});

export const lubricantWithoutCondition: Check = {
  code: 'JNT010',
  name: 'lubricant-without-condition',
  severity: 'error',
  title: 'A consumable goes onto the threads of a joint, and its entry does not say which condition it gives.',
  why: 'Whatever is in the tin decides how hard the torque clamps; a grease nobody has judged may overstretch the bolts.',
  sources: [
    'common practice: a torque without its lubrication is incomplete',
    'T = K d F, with the nut factors of the conditions',
  ],
  example: {
    bad: [
      {
        file: 'consumables.yaml',
        from: 'wipe: { name',
        to: `grease: { name: bearing grease, kind: lubricant, hazards: [irritates the skin], ppe: [gloves], safety_data: folder L2, shelf_life: 4 years, waste: oily-waste bin }
wipe: { name`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: '        lubricate: { with: oil, where: thread and under the head }\n',
        to: '        lubricate: { with: «grease», where: thread and under the head }\n',
      },
    ],
  },
  found: both(ofJoints, ofSteps),
};
