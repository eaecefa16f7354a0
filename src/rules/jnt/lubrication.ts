/** Which step puts which lubricant onto the threads of which joint. */

import { type Consumable, type JointPlan, keyPlaceOf, placeOf, type Step } from '../../resolve/index.ts';
import { type Band, findCondition } from '../../torque/index.ts';
import type { Fault } from '../check.ts';
import { entryNames } from '../prt/entries.ts';
import { wordsOf } from '../prt/step-words.ts';
import { lookUp, onceACard, type Scene } from '../rule.ts';
import { type JointLife, jointLives } from './joint-life.ts';

export interface Applied {
  readonly step: Step;
  readonly consumable: Consumable;
  readonly range: Fault['range'];
}

export interface JointLubrication {
  readonly life: JointLife;
  /** In the order of work. */
  readonly applied: readonly Applied[];
  /** Put on by a step of its own after the joint was tightened for the last time. */
  readonly late: readonly Applied[];
}

export const lubricationOf = onceACard((scene): readonly JointLubrication[] => {
  const drafts = jointLives(scene)
    .filter((l) => l.used)
    .map((life) => ({ life, applied: [] as Applied[], late: [] as Applied[] }));
  for (const step of scene.steps) {
    if (step.tighten === undefined && step.lubricate === undefined && step.fit.length === 0) continue;
    const own = drafts.filter(({ life }) => isWorkedOn(life, step));
    const thread = lubricated(step, scene);
    if (own.length > 0) {
      const all = thread === undefined ? mentioned(step, scene) : [thread];
      for (const { applied } of own) applied.push(...all);
      continue;
    }
    if (thread === undefined) continue;
    const named = drafts.find(({ life }) => isNamed(life.plan, step));
    if (named !== undefined) named.applied.push(thread);
    else if (isForNothingElse(step)) {
      const next = nextTightened(drafts, step);
      if (next !== undefined) next.applied.push(thread);
      else lastTightened(drafts, step, thread)?.late.push(thread);
    }
  }
  // A step that names the joint may come too late as well.
  return drafts.map(({ life, applied, late }): JointLubrication => {
    const tightened = life.events.findLast((e) => e.kind === 'tighten')?.step.number;
    const after = tightened === undefined ? [] : applied.filter((a) => a.step.number > tightened);
    return { life, applied: applied.filter((a) => !after.includes(a)), late: [...after, ...late] };
  });
});

/** The step tightens the joint, or fits something that each of its bolts has. */
function isWorkedOn({ plan }: JointLife, step: Step): boolean {
  if (step.tighten === plan.id) return true;
  return step.fit.some((m) => m.id === plan.fastener || plan.also.includes(m.id));
}

function isNamed(plan: JointPlan, step: Step): boolean {
  const words = wordsOf(step.text);
  return words.joints.includes(plan.id) || [plan.fastener, ...plan.also].some((id) => words.signOf(id) !== undefined);
}

/** A screw that no joint knows may be lubricated where it is fitted or named. */
function isForNothingElse(step: Step): boolean {
  return step.fit.length === 0 && !step.text.some((p) => p.runs.some((r) => r.ref?.kind === 'part'));
}

type Draft = { readonly life: JointLife; readonly applied: Applied[]; readonly late: Applied[] };

/** The joint that is tightened next and whose fasteners are moved on this card. */
function nextTightened(drafts: readonly Draft[], step: Step): Draft | undefined {
  const ahead = drafts.flatMap((draft) => {
    const e = draft.life.events.find((x) => x.kind === 'tighten' && x.step.number > step.number);
    return e === undefined || draft.life.fastener === undefined ? [] : [{ draft, at: e.step.number }];
  });
  return ahead.sort((a, b) => a.at - b.at)[0]?.draft;
}

/** The joint tightened last that is reckoned for this lubricant and has had none. */
function lastTightened(drafts: readonly Draft[], step: Step, { consumable }: Applied): Draft | undefined {
  const behind = drafts.flatMap((draft) => {
    const e = draft.life.events.findLast((x) => x.kind === 'tighten' && x.step.number < step.number);
    const fits = draft.applied.length === 0 && draft.life.plan.condition.id === consumable.condition;
    return e === undefined || !fits ? [] : [{ draft, at: e.step.number }];
  });
  return behind.sort((a, b) => b.at - a.at)[0]?.draft;
}

const THREADS = /\b(?:threads?|heads?|nuts?|screws?|bolts?|studs?|shanks?|fasteners?)\b/i;
const ELSEWHERE =
  /\b(?:o-?rings?|seals?|lips?|gaskets?|grooves?|bellows|shafts?|bores?|bearings?|splines?|keys?|pins?|bush(?:es)?|faces?|rollers?|teeth|cams?|chain)\b/i;

/** The lubricant that the step puts onto threads, by `lubricate`. */
function lubricated(step: Step, { shop }: Scene): Applied | undefined {
  const { lubricate } = step;
  const consumable = lubricate === undefined ? undefined : lookUp(shop).consumable(lubricate.id);
  if (lubricate === undefined || consumable === undefined) return undefined;
  const onThreads =
    THREADS.test(lubricate.where) || (consumable.condition !== undefined && !ELSEWHERE.test(lubricate.where));
  return onThreads ? { step, consumable, range: placeOf(step, 'lubricate', 'with') } : undefined;
}

const TAKES_OFF = /\b(?:wipe|wash|clean|degrease|remove|free of|without|no|never|not|instead)\b/;

/** Lubricants in `use` or in the order itself, where the step has no `lubricate` for threads. */
function mentioned(step: Step, { shop }: Scene): readonly Applied[] {
  if (step.lubricate !== undefined) return [];
  const inText = new Set(
    step.text.flatMap((p) => p.runs.flatMap((r) => (r.ref?.kind === 'consumable' ? [r.ref.id] : []))),
  );
  const takesOff = inText.size > 0 && TAKES_OFF.test(wordsOf(step.text).text);
  return step.consumables.flatMap(({ id }): Applied[] => {
    const consumable = lookUp(shop).consumable(id);
    if (consumable?.condition === undefined) return [];
    const used = entryNames(step, 'use').includes(id);
    if (!used && (!inText.has(id) || takesOff)) return [];
    return [{ step, consumable, range: used ? keyPlaceOf(step, 'use', id) : placeOf(step, 'do') }];
  });
}

/** Nut factor that the lubricant gives: its maker's own, else that of its condition. */
export function nutFactorOf(consumable: Consumable): Band | undefined {
  if (consumable.nutFactor !== undefined) return consumable.nutFactor.band;
  return consumable.condition === undefined ? undefined : findCondition(consumable.condition)?.nutFactor;
}

/** What one torque does with another lubricant, from the two nut factors (T = K d F). */
export function clampWords(meant: Band, given: Band): string {
  const change = Math.round((meant.nominal / given.nominal - 1) * 100);
  if (change === 0) return 'the same torque clamps about as hard, with another spread';
  return `the same torque clamps about ${Math.abs(change)} % ${change > 0 ? 'harder' : 'less'}`;
}
