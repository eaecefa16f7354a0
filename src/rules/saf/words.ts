/** What the safety checks ask of text: its plain words, its sentences, and how many people it speaks of. */

import type { ResolvedShop } from '../../resolve/index.ts';
import { onceAText } from '../once.ts';

/** The lists of words in this family are English; a shop in another language is left alone. */
export function inEnglish(shop: ResolvedShop): boolean {
  return /^en\b/i.test(shop.info.language);
}

/** Blanks that are no single spaces between words. */
const ODD_BLANKS = /[^\S ]|\s\s|^\s|\s$/u;

/** Words of a text with single blanks, references as their printed names. */
export const textOf = onceAText((prose): string => {
  let text = '';
  for (const [i, { runs }] of prose.entries()) {
    if (i > 0) text += ' ';
    for (const run of runs) text += run.text;
  }
  return ODD_BLANKS.test(text) ? text.replace(/\s+/gu, ' ').trim() : text;
});

/** Sentences, without the blank between them. */
export function sentencesOf(text: string): readonly string[] {
  return text.split(/(?<=[.!?])\s+(?=\S)/u);
}

/** More texts than this are of shops that are no longer open. */
const MOST_REMEMBERED = 50_000;

/** The same question over the same words is answered once: shared stages say the same on many cards. */
export function remembered<T>(find: (text: string) => T): (text: string) => T {
  const answers = new Map<string, { readonly answer: T }>();
  return (text) => {
    const known = answers.get(text);
    if (known !== undefined) return known.answer;
    if (answers.size >= MOST_REMEMBERED) answers.clear();
    const answer = find(text);
    answers.set(text, { answer });
    return answer;
  };
}

const PEOPLE = '(?:people|persons|fitters|mechanics|men|hands|helpers)';
const COUNTED = new RegExp(`\\b(two|three|four|five|six|[2-9])\\s+${PEOPLE}\\b`, 'iu');
const SECOND =
  /\b(?:second|another|other) (?:person|fitter|mechanic|man|pair of hands)\b|\bboth (?:people|fitters|mechanics)\b|\b(?:a|the) (?:helper|mate)\b/iu;
const NUMBERS = ['two', 'three', 'four', 'five', 'six'];

/** Without one of these words nobody is spoken of, and most texts are done with. */
const ANYBODY = /people|person|fitter|mechanic|m[ae]n|hands|helper|mate/iu;

/** `two people` is 2, `a second fitter` is 2; undefined where no more than one person is spoken of. */
export function peopleIn(text: string): { readonly count: number; readonly words: string } | undefined {
  if (!ANYBODY.test(text)) return undefined;
  const counted = COUNTED.exec(text);
  if (counted !== null) {
    const [words, number = ''] = counted;
    const at = NUMBERS.indexOf(number.toLowerCase());
    return { count: at < 0 ? Number(number) : at + 2, words };
  }
  const second = SECOND.exec(text);
  return second === null ? undefined : { count: 2, words: second[0] };
}

const GEAR =
  /\b(?:hoists?|cranes?|jacks?|winch(?:es)?|davits?|slings?|chain blocks?|tackle|gantry|fork-?lift|lift trucks?|lifting (?:gear|table|beam|frame|magnet)|trolley|hydraulic table)\b/iu;

/** Whether the words speak of something that carries the load. */
export function namesGear(text: string): boolean {
  return GEAR.test(text);
}
