/** A joint is tightened while something that it holds is still off. */

import { type JointPlan, keyPlaceOf, listed, type Part, placeOf, type Step } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { inPlaceAfter, type Life, ledgerOf, type Move } from '../prt/ledger.ts';
import { labelled } from '../prt/life-check.ts';
import { eachVariant, type Scene } from '../rule.ts';
import { type JointLife, jointLives } from './joint-life.ts';

export const tightenedBeforeFitted: Check = {
  code: 'JNT003',
  name: 'tightened-before-fitted',
  severity: 'error',
  title: 'A joint is tightened before its fasteners, or what they hold, have been fitted.',
  why: 'The mechanic reads a torque for screws that lie in the bin, or closes the joint without the cover that belongs under it.',
  sources: ['common practice: a joint is complete before the first round'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `        fit: [gasket, cover]
      - do: When <step:locked> is done, tighten the <joint:cover>.
        fit: [screw]
        lubricate: { with: oil, where: thread and under the head }
        tighten: cover
`,
        to: `        fit: [gasket]
      - do: When <step:locked> is done, tighten the <joint:cover>.
        fit: [screw]
        lubricate: { with: oil, where: thread and under the head }
        tighten: «cover»
      - do: Set the <part:cover> on its dowels.
        fit: [cover]
`,
      },
    ],
  },
  found: eachVariant(function* (scene) {
    for (const life of jointLives(scene)) {
      for (const { kind, step } of life.events) {
        if (kind !== 'tighten') continue;
        const missing = missingAt(life, step, scene);
        if (missing.length === 0) continue;
        const names = listed(missing.map(({ part }) => `\`${part.id}\``));
        yield labelled(step, {
          range: placeOf(step, 'tighten'),
          message: `\`${life.plan.id}\` is tightened while ${names} ${missing.length === 1 ? 'is' : 'are'} still off`,
          related: missing.map(({ part, later }) => ({
            range: keyPlaceOf(later.step, 'fit', part.id),
            message: `\`${part.id}\` goes on here`,
          })),
          hint: `fit ${names} in an earlier step or in this one, or move \`tighten: ${life.plan.id}\` behind the step that fits ${missing.length === 1 ? 'it' : 'them'}`,
        });
      }
    }
  }),
};

/** What is off at the step and goes on later; what never goes on again is a fault of the part. */
function missingAt(life: JointLife, step: Step, scene: Scene) {
  const { plan, fasteners } = life;
  const held = heldBy(life, scene).map((l) => ({ life: l, needed: 1 }));
  const wanted = [...fasteners.map((l) => ({ life: l, needed: Math.min(plan.count, l.total) })), ...held];
  return wanted.flatMap(({ life: { part, moves }, life: whole, needed }) => {
    if ((inPlaceAfter(whole, step.number) ?? needed) >= needed) return [];
    const later = moves.find((m: Move) => m.kind === 'on' && m.step.number > step.number);
    return later === undefined ? [] : [{ part, later }];
  });
}

/** What is clamped by a joint, not only reached through it: a seal behind the cover may go in from the other side. */
const CLAMPED: ReadonlySet<string> = new Set(['casting', 'cover', 'plate', 'pipe', 'coupling', 'shim']);

/** The part of the same name as the joint, and parts to be clamped that come off in one step with its fasteners. */
function heldBy({ plan, fastener, fasteners }: JointLife, scene: Scene): readonly Life[] {
  const own = new Set(fasteners.map((l) => l.id));
  const offAt = new Set((fastener?.moves ?? []).filter((m) => m.kind === 'off').map((m) => m.step));
  return [...ledgerOf(scene).lives.values()].filter((l) => {
    if (own.has(l.id) || l.id === plan.gasket) return false;
    if (isNamesake(l.part, plan)) return true;
    return CLAMPED.has(l.part.kind) && l.moves.some((m) => m.kind === 'off' && offAt.has(m.step));
  });
}

function isNamesake(part: Part, plan: JointPlan): boolean {
  return part.id === plan.id || `${part.name} joint`.toLowerCase() === plan.name.toLowerCase();
}
