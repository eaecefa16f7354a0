/** Ids mistyped, of the wrong register, deleted where they are needed. */

import type { Random } from '../random.ts';
import { away, entryLines, slip } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import { type At, inEntries, inSteps, references, retype, scalars, typedOver } from './make.ts';
import type { Entry, Scene } from './scene.ts';
import { listAt, mapAt, mapsIn } from './sheet.ts';
import { mistyped } from './typing.ts';

const typo = (value: string, random: Random): string => mistyped(random, value);

function mistypedInText(scheme: string): (scene: Scene) => Site[] {
  return (scene) =>
    references(scene, scheme).map(
      ({ sheet, stretch, id }) =>
        (random) =>
          typedOver(sheet, stretch, mistyped(random, id)),
    );
}

/**
 * Another scheme before a right id: `<consumable:wire-brush>`. Where a part and a joint share an id, the text then names
 * the part, which is there: no mistake that would mislead anybody.
 */
function otherScheme(from: string, to: string): (scene: Scene) => Site[] {
  return (scene) =>
    references(scene, from)
      .filter(({ id }) => to !== 'part' || !scene.parts.some((p) => p.id === id))
      .map(
        ({ sheet, stretch }) =>
          () =>
            typedOver(sheet, { start: stretch.start - from.length - 1, end: stretch.start }, `${to}:`),
      );
}

/** A register entry deleted although something still uses it. */
function deleted(entries: (scene: Scene) => readonly Entry[], register: (scene: Scene) => ReturnType<typeof mapAt>) {
  return (scene: Scene): Site[] =>
    entries(scene).map((e) => () => {
      const map = register(scene);
      const lines = map === undefined ? undefined : entryLines(e.sheet, map, e.id);
      return lines === undefined ? undefined : slip(e.sheet, away(lines), [e.id]);
    });
}

const stepsAt =
  (...keys: string[]) =>
  (scene: Scene): At[] =>
    inSteps(scene.steps, ...keys);
const jointsAt =
  (...keys: string[]) =>
  (scene: Scene): At[] =>
    inEntries(scene.joints, ...keys);

function peopleNamed({ procedure, benches }: Scene): At[] {
  const revisions = mapsIn(listAt(procedure.root, 'revisions'));
  return [
    ...scalars(procedure, procedure.root, 'owner'),
    ...revisions.flatMap((r) => ['author', 'approver'].flatMap((key) => scalars(procedure, r, key))),
    ...benches.root.items.flatMap((p) => {
      const bench = mapAt(benches.root, String(p.key));
      return bench === undefined ? [] : scalars(benches, bench, 'lead');
    }),
  ];
}

export const REFERENCES: readonly Kind[] = [
  { name: 'tool id mistyped in a list', checks: ['REF001'], sites: retype(stepsAt('with'), typo) },
  { name: 'tool id mistyped in a text', checks: ['REF001'], sites: mistypedInText('tool') },
  { name: 'tool id mistyped in a joint', checks: ['REF001'], sites: retype(jointsAt('wrench', 'socket'), typo) },
  { name: 'consumable id mistyped in a list', checks: ['REF002'], sites: retype(stepsAt('use'), typo) },
  { name: 'consumable id mistyped in a text', checks: ['REF002'], sites: mistypedInText('consumable') },
  { name: 'part id mistyped where it comes off', checks: ['REF003'], sites: retype(stepsAt('remove'), typo) },
  { name: 'part id mistyped where it goes on', checks: ['REF003'], sites: retype(stepsAt('fit'), typo) },
  { name: 'part id mistyped in a text', checks: ['REF003'], sites: mistypedInText('part') },
  {
    name: 'part id mistyped in a joint',
    checks: ['REF003'],
    sites: retype(jointsAt('fastener', 'also', 'gasket'), typo),
  },
  { name: 'joint id mistyped in a step', checks: ['REF004'], sites: retype(stepsAt('tighten', 'loosen'), typo) },
  { name: 'joint id mistyped in a text', checks: ['REF004'], sites: mistypedInText('joint') },
  {
    name: 'document number mistyped in a binder',
    checks: ['REF005'],
    sites: (scene) =>
      scene.benches.root.items.flatMap((p) => {
        const bench = mapAt(scene.benches.root, String(p.key));
        const binder = bench === undefined ? [] : scalars(scene.benches, bench, 'binder');
        return binder.flatMap((at) =>
          retype(
            () => [at],
            (v, random) => v.slice(0, -1) + String(random.whole(10)),
          )(scene),
        );
      }),
  },
  {
    name: 'step id mistyped in a text',
    checks: ['REF006'],
    sites: mistypedInText('step'),
  },
  {
    name: 'machine mistyped',
    checks: ['REF007'],
    sites: retype(({ procedure }) => scalars(procedure, procedure.root, 'machine'), typo),
  },
  {
    name: 'bench mistyped',
    checks: ['REF008'],
    sites: retype(({ machine }) => scalars(machine, machine.root, 'bench'), typo),
  },
  { name: 'person mistyped', checks: ['REF009'], sites: retype(peopleNamed, typo) },
  {
    name: 'shared stage mistyped',
    checks: ['REF010'],
    sites: retype(({ procedure, order }) => mapsIn(order).flatMap((s) => scalars(procedure, s, 'use')), typo),
  },
  {
    name: 'variant mistyped',
    checks: ['REF013'],
    sites: retype(
      ({ procedure, steps, machine, parts, joints }) => [
        ...steps.flatMap((s) => variantWords(s.sheet, s.map)),
        ...[...parts, ...joints].flatMap((e) => variantWords(machine, e.map)),
        ...valuesUnder(procedure, mapAt(procedure.root, 'applies')),
      ],
      typo,
    ),
  },
  {
    name: 'consumable scheme written before a tool',
    checks: ['REF012'],
    sites: otherScheme('tool', 'consumable'),
  },
  { name: 'tool scheme written before a part', checks: ['REF012', 'REF001'], sites: otherScheme('part', 'tool') },
  { name: 'part scheme written before a joint', checks: ['REF012', 'REF003'], sites: otherScheme('joint', 'part') },
  {
    name: 'tool listed among the consumables',
    checks: ['REF012'],
    sites: (scene) => listedUnder(scene, 'with', 'use'),
  },
  {
    name: 'consumable listed among the tools',
    checks: ['REF012'],
    sites: (scene) => listedUnder(scene, 'use', 'with'),
  },
  {
    name: 'entry of a tool deleted',
    checks: ['REF001'],
    sites: deleted(
      (s) => s.toolsUsed,
      (s) => s.tools.root,
    ),
  },
  {
    name: 'entry of a consumable deleted',
    checks: ['REF002'],
    sites: deleted(
      (s) => s.consumablesUsed,
      (s) => s.consumables.root,
    ),
  },
  {
    name: 'entry of a part deleted',
    // A part and a joint may share an id: the references then find the joint.
    checks: ['REF003', 'REF012'],
    sites: deleted(
      (s) => s.parts,
      (s) => mapAt(s.machine.root, 'parts'),
    ),
  },
  {
    name: 'entry of a joint deleted',
    checks: ['REF004', 'REF012'],
    sites: deleted(
      (s) => s.joints,
      (s) => mapAt(s.machine.root, 'joints'),
    ),
  },
];

function variantWords(sheet: At['sheet'], map: Parameters<typeof mapAt>[0]): At[] {
  return valuesUnder(sheet, mapAt(map, 'only'));
}

function valuesUnder(sheet: At['sheet'], map: ReturnType<typeof mapAt>): At[] {
  return (map?.items ?? []).flatMap((p) => (map === undefined ? [] : scalars(sheet, map, String(p.key))));
}

/** A key of the step renamed, as by the wrong choice of an editor's list: `use: [wire-brush]`. */
function listedUnder(scene: Scene, from: string, to: string): Site[] {
  return scene.steps.flatMap(({ sheet, map }) => {
    const pair = map.items.find((p) => String(p.key) === from);
    const list = listAt(map, from);
    if (pair === undefined || list === undefined || map.has(to)) return [];
    const [start, end] = (pair.key as { range: [number, number, number] }).range;
    return [() => typedOver(sheet, { start, end }, to)];
  });
}
