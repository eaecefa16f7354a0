/**
 * What is sound of a faulty file: faulty values are taken out and the rest is read, so that one run also names the faults of
 * the rest. The faults themselves have been reported; what was taken out is remembered, so that nothing echoes them.
 */

import type { z } from 'zod';
import { entryOf, type Node, nodeAt, plain, without } from '../source/index.ts';
import type { At } from './at.ts';
import { flatIssues } from './issues.ts';

/** Each round takes out at least one value, and a file that needs more is better mended first. */
const MOST_ROUNDS = 40;

export interface Salvaged<T> {
  readonly at: At<T>;
  /** Keys of map entries taken out, and the ids of list items taken out. */
  readonly dropped: ReadonlySet<string>;
}

/** undefined when nothing sound is left. */
export function salvage<S extends z.ZodType>(shape: S, node: Node): Salvaged<z.output<S>> | undefined {
  const dropped = new Set<string>();
  let rest = node;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const result = shape.safeParse(plain(rest));
    if (result.success) return { at: { value: result.data, node: rest }, dropped };
    const paths = flatIssues(result.error.issues, rest).flatMap(({ issue, path }) => {
      if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => [...path, key]);
      // A missing value makes its holder faulty; a wrong one only itself.
      return [isThere(rest, path) ? path : path.slice(0, -1)];
    });
    if (paths.some((p) => p.length === 0)) return undefined;
    for (const p of paths) {
      const last = p.at(-1);
      const id = entryOf(nodeAt(rest, p), 'id')?.value;
      if (typeof last === 'string') dropped.add(last);
      if (id?.kind === 'scalar') dropped.add(String(id.value));
    }
    rest = without(rest, paths);
  }
  return undefined;
}

function isThere(root: Node, path: readonly PropertyKey[]): boolean {
  const last = path.at(-1);
  if (last === undefined) return true;
  const holder = nodeAt(root, path.slice(0, -1));
  if (holder.kind === 'map') return entryOf(holder, String(last)) !== undefined;
  return holder.kind === 'sequence' && holder.items[Number(last)] !== undefined;
}
