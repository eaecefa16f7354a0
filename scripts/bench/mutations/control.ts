/** Revisions, approval, sources. */

import type { YAMLMap } from 'yaml';
import { away, exchanged, itemAway, itemLines, keyAway, over, type Slip, slip, textOf } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import { lose, retype, scalars } from './make.ts';
import { measuresOf, type Scene } from './scene.ts';
import { listAt, mapAt, mapsIn, type Sheet, scalarAt, stretchOf, wordsAt } from './sheet.ts';
import { mistyped } from './typing.ts';

export const revisions = ({ procedure }: Scene): readonly YAMLMap[] => mapsIn(listAt(procedure.root, 'revisions'));

/** The revision in force, and what is typed over one of its values. */
export function last(key: string, change: (value: string, scene: Scene, revision: YAMLMap) => readonly string[]) {
  return (scene: Scene): Site[] =>
    revisions(scene)
      .slice(-1)
      .map((r) => (random) => {
        const scalar = scalarAt(r, key);
        const values = scalar === undefined ? [] : change(String(scalar.value), scene, r);
        return scalar === undefined || values.length === 0
          ? undefined
          : slip(scene.procedure, [over(scene.procedure, scalar, random.pick(values))]);
      });
}

/** Every `source` of measures, joints and machine, and the list of the procedure. */
export function sources(scene: Scene): readonly { sheet: Sheet; map: YAMLMap }[] {
  const of = (sheet: Sheet, map: YAMLMap | undefined, key: string) => {
    const inner = map === undefined ? undefined : mapAt(map, key);
    return inner === undefined ? [] : [{ sheet, map: inner }];
  };
  return [
    ...mapsIn(listAt(scene.procedure.root, 'sources')).map((map) => ({ sheet: scene.procedure, map })),
    ...scene.steps.flatMap((s) => measuresOf(s.map).flatMap((m) => of(s.sheet, m, 'source'))),
    ...scene.joints.flatMap((j) => of(j.sheet, j.map, 'source')),
    ...of(scene.machine, scene.machine.root, 'manual'),
  ];
}

const year =
  (by: number) =>
  (date: string): string =>
    date.replace(/^\d{4}/, (y) => String(Number(y) + by));

export const CONTROL: readonly Kind[] = [
  {
    name: 'approver who may not approve',
    checks: ['REV004'],
    sites: last('approver', (v, { people }, r) =>
      people.root.items
        .map((p) => String(p.key))
        .filter((id) => id !== v && id !== wordsAt(r, 'author') && !mapAt(people.root, id)?.has('approves')),
    ),
  },
  {
    name: 'author named as approver',
    checks: ['REV003'],
    sites: (scene) =>
      revisions(scene).map((r) => () => {
        const scalar = scalarAt(r, 'approver');
        return scalar === undefined
          ? undefined
          : slip(scene.procedure, [over(scene.procedure, scalar, wordsAt(r, 'author'))]);
      }),
  },
  {
    name: 'dates of approval and effect exchanged',
    checks: ['REV002'],
    sites: (scene) =>
      revisions(scene).map((r) => (): Slip | undefined => {
        const [a, b] = [scalarAt(r, 'approved'), scalarAt(r, 'effective')];
        if (a === undefined || b === undefined) return undefined;
        const p = scene.procedure;
        return slip(p, exchanged(p, stretchOf(p, a), stretchOf(p, b)));
      }),
  },
  {
    name: 'year of approval slipped forward',
    checks: ['REV002'],
    sites: (scene) =>
      revisions(scene).flatMap((r) => retype(() => scalars(scene.procedure, r, 'approved'), year(1))(scene)),
  },
  {
    name: 'year of effect slipped back',
    checks: ['REV001', 'REV002'],
    sites: (scene) =>
      revisions(scene).flatMap((r) => retype(() => scalars(scene.procedure, r, 'effective'), year(-10))(scene)),
  },
  {
    name: 'two revisions exchanged',
    checks: ['REV001'],
    sites: (scene) => {
      const all = revisions(scene);
      return all.slice(1).map((r, i) => () => {
        const p = scene.procedure;
        const before = all[i];
        return before === undefined ? undefined : slip(p, exchanged(p, itemLines(p, before), itemLines(p, r)));
      });
    },
  },
  {
    name: 'revision pasted twice',
    checks: ['REV001'],
    sites: (scene) =>
      revisions(scene).map((r) => () => {
        const lines = itemLines(scene.procedure, r);
        return slip(scene.procedure, [{ start: lines.end, end: lines.end, put: textOf(scene.procedure, lines) }]);
      }),
  },
  {
    name: 'letter of a revision used again',
    checks: ['REV001'],
    sites: (scene) => {
      const all = revisions(scene);
      return all.slice(1).flatMap((r, i) =>
        retype(
          () => scalars(scene.procedure, r, 'rev'),
          () => wordsAt(all[i] ?? r, 'rev'),
        )(scene),
      );
    },
  },
  {
    name: 'revision letter that is read as a figure',
    checks: ['REV009'],
    sites: last('rev', () => ['I', 'O', 'Q', 'S', 'Z']),
  },
  {
    name: 'review interval too long',
    checks: ['REV005'],
    sites: retype(
      ({ procedure }) => scalars(procedure, procedure.root, 'review'),
      (_, random) => random.pick(['42 months', '5 years', '84 months', '3 years', '36 months']),
    ),
  },
  {
    name: 'review interval in years instead of months',
    checks: ['REV005'],
    sites: retype(
      ({ procedure }) => scalars(procedure, procedure.root, 'review'),
      (v) => v.replace('months', 'years'),
    ),
  },
  {
    name: 'source of a measured limit lost',
    checks: ['REV006'],
    sites: lose((scene) =>
      scene.steps.flatMap((s) =>
        measuresOf(s.map)
          .filter((m) => m.has('source'))
          .map((map) => ({ sheet: s.sheet, map, key: 'source', names: [wordsAt(map, 'what')] })),
      ),
    ),
  },
  {
    name: 'edition of a source lost',
    checks: ['REV007', 'FLD002'],
    sites: (scene) =>
      sources(scene).map(
        ({ sheet, map }) =>
          () =>
            slip(sheet, away(keyAway(sheet, map, 'edition'))),
      ),
  },
  {
    name: 'edition of a source differs from that of the others',
    // A listed document is compared with the register, any other with its other places.
    checks: ['REV008', 'REV011'],
    // In the whole shop: a document that is cited once differs from nothing.
    whole: true,
    sites: (scene) => {
      const all = sources(scene);
      return all
        .filter(({ map }) => all.filter((o) => wordsAt(o.map, 'document') === wordsAt(map, 'document')).length > 1)
        .flatMap(({ sheet, map }) =>
          retype(
            () => scalars(sheet, map, 'edition'),
            (v, random) =>
              /\d/.test(v) ? v.replace(/\d(?=\D*$)/, (d) => String((Number(d) + 1) % 10)) : mistyped(random, v),
          )(scene),
        );
    },
  },
  {
    name: 'document lost from a binder',
    checks: ['REF022'],
    // In the whole shop, and of a document that hangs in one binder only.
    whole: true,
    sites: (scene) => {
      const doc = wordsAt(scene.procedure.root, 'doc');
      const holding = scene.benches.root.items.flatMap((p) => {
        const bench = mapAt(scene.benches.root, String(p.key));
        const list = bench === undefined ? undefined : listAt(bench, 'binder');
        const at = (list?.items ?? []).findIndex((i) => String(i) === doc);
        return list === undefined || at < 0 ? [] : [{ list, at }];
      });
      const [one] = holding;
      if (one === undefined || holding.length > 1) return [];
      return [() => slip(scene.benches, away(itemAway(scene.benches, one.list, one.at)), [doc])];
    },
  },
];
