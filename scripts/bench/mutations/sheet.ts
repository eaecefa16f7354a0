/** A content file with its tree as the `yaml` package reads it, which is not the reader under test. */

import { isMap, isScalar, isSeq, type Pair, parseDocument, type Scalar, YAMLMap, type YAMLSeq } from 'yaml';

export interface Sheet {
  readonly file: string;
  readonly text: string;
  readonly root: YAMLMap;
}

/** Offsets in a sheet; `end` is exclusive. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

const sheets = new Map<string, Sheet>();

/** Read once: most files are the same in every scene. */
export function sheetOf(file: string, text: string): Sheet {
  const known = sheets.get(file);
  if (known?.text === text) return known;
  const { contents } = parseDocument(text);
  const made: Sheet = { file, text, root: isMap(contents) ? contents : new YAMLMap() };
  sheets.set(file, made);
  return made;
}

export function pairOf(map: YAMLMap, key: string): Pair | undefined {
  return map.items.find((p) => keyOf(p) === key);
}

export function keyOf(pair: Pair): string {
  return isScalar(pair.key) ? String(pair.key.value) : '';
}

export function mapAt(map: YAMLMap, key: string): YAMLMap | undefined {
  const value = map.get(key, true);
  return isMap(value) ? value : undefined;
}

export function listAt(map: YAMLMap, key: string): YAMLSeq | undefined {
  const value = map.get(key, true);
  return isSeq(value) ? value : undefined;
}

export function scalarAt(map: YAMLMap, key: string): Scalar | undefined {
  const value = map.get(key, true);
  return isScalar(value) ? value : undefined;
}

/** Text of a scalar, empty where there is none. */
export function wordsAt(map: YAMLMap, key: string): string {
  const value = scalarAt(map, key)?.value;
  return value === undefined || value === null ? '' : String(value);
}

export function mapsIn(list: YAMLSeq | undefined): readonly YAMLMap[] {
  return (list?.items ?? []).filter((i) => isMap(i));
}

export function scalarsIn(list: YAMLSeq | undefined): readonly Scalar[] {
  return (list?.items ?? []).filter((i) => isScalar(i));
}

/** Entries of a map whose values are maps: the entries of a register. */
export function entriesOf(map: YAMLMap | undefined): readonly (readonly [id: string, entry: YAMLMap])[] {
  return (map?.items ?? []).flatMap((p) => (isMap(p.value) ? [[keyOf(p), p.value] as const] : []));
}

/** Where a node is written, without the blanks after it. */
export function stretchOf(sheet: Sheet, node: unknown): Stretch {
  const [start, end] = (node as { range?: [number, number, number] | null }).range ?? [0, 0];
  let last = end;
  while (last > start && /\s/.test(sheet.text[last - 1] ?? '')) last -= 1;
  return { start, end: last };
}

export function lineStart(text: string, at: number): number {
  return text.lastIndexOf('\n', at - 1) + 1;
}

/** Offset after the end of the line. */
export function lineEnd(text: string, at: number): number {
  const end = text.indexOf('\n', at);
  return end === -1 ? text.length : end + 1;
}
