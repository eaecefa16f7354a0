/** The words of changes: values with an arrow between them, texts cut to a readable length. */

import type { Prose, SourceNote } from '../../resolve/types.ts';
import { formatNumber, formatQuantity, type Quantity } from '../../units/index.ts';
import type { Subject, Told } from './types.ts';

/** Letters of a quoted text: a line of the panel holds about a hundred; of each of two with an arrow between them. */
const MOST = 80;
const MOST_OF_TWO = 60;
/** Letters before the first difference that are kept so that it can be understood. */
const LEAD = 20;

/** Text on one line, cut at the last blank before the limit; the mark of omission counts. */
export function cut(text: string, most = MOST): string {
  const line = oneLine(text);
  if (line.length <= most) return line;
  const head = line.slice(0, most);
  const blank = head.lastIndexOf(' ');
  return `${head.slice(0, blank > most / 2 ? blank : most - 1).replace(/[\s,;:.–-]+$/u, '')}…`;
}

/** The text from a little before the place where it first differs from another, when it is too long to be quoted whole. */
function excerpt(text: string, other: string, most: number): string {
  const line = oneLine(text);
  const former = oneLine(other);
  if (line.length <= most) return line;
  let same = 0;
  while (same < former.length && line[same] === former[same]) same += 1;
  const from = line.lastIndexOf(' ', Math.max(0, same - LEAD)) + 1;
  // A difference that the beginning shows needs no cut before it, and one at the end no longer text than there is.
  const start = same < most - LEAD ? 0 : from;
  return start === 0 ? cut(line, most) : `…${cut(line.slice(start), most)}`;
}

/** Blanks and line ends as single blanks; no-break spaces stay. */
export function oneLine(text: string): string {
  return text.replace(/[ \t\r\n]+/g, ' ').trim();
}

/** The printed words, a line a paragraph. */
export function proseText(prose: Prose | undefined): string {
  return (prose ?? []).map((p) => p.runs.map((r) => r.text).join('')).join('\n');
}

/** `Pump manual, 3, page 12`; empty for none. */
export function sourceWords(source: SourceNote | undefined): string {
  if (source === undefined) return '';
  return [source.document, source.edition, source.place].filter((t) => t !== undefined).join(', ');
}

/** First letter in lower case for the middle of a sentence, unless the word is an abbreviation: `Cover gap`, not `PTFE ring`. */
export function lowered(text: string): string {
  return /^\p{Lu}(?:\p{Ll}|\s)/u.test(text) ? text.charAt(0).toLocaleLowerCase('en') + text.slice(1) : text;
}

/** `85 → 95 N·m`: the unit once where both have the same. */
export function quantityArrow(before: Quantity, after: Quantity): string {
  return before.unit === after.unit
    ? `${formatNumber(before)} → ${formatQuantity(after)}`
    : `${formatQuantity(before)} → ${formatQuantity(after)}`;
}

/**
 * A short value that changed, came or went; nothing when both are the same. Empty text stands for what is not there.
 * arrow: the two values where they are better said otherwise than one after the other.
 */
export function valueChange(of: Subject, name: string, before: string, after: string, arrow?: string): readonly Told[] {
  if (sameWords(before, after)) return [];
  if (before === '') return [{ kind: 'added', of, say: `${name} added: ${cut(after)}`, after }];
  if (after === '') return [{ kind: 'removed', of, say: `${name} removed: ${cut(before)}`, before }];
  return [
    {
      kind: 'value',
      of,
      say: `${name} ${arrow ?? `${excerpt(before, after, MOST_OF_TWO)} → ${excerpt(after, before, MOST_OF_TWO)}`}`,
      before,
      after,
    },
  ];
}

/** The same for sentences: the old ones stand in the comparison only. */
export function textChange(of: Subject, name: string, before: string, after: string): readonly Told[] {
  if (before === '' || after === '') return valueChange(of, name, before, after);
  if (sameWords(before, after)) return [];
  return [{ kind: 'reworded', of, say: `${name} reworded: ${excerpt(after, before, MOST)}`, before, after }];
}

/** A text that is known to differ; references that lead elsewhere under the same words are a change as well. */
export function proseChange(
  of: Subject,
  name: string,
  older: Prose | undefined,
  newer: Prose | undefined,
): readonly Told[] {
  const before = proseText(older);
  const after = proseText(newer);
  const told = textChange(of, name, before, after);
  return told.length > 0
    ? told
    : [{ kind: 'reworded', of, say: `${name} refers to something else: ${cut(after)}`, before, after }];
}

/** `tool exchanged, feeler gauge → dial gauge`; ids are added where both are called the same. */
export function exchange(
  of: Subject,
  before: { readonly id: string; readonly name: string },
  after: { readonly id: string; readonly name: string },
): Told {
  const alike = before.name === after.name;
  const word = (x: typeof before): string => (alike ? `${x.name} (${x.id})` : x.name);
  return {
    kind: 'exchanged',
    of,
    say: `${of} exchanged, ${word(before)} → ${word(after)}`,
    before: word(before),
    after: word(after),
  };
}

/** Whether two texts have the same words: blanks of any kind and number mean the same. */
export function sameWords(a: string, b: string): boolean {
  return a === b || evenBlanks(a) === evenBlanks(b);
}

export function evenBlanks(text: string): string {
  return text.replace(/\s+/gu, ' ').trim();
}

/**
 * Where a number was read. Only another edition, the place being the same: one change for all numbers that rest on the document,
 * and the last to be told, because the numbers themselves stand as they were.
 */
export function sourceChange(
  of: Subject,
  name: string,
  before: SourceNote | undefined,
  after: SourceNote | undefined,
): readonly Told[] {
  const renewed =
    before !== undefined &&
    after !== undefined &&
    before.document === after.document &&
    (before.place ?? '') === (after.place ?? '');
  return renewed
    ? valueChange('document', `edition of ${after.document}`, before.edition ?? '', after.edition ?? '')
    : valueChange(of, name, sourceWords(before), sourceWords(after));
}
