/** An order that hides in a note. */

import type { Check } from '../check.ts';
import { eachText, type Finding } from './fields.ts';
import { isOrder, pastAdverbs } from './orders.ts';
import type { Reading, Word } from './reading.ts';
import { isParticiple, OPENERS } from './words.ts';

/** Clause by clause: a note may inform first and order after a semicolon. */
function* clauses(words: readonly Word[]): Generator<readonly Word[]> {
  let from = 0;
  for (const [i, word] of words.entries()) {
    if (!/^[;:–—]$/.test(word.text)) continue;
    yield words.slice(from, i);
    from = i + 1;
  }
  yield words.slice(from);
}

/** The first and last word of what orders in this clause. */
function orderIn(words: readonly Word[]): readonly [Word, Word] | undefined {
  const head = words.findIndex((w) => w.kind !== 'mark');
  if (head < 0) return undefined;
  const verb = orderAt(words, head) ?? afterCondition(words, head) ?? afterSo(words);
  const first = words[verb ?? -1];
  if (first !== undefined) return [first, first];
  // `must be cleaned`, `is to be cleaned`, `you must`: an order in other clothes.
  for (let i = 0; i < words.length - 2; i++) {
    const [a, b, c] = [words[i], words[i + 1], words[i + 2]];
    if (a === undefined || b === undefined || c === undefined) continue;
    if (/^(?:must|shall)$/.test(a.lower)) return [a, b.lower === 'not' || b.lower === 'be' ? c : b];
    if (/^(?:is|are)$/.test(a.lower) && b.lower === 'to' && c.lower === 'be' && isParticiple(words[i + 3]?.lower ?? ''))
      return [a, words[i + 3] ?? c];
  }
  return undefined;
}

function orderAt(words: readonly Word[], from: number): number | undefined {
  const verb = pastAdverbs(words, from);
  if (words[from]?.lower === 'do' && words[from + 1]?.lower === 'not') return from;
  return isOrder(words, verb) ? verb : undefined;
}

function afterCondition(words: readonly Word[], head: number): number | undefined {
  if (!OPENERS.has(words[head]?.lower ?? '')) return undefined;
  for (let i = head + 1; i < words.length - 1; i++) {
    const verb = words[i]?.text === ',' ? orderAt(words, i + 1) : undefined;
    if (verb !== undefined) return verb;
  }
  return undefined;
}

/** `..., so remove both`. */
function afterSo(words: readonly Word[]): number | undefined {
  const so = words.findIndex((w) => /^(?:so|therefore)$/.test(w.lower));
  return so > 0 && words[so - 1]?.text === ',' ? orderAt(words, so + 1) : undefined;
}

export function* actionInNoteIn(reading: Reading): Generator<Finding> {
  for (const { words } of reading.sentences) {
    for (const clause of clauses(words)) {
      const found = orderIn(clause);
      if (found === undefined) continue;
      const [first, last] = found;
      yield {
        message: `\`${reading.text.slice(first.start, last.end)}\` gives an order, and this is a note`,
        hint: 'make a step of it, or say as a fact what the reader has to know',
        start: first.start,
        end: last.end,
      };
    }
  }
}

export const actionInNote: Check = {
  code: 'WRT006',
  name: 'action-in-note',
  severity: 'warning',
  title: 'A note gives an order.',
  why: 'A note has no number and no box to tick; a mechanic who knows the job skips it, and with it the action.',
  sources: [
    'ASD-STE100 Simplified Technical English: a note gives information and no instructions (rule read in a summary)',
    "DOE-STD-1029-92 Writer's guide for technical procedures: no action steps in notes (memory)",
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '        fit: [gasket, cover]\n',
        to: '        fit: [gasket, cover]\n        note: «Check» that the lug of the gasket points up.\n',
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: '        fit: [gasket, cover]\n',
        to: '        fit: [gasket, cover]\n        note: The lug of the gasket points up.\n',
      },
    ],
  },
  found: eachText(['note'], actionInNoteIn),
};
