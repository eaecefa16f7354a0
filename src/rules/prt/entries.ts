/** What the author wrote at a place, whether or not it could be resolved. */

import { type FromFile, READ_FROM } from '../../resolve/index.ts';

/**
 * Names at a key of something read from a file: the keys of a map, the items of a list, or the one value. Below a list
 * there is nothing, so that `fit: [screw]` has no entry `fit.screw` and `fit: { screw: 4 }` has one.
 */
export function entryNames(thing: FromFile, ...path: readonly string[]): readonly string[] {
  let here: FromFile[typeof READ_FROM] | undefined = thing[READ_FROM];
  for (const key of path) {
    here = here?.kind === 'map' ? here.entries.find((e) => e.key === key)?.value : undefined;
  }
  if (here === undefined) return [];
  if (here.kind === 'scalar') return [String(here.value)];
  if (here.kind === 'map') return here.entries.map((e) => e.key);
  return here.items.map((i) => (i.kind === 'scalar' ? String(i.value) : ''));
}

/** How many names `entryNames` gives for a key: asked of every step, it makes no list of them. */
export function entryCount(thing: FromFile, key: string): number {
  const node = thing[READ_FROM];
  if (node.kind !== 'map') return 0;
  for (const entry of node.entries) {
    if (entry.key !== key) continue;
    const { value } = entry;
    if (value.kind === 'scalar') return 1;
    return value.kind === 'map' ? value.entries.length : value.items.length;
  }
  return 0;
}
