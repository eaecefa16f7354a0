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
