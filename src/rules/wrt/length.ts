/** Sentences with more words than a reader keeps in mind. */

import type { Finding } from './fields.ts';
import type { Reading } from './reading.ts';

/** One finding a sentence with more than `most` words; `advice` says how to shorten it. */
export function* tooLong(reading: Reading, most: number, kind: string, advice: string): Generator<Finding> {
  // So few spaces cannot part so many words.
  if (!hasSpaces(reading.typed, most * 0.8 - 1)) return;
  for (const { words, count } of reading.sentences) {
    const [first] = words;
    const last = words.at(-1);
    if (count <= most || first === undefined || last === undefined) continue;
    yield {
      message: `this sentence of the ${kind} has ${count} words, and ${most} are the most: \`${first.text} ... ${ending(words.map((w) => w.text))}\``,
      hint: `${advice}; or make two sentences of it`,
      // Where it is the only sentence its field is its place.
      ...(reading.sentences.length === 1 ? {} : { start: first.start, end: last.end }),
    };
  }
}

function hasSpaces(text: string, least: number): boolean {
  let found = 0;
  for (let at = 0; at < text.length && found < least; at++) if (text.charCodeAt(at) === 32) found += 1;
  return found >= least;
}

function ending(words: readonly string[]): string {
  return words.filter((w) => /[\p{L}\p{N}]/u.test(w)).at(-1) ?? '';
}
