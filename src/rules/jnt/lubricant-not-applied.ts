/** The torque of a joint is for a lubricant that no step puts on. */

import { keyPlaceOf, placeOf, type Step } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { labelled } from '../prt/life-check.ts';
import { eachVariant } from '../rule.ts';
import type { JointLife } from './joint-life.ts';
import { type Applied, lubricationOf } from './lubrication.ts';

export const lubricantNotApplied: Check = {
  code: 'JNT008',
  name: 'lubricant-not-applied',
  severity: 'warning',
  title: 'The torque of a joint is for a lubricated thread, and no step of the card lubricates it.',
  why: 'The mechanic fits the screws as they come from the wash, and half of the torque is lost in dry threads.',
  sources: [
    'common practice: a torque without its lubrication is incomplete',
    'T = K d F, with the nut factors of the conditions',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `        lubricate: { with: oil, where: thread and under the head }
        tighten: cover
`,
        to: `        tighten: «cover»
`,
      },
    ],
  },
  found: eachVariant(function* (scene) {
    for (const { life, applied, late } of lubricationOf(scene)) {
      const { plan, events } = life;
      if (!plan.condition.lubricated || late.length > 0) continue;
      const dry = applied.length > 0 ? fittedDry(life, applied) : undefined;
      if (dry !== undefined)
        yield labelled(dry, {
          range: keyPlaceOf(dry, 'fit', plan.fastener),
          message: `\`${plan.fastener}\` goes on in several steps, and this one does not lubricate it`,
          related: applied.map((a) => ({ range: a.range, message: 'lubricated here' })),
          hint: `write \`lubricate: { with: ${plan.lubricant ?? '…'}, where: ${plan.where ?? 'thread and under the head'} }\` in this step too`,
        });
      if (applied.length > 0) continue;
      // Fasteners that stayed in keep the lubricant of the last fitting.
      const on = events.findIndex((e) => e.kind === 'on');
      const tightened = on < 0 ? undefined : events.slice(on).find((e) => e.kind === 'tighten');
      if (tightened === undefined) continue;
      const where = plan.where ?? 'thread and under the head';
      yield labelled(tightened.step, {
        range: placeOf(tightened.step, 'tighten'),
        message: `the torque of \`${plan.id}\` is for ${plan.condition.name} (\`${plan.condition.id}\`), and no step lubricates it`,
        related: [{ range: plan.ranges['condition'] ?? plan.range, message: 'condition of the joint' }],
        hint: `write \`lubricate: { with: ${plan.lubricant ?? '…'}, where: ${where} }\` in this step or in the one that fits \`${plan.fastener}\``,
      });
    }
  }),
};

/** Fasteners go on in several lots, some steps lubricate theirs, and this one does not. */
function fittedDry({ events }: JointLife, applied: readonly Applied[]): Step | undefined {
  let lot: Step[] = [];
  for (const { kind, step } of events) {
    if (kind === 'on') lot.push(step);
    else if (kind !== 'rest') {
      const dry = lot.find((s) => !applied.some((a) => a.step === s));
      // Put on by the step that tightens, or by one of its own, it reaches all of them.
      const inLots = applied.every((a) => lot.includes(a.step));
      if (kind === 'tighten' && dry !== undefined && inLots) return dry;
      lot = [];
    }
  }
  return undefined;
}
