/** Helpers for checks that look at one joint or one variant at a time. */

import type { Document, JointPlan, Machine, ResolvedShop, Stage, Step, Variant } from '../resolve/index.ts';
import { compareStated } from '../torque/index.ts';
import type { Fault, Run, Tell } from './check.ts';

/**
 * A check that looks at one joint at a time. Forms of a joint that share a fault are reported once, with their variants
 * named when the other forms are sound.
 */
export function eachJoint(find: (plan: JointPlan, shop: ResolvedShop) => Fault | undefined): Run {
  return (shop, tell) => {
    for (const { joints } of shop.machines) {
      const faults = new Map<string, { fault: Fault; id: string; variants: string[] }>();
      for (const { plan, variants } of joints) {
        const fault = find(plan, shop);
        if (fault === undefined) continue;
        const key = `${plan.id} ${fault.range.start} ${fault.message}`;
        const known = faults.get(key);
        if (known === undefined) faults.set(key, { fault, id: plan.id, variants: [variants] });
        else known.variants.push(variants);
      }
      for (const { fault, id, variants } of faults.values()) {
        const forms = joints.filter((j) => j.plan.id === id).length;
        const which = variants.length === forms || variants[0] === '' ? '' : ` (${variants.join('; ')})`;
        tell(fault.range, `${fault.message}${which}`, fault);
      }
    }
  };
}

/** One card with everything that a check of its steps looks up. */
export interface Scene {
  readonly shop: ResolvedShop;
  readonly document: Document;
  readonly variant: Variant;
  readonly machine: Machine | undefined;
  /** All steps of the variant in the order of work. */
  readonly steps: readonly Step[];
  /** Stage of each step, by the step's number less one. */
  readonly stages: readonly Stage[];
  /** What `onceACard` has worked out. */
  readonly kept: unknown[];
}

/** A check that looks at one procedure at a time. */
export function eachDocument(ofDocument: NonNullable<Run['ofDocument']>): Run {
  const ofAll = (shop: ResolvedShop, tell: Tell): void => {
    for (const document of shop.documents) ofDocument(shop, document, tell);
  };
  return Object.assign(ofAll, { ofDocument });
}

/** A check of two parts: one of the shop, and one of each procedure. */
export function both(ofShop: NonNullable<Run['ofShop']>, { ofDocument }: ReturnType<typeof eachDocument>): Run {
  const ofAll = (shop: ResolvedShop, tell: Tell): void => {
    ofShop(shop, tell);
    for (const document of shop.documents) ofDocument?.(shop, document, tell);
  };
  return Object.assign(ofAll, { ofShop, ...(ofDocument === undefined ? {} : { ofDocument }) });
}

/**
 * A check that runs once for each card. The same fault on all cards of a document is reported once; a fault of some cards
 * names their variants. Faults of a shared stage carry the label that says who uses it.
 */
export function eachVariant(find: (scene: Scene) => Iterable<Fault>): Run {
  return eachCard((scene, add) => {
    for (const fault of find(scene)) add(fault);
  });
}

/** A check that looks at each step by itself. concerns: says at a glance which ones; most steps of a card are none. */
export function eachStep(
  find: (step: Step, scene: Scene) => Iterable<Fault> | Fault | undefined,
  concerns?: (step: Step) => boolean,
): Run {
  return eachCard((scene, add) => {
    for (const step of scene.steps) {
      if (concerns?.(step) === false) continue;
      const found = find(step, scene);
      if (found === undefined) continue;
      const faults = 'message' in found ? [found] : found;
      for (const fault of faults) add(step.label === undefined ? fault : { label: step.label, ...fault });
    }
  });
}

type Grouped = Map<string, { readonly fault: Fault; readonly labels: string[] }>;

/** Most cards have no fault, and then nothing is gathered. */
function eachCard(find: (scene: Scene, add: (fault: Fault) => void) => void): Run {
  return eachDocument((shop, document, tell) => {
    let faults: Grouped | undefined;
    for (const scene of scenesOf(shop, document)) {
      find(scene, (fault) => {
        faults ??= new Map();
        group(faults, fault, scene.variant.label);
      });
    }
    if (faults === undefined) return;
    for (const { fault, labels } of faults.values()) {
      const which = labels.length === document.variants.length ? '' : ` (${labels.join('; ')})`;
      tell(fault.range, `${fault.message}${which}`, fault);
    }
  });
}

function group(faults: Grouped, fault: Fault, label: string): void {
  const key = `${fault.range.file} ${fault.range.start} ${fault.message}`;
  const known = faults.get(key);
  if (known === undefined) faults.set(key, { fault, labels: [label] });
  else if (!known.labels.includes(label)) known.labels.push(label);
}

/** The procedure looked at last: its cards are forgotten with the next one. */
let last: { readonly shop: ResolvedShop; readonly document: Document; readonly scenes: readonly Scene[] } | undefined;

/** Every check walks the same cards: what they share is gathered once. */
function scenesOf(shop: ResolvedShop, document: Document): readonly Scene[] {
  if (last?.document === document && last.shop === shop) return last.scenes;
  const machine = lookUp(shop).machine(document.machine);
  const scenes = document.variants.map((variant): Scene => {
    const stages: Stage[] = [];
    const steps: Step[] = [];
    for (const stage of variant.stages) {
      for (const step of stage.steps) {
        stages.push(stage);
        steps.push(step);
      }
    }
    return { shop, document, variant, machine, steps, stages, kept: [] };
  });
  last = { shop, document, scenes };
  return scenes;
}

let slots = 0;

/** What several checks want to know of a card: worked out for the first that asks, and kept as long as the card. */
export function onceACard<T extends object>(make: (scene: Scene) => T): (scene: Scene) => T {
  const slot = slots++;
  return (scene) => {
    const known = scene.kept[slot] as T | undefined;
    if (known !== undefined) return known;
    const made = make(scene);
    scene.kept[slot] = made;
    return made;
  };
}

export interface LookUp {
  tool(id: string): ResolvedShop['tools'][number] | undefined;
  consumable(id: string): ResolvedShop['consumables'][number] | undefined;
  machine(id: string): Machine | undefined;
  person(id: string): ResolvedShop['people'][number] | undefined;
}

const lookUps = new WeakMap<ResolvedShop, LookUp>();

/** Registers by id, made once a shop. */
export function lookUp(shop: ResolvedShop): LookUp {
  const known = lookUps.get(shop);
  if (known !== undefined) return known;
  const tools = new Map(shop.tools.map((t) => [t.id, t]));
  const consumables = new Map(shop.consumables.map((c) => [c.id, c]));
  const machines = new Map(shop.machines.map((m) => [m.id, m]));
  const people = new Map(shop.people.map((p) => [p.id, p]));
  const made: LookUp = {
    tool: (id) => tools.get(id),
    consumable: (id) => consumables.get(id),
    machine: (id) => machines.get(id),
    person: (id) => people.get(id),
  };
  lookUps.set(shop, made);
  return made;
}

/** A torque that looks like a slip of unit or decimal point. */
export function isSlip(plan: JointPlan): boolean {
  const verdict = verdictOf(plan);
  return verdict === 'unit slip' || verdict === 'digit slip';
}

/** A torque that cannot be meant makes every further check of the joint an echo of that one fault. */
export function isSuspect(plan: JointPlan): boolean {
  return isSlip(plan) || verdictOf(plan) === 'far off';
}

function verdictOf(plan: JointPlan) {
  if (plan.origin !== 'stated' || plan.reason !== undefined) return undefined;
  return compareStated(plan.target, plan.result).verdict;
}
