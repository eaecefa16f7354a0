/** Text as a reader takes it in: sentences of words, with each reference as one word. */

import type { Paragraph, Prose, Run } from '../../resolve/index.ts';

export interface Word {
  readonly text: string;
  /** Lower case; empty for a reference, whose name is no word of the sentence. */
  readonly lower: string;
  readonly kind: 'word' | 'number' | 'mark' | 'reference';
  /** Offsets in `Reading.text`. */
  readonly start: number;
  readonly end: number;
}

export interface Sentence {
  readonly words: readonly Word[];
  /** An item of a list. */
  readonly item: boolean;
  /** Words as ASD-STE100 counts them: a name, a number with its unit and a hyphenated word are one each. */
  readonly count: number;
  /** Index of the verb that orders, once `mainVerb` has looked for it. */
  main?: number;
}

export interface Reading {
  /** Plain text with ordinary spaces; paragraphs are parted by line ends. */
  readonly text: string;
  /** The same with every reference blotted out, so that words are only looked for in what the author typed. */
  readonly typed: string;
  readonly sentences: readonly Sentence[];
  /** Checks that have found nothing in it, one bit each: the same text stands in several variants and procedures. */
  clean: number;
}

/** What blots out a reference: no word and no number holds it. */
const BLOT = '\ue000';

/** A number may carry its unit behind a no-break space, which the text has had since it was resolved. */
const TOKEN =
  /\d(?:[\d.,/]*\d)?(?:\u00a0\d+\/\d+)?(?:[°"″%]|\u00a0[\p{L}°%µ"″][\p{L}\d·²³/]*)?(?:-\p{L}[\p{L}\d-]*)?|[\p{L}\ue000][\p{L}\p{M}\d'’/\ue000-]*|\S/uy;

/** A full stop after these ends no sentence. */
const ABBREVIATION =
  /^(?:approx|ca|cf|dia|e\.?g|etc|fig|figs|i\.?e|incl|max|min|mr|mrs|nos?|p|pp|para|qty|ref|sec|st|vs)$/i;

/** By what the text is for and by its words. */
const known = new Map<string, Map<string, Reading>>();
const MOST_KNOWN = 5_000;

/**
 * The text as sentences, for one that comes again: in several variants or, of a shared stage, in many procedures. kind: what
 * the text is for; the same words may be right in a note and wrong in a step.
 */
export function readingOf(prose: Prose, kind: string): Reading {
  let ofKind = known.get(kind);
  if (ofKind === undefined) {
    ofKind = new Map();
    known.set(kind, ofKind);
  }
  const key = keyOf(prose);
  const before = ofKind.get(key);
  if (before !== undefined) return before;
  const made = newReading(prose);
  if (ofKind.size >= MOST_KNOWN) ofKind.clear();
  ofKind.set(key, made);
  return made;
}

function keyOf(prose: Prose): string {
  const [only] = prose;
  const [run] = only?.runs ?? [];
  if (run !== undefined && prose.length === 1 && only?.runs.length === 1 && only.kind === 'paragraph' && isTyped(run))
    return run.text;
  let key = '';
  for (const { kind, runs } of prose) {
    key += kind === 'item' ? '\n- ' : '\n';
    for (const r of runs) key += isTyped(r) ? r.text : `${BLOT}${r.text}${BLOT}`;
  }
  return key;
}

/** Words of the author, and neither a name nor a sign to be copied. */
function isTyped({ ref, code, href }: Run): boolean {
  return ref === undefined && code === undefined && href === undefined;
}

/** The text as sentences, for one that stands in one place only. */
export function newReading(prose: Prose): Reading {
  return new Lazy(prose);
}

/** Most texts are settled by a look at their letters: the sentences are read when they are asked for. */
class Lazy implements Reading {
  readonly text: string;
  readonly typed: string;
  clean = 0;
  #paragraphs: readonly Flat[];
  #sentences: readonly Sentence[] | undefined;

  constructor(prose: Prose) {
    this.#paragraphs = prose.map(flattened);
    let text = '';
    let typed = '';
    for (const { shown, blotted } of this.#paragraphs) {
      text += `${shown}\n`;
      typed += `${blotted}\n`;
    }
    this.text = plainSpaces(text);
    this.typed = plainSpaces(typed);
  }

  get sentences(): readonly Sentence[] {
    this.#sentences ??= sentencesOf(this.#paragraphs);
    return this.#sentences;
  }
}

/** A paragraph as one text, and the same with its references blotted out. */
interface Flat {
  readonly shown: string;
  readonly blotted: string;
  readonly item: boolean;
}

function sentencesOf(paragraphs: readonly Flat[]): readonly Sentence[] {
  const sentences: Sentence[] = [];
  let offset = 0;
  for (const { shown, blotted, item } of paragraphs) {
    let words: Word[] = [];
    const end = (): void => {
      let count = 0;
      for (const w of words) if (w.kind !== 'mark') count += 1;
      sentences.push({ words, item, count });
      words = [];
    };
    for (let at = wordFrom(blotted, 0); at < blotted.length; ) {
      const word = wordAt(blotted, shown, at, offset);
      words.push(word);
      const behind = word.end - offset;
      if (isStop(word.text) && endsSentence(words, blotted.slice(behind, behind + 3))) end();
      at = wordFrom(blotted, behind);
    }
    if (words.some((w) => w.kind !== 'mark')) end();
    offset += shown.length + 1;
  }
  return sentences;
}

function isStop(text: string): boolean {
  return text === '.' || text === '!' || text === '?';
}

function plainSpaces(text: string): string {
  return text.includes('\u00a0') ? text.replaceAll('\u00a0', ' ') : text;
}

function flattened({ kind, runs }: Paragraph): Flat {
  let shown = '';
  let blotted = '';
  for (const run of runs) {
    shown += run.text;
    blotted += isTyped(run) ? run.text : BLOT.repeat(run.text.length);
  }
  return { shown, blotted, item: kind === 'item' };
}

const BLANK = /\s/;

/** Where the next word begins, or the end of the text. */
function wordFrom(text: string, from: number): number {
  let at = from;
  while (at < text.length) {
    const c = text.charCodeAt(at);
    if (c !== 32 && !((c < 32 || c > 126) && BLANK.test(text.charAt(at)))) break;
    at += 1;
  }
  return at;
}

/** The word that begins at `at`; offset: of the paragraph. */
function wordAt(blotted: string, shown: string, at: number, offset: number): Word {
  const plain = plainWord(blotted, at, offset);
  if (plain !== undefined) return plain;
  TOKEN.lastIndex = at;
  const text = TOKEN.exec(blotted)?.[0] ?? blotted.charAt(at);
  const start = offset + at;
  const end = start + text.length;
  if (text.includes(BLOT))
    return { text: plainSpaces(shown.slice(at, at + text.length)), lower: '', kind: 'reference', start, end };
  const first = text.charAt(0);
  if (first >= '0' && first <= '9') {
    const number = plainSpaces(text);
    const kind = /\d-\p{L}/u.test(text) ? 'word' : 'number';
    return { text: number, lower: number.toLowerCase(), kind, start, end };
  }
  const lower = text.toLowerCase();
  // Only letters have two cases, or are longer than one sign.
  const letter = text.length > 1 || lower !== text.toUpperCase();
  return { text, lower, kind: letter ? 'word' : 'mark', start, end };
}

/** Most words are letters of ASCII, and most marks are signs of it: those need no pattern. */
function plainWord(text: string, at: number, offset: number): Word | undefined {
  const first = text.charCodeAt(at);
  const start = offset + at;
  if (first > 32 && first < 127 && !isLetter(first) && !isDigit(first)) {
    const mark = text.charAt(at);
    return { text: mark, lower: mark, kind: 'mark', start, end: start + 1 };
  }
  if (!isLetter(first)) return undefined;
  let capitals = first < 97;
  let end = at + 1;
  for (; end < text.length; end++) {
    const c = text.charCodeAt(end);
    if (c > 126) {
      // A blank ends the word; what else it may be, the pattern knows.
      if (c !== 0xa0 && c !== 0x2019) return undefined;
      if (c === 0xa0) break;
    } else if (isLetter(c)) capitals ||= c < 97;
    // Digits, hyphen, apostrophe and stroke are parts of a word.
    else if (!isDigit(c) && c !== 45 && c !== 39 && c !== 47) break;
  }
  const word = text.slice(at, end);
  return { text: word, lower: capitals ? word.toLowerCase() : word, kind: 'word', start, end: offset + end };
}

function isLetter(c: number): boolean {
  return (c >= 97 && c <= 122) || (c >= 65 && c <= 90);
}

function isDigit(c: number): boolean {
  return c >= 48 && c <= 57;
}

function endsSentence(words: readonly Word[], after: string): boolean {
  if (/^\s*$/.test(after)) return true;
  if (!/^["'”’)]*\s+["'“‘(]*[\p{Lu}\ue000]/u.test(after)) return false;
  const before = words.at(-2);
  return before === undefined || !ABBREVIATION.test(before.text);
}
