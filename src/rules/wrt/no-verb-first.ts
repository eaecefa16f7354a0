/** A sentence of a step that does not begin with what to do. */

import type { Check } from '../check.ts';
import { eachText, type Finding } from './fields.ts';
import { mainVerb } from './orders.ts';
import { passiveOrder } from './passive-order.ts';
import type { Reading, Word } from './reading.ts';
import { endsAsNoun, isOtherForm, isVerb, NO_VERB_FIRST, OPENERS } from './words.ts';

/** Whether a word can surely not be the verb of an order. A word that nothing is known about is let pass. */
function isSurelyNoVerb(word: Word): boolean {
  const { kind, lower } = word;
  if (kind === 'reference' || kind === 'number') return true;
  return NO_VERB_FIRST.has(lower) || OPENERS.has(lower) || isOtherForm(lower) || (!isVerb(lower) && endsAsNoun(lower));
}

export function* noVerbFirstIn(reading: Reading): Generator<Finding> {
  for (const sentence of reading.sentences) {
    if (sentence.item || mainVerb(sentence) >= 0 || passiveOrder(sentence) !== undefined) continue;
    const first = sentence.words.find((w) => w.kind !== 'mark');
    if (first === undefined || !isSurelyNoVerb(first)) continue;
    const opener = OPENERS.has(first.lower);
    yield {
      message: opener
        ? `after \`${first.text}\` no comma and no order follow`
        : `a sentence of the step begins with \`${first.text}\`, which tells nobody what to do`,
      hint: opener
        ? 'write the condition, a comma, and the verb as an order: `When the drain is dry, close it.`'
        : 'begin with the verb as an order: `Lift off the cover.`; what only informs belongs in `note`',
      start: first.start,
      end: first.end,
    };
  }
}

export const noVerbFirst: Check = {
  code: 'WRT009',
  name: 'no-verb-first',
  severity: 'warning',
  title: 'A step begins neither with a verb nor with a condition and a verb.',
  why: 'The eye that comes back from the machine looks for the verb; where it is not the first word the step is read again, or skipped.',
  sources: [
    'ASD-STE100 Simplified Technical English, section 5: instructions in the imperative (rule read in a summary, section from memory)',
    "DOE-STD-1029-92 Writer's guide for technical procedures: a step begins with its action verb (memory)",
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: «Cleaning» of both faces with a <consumable:wipe>.\n',
      },
    ],
  },
  found: eachText(['do'], noVerbFirstIn),
};
