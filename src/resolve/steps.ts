/** One step of one variant: text, warnings, moves of parts, measurements, and what it needs at the bench. */

import type { z } from 'zod';
import type { Range } from '../diagnostics/index.ts';
import { type At, entries, field, items, oneOrMore, optional } from '../model/index.ts';
import type { stepShape } from '../model/shapes/procedure.ts';
import { formatLimit, formatQuantity, joinUnits, MEASURED } from '../units/index.ts';
import type { Context } from './context.ts';
import { lookUp } from './context.ts';
import type { MachineAtHand } from './machines.ts';
import { partQuantity } from './parts.ts';
import { type Names, resolveProse } from './prose.ts';
import { defined, plainText, readLimit, readQuantity, readSource, sourceNote } from './quantities.ts';
import { READ_FROM } from './read-from.ts';
import type { Choice, ConsumableUse, Fate, JointPlan, Measure, PartMove, Step, Warning } from './types.ts';
import { holdsFor, type Only, onlyYaml, variantLabel } from './variants.ts';
import { placeName } from './words.ts';

export type StepContent = z.output<typeof stepShape>;

/** Everything that a step's meaning hangs on. */
export interface StepScene {
  readonly context: Context;
  readonly hand: MachineAtHand;
  readonly choices: readonly Choice[];
  readonly names: Names;
  /** `used by OF-204`: printed under the caret where the step belongs to a shared stage. */
  readonly label: string | undefined;
}

export function resolveStep(scene: StepScene, at: At<StepContent>, number: number): Step {
  const { context, names, label } = scene;
  const { content, report } = context;
  const v = at.value;
  const tools: string[] = [];
  const consumables = new Map<string, ConsumableUse>();
  const addTool = (id: string): void => {
    if (!tools.includes(id)) tools.push(id);
  };
  const addConsumable = (id: string, quantity?: ConsumableUse['quantity']): void => {
    const name = context.consumables.get(id)?.name;
    const known = consumables.get(id);
    if (name === undefined || (known !== undefined && quantity === undefined)) return;
    consumables.set(id, {
      id,
      name,
      ...(quantity === undefined ? {} : { amount: formatQuantity(quantity), quantity }),
    });
  };
  const prose = (t: At<string>) =>
    resolveProse(context, t, names, (kind, id) => {
      if (kind === 'tool') addTool(id);
      if (kind === 'consumable') addConsumable(id);
    });
  const tool = (t: At<string>): string | undefined => {
    const found = lookUp(context, 'tool', content.tools, t.value, t.node.range, label);
    if (found !== undefined) addTool(t.value);
    return found?.value.name;
  };

  const text = prose(field(at, 'do'));
  const warnings: Warning[] = oneOrMore(optional(at, 'warn'))
    .filter((w) => holdsFor(w.value.only, scene.choices))
    .map(
      (w): Warning => ({
        level: w.value.level,
        hazard: prose(field(w, 'hazard')),
        avoid: prose(field(w, 'avoid')),
        [READ_FROM]: w.node,
      }),
    );
  const note = optional(at, 'note');
  const noteProse = note && prose(note);
  for (const t of itemsOf(optional(at, 'with'))) tool(t);
  const use = optional(at, 'use');
  if (use !== undefined) readUse(scene, use, addConsumable);
  const lubricate = optional(at, 'lubricate');
  if (lubricate !== undefined) {
    const id = field(lubricate, 'with');
    if (lookUp(context, 'consumable', content.consumables, id.value, id.node.range, label)) addConsumable(id.value);
  }
  const loosen = optional(at, 'loosen');
  const tighten = optional(at, 'tighten');
  const loosened = loosen && joint(scene, loosen.value, loosen.node.range);
  const tightened = tighten && joint(scene, tighten.value, tighten.node.range);
  for (const id of [loosened?.socket, tightened?.wrench, tightened?.socket]) if (id !== undefined) addTool(id);
  const measures = oneOrMore(optional(at, 'measure'))
    .filter((m) => holdsFor(m.value.only, scene.choices))
    .map((m): Measure => {
      const limit = readLimit(report, field(m, 'limit'), MEASURED) ?? {};
      return {
        what: joinUnits(m.value.what),
        at: (m.value.at ?? []).map(placeName),
        limit,
        limitText: formatLimit(limit),
        unit: (limit.max ?? limit.min)?.unit ?? '',
        tool: m.value.with,
        toolName: tool(field(m, 'with')) ?? m.value.with,
        ifOut: prose(field(m, 'if out')),
        ...defined({ record: m.value.record, source: readSource(m.value.source), condition: m.value.condition }),
      };
    });
  const facing = new Map(Object.entries(v.facing ?? {}));
  const facingAt = optional(at, 'facing');
  for (const f of facingAt === undefined ? [] : entries(facingAt)) names.part(f.key, f.keyRange);
  const remove = optional(at, 'remove');
  const removed = (remove === undefined ? [] : readRemove(remove)).flatMap((r): PartMove[] => {
    const p = names.part(r.id, r.range);
    return p === undefined
      ? []
      : [{ id: r.id, name: p.name, quantity: quantityOf(scene, r.id), ...defined({ fate: r.fate }) }];
  });
  const reuse = optional(at, 'reuse');
  for (const r of reuse === undefined ? [] : entries(reuse)) names.part(r.key, r.keyRange);
  const fit = optional(at, 'fit');
  const fitted = (fit === undefined ? [] : readFit(fit)).flatMap((f): PartMove[] => {
    const p = names.part(f.id, f.range);
    return p === undefined
      ? []
      : [
          {
            id: f.id,
            name: p.name,
            quantity: f.quantity ?? quantityOf(scene, f.id),
            ...defined({ facing: facing.get(f.id) }),
          },
        ];
  });
  const wait = optional(at, 'wait');
  const waitTime = wait && readQuantity(report, field(wait, 'for'), 'time');
  const lift = optional(at, 'lift');
  const mass = lift && readQuantity(report, field(lift, 'mass'), 'mass');
  const heat = optional(at, 'heat');
  const to = heat && readQuantity(report, field(heat, 'to'), 'temperature', { positive: false });
  const most = heat && readQuantity(report, field(heat, 'most'), 'temperature', { positive: false });
  if (heat && to && most && to.si > most.si) {
    report(
      'FLD005',
      field(heat, 'to').node.range,
      `${formatQuantity(to)} is above the highest temperature ${formatQuantity(most)}`,
      { hint: 'make `to` at most `most`' },
    );
  }
  return {
    number,
    anchor: `step-${number}`,
    text,
    warnings,
    tools,
    consumables: [...consumables.values()],
    remove: removed,
    fit: fitted,
    facing: [...facing]
      .filter(([id]) => !fitted.some((f) => f.id === id))
      .flatMap(([id, words]) => {
        const name = scene.hand.parts.get(id)?.value.name;
        return name === undefined ? [] : [{ id, name, facing: words }];
      }),
    measures,
    records: oneOrMore(optional(at, 'record')).map((r) => joinUnits(r.value)),
    release: (v.release ?? []).map(joinUnits),
    prove: (v.prove ?? []).map(joinUnits),
    closeOut: v.close_out ?? [],
    reuse: Object.entries(v.reuse ?? {}).map(([id, { reason, source }]) => ({
      id,
      reason: joinUnits(reason),
      source: sourceNote(source),
    })),
    range: field(at, 'do').node.range,
    [READ_FROM]: at.node,
    ...defined({
      label,
      note: noteProse,
      lubricate: lubricate && {
        id: lubricate.value.with,
        name: context.consumables.get(lubricate.value.with)?.name ?? lubricate.value.with,
        where: lubricate.value.where,
      },
      loosen: loosened?.id,
      tighten: tightened?.id,
      wait: wait && waitTime && { time: waitTime, why: joinUnits(wait.value.why) },
      hold: plainText(v.hold),
      witness: plainText(v.witness),
      lift: lift && mass && { mass, by: joinUnits(lift.value.by) },
      heat: to && most && { to, most },
      time: readQuantity(report, optional(at, 'time'), 'time'),
    }),
  };
}

function itemsOf<T>(at: At<readonly T[]> | undefined): readonly At<T>[] {
  return at === undefined ? [] : items(at);
}

function readUse(
  scene: StepScene,
  use: At<readonly string[] | Record<string, string>>,
  add: (id: string, quantity?: ConsumableUse['quantity']) => void,
): void {
  const { context, label } = scene;
  const known = (id: string, range: Range): boolean =>
    lookUp(context, 'consumable', context.content.consumables, id, range, label) !== undefined;
  if (Array.isArray(use.value)) {
    for (const c of items(use as At<readonly string[]>)) if (known(c.value, c.node.range)) add(c.value);
    return;
  }
  for (const e of entries(use as At<Record<string, string>>)) {
    const amount = readQuantity(context.report, e, ['volume', 'mass', 'length']);
    if (known(e.key, e.keyRange)) add(e.key, amount);
  }
}

function readRemove(
  remove: At<readonly string[] | Record<string, Fate>>,
): readonly { id: string; range: Range; fate?: Fate }[] {
  if (Array.isArray(remove.value))
    return items(remove as At<readonly string[]>).map((r) => ({ id: r.value, range: r.node.range }));
  return entries(remove as At<Record<string, Fate>>).map((e) => ({ id: e.key, range: e.keyRange, fate: e.value }));
}

function readFit(
  fit: At<readonly string[] | Record<string, number>>,
): readonly { id: string; range: Range; quantity?: number }[] {
  if (Array.isArray(fit.value))
    return items(fit as At<readonly string[]>).map((f) => ({ id: f.value, range: f.node.range }));
  return entries(fit as At<Record<string, number>>).map((e) => ({ id: e.key, range: e.keyRange, quantity: e.value }));
}

function quantityOf(scene: StepScene, id: string): number {
  const part = scene.hand.parts.get(id);
  return part === undefined ? 1 : (partQuantity(part, [...scene.hand.joints.values()], scene.choices) ?? 1);
}

/** The joint's plan for this variant; unknown or absent ones are reported. */
function joint(scene: StepScene, id: string, range: Range): JointPlan | undefined {
  return scene.names.joint(id, range) === undefined ? undefined : scene.hand.plan(id, scene.choices);
}

/** Names of parts and joints of one machine in one variant. */
export function machineNames(
  context: Context,
  hand: MachineAtHand,
  choices: readonly Choice[],
  label: string | undefined,
): Pick<Names, 'part' | 'joint'> {
  const { file } = hand.entry.node.range;
  const faulty = hand.entry.dropped;
  const variant = variantLabel(choices);
  const absent = (kind: string, id: string, range: Range, only: Only): void =>
    context.report('REF015', range, `${kind} \`${id}\` does not exist in variant ${variant}`, {
      label,
      hint: `write \`only: ${onlyYaml(only)}\` beside it in the step, or change \`only\` of the ${kind} in \`${file}\``,
    });
  const other = (kind: string, meant: string, id: string, range: Range, hint: string): void =>
    context.report('REF012', range, `\`${id}\` is a ${kind}, and a ${meant} is meant here`, { label, hint });
  return {
    part: (id, range) => {
      const joint = hand.parts.has(id) || faulty?.has(id) ? undefined : hand.joints.get(id)?.value;
      if (joint !== undefined) {
        other('joint', 'part', id, range, `name a part, such as its fastener \`${joint.fastener}\``);
        return undefined;
      }
      const found = lookUp(context, 'part', { entries: hand.parts, faulty, unread: false, file }, id, range, label);
      if (found === undefined) return undefined;
      if (found.value.only !== undefined && !holdsFor(found.value.only, choices))
        absent('part', id, range, found.value.only);
      return found.value;
    },
    joint: (id, range) => {
      if (hand.parts.has(id) && !hand.joints.has(id) && !faulty?.has(id)) {
        const joints = [...hand.joints.values()].filter(({ value: v }) =>
          [v.fastener, v.gasket, ...(v.also ?? [])].includes(id),
        );
        const names = joints.map((j) => `\`${j.key}\``).join(', ');
        other('part', 'joint', id, range, names === '' ? `name a joint of \`${file}\`` : `it belongs to ${names}`);
        return undefined;
      }
      const found = lookUp(context, 'joint', { entries: hand.joints, faulty, unread: false, file }, id, range, label);
      if (found === undefined) return undefined;
      if (found.value.only !== undefined && !holdsFor(found.value.only, choices))
        absent('joint', id, range, found.value.only);
      return found.value;
    },
  };
}
