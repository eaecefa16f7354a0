/** A joint is tightened while its gasket is out. */

import { keyPlaceOf, placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { inPlaceAfter, ledgerOf } from '../prt/ledger.ts';
import { labelled } from '../prt/life-check.ts';
import { eachVariant } from '../rule.ts';
import { jointLives } from './joint-life.ts';

export const gasketNotFitted: Check = {
  code: 'JNT011',
  name: 'gasket-not-fitted',
  severity: 'error',
  title: 'A joint is tightened while the gasket that it presses is out.',
  why: 'The joint is opened again to put the gasket in, or runs without it and leaks.',
  sources: ['common practice: the gasket lies between the faces before the first round'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Lay on the new <part:gasket>.
        fit: [gasket, cover]
      - do: When <step:locked> is done, tighten the <joint:cover>.
        fit: [screw]
        lubricate: { with: oil, where: thread and under the head }
        tighten: cover
`,
        to: `      - do: When <step:locked> is done, tighten the <joint:cover>.
        fit: [cover, screw]
        lubricate: { with: oil, where: thread and under the head }
        tighten: «cover»
      - do: Lay on the new <part:gasket>.
        fit: [gasket]
`,
      },
    ],
  },
  found: eachVariant(function* (scene) {
    for (const { plan, events } of jointLives(scene)) {
      const gasket = plan.gasket === undefined ? undefined : ledgerOf(scene).lives.get(plan.gasket);
      if (gasket === undefined) continue;
      for (const { kind, step } of events) {
        if (kind !== 'tighten' || inPlaceAfter(gasket, step.number) !== 0) continue;
        // One that never goes in is reported where it came off.
        const later = gasket.moves.find((m) => m.kind === 'on' && m.step.number > step.number);
        if (later === undefined) continue;
        yield labelled(step, {
          range: placeOf(step, 'tighten'),
          message: `\`${plan.id}\` is tightened while its gasket \`${gasket.id}\` is out`,
          related: [{ range: keyPlaceOf(later.step, 'fit', gasket.id), message: 'the gasket goes in here' }],
          hint: `move the step that fits \`${gasket.id}\` before this one`,
        });
      }
    }
  }),
};
