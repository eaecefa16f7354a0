/** What a hand does to a file: types over, loses, copies, exchanges. Each gives the file as it is afterwards. */

import type { Pair, Scalar, YAMLMap, YAMLSeq } from 'yaml';
import { lineEnd, lineStart, pairOf, type Sheet, type Stretch, stretchOf } from './sheet.ts';

export interface Slip {
  readonly file: string;
  /** The file with the mistake in it. */
  readonly text: string;
  /** Lines of `text` at which the author slipped, from 1, both ends included. */
  readonly lines: readonly (readonly [from: number, to: number])[];
  /** What was dropped or exchanged: a report that names one of them, or stands where one is written, is at the place. */
  readonly names: readonly string[];
}

export interface Put extends Stretch {
  readonly put: string;
}

/** Undefined when nothing changes: a mistake that leaves the file as it was is none. */
export function slip(sheet: Sheet, puts: readonly Put[], names: readonly string[] = []): Slip | undefined {
  const sorted = [...puts].sort((a, b) => a.start - b.start);
  let text = '';
  let from = 0;
  const places: [number, number][] = [];
  for (const { start, end, put } of sorted) {
    text += sheet.text.slice(from, start);
    places.push([text.length, text.length + put.length]);
    text += put;
    from = end;
  }
  text += sheet.text.slice(from);
  if (text === sheet.text) return undefined;
  const lines = places.map(([start, end]): [number, number] => {
    const first = lineOf(text, start);
    return [first, Math.max(first, lineOf(text, Math.max(start, end - 1)))];
  });
  return { file: sheet.file, text, lines, names };
}

export function lineOf(text: string, at: number): number {
  let line = 1;
  for (let i = text.indexOf('\n'); i !== -1 && i < at; i = text.indexOf('\n', i + 1)) line += 1;
  return line;
}

/** Types another value over a scalar; quoted where YAML would read it otherwise. */
export function over(sheet: Sheet, scalar: Scalar, value: string): Put {
  return { ...stretchOf(sheet, scalar), put: written(value) };
}

/** Types over a scalar and keeps its quotes: what a hand does that changes one sign. */
export function overRaw(sheet: Sheet, scalar: Scalar, change: (raw: string) => string | undefined): Put | undefined {
  const stretch = stretchOf(sheet, scalar);
  const put = change(sheet.text.slice(stretch.start, stretch.end));
  return put === undefined ? undefined : { ...stretch, put };
}

/** Plain where that is safe in a flow collection too, else in double quotes. */
export function written(value: string): string {
  const plain =
    /^[\p{L}\d<][^:#,[\]{}\n"']*$/u.test(value) && !/^(true|false|null|[\d.]+)$/.test(value) && !/\s$/.test(value);
  return plain ? value : JSON.stringify(value);
}

/** The stretch to take out so that a key of a map is gone; undefined when it is the only one. */
export function keyAway(sheet: Sheet, map: YAMLMap, key: string): Stretch | undefined {
  const pair = pairOf(map, key);
  if (pair === undefined || map.items.length === 1) return undefined;
  const at = map.items.indexOf(pair);
  const start = stretchOf(sheet, pair.key).start;
  const next = map.items[at + 1];
  const nextStart = next === undefined ? undefined : stretchOf(sheet, next.key).start;
  const end = pairEnd(sheet, pair);
  if (map.flow === true) {
    if (nextStart !== undefined) return { start, end: nextStart };
    const before = map.items[at - 1];
    return before === undefined ? undefined : { start: pairEnd(sheet, before), end };
  }
  const line = lineStart(sheet.text, start);
  if (sheet.text.slice(line, start).trim() === '') return { start: line, end: lineEnd(sheet.text, end) };
  return nextStart === undefined ? undefined : { start, end: nextStart };
}

function pairEnd(sheet: Sheet, pair: Pair): number {
  return pair.value === null ? stretchOf(sheet, pair.key).end : stretchOf(sheet, pair.value).end;
}

/** The stretch to take out so that an item of a list is gone; undefined when it is the only one. */
export function itemAway(sheet: Sheet, list: YAMLSeq, at: number): Stretch | undefined {
  const item = list.items[at];
  if (item === undefined || list.items.length === 1) return undefined;
  if (list.flow !== true) return itemLines(sheet, item);
  const here = stretchOf(sheet, item);
  const next = list.items[at + 1];
  if (next !== undefined) return { start: here.start, end: stretchOf(sheet, next).start };
  return { start: stretchOf(sheet, list.items[at - 1]).end, end: here.end };
}

/** Whole lines of an item of a block list, its dash included. */
export function itemLines(sheet: Sheet, item: unknown): Stretch {
  const { start, end } = stretchOf(sheet, item);
  return { start: lineStart(sheet.text, start), end: lineEnd(sheet.text, end) };
}

/** Whole lines of an entry of a block map. */
export function entryLines(sheet: Sheet, map: YAMLMap, key: string): Stretch | undefined {
  const pair = pairOf(map, key);
  if (pair === undefined || map.flow === true) return undefined;
  const start = lineStart(sheet.text, stretchOf(sheet, pair.key).start);
  return { start, end: lineEnd(sheet.text, pairEnd(sheet, pair)) };
}

export function textOf(sheet: Sheet, stretch: Stretch): string {
  return sheet.text.slice(stretch.start, stretch.end);
}

export function away(stretch: Stretch | undefined): Put[] {
  return stretch === undefined ? [] : [{ ...stretch, put: '' }];
}

/** Two stretches of one file change places. */
export function exchanged(sheet: Sheet, a: Stretch, b: Stretch): Put[] {
  return [
    { ...a, put: textOf(sheet, b) },
    { ...b, put: textOf(sheet, a) },
  ];
}
