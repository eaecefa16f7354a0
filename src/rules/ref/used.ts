/** What some step, text, joint or list of the shop names: everything else in the registers is used by nobody. */

import type { Document, Machine, Prose, ResolvedShop, Step, Variant } from '../../resolve/index.ts';

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
    inText(used, document.machine, document.purpose);
    for (const variant of document.variants) byVariant(used, document, variant);
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

function byVariant(used: Gathering, { machine }: Document, { stages }: Variant): void {
  for (const stage of stages) {
    inText(used, machine, stage.intro);
    for (const step of stage.steps) byStep(used, machine, step);
  }
}

function byStep(used: Gathering, machine: string, step: Step): void {
  for (const tool of step.tools) used.tools.add(tool);
  for (const { id } of step.consumables) used.consumables.add(id);
  for (const { id } of step.remove) used.parts.add(`${machine}/${id}`);
  for (const { id } of step.fit) used.parts.add(`${machine}/${id}`);
  for (const { id } of step.facing) used.parts.add(`${machine}/${id}`);
  for (const joint of [step.loosen, step.tighten]) if (joint !== undefined) used.joints.add(`${machine}/${joint}`);
  inText(used, machine, step.text);
  inText(used, machine, step.note);
  for (const { hazard, avoid } of step.warnings) {
    inText(used, machine, hazard);
    inText(used, machine, avoid);
  }
  for (const { ifOut } of step.measures) inText(used, machine, ifOut);
}

function inText(used: Gathering, machine: string, prose: Prose | undefined): void {
  if (prose === undefined) return;
  for (const { runs } of prose) {
    for (const { ref } of runs) {
      if (ref === undefined) continue;
      if (ref.kind === 'tool') used.tools.add(ref.id);
      else if (ref.kind === 'consumable') used.consumables.add(ref.id);
      else if (ref.kind === 'part') used.parts.add(`${machine}/${ref.id}`);
      else if (ref.kind === 'joint') used.joints.add(`${machine}/${ref.id}`);
    }
  }
}
