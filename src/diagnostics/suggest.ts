/** *Did you mean*: the nearest known name to one that was mistyped. */

import { distance } from 'fastest-levenshtein';

/**
 * The candidate nearest to `word`, or undefined when none is near enough to be a slip of the hand
 * (more than a third of the letters differ).
 */
export function nearest(word: string, names: Iterable<string>): string | undefined {
  // Walked twice; an iterator would be used up by the first walk.
  const candidates = [...names];
  const folded = word.toLowerCase();
  const swapped = candidates.find((c) => isSwapOf(folded, c.toLowerCase()));
  if (swapped !== undefined) return swapped;
  const limit = Math.max(1, Math.floor(word.length / 3));
  let best: string | undefined;
  let bestDistance = limit + 1;
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - word.length) >= bestDistance) continue;
    const d = distance(folded, candidate.toLowerCase());
    if (d < bestDistance) {
      best = candidate;
      bestDistance = d;
    }
  }
  return best ?? sharedWords(folded, candidates);
}

/** Two neighbouring letters exchanged: the commonest slip of the hand, and two edits by the distance. */
function isSwapOf(a: string, b: string): boolean {
  if (a.length !== b.length || a === b) return false;
  let i = 0;
  while (a[i] === b[i]) i += 1;
  return a[i] === b[i + 1] && a[i + 1] === b[i] && a.slice(i + 2) === b.slice(i + 2);
}

/** A renamed entry often keeps a word of its id: `torque-wrench-200` for `torque-wrench-40-200`. */
function sharedWords(word: string, candidates: readonly string[]): string | undefined {
  const words = new Set(word.split('-').filter((w) => w.length > 2));
  let best: string | undefined;
  let most = 0;
  for (const candidate of candidates) {
    const parts = candidate.toLowerCase().split('-');
    const shared = parts.filter((p) => words.has(p)).length;
    if (shared > most && shared * 2 >= Math.max(words.size, parts.length)) {
      best = candidate;
      most = shared;
    }
  }
  return best;
}

/** The hint for a mistyped name; undefined when nothing is near. */
export function didYouMean(word: string, candidates: Iterable<string>): string | undefined {
  const found = nearest(word, candidates);
  return found === undefined ? undefined : `did you mean \`${found}\`?`;
}
