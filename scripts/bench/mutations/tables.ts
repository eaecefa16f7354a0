/** Slips in a torque table that was typed from a manual. */

import type { YAMLMap } from 'yaml';
import { over, slip } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import { retype, scalars } from './make.ts';
import type { Scene } from './scene.ts';
import { keyOf, mapAt, type Sheet, scalarAt, sheetOf } from './sheet.ts';
import { moved, transposed } from './typing.ts';

/** Torques of the table files, each with the map that holds it. */
function cells({ files }: Scene): { sheet: Sheet; row: YAMLMap; grade: string }[] {
  return Object.entries(files)
    .filter(([file]) => file.startsWith('tables/'))
    .flatMap(([file, text]) => {
      const sheet = sheetOf(file, text);
      const rows = mapAt(sheet.root, 'rows');
      return (rows?.items ?? []).flatMap((p) => {
        const row = rows === undefined ? undefined : mapAt(rows, keyOf(p));
        return row === undefined ? [] : row.items.map((c) => ({ sheet, row, grade: keyOf(c) }));
      });
    });
}

function torques(change: Parameters<typeof retype>[1]): (scene: Scene) => Site[] {
  return (scene) =>
    cells(scene).flatMap(({ sheet, row, grade }) => {
      const both = mapAt(row, grade);
      const scalar = both === undefined ? scalarAt(row, grade) : scalarAt(both, 'torque');
      return scalar === undefined ? [] : retype(() => [{ sheet, scalar }], change)(scene);
    });
}

export const TABLES: readonly Kind[] = [
  {
    name: 'decimal point slipped in a table of a manual',
    checks: ['TRQ015'],
    whole: true,
    sites: torques((v, random) => v.replace(/^[\d.]+/, (n) => moved(n, random.pick([1, -1])))),
  },
  {
    name: 'two figures exchanged in a table of a manual',
    checks: ['TRQ015', 'TRQ016'],
    whole: true,
    sites: torques((v, random) => transposed(random, v)),
  },
  {
    name: 'second unit of a table cell differs',
    checks: ['TRQ015', 'TRQ030'],
    whole: true,
    sites: (scene) =>
      cells(scene).flatMap(({ sheet, row, grade }) => {
        const both = mapAt(row, grade);
        const at = both === undefined ? [] : scalars(sheet, both, 'second');
        return retype(
          () => at,
          (v, random) => transposed(random, v),
        )(scene);
      }),
  },
  {
    name: 'two cells of a table row exchanged',
    checks: ['TRQ015', 'TRQ016'],
    whole: true,
    sites: (scene) =>
      cells(scene).map(({ sheet, row, grade }) => () => {
        const at = row.items.findIndex((p) => keyOf(p) === grade);
        const next = row.items[at + 1];
        const [a, b] = [torqueIn(row, grade), next === undefined ? undefined : torqueIn(row, keyOf(next))];
        if (a === undefined || b === undefined) return undefined;
        return slip(sheet, [over(sheet, a, String(b.value)), over(sheet, b, String(a.value))]);
      }),
  },
  {
    name: 'condition of a table exchanged',
    checks: ['TRQ015', 'TRQ016'],
    whole: true,
    sites: ({ files, ...scene }) =>
      Object.entries(files)
        .filter(([file]) => file.startsWith('tables/'))
        .flatMap(([file, text]) => {
          const sheet = sheetOf(file, text);
          return ['dry', 'moly', 'oiled'].flatMap((condition) =>
            retype(
              () => scalars(sheet, sheet.root, 'condition'),
              () => condition,
            )({ files, ...scene }),
          );
        }),
  },
];

function torqueIn(row: YAMLMap, grade: string) {
  const both = mapAt(row, grade);
  return both === undefined ? scalarAt(row, grade) : scalarAt(both, 'torque');
}
