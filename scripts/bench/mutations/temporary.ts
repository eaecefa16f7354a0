/** Temporary changes as they are written. A shop may have none. */

import type { YAMLMap } from 'yaml';
import { revisions } from './control.ts';
import { entryLines, exchanged, over, slip, textOf } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import type { Entry, Scene } from './scene.ts';
import { entriesOf, mapAt, scalarAt, sheetOf, stretchOf, wordsAt } from './sheet.ts';

/** Temporary changes of the procedure. */
function changes(scene: Scene): readonly Entry[] {
  const doc = wordsAt(scene.procedure.root, 'doc');
  const sheet = sheetOf('temporary.yaml', scene.files['temporary.yaml'] ?? '');
  return entriesOf(sheet.root)
    .filter(([, map]) => wordsAt(map, 'doc') === doc)
    .map(([id, map]) => ({ id, map, sheet }));
}

/** Those of the revision that stands in the file: steps of older ones cannot be looked up. */
function present(scene: Scene): readonly Entry[] {
  const last = revisions(scene).at(-1);
  return changes(scene).filter((e) => last !== undefined && wordsAt(e.map, 'rev') === wordsAt(last, 'rev'));
}

/** Another value typed over one of the keys. */
function typed(
  of: (scene: Scene) => readonly Entry[],
  key: string,
  change: (value: string, map: YAMLMap, scene: Scene) => readonly string[],
) {
  return (scene: Scene): readonly Site[] =>
    of(scene).flatMap(({ sheet, map }): readonly Site[] => {
      const scalar = scalarAt(map, key);
      if (scalar === undefined) return [];
      const values = change(String(scalar.value), map, scene);
      return values.map((v) => () => {
        // Numbers stand without quotes.
        const put = { ...stretchOf(sheet, scalar), put: v };
        return slip(sheet, [typeof scalar.value === 'number' ? put : over(sheet, scalar, v)]);
      });
    });
}

function swapped(one: string, other: string) {
  return (scene: Scene): readonly Site[] =>
    changes(scene).map(({ sheet, map }) => () => {
      const [a, b] = [scalarAt(map, one), scalarAt(map, other)];
      return a === undefined || b === undefined
        ? undefined
        : slip(sheet, exchanged(sheet, stretchOf(sheet, a), stretchOf(sheet, b)));
    });
}

const nextYear = (date: string): string => date.replace(/^\d{4}/, (y) => String(Number(y) + 1));

export const TEMPORARY: readonly Kind[] = [
  {
    name: 'year of the last day of a temporary change slipped forward',
    checks: ['REV014'],
    sites: typed(changes, 'until', (v) => [nextYear(v)]),
  },
  {
    name: 'temporary change begun before its approval: two dates exchanged',
    checks: ['REV015'],
    sites: swapped('approved', 'from'),
  },
  {
    name: 'first and last day of a temporary change exchanged',
    checks: ['REV015'],
    sites: swapped('from', 'until'),
  },
  {
    name: 'author of a temporary change named as its approver',
    checks: ['REV016'],
    sites: typed(changes, 'approver', (_, map) => [wordsAt(map, 'author')]),
  },
  {
    name: 'temporary change approved by somebody who may not',
    checks: ['REV016'],
    sites: typed(changes, 'approver', (v, map, { people }) =>
      people.root.items
        .map((p) => String(p.key))
        .filter((id) => id !== v && id !== wordsAt(map, 'author') && !mapAt(people.root, id)?.has('approves')),
    ),
  },
  {
    name: 'temporary change copied twice, dates left as they were',
    checks: ['REV017'],
    sites: (scene) =>
      changes(scene).map(({ sheet, id }) => () => {
        const lines = entryLines(sheet, sheet.root, id);
        if (lines === undefined) return undefined;
        const copy = (n: number): string => textOf(sheet, lines).replace(id, `${id}${n}`);
        return slip(sheet, [{ start: lines.end, end: lines.end, put: copy(1) + copy(2) }], [id]);
      }),
  },
  {
    name: 'document of a temporary change mistyped',
    checks: ['REV018'],
    sites: typed(changes, 'doc', (v) => [v.replace(/\d$/, (d) => String((Number(d) + 3) % 10))]),
  },
  {
    name: 'revision of a temporary change that the document does not have',
    checks: ['REV018'],
    sites: typed(changes, 'rev', () => ['K', 'W']),
  },
  {
    name: 'step of a temporary change with a figure too many',
    checks: ['REV018'],
    sites: typed(present, 'step', (v) => [`${v}0`, `1${v}${v.length > 1 ? '' : '0'}`]),
  },
];
