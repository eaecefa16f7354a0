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
  /\d(?:[\d.,/]*\d)?(?:\u00a0\d+\/\d+)?(?:[°"″%]|\u00a0[\p{L}°%µ"″][\p{L}\d·²³/]*)?(?:-\p{L}[\p{L}\d-]*)?|[\p{L}\ue000][\p{L}\p{M}\d'’/\ue000-]*|\S/gu;

/** A full stop after these ends no sentence. */
const ABBREVIATION =
  /^(?:approx|ca|cf|dia|e\.?g|etc|fig|figs|i\.?e|incl|max|min|mr|mrs|nos?|p|pp|para|qty|ref|sec|st|vs)$/i;

/** By what the text is for and by its words, which stand in several variants and, in shared stages, in many procedures. */
const known = new Map<string, Map<string, Reading>>();
const MOST_KNOWN = 5_000;

/** The text as sentences. kind: what the text is for; the same words may be right in a note and wrong in a step. */
export function readingOf(prose: Prose, kind: string): Reading {
  let ofKind = known.get(kind);
  if (ofKind === undefined) {
    ofKind = new Map();
    known.set(kind, ofKind);
  }
  const key = keyOf(prose);
  const before = ofKind.get(key);
  if (before !== undefined) return before;
  const made = read(prose);
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

function read(prose: Prose): Reading {
  let text = '';
  let typed = '';
  for (const paragraph of prose) {
    const { shown, blotted } = flat(paragraph);
    text += `${shown}\n`;
    typed += `${blotted}\n`;
  }
  let sentences: readonly Sentence[] | undefined;
  return {
    text: plainSpaces(text),
    typed: plainSpaces(typed),
    // Most texts are settled by a look at their letters.
    get sentences() {
      sentences ??= [...sentencesOf(prose)];
      return sentences;
    },
    clean: 0,
  };
}

function* sentencesOf(prose: Prose): Generator<Sentence> {
  let offset = 0;
  for (const paragraph of prose) {
    const { shown, blotted } = flat(paragraph);
    for (const words of split(shown, blotted, offset)) {
      const count = words.reduce((n, w) => n + (w.kind === 'mark' ? 0 : 1), 0);
      yield { words, item: paragraph.kind === 'item', count };
    }
    offset += shown.length + 1;
  }
}

function plainSpaces(text: string): string {
  return text.includes('\u00a0') ? text.replaceAll('\u00a0', ' ') : text;
}

function flat({ runs }: Paragraph): { shown: string; blotted: string } {
  let shown = '';
  let blotted = '';
  for (const run of runs) {
    shown += run.text;
    blotted += isTyped(run) ? run.text : BLOT.repeat(run.text.length);
  }
  return { shown, blotted };
}

function* split(shown: string, blotted: string, offset: number): Generator<readonly Word[]> {
  let words: Word[] = [];
  for (const match of blotted.matchAll(TOKEN)) {
    const [text] = match;
    const start = match.index;
    const end = start + text.length;
    words.push(wordAt(text, shown, start, offset));
    if ((text !== '.' && text !== '!' && text !== '?') || !endsSentence(words, blotted.slice(end, end + 3))) continue;
    yield words;
    words = [];
  }
  if (words.some((w) => w.kind !== 'mark')) yield words;
}

function wordAt(text: string, shown: string, start: number, offset: number): Word {
  const from = offset + start;
  const end = from + text.length;
  if (text.includes(BLOT))
    return {
      text: plainSpaces(shown.slice(start, start + text.length)),
      lower: '',
      kind: 'reference',
      start: from,
      end,
    };
  const first = text.charAt(0);
  if (first >= '0' && first <= '9') {
    const plain = plainSpaces(text);
    return {
      text: plain,
      lower: plain.toLowerCase(),
      kind: /\d-\p{L}/u.test(text) ? 'word' : 'number',
      start: from,
      end,
    };
  }
  const lower = text.toLowerCase();
  // Only letters have two cases, or are longer than one sign.
  const letter = text.length > 1 || lower !== text.toUpperCase();
  return { text, lower, kind: letter ? 'word' : 'mark', start: from, end };
}

function endsSentence(words: readonly Word[], after: string): boolean {
  if (/^\s*$/.test(after)) return true;
  if (!/^["'”’)]*\s+["'“‘(]*[\p{Lu}\ue000]/u.test(after)) return false;
  const before = words.at(-2);
  return before === undefined || !ABBREVIATION.test(before.text);
}
