/** Where a sentence gives an order: the imperative at its head, and those that follow it. */

import type { Sentence, Word } from './reading.ts';
import {
  BEFORE_VERB,
  beginsObject,
  CLEAR_VERBS,
  DOUBTFUL_VERBS,
  endsAsNoun,
  isOtherForm,
  isVerb,
  NO_VERB_FIRST,
  OPENERS,
} from './words.ts';

/** After a base form these show that it was a noun: `use of`, `lift is`. */
const FINITE =
  /^(?:of|is|are|was|were|has|have|had|must|should|shall|can|could|may|might|will|would|does|did|and|or|that|which|who|'s)$/;

const LOOKS_FOR = /^(?:check|look|test|watch|feel|search) (?:for|that|whether|if)$/;
/** Verbs of two words that are no nouns. */
const IN_TWO_WORDS =
  /^(?:(?:top|start|pump|hook|bolt|open|fill|back) up|bolt on|pay out|look (?:over|round|at|into)|(?:back|switch|turn|shut|drain|wash|dry|clean|close) off|(?:switch|turn|clip|hook) on|(?:shut|wash|drain|close) down|(?:clean|wash|dry|pump|lock|tag) out|run (?:up|down|in|on)|set aside|(?:fill|flush) with)$/;

/**
 * Whether an order stands at `i` beyond doubt: a verb that is nothing else, or one that is a noun as well before what it
 * acts on.
 */
export function isOrder(words: readonly Word[], i: number, mayShare = true): boolean {
  const word = words[i];
  if (word === undefined || word.kind !== 'word') return false;
  const next = words[i + 1];
  const objectFollows =
    next !== undefined &&
    (next.kind === 'reference' || next.kind === 'number' || beginsObject(next.lower) || /[a-z]ly$/.test(next.lower));
  // `Grease that was left`: what looks like an object begins a clause about the noun.
  if (next?.lower === 'that' && /^(?:is|are|was|were|has|have|had|can|.*[^s]s|.*ed)$/.test(words[i + 2]?.lower ?? ''))
    return false;
  if (CLEAR_VERBS.has(word.lower))
    return next === undefined || !FINITE.test(next.lower) || (mayShare && sharesObject(words, i));
  if (!DOUBTFUL_VERBS.has(word.lower)) return false;
  const two = `${word.lower} ${next?.lower ?? ''}`;
  return objectFollows || (mayShare && sharesObject(words, i)) || LOOKS_FOR.test(two) || IN_TWO_WORDS.test(two);
}

/** `drill and tap the hole`: two verbs, one thing. */
function sharesObject(words: readonly Word[], i: number): boolean {
  return (
    /^(?:and|or)$/.test(words[i + 1]?.lower ?? '') && isVerb(words[i + 2]?.lower ?? '') && isOrder(words, i + 2, false)
  );
}

/** Whether an order may stand at `i`: at the head of a step even a doubtful or unknown word is read as a verb. */
function mayBeOrder(words: readonly Word[], i: number): boolean {
  const word = words[i];
  if (word === undefined || word.kind !== 'word') return false;
  if (isVerb(word.lower))
    return !/^(?:is|are|was|were|must|should|shall|has|have|can|may|will)$/.test(words[i + 1]?.lower ?? '');
  if (NO_VERB_FIRST.has(word.lower) || OPENERS.has(word.lower) || endsAsNoun(word.lower) || isOtherForm(word.lower))
    return false;
  const next = words[i + 1];
  return next !== undefined && (next.kind === 'reference' || beginsObject(next.lower));
}

/** Steps over `then`, `slowly`, `do not`, and a comma after them. */
export function pastAdverbs(words: readonly Word[], from: number): number {
  let i = from;
  for (;;) {
    const word = words[i];
    if (word === undefined) return i;
    const { lower } = word;
    const adverb = BEFORE_VERB.has(lower) || (lower.endsWith('ly') && /[a-z]{2}ly$/.test(lower) && !isVerb(lower));
    if (adverb) i += words[i + 1]?.text === ',' ? 2 : 1;
    else if (lower === 'do' && words[i + 1]?.lower === 'not') i += 2;
    else if (lower === "don't" || lower === 'don’t') i += 1;
    else return i;
  }
}

/** Index of the verb that gives the sentence's order, after a condition or phrase with its comma; -1 where none is found. */
export function mainVerb(sentence: Sentence): number {
  sentence.main ??= findMain(sentence.words);
  return sentence.main;
}

function findMain(words: readonly Word[]): number {
  const first = words.findIndex((w) => w.kind !== 'mark');
  if (first < 0) return -1;
  const head = pastAdverbs(words, first);
  const opener = OPENERS.has(words[head]?.lower ?? '');
  if (!opener && mayBeOrder(words, head)) return head;
  // A phrase before the order ends with a comma, a colon or a dash.
  for (let i = head; i < words.length - 1; i++) {
    if (!/^[,:–—]$/.test(words[i]?.text ?? '')) continue;
    const verb = pastAdverbs(words, i + 1);
    if (opener ? mayBeOrder(words, verb) && !isPhrase(words, verb) : isOrder(words, verb)) return verb;
  }
  return -1;
}

/** Words within which the order must come after such a phrase. */
const FARTHEST = 40;

/** `, open to the sky, ...`: within a phrase a doubtful verb before a preposition is an adjective or a noun. */
function isPhrase(words: readonly Word[], i: number): boolean {
  const rest = words
    .slice(i, i + FARTHEST)
    .some((w, k) => w.text === ',' && isOrder(words, pastAdverbs(words, i + k + 1)));
  return rest && !isOrder(words, i);
}

const CONJUNCTIONS: ReadonlySet<string> = new Set(['and', 'then', 'but']);
const JOINTS: ReadonlySet<string> = new Set([...CONJUNCTIONS, ',', ';', ':', '–', '—']);

/** Indices of further orders in the sentence after `main`, joined by `and`, `then`, a comma or a semicolon. */
export function furtherOrders({ words }: Sentence, main: number): readonly number[] {
  const found: number[] = [];
  for (let i = main + 1; i < words.length - 1; i++) {
    const word = words[i];
    if (word === undefined || !JOINTS.has(word.lower)) continue;
    let next = i + 1;
    while (CONJUNCTIONS.has(words[next]?.lower ?? '')) next += 1;
    const forbids = /^(?:do|never|don['’]t)$/.test(words[next]?.lower ?? '');
    next = pastAdverbs(words, next);
    const certain = isOrder(words, next) || (words[next - 1]?.lower === 'then' && mayBeOrder(words, next));
    if (word.text === ',' && next === i + 1 && isParticipleToo(words, next)) continue;
    if (forbids || !certain || isInfinitive(words, i)) continue;
    found.push(next);
    i = next;
  }
  return found;
}

/** `..., run down until they touch`: behind a comma it tells how, unless it has an object. */
function isParticipleToo(words: readonly Word[], i: number): boolean {
  const next = words[i + 1];
  const acts = next !== undefined && (next.kind === 'reference' || beginsObject(next.lower));
  return /^(?:run|set|shut|cut|put|spread|split|cast|let)$/.test(words[i]?.lower ?? '') && !acts;
}

/** `to lift and turn the shaft`, `that hold and turn`: the verb before the joint is no order either. */
function isInfinitive(words: readonly Word[], joint: number): boolean {
  return (
    isVerb(words[joint - 1]?.lower ?? '') && /^(?:to|that|which|who|can|must|will)$/.test(words[joint - 2]?.lower ?? '')
  );
}
