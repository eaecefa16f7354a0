/** What some step, text, joint or list of the shop names: everything else in the registers is used by nobody. */

import type { Document, Machine, Prose, ResolvedShop, Step } from '../../resolve/index.ts';

export interface Used {
  readonly tools: ReadonlySet<string>;
  readonly consumables: ReadonlySet<string>;
  /** `machine/part` and `machine/joint`. */
  readonly parts: ReadonlySet<string>;
  readonly joints: ReadonlySet<string>;
  /** Machines for which a procedure is written. */
  readonly machines: ReadonlySet<string>;
}

type Gathering = { readonly [K in keyof Used]: Set<string> };
type Own = Omit<Gathering, 'machines'>;

const known = new WeakMap<ResolvedShop, Used>();

/** Gathered once a shop. Of an incomplete shop it says too little: whoever asks looks at `shop.incomplete` first. */
export function usedIn(shop: ResolvedShop): Used {
  const before = known.get(shop);
  if (before !== undefined) return before;
  const used: Gathering = {
    tools: new Set(),
    consumables: new Set(),
    parts: new Set(),
    joints: new Set(),
    machines: new Set(),
  };
  for (const machine of shop.machines) byMachine(used, machine);
  for (const document of shop.documents) {
    used.machines.add(document.machine);
    byDocument(used, document);
  }
  known.set(shop, used);
  return used;
}

/** A joint needs its parts, its tools and its lubricant, and a part those of which it is made. */
function byMachine(used: Gathering, { id, joints, parts }: Machine): void {
  for (const { plan } of joints) {
    for (const tool of [plan.wrench, plan.socket]) if (tool !== undefined) used.tools.add(tool);
    if (plan.lubricant !== undefined) used.consumables.add(plan.lubricant);
    for (const part of [plan.fastener, ...plan.also, plan.gasket]) used.parts.add(`${id}/${part}`);
  }
  for (const part of parts) {
    for (const p of part.madeOf ?? []) used.parts.add(`${id}/${p}`);
    for (const c of part.resists ?? []) used.consumables.add(c);
  }
}

/** Parts and joints go by their own ids until the procedure is done: most of them come many times. */
function byDocument(used: Gathering, { machine, purpose, variants }: Document): void {
  const own: Own = { tools: used.tools, consumables: used.consumables, parts: new Set(), joints: new Set() };
  inText(own, purpose);
  for (const { stages } of variants) {
    for (const stage of stages) {
      inText(own, stage.intro);
      for (const step of stage.steps) byStep(own, step);
    }
  }
  for (const part of own.parts) used.parts.add(`${machine}/${part}`);
  for (const joint of own.joints) used.joints.add(`${machine}/${joint}`);
}

function byStep(used: Own, step: Step): void {
  for (const tool of step.tools) used.tools.add(tool);
  for (const { id } of step.consumables) used.consumables.add(id);
  for (const { id } of step.remove) used.parts.add(id);
  for (const { id } of step.fit) used.parts.add(id);
  for (const { id } of step.facing) used.parts.add(id);
  if (step.loosen !== undefined) used.joints.add(step.loosen);
  if (step.tighten !== undefined) used.joints.add(step.tighten);
  inText(used, step.text);
  inText(used, step.note);
  for (const { hazard, avoid } of step.warnings) {
    inText(used, hazard);
    inText(used, avoid);
  }
  for (const { ifOut } of step.measures) inText(used, ifOut);
}

function inText(used: Own, prose: Prose | undefined): void {
  if (prose === undefined) return;
  for (const { runs } of prose) {
    for (const { ref } of runs) {
      if (ref === undefined) continue;
      if (ref.kind === 'tool') used.tools.add(ref.id);
      else if (ref.kind === 'consumable') used.consumables.add(ref.id);
      else if (ref.kind === 'part') used.parts.add(ref.id);
      else if (ref.kind === 'joint') used.joints.add(ref.id);
    }
  }
}
