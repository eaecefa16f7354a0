/** *Did you mean*: the known spellings nearest to one that was mistyped. */

import { distance } from 'fastest-levenshtein';

/** Up to `most` candidates that differ from `word` by at most a third of its letters (at least one), nearest first. */
export function nearestWords(word: string, candidates: readonly string[], most = 3): readonly string[] {
  const limit = Math.max(1, Math.floor(word.length / 3));
  return candidates
    .map((candidate) => ({ candidate, apart: distance(word, candidate) }))
    .filter(({ apart }) => apart <= limit)
    .sort((a, b) => a.apart - b.apart)
    .slice(0, most)
    .map(({ candidate }) => candidate);
}

/** The `most` numbers of `known` nearest to `value`, in rising order. */
export function nearestNumbers(value: number, known: readonly number[], most = 3): readonly number[] {
  return [...known]
    .sort((a, b) => Math.abs(a - value) - Math.abs(b - value) || a - b)
    .slice(0, most)
    .sort((a, b) => a - b);
}

/** `a`, `b` and `c`, each in backticks: the form in which hints name what is accepted. */
export function named(words: readonly string[]): string {
  const ticked = words.map((w) => `\`${w}\``);
  const last = ticked.at(-1);
  return ticked.length < 2 || last === undefined ? ticked.join('') : `${ticked.slice(0, -1).join(', ')} and ${last}`;
}
