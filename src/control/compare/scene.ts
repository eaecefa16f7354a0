/** What the comparison of one variant looks up: names, kinds, steps matched, things that got another name. */

import type { Variant } from '../../resolve/types.ts';
import type { StepMatch } from './match-steps.ts';
import { sameWords } from './phrases.ts';
import { likeness } from './texts.ts';
import type { Finding, Scene, Swap, ThingKind } from './types.ts';

interface Thing {
  readonly kind: ThingKind;
  readonly id: string;
  readonly name: string;
  /** As in its register: `socket`, `gasket`. */
  readonly sort?: string;
}

/** Everything that the card names, by `tool:feeler`; what its lists hold comes first. */
function thingsOf(v: Variant): ReadonlyMap<string, Thing> {
  const steps = v.stages.flatMap((s) => s.steps);
  const all: readonly Thing[] = [
    ...v.tools.map(({ id, name, kind }): Thing => ({ kind: 'tool', id, name, sort: kind })),
    ...v.consumables.map(({ id, name, kind }): Thing => ({ kind: 'consumable', id, name, sort: kind })),
    ...v.parts.map(({ id, name, kind }): Thing => ({ kind: 'part', id, name, sort: kind })),
    ...v.joints.flatMap((j): readonly Thing[] => [
      { kind: 'joint', id: j.id, name: j.name },
      { kind: 'part', id: j.fastener, name: j.fastenerName },
      { kind: 'tool', id: j.wrench, name: j.wrenchName },
      ...(j.socket === undefined ? [] : [{ kind: 'tool' as const, id: j.socket, name: j.socketName ?? j.socket }]),
      ...(j.lubricant === undefined
        ? []
        : [{ kind: 'consumable' as const, id: j.lubricant, name: j.lubricantName ?? j.lubricant }]),
    ]),
    ...steps.flatMap((s) => s.facing.map(({ id, name }): Thing => ({ kind: 'part', id, name }))),
  ];
  const found = new Map<string, Thing>();
  for (const thing of all) {
    const key = `${thing.kind}:${thing.id}`;
    if (!found.has(key)) found.set(key, thing);
  }
  return found;
}

export function sceneOf(older: Variant, newer: Variant, match: StepMatch): Scene {
  const olds = thingsOf(older);
  const news = thingsOf(newer);
  const numbers = new Map(match.pairs.map((p) => [p.older.number, p.newer.number]));
  const nowAt = (number: number): number | undefined => numbers.get(number);
  const renamed = [...olds].flatMap(([key, thing]): readonly Swap[] => {
    const now = news.get(key);
    if (now === undefined || sameWords(thing.name, now.name)) return [];
    return [{ from: key, to: key, before: thing.name, after: now.name }];
  });
  return {
    older,
    newer,
    nowAt,
    renamed,
    olderName: (kind, id) => olds.get(`${kind}:${id}`)?.name ?? id,
    newerName: (kind, id) => news.get(`${kind}:${id}`)?.name ?? id,
    kindOf: (kind, id) => (news.get(`${kind}:${id}`) ?? olds.get(`${kind}:${id}`))?.sort,
    likeness: (a, b, swaps) => likeness(a, b, nowAt, [...swaps, ...renamed]),
  };
}

/** `tool renamed: feeler gauge → gap gauge`, once however often it is named. */
export function renamings({ renamed }: Scene): readonly Finding[] {
  return renamed.flatMap(({ from, before, after }): readonly Finding[] => {
    const of = (['tool', 'consumable', 'part', 'joint'] as const).find((kind) => from.startsWith(`${kind}:`));
    if (of === undefined) return [];
    const say = `${of} renamed: ${before} → ${after}`;
    return [{ kind: 'reworded', of, form: 'whole', say, before, after, stepsBefore: [], stepsAfter: [] }];
  });
}
