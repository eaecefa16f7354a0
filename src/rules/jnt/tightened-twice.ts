/** A joint is tightened again without having been loosened and without a rest. */

import { placeOf, type Step } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { labelled } from '../prt/life-check.ts';
import { eachVariant } from '../rule.ts';
import { type JointEvent, jointLives } from './joint-life.ts';

export const tightenedTwice: Check = {
  code: 'JNT002',
  name: 'tightened-twice',
  severity: 'warning',
  title: 'A joint is tightened twice without being loosened and without a waiting time in between.',
  why: 'The mechanic does the rounds twice or asks which of the two counts; often the second step was meant for another joint.',
  sources: ['ASME PCC-1, appendix F: a second pass comes after a rest, such as four hours for a gasket (memory)'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Measure the gap.
`,
        to: `      - do: Tighten the <joint:cover>.
        tighten: «cover»
      - do: Measure the gap.
`,
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Measure the gap.
`,
        to: `      - do: When the gasket has settled, tighten the <joint:cover> once more.
        wait: { for: 4 h, why: the gasket creeps under its load }
        tighten: cover
      - do: Measure the gap.
`,
      },
    ],
  },
  found: eachVariant(function* (scene) {
    for (const { plan, events } of jointLives(scene)) {
      let first: Step | undefined;
      for (const event of events) {
        if (event.kind === 'loosen' || event.kind === 'off') first = undefined;
        if (event.kind !== 'tighten') continue;
        if (first !== undefined && !hasRest(events, first, event.step)) {
          yield labelled(event.step, {
            range: placeOf(event.step, 'tighten'),
            message: `\`${plan.id}\` is tightened a second time, with neither a loosening nor a rest in between`,
            related: [{ range: placeOf(first, 'tighten'), message: 'tightened here before' }],
            hint: `keep one \`tighten: ${plan.id}\`; for a second pass after the gasket has settled, write \`wait: { for: … h, why: … }\` in the step`,
          });
        }
        first = event.step;
      }
    }
  }),
};

/** The rest may stand in a step in between, or in either of the two. */
function hasRest(events: readonly JointEvent[], first: Step, second: Step): boolean {
  return events.some((e) => e.kind === 'rest' && e.step.number >= first.number && e.step.number <= second.number);
}
