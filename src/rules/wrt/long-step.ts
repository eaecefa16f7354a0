/** A sentence of a step that is longer than a mechanic keeps in mind. */

import type { Check } from '../check.ts';
import { eachText, KIND_NAMES } from './fields.ts';
import { tooLong } from './length.ts';

/** ASD-STE100: most words in a sentence that tells what to do. */
export const MOST_WORDS_ORDER = 20;

export const longStep: Check = {
  code: 'WRT002',
  name: 'long-step',
  severity: 'warning',
  title: `A sentence that tells what to do has more than ${MOST_WORDS_ORDER} words.`,
  why: 'The mechanic reads it once and walks to the machine; what stands after the first dozen words is done from memory.',
  sources: [
    'ASD-STE100 Simplified Technical English, section 5: at most 20 words in a procedural sentence (rule read in a summary, section from memory)',
    'a name printed for a reference, a number with its unit and a hyphenated word count as one (ASD-STE100 section 8, memory)',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: «Wipe both faces with a <consumable:wipe> until no trace of old gasket, paint, oil or rust can be seen or felt anywhere.»\n',
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Wipe both faces bare with a <consumable:wipe>.\n        note: Old gasket, paint, oil and rust are felt with a fingernail.\n',
      },
    ],
  },
  found: eachText(['do', 'if out'], (reading, kind) =>
    tooLong(
      reading,
      MOST_WORDS_ORDER,
      KIND_NAMES[kind],
      'leave out what the lists of this step say already, or put the reason into `note`',
    ),
  ),
};
