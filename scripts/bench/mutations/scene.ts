/** One procedure with its machine, its stages and the registers, as the kinds of mistakes look at it. */

import { isMap, type Scalar, type YAMLMap, type YAMLSeq } from 'yaml';
import type { ShopFiles } from '../sub-shop.ts';
import { entriesOf, listAt, mapAt, mapsIn, type Sheet, scalarAt, scalarsIn, sheetOf, wordsAt } from './sheet.ts';

export interface StepPlace {
  readonly sheet: Sheet;
  readonly list: YAMLSeq;
  readonly index: number;
  readonly map: YAMLMap;
  /** Of the procedure's own, not of a shared stage. */
  readonly own: boolean;
}

export interface Entry {
  readonly id: string;
  readonly map: YAMLMap;
  readonly sheet: Sheet;
}

export interface Scene {
  readonly files: ShopFiles;
  readonly procedure: Sheet;
  readonly machine: Sheet;
  readonly tools: Sheet;
  readonly consumables: Sheet;
  readonly people: Sheet;
  readonly benches: Sheet;
  /** Shared stages that the procedure uses, in order. */
  readonly stages: readonly Sheet[];
  /** Entries `use: …` and stages of the procedure. */
  readonly order: YAMLSeq | undefined;
  /** All steps in the order of work, those of shared stages included. */
  readonly steps: readonly StepPlace[];
  readonly joints: readonly Entry[];
  readonly parts: readonly Entry[];
  /** Tools and consumables that procedure, stages or joints name. */
  readonly toolsUsed: readonly Entry[];
  readonly consumablesUsed: readonly Entry[];
}

export function sceneOf(files: ShopFiles, procedureFile: string): Scene {
  const sheet = (file: string): Sheet => sheetOf(file, files[file] ?? '');
  const procedure = sheet(procedureFile);
  const machine = sheet(`machines/${wordsAt(procedure.root, 'machine')}.yaml`);
  const order = listAt(procedure.root, 'stages');
  const stages: Sheet[] = [];
  const steps: StepPlace[] = [];
  const add = (from: Sheet, list: YAMLSeq | undefined, own: boolean): void => {
    list?.items.forEach((map, index) => {
      if (isMap(map)) steps.push({ sheet: from, list, index, map, own });
    });
  };
  for (const stage of mapsIn(order)) {
    const use = wordsAt(stage, 'use');
    if (use === '') {
      add(procedure, listAt(stage, 'steps'), true);
      continue;
    }
    const shared = sheet(`stages/${use}.yaml`);
    stages.push(shared);
    add(shared, listAt(shared.root, 'steps'), false);
  }
  const entries = (from: Sheet, map: YAMLMap | undefined): Entry[] =>
    entriesOf(map).map(([id, entry]) => ({ id, map: entry, sheet: from }));
  const joints = entries(machine, mapAt(machine.root, 'joints'));
  const named = new Set([
    ...[procedure, ...stages].flatMap(({ text }) =>
      [...text.matchAll(/[<(](?:tool|consumable):([a-z0-9-]+)[>)]/g)].map((m) => m[1]),
    ),
    ...steps.flatMap(({ map }) => [
      ...idsUnder(map, 'with'),
      ...idsUnder(map, 'use'),
      ...idsUnder(mapAt(map, 'lubricate'), 'with'),
      ...measuresOf(map).flatMap((m) => idsUnder(m, 'with')),
    ]),
    ...joints.flatMap((j) => ['wrench', 'socket', 'lubricant'].flatMap((key) => idsUnder(j.map, key))),
  ]);
  const tools = sheet('tools.yaml');
  const consumables = sheet('consumables.yaml');
  return {
    files,
    procedure,
    machine,
    tools,
    consumables,
    people: sheet('people.yaml'),
    benches: sheet('benches.yaml'),
    stages,
    order,
    steps,
    joints,
    parts: entries(machine, mapAt(machine.root, 'parts')),
    toolsUsed: entries(tools, tools.root).filter((e) => named.has(e.id)),
    consumablesUsed: entries(consumables, consumables.root).filter((e) => named.has(e.id)),
  };
}

/** One id, a list of them, or the keys of a map. */
function idsUnder(map: YAMLMap | undefined, key: string): readonly string[] {
  if (map === undefined) return [];
  const one = wordsAt(map, key);
  if (one !== '') return [one];
  const list = scalarsIn(listAt(map, key)).map((s) => String(s.value));
  return [...list, ...(mapAt(map, key)?.items ?? []).map((p) => String(p.key))];
}

/** Part ids under `remove` or `fit`, however they are written. */
export function partsIn(step: YAMLMap, key: 'remove' | 'fit'): readonly string[] {
  const list = scalarsIn(listAt(step, key)).map((s) => String(s.value));
  return list.length > 0 ? list : (mapAt(step, key)?.items ?? []).map((p) => String((p.key as Scalar).value));
}

/** Measures of a step, one or several. */
export function measuresOf(step: YAMLMap): readonly YAMLMap[] {
  const one = mapAt(step, 'measure');
  return one === undefined ? mapsIn(listAt(step, 'measure')) : [one];
}

export function warningsOf(step: YAMLMap): readonly YAMLMap[] {
  const one = mapAt(step, 'warn');
  return one === undefined ? mapsIn(listAt(step, 'warn')) : [one];
}

/** What a step handles: its parts, its joints, its energies. A report about its absence names one of them. */
export function handled({ map }: StepPlace): readonly string[] {
  const list = (key: string): string[] => scalarsIn(listAt(map, key)).map((s) => String(s.value));
  return [
    ...partsIn(map, 'remove'),
    ...partsIn(map, 'fit'),
    ...['tighten', 'loosen'].flatMap((key) => (scalarAt(map, key) === undefined ? [] : [wordsAt(map, key)])),
    ...list('release'),
    ...list('prove'),
    ...list('close_out'),
  ];
}
