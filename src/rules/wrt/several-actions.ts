/** More than one action in a step. */

import type { Check } from '../check.ts';
import { eachText, type Finding } from './fields.ts';
import { furtherOrders, isOrder, mainVerb, pastAdverbs } from './orders.ts';
import type { Reading, Sentence, Word } from './reading.ts';

function list(words: string): ReadonlySet<string> {
  return new Set(words.split(' '));
}

/** What a second order only finishes or watches belongs to the first action: nobody does the one without the other. */
const FINISHES = list(
  'see watch look listen feel read observe note catch hear hold keep leave let allow wait support steady stop remain ' +
    'discard scrap retain repeat make ensure stay be stand record initial sign',
);
/** Writing down is part of reading or counting. */
const READINGS = list('read measure count weigh time check note see find take compare test');
const WRITES = list('write compare log enter mark subtract add');
/** Two hands do these while the other goes on, or one word stands for the start of the same movement. */
const HOLDS = list('hold keep support steady restrain grip go come');
/** There and back with one control: the try that proves a lock ends at off again (29 CFR 1910.147(d)(6)). */
const TRIES = list('press try push switch move turn operate');
/** These let somebody or something else do the rest. */
const LETS = list('have let make ask get allow help see ensure check');
/** Both ways of one movement, or one movement of the hands in two words. */
const MOVEMENTS = list(
  'raise+lower lower+raise lift+lower lower+lift open+close close+open push+pull pull+push push+turn press+turn ' +
    'pull+turn lift+turn turn+push turn+press turn+pull extend+retract retract+extend start+stop fill+drain rock+turn ' +
    'squeeze+turn push+twist lift+tilt tilt+lift slide+turn twist+pull lift+set lift+lay lift+place lift+put take+put take+lay',
);

/** The sentence that leads into a choice of equals: one of them is done. */
const CHOICE = /\b(?:one of|either|whichever)\b/i;

interface Order {
  readonly verb: Word;
  readonly sentence: Sentence;
}

function ordersOf(reading: Reading): readonly Order[] {
  const orders: Order[] = [];
  const items = reading.sentences.filter((s) => s.item && isOrder(s.words, pastAdverbs(s.words, 0)));
  // Of a single order in a list, or of equals to choose from, the items are no steps of their own.
  const passed = items.length < 2 || CHOICE.test(reading.text);
  for (const sentence of reading.sentences) {
    if (sentence.item && passed) continue;
    const main = mainVerb(sentence);
    const verb = sentence.words[main];
    if (verb === undefined) continue;
    // A further sentence must be an order beyond doubt; one that forbids is no second action.
    if (orders.length > 0 && (!isOrder(sentence.words, main) || forbids(sentence, main))) continue;
    orders.push({ verb, sentence });
    if (LETS.has(verb.lower)) continue;
    for (const i of furtherOrders(sentence, main)) {
      const further = sentence.words[i];
      if (further !== undefined) orders.push({ verb: further, sentence });
    }
  }
  return orders;
}

function forbids({ words }: Sentence, main: number): boolean {
  return words.slice(0, main).some((w) => w.lower === 'never' || w.lower === 'not' || /^don['’]t$/.test(w.lower));
}

function isPart(one: Order, other: Order): boolean {
  const [first, second] = [one.verb.lower, other.verb.lower];
  if (FINISHES.has(second) || (WRITES.has(second) && READINGS.has(first)) || first === second) return true;
  if (second === 'return' && TRIES.has(first)) return true;
  return MOVEMENTS.has(`${first}+${second}`) && actsOnTheSame(one, other);
}

/** `open and close the valve`, `lift the rod and set it down`. */
function actsOnTheSame(one: Order, { verb, sentence }: Order): boolean {
  if (sentence !== one.sentence) return false;
  const at = sentence.words.indexOf(verb);
  return sentence.words[at - 2] === one.verb || /^(?:it|them|both)$/.test(sentence.words[at + 1]?.lower ?? '');
}

export function* severalActionsIn(reading: Reading): Generator<Finding> {
  const [first, ...further] = ordersOf(reading);
  if (first === undefined) return;
  const held = HOLDS.has(first.verb.lower) ? further.slice(1) : further;
  const more = held.filter((o) => !isPart(first, o));
  const second = more[0];
  if (second === undefined) return;
  yield {
    message: `\`${first.verb.text}\` and \`${second.verb.text}\` are two actions in one step`,
    hint: `give \`${second.verb.text}\` a step of its own; what happens at the same moment is said with \`while\` or \`with\``,
    start: second.verb.start,
    end: second.verb.end,
  };
}

export const severalActions: Check = {
  code: 'WRT001',
  name: 'several-actions',
  severity: 'warning',
  title: 'A step orders more than one action.',
  why: 'The mechanic does the first action, turns to the machine, ticks the step, and the second one is never done.',
  sources: [
    'ASD-STE100 Simplified Technical English, section 5: one instruction a sentence unless actions happen at the same time (rule read in a summary, section from memory)',
    "DOE-STD-1029-92 Writer's guide for technical procedures: one action a step (memory)",
    'what is held, watched, read or written down with the action counts as part of it (common practice)',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Scrape both faces and «wipe» them with a <consumable:wipe>.\n',
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Scrape both faces.\n      - do: Wipe both faces with a <consumable:wipe>.\n',
      },
    ],
  },
  found: eachText(['do'], severalActionsIn),
};
