/** The node from which something resolved was read, for the places of diagnostics. */

import type { Range } from '../diagnostics/index.ts';
import { entryOf, type MapEntry, type Node } from '../source/index.ts';

/** A symbol, so that the trees of the files are in no JSON, no fingerprint and no page. */
export const READ_FROM: unique symbol = Symbol('read from');

export interface FromFile {
  readonly [READ_FROM]: Node;
}

/** Place of the value at `path`, or of the nearest thing above it that was written. */
export function placeOf(thing: FromFile, ...path: readonly (string | number)[]): Range {
  let here: Node = thing[READ_FROM];
  for (const step of path) {
    const next = below(here, step);
    if (next === undefined) return here.range;
    here = next.node;
  }
  return here.range;
}

/**
 * Place of the key at `path`, or of the nearest thing above it that was written. Within a list, a text step finds the item
 * with that text, so that `keyPlaceOf(step, 'fit', 'gasket')` serves `fit: [gasket]` and `fit: { gasket: 2 }`.
 */
export function keyPlaceOf(thing: FromFile, ...path: readonly (string | number)[]): Range {
  let here: Node = thing[READ_FROM];
  let place = here.range;
  for (const step of path) {
    const next = below(here, step);
    if (next === undefined) return place;
    place = next.key ?? next.node.range;
    here = next.node;
  }
  return place;
}

/** Whether the author wrote something at `path`. */
export function isWritten(thing: FromFile, ...path: readonly (string | number)[]): boolean {
  let here: Node = thing[READ_FROM];
  for (const step of path) {
    const next = below(here, step);
    if (next === undefined) return false;
    here = next.node;
  }
  return true;
}

function below(node: Node, step: string | number): { readonly node: Node; readonly key?: Range } | undefined {
  if (typeof step === 'string') {
    if (node.kind === 'sequence') {
      const item = node.items.find((i) => i.kind === 'scalar' && i.value === step);
      return item === undefined ? undefined : { node: item };
    }
    const entry: MapEntry | undefined = entryOf(node, step);
    return entry === undefined ? undefined : { node: entry.value, key: entry.keyRange };
  }
  if (node.kind === 'sequence') {
    const item = node.items[step];
    return item === undefined ? undefined : { node: item };
  }
  // One thing may be written without a list: `warn: { … }` is `warn[0]`.
  return step === 0 ? { node } : undefined;
}
