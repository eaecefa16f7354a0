/** Tools, consumables and parts of a matched step: what came, what went, what took the place of what. */

import type { ConsumableUse, Fate, PartMove, Step } from '../../resolve/types.ts';
import { exchanged, paired } from './pairing.ts';
import { exchange, sourceChange, textChange, valueChange } from './phrases.ts';
import type { PartResult, Scene, StepPair, Swap, ThingKind, Told } from './types.ts';

interface Thing {
  readonly id: string;
  readonly name: string;
}

/** What took the place of what, as the references of the step's texts name it. */
export function swapOf(kind: ThingKind, before: Thing, after: Thing): Swap {
  return { from: `${kind}:${before.id}`, to: `${kind}:${after.id}`, before: before.name, after: after.name };
}

const NOTHING: PartResult = { told: [], marks: [], swaps: [] };

function result(told: readonly Told[], swaps: readonly Swap[] = []): PartResult {
  return told.length === 0 && swaps.length === 0 ? NOTHING : { told, marks: told.length > 0 ? ['lists'] : [], swaps };
}

/** Those that the step takes besides the ones that joint and measurements bring: these are reported there. */
export function compareTools(scene: Scene, { older, newer }: StepPair): PartResult {
  const own = (step: Step, variant: Scene['newer']): readonly string[] => {
    const brought = broughtBy(step, variant);
    return step.tools.filter((id) => !brought.has(id));
  };
  // A tool that the joint brings now and that the author listed before has not gone.
  const olds = own(older, scene.older).filter((id) => !newer.tools.includes(id));
  const news = own(newer, scene.newer).filter((id) => !older.tools.includes(id));
  const kind = (id: string): string | undefined => scene.kindOf('tool', id);
  const pairs = exchanged({ removed: olds, added: news }, (a, b) => kind(a) !== undefined && kind(a) === kind(b));
  const before = (id: string): Thing => ({ id, name: scene.olderName('tool', id) });
  const after = (id: string): Thing => ({ id, name: scene.newerName('tool', id) });
  return result(
    [
      ...pairs.both.map(([a, b]) => exchange('tool', before(a), after(b))),
      ...pairs.added.flatMap((id) => valueChange('tool', 'tool', '', after(id).name)),
      ...pairs.removed.flatMap((id) => valueChange('tool', 'tool', before(id).name, '')),
    ],
    pairs.both.map(([a, b]) => swapOf('tool', before(a), after(b))),
  );
}

function broughtBy(step: Step, variant: Scene['newer']): ReadonlySet<string> {
  const joint = (id: string | undefined) => variant.joints.find((j) => j.id === id);
  const tightened = joint(step.tighten);
  const ids = [tightened?.wrench, tightened?.socket, joint(step.loosen)?.socket, ...step.measures.map((m) => m.tool)];
  return new Set(ids.filter((id) => id !== undefined));
}

/** Consumables with their amounts, and what is lubricated where. */
export function compareConsumables(scene: Scene, { older, newer }: StepPair): PartResult {
  const lists = paired(older.consumables, newer.consumables, (c) => c.id);
  const kind = (c: ConsumableUse): string | undefined => scene.kindOf('consumable', c.id);
  const lubricants = (a: ConsumableUse, b: ConsumableUse): boolean =>
    a.id === older.lubricate?.id && b.id === newer.lubricate?.id;
  const pairs = exchanged(lists, (a, b) => lubricants(a, b) || (kind(a) !== undefined && kind(a) === kind(b)));
  const told: Told[] = [];
  for (const [a, b] of pairs.both) {
    // The joint says for itself with what it is lubricated now.
    if (!isLubricantOfJoint(scene, older, newer, a.id, b.id)) told.push(exchange('consumable', a, b));
  }
  for (const [a, b] of [...lists.both, ...pairs.both]) {
    told.push(...valueChange('consumable', `amount of ${b.name}`, a.amount ?? '', b.amount ?? ''));
  }
  const withAmount = (c: ConsumableUse): string => (c.amount === undefined ? c.name : `${c.name}, ${c.amount}`);
  for (const c of pairs.added) told.push(...valueChange('consumable', 'consumable', '', withAmount(c)));
  for (const c of pairs.removed) told.push(...valueChange('consumable', 'consumable', withAmount(c), ''));
  told.push(...compareLubrication(older.lubricate, newer.lubricate));
  const swaps = pairs.both.map(([a, b]) => swapOf('consumable', a, b));
  const { lubricate: before } = older;
  const { lubricate: after } = newer;
  // Where the step uses both for something else as well, its list stays as it was.
  if (
    before !== undefined &&
    after !== undefined &&
    before.id !== after.id &&
    !pairs.both.some(([a, b]) => a.id === before.id && b.id === after.id) &&
    !isLubricantOfJoint(scene, older, newer, before.id, after.id)
  ) {
    told.push(exchange('consumable', before, after));
    swaps.push(swapOf('consumable', before, after));
  }
  return { ...result(told, swaps), marks: told.length + swaps.length > 0 ? ['lists'] : [] };
}

function isLubricantOfJoint(scene: Scene, older: Step, newer: Step, before: string, after: string): boolean {
  const former = scene.older.joints.find((j) => j.id === older.tighten);
  const joint = scene.newer.joints.find((j) => j.id === newer.tighten);
  return former?.id === joint?.id && former?.lubricant === before && joint?.lubricant === after;
}

function compareLubrication(before: Step['lubricate'], after: Step['lubricate']): readonly Told[] {
  if (before === undefined || after === undefined) {
    const words = (l: Step['lubricate']): string => (l === undefined ? '' : `${l.name} on ${l.where}`);
    return valueChange('consumable', 'lubrication', words(before), words(after));
  }
  return valueChange('consumable', 'place of lubrication', before.where, after.where);
}

/** Parts taken off and fitted, which way they face, and which go back although they are otherwise renewed. */
export function compareParts(scene: Scene, { older, newer }: StepPair): PartResult {
  const off = compareMoves(scene, older.remove, newer.remove, 'taken off');
  const on = compareMoves(scene, older.fit, newer.fit, 'fitted');
  const facing = paired(older.facing, newer.facing, (f) => f.id);
  const reuse = paired(older.reuse, newer.reuse, (r) => r.id);
  const name = (id: string): string => scene.newerName('part', id);
  const told: readonly Told[] = [
    ...off.told,
    ...on.told,
    ...facing.both.flatMap(([a, b]) => valueChange('part', `facing of ${b.name}`, a.facing, b.facing)),
    ...facing.added.flatMap((f) => valueChange('part', `facing of ${f.name}`, '', f.facing)),
    ...facing.removed.flatMap((f) => valueChange('part', `facing of ${f.name}`, f.facing, '')),
    ...reuse.both.flatMap(([a, b]) => [
      ...textChange('part', `reason why ${name(b.id)} goes back`, a.reason, b.reason),
      ...sourceChange('part', `source for ${name(b.id)} going back`, a.source, b.source),
    ]),
    ...reuse.added.flatMap((r) => valueChange('part', `reuse of ${name(r.id)}`, '', r.reason)),
    ...reuse.removed.flatMap((r) => valueChange('part', `reuse of ${scene.olderName('part', r.id)}`, r.reason, '')),
  ];
  return result(told, [...off.swaps, ...on.swaps]);
}

function compareMoves(
  scene: Scene,
  older: readonly PartMove[],
  newer: readonly PartMove[],
  done: string,
): { readonly told: readonly Told[]; readonly swaps: readonly Swap[] } {
  const lists = paired(older, newer, (m) => m.id);
  const kind = (m: PartMove): string | undefined => scene.kindOf('part', m.id);
  const pairs = exchanged(lists, (a, b) => kind(a) !== undefined && kind(a) === kind(b));
  const fate = (f: Fate | undefined): string => f ?? '';
  const count = (m: PartMove): string => String(m.quantity);
  const fully = (m: PartMove): string =>
    [m.name, m.quantity === 1 ? '' : `quantity ${m.quantity}`, fate(m.fate), m.facing ?? '']
      .filter((t) => t !== '')
      .join(', ');
  const told = [
    ...pairs.both.map(([a, b]) => exchange('part', a, b)),
    ...[...lists.both, ...pairs.both].flatMap(([a, b]) => [
      ...valueChange('part', `fate of ${b.name}`, fate(a.fate), fate(b.fate)),
      ...valueChange('part', `quantity of ${b.name}`, count(a), count(b)),
      ...valueChange('part', `facing of ${b.name}`, a.facing ?? '', b.facing ?? ''),
    ]),
    ...pairs.added.flatMap((m) => valueChange('part', `part ${done}`, '', fully(m))),
    ...pairs.removed.flatMap((m) => valueChange('part', `part ${done}`, fully(m), '')),
  ];
  return { told, swaps: pairs.both.map(([a, b]) => swapOf('part', a, b)) };
}
