/** The life of each joint on one card: opened, its fasteners off and on, tightened, rests in between. */

import type { JointPlan, Step } from '../../resolve/index.ts';
import { handedOn } from '../prt/elsewhere.ts';
import { isWhole, type Life, ledgerOf, type Move } from '../prt/ledger.ts';
import { JOINT_SIGN, wordsOf } from '../prt/step-words.ts';
import { onceACard, type Scene } from '../rule.ts';

export type JointEvent =
  | { readonly kind: 'loosen' | 'tighten' | 'rest'; readonly step: Step }
  | { readonly kind: 'off' | 'on'; readonly step: Step; readonly move: Move };

export interface JointLife {
  readonly plan: JointPlan;
  /** In the order of work; within a step: loosen, off, on, tighten, rest. */
  readonly events: readonly JointEvent[];
  /** The part that is tightened; undefined when this card never moves it. */
  readonly fastener: Life | undefined;
  /** Fasteners of which each bolt has one: the part that is tightened, nuts, washers. */
  readonly fasteners: readonly Life[];
  /** The card opens or closes it; otherwise it only moves its fasteners. */
  readonly used: boolean;
}

/** Empty where something could not be read or resolved. */
export const jointLives = onceACard((scene): readonly JointLife[] =>
  isWhole(scene) ? jointsOf(scene).map(({ plan, used }) => lifeOf(plan, used, scene)) : [],
);

/** Joints that the card opens or closes, and those whose fasteners it moves all the same. */
function jointsOf({ variant, machine }: Scene): readonly { readonly plan: JointPlan; readonly used: boolean }[] {
  const used = new Set(variant.joints.map((j) => j.id));
  const others = (machine?.joints ?? []).filter(
    ({ plan, variants }) => !used.has(plan.id) && (variants === '' || variants.split('; ').includes(variant.label)),
  );
  return [
    ...variant.joints.map((plan) => ({ plan, used: true })),
    ...others.map(({ plan }) => ({ plan, used: false })),
  ];
}

function lifeOf(plan: JointPlan, used: boolean, scene: Scene): JointLife {
  const ledger = ledgerOf(scene);
  const fasteners = [plan.fastener, ...plan.also].map((id) => ledger.lives.get(id)).filter((l) => l !== undefined);
  const fastener = ledger.lives.get(plan.fastener);
  const moves = fastener?.moves ?? [];
  const events: JointEvent[] = [];
  if (used || moves.length > 0) {
    let next = 0;
    for (const step of scene.steps) {
      if (step.loosen === plan.id) events.push({ kind: 'loosen', step });
      for (let m = moves[next]; m !== undefined && m.step === step; m = moves[next]) {
        events.push({ kind: m.kind, step, move: m });
        next += 1;
      }
      if (step.tighten === plan.id) events.push({ kind: 'tighten', step });
      if (step.wait !== undefined) events.push({ kind: 'rest', step });
    }
  }
  return { plan, events, fastener, fasteners, used };
}

/** `Loosen one screw of the <joint:ring>`: an order for one at a time, which no `loosen` can say. */
const ONE_OF = new RegExp(
  `\\b(?:loosen|slacken|undo|unscrew|ease|back off) (?:one|two|the next|the first|each|every|half)\\b[^.;]*? of (?:the )?${JOINT_SIGN}`,
);

/** The step orders single fasteners of the joint to be loosened, in words. */
export function isLoosenedSingly(step: Step, plan: JointPlan): boolean {
  const { text, joints } = wordsOf(step.text);
  return joints.includes(plan.id) && ONE_OF.test(text);
}

/** A step names the joint together with another procedure, which closes it. */
export function isHandedOn(plan: JointPlan, scene: Scene): boolean {
  return handedOn(scene).joints.has(plan.id);
}
