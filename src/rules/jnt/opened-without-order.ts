/** Fasteners come off a joint that was not loosened. */

import { type JointPlan, keyPlaceOf, type Step } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { labelled } from '../prt/life-check.ts';
import { eachVariant } from '../rule.ts';
import { isLoosenedSingly, type JointEvent, type JointLife, jointLives } from './joint-life.ts';

export const openedWithoutOrder: Check = {
  code: 'JNT005',
  name: 'opened-without-order',
  severity: 'warning',
  title: 'The fasteners of a joint come off, and no step has loosened it, so that the card shows no order.',
  why: 'Bolts undone one after the other leave the last ones with the whole load: the cover warps, or jumps under pressure.',
  sources: [
    'common practice: a joint is slackened all round in the reverse of its tightening order before a bolt is taken out',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Loosen the <joint:cover>.
        loosen: cover
`,
        to: `      - do: Open the drain cock of the cover.
`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: 'remove: { cover: reuse, gasket: discard, screw: inspect }',
        to: 'remove: { cover: reuse, gasket: discard, «screw»: inspect }',
      },
    ],
  },
  found: eachVariant(function* (scene) {
    const lives = jointLives(scene);
    const told = new Set<string>();
    for (const life of lives) {
      const { plan } = life;
      if (plan.count < 2 || told.has(plan.fastener)) continue;
      const opened = openedAt(life, lives, scene.steps);
      if (opened === undefined) continue;
      const { step, part } = opened;
      told.add(plan.fastener);
      yield labelled(step, {
        range: keyPlaceOf(step, 'remove', part),
        message: `\`${part}\` comes off, and no step has loosened its joint \`${plan.id}\``,
        related: [{ range: plan.range, message: 'the joint' }],
        hint: `write \`loosen: ${plan.id}\` in this step or in one before it: the card then shows the order of loosening`,
      });
    }
  }),
};

const WITHIN_A_STEP: readonly JointEvent['kind'][] = ['loosen', 'off', 'on', 'tighten', 'rest'];

/** The step in which the fasteners, or their nuts, leave the joint while it is tight. */
function openedAt(
  { plan, events, fasteners }: JointLife,
  lives: readonly JointLife[],
  steps: readonly Step[],
): { readonly step: Step; readonly part: string } | undefined {
  const nuts = fasteners.filter((l) => l.id !== plan.fastener && l.part.kind === 'nut').flatMap((l) => l.moves);
  const all = [...events, ...nuts.map((move): JointEvent => ({ kind: move.kind, step: move.step, move }))].sort(
    (a, b) => a.step.number - b.step.number || WITHIN_A_STEP.indexOf(a.kind) - WITHIN_A_STEP.indexOf(b.kind),
  );
  let tight = true;
  for (const event of all) {
    if (event.kind === 'loosen') tight = false;
    if (event.kind === 'tighten') tight = true;
    if (event.kind !== 'off') continue;
    if (tight && !isExcused(plan, event.step, lives, steps)) return { step: event.step, part: event.move.move.id };
    tight = false;
  }
  return undefined;
}

/** Said of single fasteners in words, or opened as another joint that has the same fastener. */
function isExcused(plan: JointPlan, at: Step, lives: readonly JointLife[], steps: readonly Step[]): boolean {
  const sharers = lives.filter((l) => l.plan.fastener === plan.fastener);
  const others = sharers.filter((l) => l.plan !== plan);
  if (others.some((l) => l.events.some((e) => e.kind === 'loosen' && e.step.number <= at.number))) return true;
  return steps.some((s) => s.number <= at.number && sharers.some((l) => isLoosenedSingly(s, l.plan)));
}
