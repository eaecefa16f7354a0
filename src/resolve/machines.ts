/** Machines resolved: parts, joints in each form that they take over the variants, serial ranges. */

import { type Entry, entries, field, items, type MachineContent, optional } from '../model/index.ts';
import { joinUnits } from '../units/index.ts';
import type { Context } from './context.ts';
import { lookUp } from './context.ts';
import type { JointEntry } from './joint-content.ts';
import { planJoint } from './joints.ts';
import { checkCount, checkFastener } from './part-checks.ts';
import { type PartContent, partQuantity } from './parts.ts';
import { defined, plainText, readQuantity, readSource } from './quantities.ts';
import { READ_FROM } from './read-from.ts';
import type { Choice, JointPlan, Machine, Part } from './types.ts';
import { checkOnly, checkSerials, combinations, holdsFor, type Only, onlyText, variantLabel } from './variants.ts';

/** A machine with its joints at hand by id, each planned once per set of choices. */
export interface MachineAtHand {
  readonly entry: Entry<MachineContent>;
  readonly parts: ReadonlyMap<string, Entry<MachineContent['parts'][string]>>;
  readonly joints: ReadonlyMap<string, JointEntry>;
  readonly plan: (joint: string, choices: readonly Choice[]) => JointPlan | undefined;
}

export function machineAtHand(context: Context, entry: Entry<MachineContent>): MachineAtHand {
  const parts = new Map(entries(field(entry, 'parts')).map((p) => [p.key, p]));
  const written = optional(entry, 'joints');
  const joints = new Map((written === undefined ? [] : entries(written)).map((j) => [j.key, j as JointEntry]));
  const plans = new Map<string, JointPlan | undefined>();
  return {
    entry,
    parts,
    joints,
    plan: (id, choices) => {
      const joint = joints.get(id);
      if (joint === undefined) return undefined;
      // Only the choices that could change this joint are part of its key: most joints are computed once.
      const axes = new Set((joint.value.when ?? []).flatMap((w) => Object.keys(w.only)));
      const relevant = choices.filter((c) => axes.has(c.axis));
      const key = `${id} ${relevant.map((c) => `${c.axis}=${c.value}`).join(' ')}`;
      if (!plans.has(key)) plans.set(key, planJoint(context, entry, joint, relevant));
      return plans.get(key);
    },
  };
}

export function resolveMachine(context: Context, hand: MachineAtHand): Machine {
  const { entry } = hand;
  const { content, report } = context;
  const v = entry.value;
  lookUp(context, 'bench', content.benches, v.bench, field(entry, 'bench').node.range);
  checkSerials(context, entry);
  const all = combinations(v.variants);
  const joints = [...hand.joints.values()];
  // A count over joints of which one could not be read would be a wrong count.
  const sound = (entry.dropped?.size ?? 0) === 0;
  for (const j of joints) {
    checkOnly(context, entry, optional(j, 'only') as Parameters<typeof checkOnly>[2], undefined);
    const when = optional(j, 'when');
    if (when?.node.kind === 'sequence') {
      when.value.forEach((w, i) => {
        const node = when.node.kind === 'sequence' ? when.node.items[i] : undefined;
        if (node !== undefined)
          checkOnly(context, entry, field({ value: w as { only: Only }, node }, 'only'), undefined);
      });
    }
  }
  const parts: Part[] = [...hand.parts.values()].map((p) => {
    checkOnly(context, entry, optional(p, 'only') as Parameters<typeof checkOnly>[2], undefined);
    if (sound) checkCount(report, p, joints, all);
    const stated = checkFastener(report, p, joints, all);
    checkNames(context, hand, p);
    const first = all.find((choices) => holdsFor(p.value.only, choices)) ?? [];
    const quantity = partQuantity(p, joints, first);
    if (sound && quantity === undefined) {
      report('FLD002', p.keyRange, `part \`${p.key}\` has no \`quantity\``, {
        hint: 'say how many there are; only fasteners of a joint may leave it out',
      });
    }
    return {
      id: p.key,
      name: p.value.name,
      kind: p.value.kind,
      quantity: quantity ?? 1,
      alwaysReplace: p.value.always_replace ?? false,
      keyRange: p.keyRange,
      [READ_FROM]: p.node,
      ...stated,
      ...(p.value.past_yield === true ? { pastYield: true as const } : {}),
      ...(p.value.locking === true ? { locking: true as const } : {}),
      ...defined({
        elastomer: p.value.elastomer,
        resists: p.value.resists === undefined ? undefined : Object.keys(p.value.resists),
        madeOf: p.value.made_of,
        lead: readQuantity(report, optional(p, 'lead'), 'time'),
        rate: readQuantity(report, optional(p, 'rate'), 'ratio'),
        number: p.value.number,
        material: plainText(p.value.material),
        mass: readQuantity(report, optional(p, 'mass'), 'mass'),
        kit: p.value.kit,
        only: onlyText(p.value.only),
        note: plainText(p.value.note),
      }),
    };
  });
  return {
    id: entry.key,
    name: v.name,
    bench: v.bench,
    axes: Object.entries(v.variants ?? {}).map(([axis, values]) => ({ axis, values })),
    serials: (v.serials ?? []).map((s) => ({
      from: s.from,
      to: s.to,
      is: Object.entries(s.is).map(([axis, value]) => ({ axis, value })),
    })),
    energy: (v.energy ?? []).map(joinUnits),
    rotates: v.rotates ?? false,
    keyRange: field(entry, 'id').node.range,
    [READ_FROM]: entry.node,
    parts,
    joints: joints.flatMap((j) => formsOf(hand, j, all)),
    ...defined({ mark: v.mark, where: v.where, about: plainText(v.about), manual: readSource(v.manual) }),
  };
}

/** Ids that a part names: what it is built of, and what its rubber resists. */
function checkNames(context: Context, hand: MachineAtHand, part: Entry<PartContent>): void {
  const { content } = context;
  const { file } = hand.entry.node.range;
  const register = { entries: hand.parts, faulty: hand.entry.dropped, unread: false, file };
  const madeOf = optional(part, 'made_of');
  for (const p of madeOf === undefined ? [] : items(madeOf)) lookUp(context, 'part', register, p.value, p.node.range);
  const resists = optional(part, 'resists');
  for (const c of resists === undefined ? [] : entries(resists))
    lookUp(context, 'consumable', content.consumables, c.key, c.keyRange);
}

/** Each different plan of the joint once, with the variants that share it. */
function formsOf(hand: MachineAtHand, joint: JointEntry, all: readonly (readonly Choice[])[]): Machine['joints'] {
  const forms = new Map<JointPlan, string[]>();
  for (const choices of all) {
    if (!holdsFor(joint.value.only, choices)) continue;
    const plan = hand.plan(joint.key, choices);
    if (plan !== undefined) forms.set(plan, [...(forms.get(plan) ?? []), variantLabel(choices)]);
  }
  return [...forms].map(([plan, labels]) => ({
    plan,
    variants: forms.size === 1 && joint.value.only === undefined ? '' : labels.join('; '),
  }));
}
