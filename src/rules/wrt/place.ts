/** Places of words within a text field of a file. */

import type { Range } from '../../diagnostics/index.ts';

/**
 * How far a value begins behind its place in the file: 0 for bare text, 1 within quotes; undefined where it is folded or
 * escaped, so that places in it cannot be counted. A fold costs as many characters as the next line is indented: three or
 * more, but for fields `atEdge`, the keys of a file's own map, where two cannot be told from quotes.
 */
export function insetOf(value: string, { start, end }: Range, atEdge: boolean): 0 | 1 | undefined {
  if (value.includes('\n')) return undefined;
  const more = end - start - value.length;
  if (more === 0) return 0;
  return more === 2 && !atEdge ? 1 : undefined;
}

/** The same length, with references blanked: their ids are no words of the text. */
export function withoutReferences(value: string): string {
  return value.replace(/<[a-z]+:[^>\s]*>|\[[^\]]*\]\([^)]*\)/g, (found) => '\ue000'.repeat(found.length));
}

/** How often the words stand in the text. */
export function occurrences(text: string, words: string): number {
  return text.split(words).length - 1;
}

/** Where they stand after `n` earlier places; -1 where they do not. */
export function nthIndex(text: string, words: string, n: number): number {
  let index = text.indexOf(words);
  for (let i = 0; i < n && index >= 0; i++) index = text.indexOf(words, index + words.length);
  return index;
}
