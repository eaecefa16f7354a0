/** An order in the passive. */

import type { Check } from '../check.ts';
import { eachText, type Finding } from './fields.ts';
import { mainVerb } from './orders.ts';
import type { Reading, Sentence, Word } from './reading.ts';
import { isParticiple } from './words.ts';

/** First and last word of `is to be tightened`, `must be`, `are tightened` in a sentence that no order begins. */
export function passiveOrder(sentence: Sentence): readonly [Word, Word] | undefined {
  if (mainVerb(sentence) >= 0) return undefined;
  const { words } = sentence;
  const comma = conditionEnds(words);
  for (let i = Math.max(1, comma + 1); i < words.length - 1; i++) {
    const word = words[i];
    if (word === undefined) continue;
    const participle = participleAfter(words, i);
    if (participle !== undefined) return [word, participle];
  }
  return undefined;
}

/** The comma behind `When the drain is opened, ...`; -1 without a condition. */
function conditionEnds(words: readonly Word[]): number {
  if (!/^(?:when|if|once|after|before|while|unless|until|as|with)$/.test(words[0]?.lower ?? '')) return -1;
  return words.findIndex((w) => w.text === ',');
}

function participleAfter(words: readonly Word[], from: number): Word | undefined {
  const auxiliary = words[from]?.lower ?? '';
  let i = from + 1;
  if (/^(?:must|should|shall|can|may|will|ought)$/.test(auxiliary)) {
    while (/^(?:not|now|then|always|never|also|to)$/.test(words[i]?.lower ?? '')) i += 1;
    if (words[i]?.lower !== 'be') return undefined;
    i += 1;
  } else if (/^(?:has|have|needs?)$/.test(auxiliary)) {
    if (words[i]?.lower !== 'to' || words[i + 1]?.lower !== 'be') return undefined;
    i += 2;
  } else if (/^(?:is|are)$/.test(auxiliary)) {
    if (words[i]?.lower === 'to' && words[i + 1]?.lower === 'be') i += 2;
  } else return undefined;
  while (
    /^(?:not|now|then|always|never|also|first|again|all)$/.test(words[i]?.lower ?? '') ||
    /ly$/.test(words[i]?.lower ?? '')
  )
    i += 1;
  const word = words[i];
  return word !== undefined && isParticiple(word.lower) ? word : undefined;
}

function* passiveOrdersIn(reading: Reading): Generator<Finding> {
  for (const sentence of reading.sentences) {
    const found = passiveOrder(sentence);
    if (found === undefined) continue;
    const [first, last] = found;
    yield {
      message: `\`${reading.text.slice(first.start, last.end)}\` orders in the passive and leaves open who does it`,
      hint: 'begin with the verb as an order: `Tighten the cover.`',
      start: first.start,
      end: last.end,
    };
  }
}

export const passiveOrderCheck: Check = {
  code: 'WRT008',
  name: 'passive-order',
  severity: 'warning',
  title: 'A step orders in the passive: `is to be tightened`, `must be cleaned`.',
  why: 'It reads like a report of what is so already, and the mechanic looks for who does it instead of doing it.',
  sources: [
    'ASD-STE100 Simplified Technical English, sections 3 and 5: active voice, and the imperative for instructions (rule read in a summary, section from memory)',
    "DOE-STD-1029-92 Writer's guide for technical procedures: steps as commands (memory)",
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Both faces «must be wiped» with a <consumable:wipe>.\n',
      },
    ],
  },
  found: eachText(['do'], passiveOrdersIn),
};
