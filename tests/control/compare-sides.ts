/** Sides of a comparison from the small shop with changes, and what a comparison says in plain blanks. */

import { compareIssues, type Side } from '../../src/control/compare/index.ts';
import type { Comparison } from '../../src/control/types.ts';
import { readContent } from '../../src/model/index.ts';
import { type ResolvedShop, resolveShop } from '../../src/resolve/index.ts';
import { readMemory } from '../../src/source/index.ts';
import { FULL_SHOP } from '../fixtures/full-joint.ts';
import { MINI_SHOP } from '../fixtures/mini-shop.ts';

/** A new text for the files named. */
export type Edits = Readonly<Record<string, (text: string) => string>>;

export function sideOf(shop: ResolvedShop, doc: string): Side {
  const document = shop.documents.find((d) => d.doc === doc);
  const machine = shop.machines.find((m) => m.id === document?.machine);
  if (document === undefined || machine === undefined) throw new Error(`${doc} is not in the shop`);
  return { info: shop.info, people: shop.people, tools: shop.tools, machine, document };
}

export function miniSide(edits: Edits = {}): Side {
  return sideOf(resolved(MINI_SHOP, edits), 'MW-1');
}

/** The shop whose cover joint says all that a joint may say. */
export function fullSide(edits: Edits = {}): Side {
  return sideOf(resolved(FULL_SHOP, edits), 'MW-1');
}

/** A draft is compared as it is resolved: neither checks nor cards are needed. Throws when something cannot be resolved. */
function resolved(shop: Readonly<Record<string, string>>, edits: Edits): ResolvedShop {
  const files = Object.entries(shop).map(([relative, text]) => ({
    relative,
    content: edits[relative]?.(text) ?? text,
  }));
  const unchanged = Object.keys(edits).filter((name) => files.find((f) => f.relative === name)?.content === shop[name]);
  if (unchanged.length > 0) throw new Error(`nothing is changed in ${unchanged.join(', ')}`);
  const tell = (...fault: readonly unknown[]): never => {
    throw new Error(JSON.stringify(fault));
  };
  return resolveShop(readContent(readMemory(files, {}, 'shop', tell), 'shop', tell), tell);
}

/** Replaces stretches of a text, each of which must be there. */
export function swap(...edits: readonly (readonly [string, string])[]): (text: string) => string {
  return (text) => edits.reduce((t, [from, to]) => swapped(t, from, to), text);
}

/** The text with its first `from` replaced. Throws when it is not there. */
function swapped(text: string, from: string, to: string): string {
  if (!text.includes(from)) throw new Error(`\`${from}\` is not in the text`);
  return text.replace(from, () => to);
}

/** What a snapshot read back from disk gives: keys in another order, no symbols. */
export function stored(side: Side): Side {
  return JSON.parse(JSON.stringify(sorted(side)));
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  const fields = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(fields.map(([k, v]) => [k, k === 'range' || k === 'ranges' ? undefined : sorted(v)]));
}

/** Lines of a comparison with its variants, plain blanks for no-break ones. */
export function linesOf({ changes }: Comparison): readonly string[] {
  return changes.map((c) =>
    `${c.of} ${c.kind}: ${c.words}${c.variants.length === 0 ? '' : ` [${c.variants.join('; ')}]`}`.replaceAll(
      '\u00a0',
      ' ',
    ),
  );
}

let unchanged: Side | undefined;

/** The small shop as it is, compiled once a file. */
function base(): Side {
  unchanged ??= miniSide();
  return unchanged;
}

/** What the change of the small shop is called; the newer side is read back from JSON. */
export function miniLines(edits: Edits): readonly string[] {
  return linesOf(compareIssues(base(), stored(miniSide(edits))));
}
