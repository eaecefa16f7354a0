/** What the author wrote, as the trees of the files hold it: values given twice, and documents that are cited. */

import type { Range } from '../diagnostics/index.ts';
import { READ_FROM, type ResolvedShop } from '../resolve/index.ts';
import { entryOf, type Node } from '../source/index.ts';

/** A manual, drawing or standard named as the source of something. */
export interface Cited {
  readonly document: string;
  readonly edition?: string;
  readonly documentRange: Range;
  readonly editionRange?: Range;
}

/** A text of the author. */
export interface WrittenText {
  readonly value: string;
  readonly range: Range;
}

export interface Written {
  /** Texts in which a number stands behind a bracket, a stroke or an equals sign: only those can say one thing twice. */
  readonly doubled: readonly WrittenText[];
  readonly cited: readonly Cited[];
}

/** `N·m (100`, `bar / 87`; not `5/8`. */
const DOUBLED = /[^\d\s]\s*[([/=≈]\s*(?:about\s|approx\.?\s|[=≈~])?\s*\d/u;

/** Few texts hold any of these signs. */
const BETWEEN = /[([/=≈]/;

const gathered = new WeakMap<ResolvedShop, Written>();

/** Gathered in one walk a shop, register after register, in the order of the files. */
export function writtenIn(shop: ResolvedShop): Written {
  const known = gathered.get(shop);
  if (known !== undefined) return known;
  const doubled: WrittenText[] = [];
  const cited: Cited[] = [];
  const walk = (node: Node): void => {
    if (node.kind === 'scalar') {
      const { value, range } = node;
      if (typeof value === 'string' && BETWEEN.test(value) && DOUBLED.test(value)) doubled.push({ value, range });
      return;
    }
    if (node.kind === 'sequence') {
      for (const item of node.items) walk(item);
      return;
    }
    for (const { key, value } of node.entries) {
      // No other entry has a document.
      if (key === 'document') cited.push(...citedIn(node));
      walk(value);
    }
  };
  const things = [
    ...shop.people,
    ...shop.benches,
    ...shop.tools,
    ...shop.consumables,
    ...shop.machines,
    ...shop.stages,
    ...shop.documents,
    ...shop.statedTables,
  ];
  for (const thing of things) walk(thing[READ_FROM]);
  const written = { doubled, cited };
  gathered.set(shop, written);
  return written;
}

/** `{ document: …, edition: …, place: … }`, where the document is a text. */
function citedIn(node: Node): Cited[] {
  const document = textAt(node, 'document');
  if (document === undefined) return [];
  const edition = textAt(node, 'edition');
  return [
    {
      document: document.value,
      documentRange: document.range,
      ...(edition === undefined ? {} : { edition: edition.value, editionRange: edition.range }),
    },
  ];
}

function textAt(node: Node, key: string): WrittenText | undefined {
  const at = entryOf(node, key)?.value;
  return at?.kind === 'scalar' && typeof at.value === 'string' ? { value: at.value, range: at.range } : undefined;
}

/** Place of a stretch of a text; of the whole text where folding or escapes part the text from the file. */
export function withinText({ range, value }: WrittenText, start: number, end: number): Range {
  const extra = range.end - range.start - value.length;
  // As written, or between two quotes.
  const shift = extra === 0 ? 0 : extra === 2 ? 1 : undefined;
  return shift === undefined
    ? range
    : { file: range.file, start: range.start + shift + start, end: range.start + shift + end };
}
