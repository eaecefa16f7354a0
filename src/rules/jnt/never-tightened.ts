/** A joint is loosened and not tightened again. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { labelled } from '../prt/life-check.ts';
import { eachVariant } from '../rule.ts';
import { isHandedOn, jointLives } from './joint-life.ts';

export const neverTightened: Check = {
  code: 'JNT001',
  name: 'never-tightened',
  severity: 'error',
  title: 'A joint is loosened and not tightened again by the end of the card.',
  why: 'The bolts stand slack under the paint, and the joint opens when the machine runs.',
  sources: ['common practice: each joint that is opened is closed at its torque before the machine is handed back'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Measure the gap.
`,
        to: `      - do: Loosen the <joint:cover> to centre the cover.
        loosen: «cover»
      - do: Measure the gap.
`,
      },
    ],
  },
  found: eachVariant(function* (scene) {
    for (const { plan, events, fastener } of jointLives(scene)) {
      // Fasteners that never go back are reported as parts, and those that do as `fitted-not-tightened`.
      const last = events.findLast((e) => e.kind === 'loosen' || e.kind === 'tighten' || e.kind === 'on');
      if (last?.kind !== 'loosen' || fastener?.inPlace === 0 || isHandedOn(plan, scene)) continue;
      yield labelled(last.step, {
        range: placeOf(last.step, 'loosen'),
        message: `\`${plan.id}\` is loosened, and not tightened again by the end`,
        hint: `write \`tighten: ${plan.id}\` in the step that closes it; when another procedure closes it, name \`<joint:${plan.id}>\` and \`<procedure:…>\` together in one step`,
      });
    }
  }),
};
