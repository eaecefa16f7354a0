/** Short ways to say at which places a slip can happen. */

import { isScalar, type Scalar, type YAMLMap } from 'yaml';
import type { Random } from '../random.ts';
import { away, entryLines, keyAway, over, overRaw, type Put, type Slip, slip } from './edit.ts';
import type { Site } from './kind.ts';
import { type Entry, handled, measuresOf, type Scene, type StepPlace, warningsOf } from './scene.ts';
import { listAt, mapAt, type Sheet, type Stretch, scalarAt, scalarsIn, stretchOf, wordsAt } from './sheet.ts';

/** A scalar in its file. */
export interface At {
  readonly sheet: Sheet;
  readonly scalar: Scalar;
}

type Change = (value: string, random: Random, scene: Scene) => string | undefined;

/** Other words typed over a scalar, which is quoted anew where it has to be. */
export function retype(select: (scene: Scene) => readonly At[], change: Change): (scene: Scene) => Site[] {
  return (scene) =>
    select(scene).map((at) => (random) => {
      const value = String(at.scalar.value);
      const made = change(value, random, scene);
      return made === undefined || made === value ? undefined : slip(at.sheet, [over(at.sheet, at.scalar, made)]);
    });
}

/** One sign changed within a scalar, which keeps the quotes that it has. */
export function retypeRaw(select: (scene: Scene) => readonly At[], change: Change): (scene: Scene) => Site[] {
  return (scene) =>
    select(scene).map((at) => (random) => {
      const put = overRaw(at.sheet, at.scalar, (raw) => change(raw, random, scene));
      return put === undefined ? undefined : slip(at.sheet, [put]);
    });
}

/** A map that loses one of its keys. names: what else a report of the loss may name. */
export interface Loss {
  readonly sheet: Sheet;
  readonly map: YAMLMap;
  readonly key: string;
  readonly names?: readonly string[];
}

/** A key lost with its value. */
export function lose(select: (scene: Scene) => readonly Loss[]): (scene: Scene) => Site[] {
  return (scene) =>
    select(scene).map(
      ({ sheet, map, key, names = [] }) =>
        () =>
          slip(sheet, away(keyAway(sheet, map, key)), names),
    );
}

/** Entries of a register that lose a key. */
export function without(entries: readonly Entry[], key: string): Loss[] {
  return entries
    .filter((e) => e.map.has(key))
    .map(({ sheet, map, id }) => ({ sheet, map, key, names: [id, wordsAt(map, 'name')] }));
}

/** The same for steps. */
export function stepsWithout(steps: readonly StepPlace[], key: string): Loss[] {
  return steps.filter((s) => s.map.has(key)).map((s) => ({ sheet: s.sheet, map: s.map, key, names: handled(s) }));
}

/** Scalars under a key of entries of a register. */
export function inEntries(entries: readonly Entry[], ...keys: string[]): At[] {
  return entries.flatMap((e) => keys.flatMap((key) => scalars(e.sheet, e.map, key)));
}

export function inSteps(steps: readonly StepPlace[], ...keys: string[]): At[] {
  return steps.flatMap((s) => keys.flatMap((key) => scalars(s.sheet, s.map, key)));
}

export function inMeasures(scene: Scene, ...keys: string[]): At[] {
  return scene.steps.flatMap((s) => measuresOf(s.map).flatMap((m) => keys.flatMap((key) => scalars(s.sheet, m, key))));
}

export function inWarnings(scene: Scene, ...keys: string[]): At[] {
  return scene.steps.flatMap((s) => warningsOf(s.map).flatMap((m) => keys.flatMap((key) => scalars(s.sheet, m, key))));
}

/** The scalar itself, the items of a list of scalars, or the keys of a map. */
export function scalars(sheet: Sheet, map: YAMLMap, key: string): At[] {
  const one = scalarAt(map, key);
  const found = one !== undefined ? [one] : scalarsIn(listAt(map, key));
  const keys = (mapAt(map, key)?.items ?? []).flatMap((p) => (isScalar(p.key) ? [p.key] : []));
  return [...found, ...keys].map((scalar) => ({ sheet, scalar }));
}

/** Ids after `tool:` and the like in the texts of procedure and stages. */
export function references(scene: Scene, scheme: string): { sheet: Sheet; stretch: Stretch; id: string }[] {
  return [scene.procedure, ...scene.stages].flatMap((sheet) =>
    [...sheet.text.matchAll(new RegExp(`[<(]${scheme}:([A-Za-z0-9-]+)[>)]`, 'g'))].map((m) => {
      const id = m[1] ?? '';
      const start = m.index + scheme.length + 2;
      return { sheet, stretch: { start, end: start + id.length }, id };
    }),
  );
}

/** One stretch typed over. */
export function typedOver(
  sheet: Sheet,
  stretch: Stretch,
  put: string,
  names: readonly string[] = [],
): Slip | undefined {
  return slip(sheet, [{ ...stretch, put }], names);
}

/** A line added under a key of the entry that stands in lines of its own, with the same indent. */
export function lineAfter(sheet: Sheet, map: YAMLMap, key: string, line: string): Put | undefined {
  const lines = entryLines(sheet, map, key);
  const pair = map.items.find((p) => isScalar(p.key) && p.key.value === key);
  if (lines === undefined || pair === undefined) return undefined;
  const at = stretchOf(sheet, pair.key).start;
  const indent = ' '.repeat(at - (sheet.text.lastIndexOf('\n', at - 1) + 1));
  return { start: lines.end, end: lines.end, put: `${indent}${line}\n` };
}
