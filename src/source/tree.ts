/** YAML as a small tree in which every value and key keeps its place in the file. */

import type { Range } from '../diagnostics/index.ts';

export type Scalar = string | number | boolean | null;

export interface ScalarNode {
  readonly kind: 'scalar';
  readonly value: Scalar;
  readonly range: Range;
}

export interface MapEntry {
  readonly key: string;
  readonly keyRange: Range;
  readonly value: Node;
}

export interface MapNode {
  readonly kind: 'map';
  readonly entries: readonly MapEntry[];
  readonly range: Range;
}

export interface SequenceNode {
  readonly kind: 'sequence';
  readonly items: readonly Node[];
  readonly range: Range;
}

export type Node = ScalarNode | MapNode | SequenceNode;

/** The tree as plain JavaScript values, for the shapes. No key can reach a prototype: `__proto__` becomes a property like any other. */
export function plain(node: Node): unknown {
  switch (node.kind) {
    case 'scalar':
      return node.value;
    case 'sequence':
      return node.items.map(plain);
    case 'map': {
      const out: Record<string, unknown> = {};
      for (const { key, value } of node.entries) {
        // Assignment is ten times cheaper than a definition, and differs for this one key.
        if (key === '__proto__') Object.defineProperty(out, key, { ...OWN, value: plain(value) });
        else out[key] = plain(value);
      }
      return out;
    }
  }
}

const OWN = { enumerable: true, configurable: true, writable: true };

export function entryOf(node: Node, key: string): MapEntry | undefined {
  if (node.kind !== 'map') return undefined;
  for (const entry of node.entries) if (entry.key === key) return entry;
  return undefined;
}

/** The node at `path`, or the deepest one on the way to it. */
export function nodeAt(node: Node, path: readonly PropertyKey[]): Node {
  let here = node;
  for (const step of path) {
    const next: Node | undefined =
      here.kind === 'sequence' && typeof step === 'number' ? here.items[step] : entryOf(here, String(step))?.value;
    if (next === undefined) return here;
    here = next;
  }
  return here;
}

/** The tree without the values at `paths`; maps lose the entry, sequences the item. A path of no steps is ignored. */
export function without(node: Node, paths: readonly (readonly PropertyKey[])[]): Node {
  const below = new Map<PropertyKey, (readonly PropertyKey[])[]>();
  const gone = new Set<PropertyKey>();
  for (const [first, ...rest] of paths) {
    if (first === undefined) continue;
    const step = node.kind === 'map' ? String(first) : first;
    if (rest.length === 0) gone.add(step);
    else below.set(step, [...(below.get(step) ?? []), rest]);
  }
  if (node.kind === 'map') {
    const entries = node.entries
      .filter((e) => !gone.has(e.key))
      .map((e) => ({ ...e, value: without(e.value, below.get(e.key) ?? []) }));
    return { ...node, entries };
  }
  if (node.kind === 'sequence') {
    const items = node.items.map((item, i) => without(item, below.get(i) ?? [])).filter((_, i) => !gone.has(i));
    return { ...node, items };
  }
  return node;
}
