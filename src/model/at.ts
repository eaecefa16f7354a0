/** A checked value beside the node it was read from: the bridge from content to places in files. */

import type { Range } from '../diagnostics/index.ts';
import { entryOf, type Node } from '../source/index.ts';

export interface At<T> {
  readonly value: T;
  readonly node: Node;
}

/** The field `key` with its place; a missing one has the place of its owner. */
export function field<T extends object, K extends keyof T & string>(at: At<T>, key: K): At<T[K]> {
  return { value: at.value[key], node: entryOf(at.node, key)?.value ?? at.node };
}

/** The field `key` when the author wrote it. */
export function optional<T extends object, K extends keyof T & string>(
  at: At<T>,
  key: K,
): At<NonNullable<T[K]>> | undefined {
  const value = at.value[key];
  return value === undefined || value === null ? undefined : { value, node: entryOf(at.node, key)?.value ?? at.node };
}

export function items<T>(at: At<readonly T[]>): readonly At<T>[] {
  const nodes = at.node.kind === 'sequence' ? at.node.items : [];
  return at.value.map((value, i) => ({ value, node: nodes[i] ?? at.node }));
}

export interface Entry<T> extends At<T> {
  readonly key: string;
  readonly keyRange: Range;
  /** Keys and ids of what a faulty file holds and could not be read; absent for a sound one. */
  readonly dropped?: ReadonlySet<string>;
}

/** The entries of a map in the order of the file. */
export function entries<T>(at: At<Readonly<Record<string, T>>>): readonly Entry<T>[] {
  return Object.entries(at.value).map(([key, value]) => {
    const found = entryOf(at.node, key);
    return { key, value, keyRange: found?.keyRange ?? at.node.range, node: found?.value ?? at.node };
  });
}

/** One value or a list of them, as a list. */
export function oneOrMore<T>(at: At<T | readonly T[]> | undefined): readonly At<T>[] {
  if (at === undefined) return [];
  return Array.isArray(at.value) ? items(at as At<readonly T[]>) : [at as At<T>];
}
