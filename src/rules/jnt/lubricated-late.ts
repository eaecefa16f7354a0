/** A joint is lubricated after it was tightened. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { labelled } from '../prt/life-check.ts';
import { eachVariant } from '../rule.ts';
import { lubricationOf } from './lubrication.ts';

export const lubricatedLate: Check = {
  code: 'JNT014',
  name: 'lubricated-late',
  severity: 'error',
  title: 'The lubricant of a joint is put on only after the joint was tightened.',
  why: 'Oil on a finished bolt does nothing: the torque has gone into dry threads, and the joint holds too little.',
  sources: ['common practice: thread and bearing face are lubricated before the fastener is run in'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `        lubricate: { with: oil, where: thread and under the head }
        tighten: cover
`,
        to: `        tighten: cover
      - do: Oil the <part:screw>s.
        lubricate: { with: «oil», where: thread and under the head }
`,
      },
    ],
  },
  found: eachVariant(function* (scene) {
    for (const { life, applied, late } of lubricationOf(scene)) {
      const { plan, events } = life;
      const [first] = late;
      const tightened = events.findLast((e) => e.kind === 'tighten');
      if (first === undefined || tightened === undefined || applied.length > 0) continue;
      yield labelled(first.step, {
        range: first.range,
        message: `\`${first.consumable.id}\` is put onto \`${plan.id}\` after the joint was tightened`,
        related: [{ range: placeOf(tightened.step, 'tighten'), message: 'tightened here' }],
        hint: `move \`lubricate\` to the step that fits \`${plan.fastener}\` or to the one that tightens \`${plan.id}\``,
      });
    }
  }),
};
