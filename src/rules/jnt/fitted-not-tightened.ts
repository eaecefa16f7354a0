/** Fasteners are fitted and their joint is not tightened afterwards. */

import { keyPlaceOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { labelled } from '../prt/life-check.ts';
import { eachVariant } from '../rule.ts';
import { isHandedOn, type JointLife, jointLives } from './joint-life.ts';

export const fittedNotTightened: Check = {
  code: 'JNT004',
  name: 'fitted-not-tightened',
  severity: 'error',
  title: 'The fasteners of a joint are fitted, and the joint is not tightened afterwards.',
  why: 'Screws run in by hand look done; the joint leaks or comes apart, and the card never gave the torque.',
  sources: ['common practice: fasteners are run in by hand, and then the joint is tightened in rounds to its torque'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: When <step:locked> is done, tighten the <joint:cover>.
        fit: [screw]
        lubricate: { with: oil, where: thread and under the head }
        tighten: cover
`,
        to: `      - do: When <step:locked> is done, run in the screws of the <joint:cover>.
        fit: [«screw»]
        lubricate: { with: oil, where: thread and under the head }
`,
      },
    ],
  },
  found: eachVariant(function* (scene) {
    const lives = jointLives(scene);
    for (const life of lives) {
      const { plan, fastener } = life;
      if (fastener === undefined || fastener.inPlace === 0 || isHandedOn(plan, scene)) continue;
      const sharers = lives.filter((l) => l.plan.fastener === plan.fastener);
      // Screws that serve several joints may all be for those that the card does close.
      if (!life.used && sharers.some((l) => l.used)) continue;
      const on = openFitting(life, sharers.length > 1);
      if (on === undefined) continue;
      yield labelled(on.step, {
        range: keyPlaceOf(on.step, 'fit', plan.fastener),
        message: `\`${plan.fastener}\` is fitted, and its joint \`${plan.id}\` is not tightened afterwards`,
        related: [{ range: plan.range, message: 'the joint' }],
        hint: `write \`tighten: ${plan.id}\` in this step or in one that follows; when another procedure closes it, name \`<joint:${plan.id}>\` and \`<procedure:…>\` together in one step`,
      });
    }
  }),
};

/** The fitting after which the joint is never tightened. Screws shared between joints go on joint by joint. */
function openFitting({ events }: JointLife, shared: boolean) {
  const off = events.findLastIndex((e) => e.kind === 'off');
  const after = events.slice(off + 1);
  const index = shared ? after.findIndex((e) => e.kind === 'on') : after.findLastIndex((e) => e.kind === 'on');
  const on = after[index];
  // Tightened before anything was run in: the step that tightens is told of it.
  if (
    after
      .slice(
        0,
        after.findIndex((e) => e.kind === 'on'),
      )
      .some((e) => e.kind === 'tighten')
  )
    return undefined;
  return on === undefined || after.slice(index).some((e) => e.kind === 'tighten') ? undefined : on;
}
