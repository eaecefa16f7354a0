/** A sentence that informs and is longer than a reader takes in at the bench. */

import type { Check } from '../check.ts';
import { eachText, KIND_NAMES } from './fields.ts';
import { tooLong } from './length.ts';

/** ASD-STE100: most words in a sentence that describes. */
export const MOST_WORDS_DESCRIPTION = 25;

export const longSentence: Check = {
  code: 'WRT010',
  name: 'long-sentence',
  severity: 'warning',
  title: `A sentence of a note, warning, introduction or purpose has more than ${MOST_WORDS_DESCRIPTION} words.`,
  why: 'A warning that must be read twice is not read at all by somebody with a wrench in the hand.',
  sources: [
    'ASD-STE100 Simplified Technical English, section 6: at most 25 words in a descriptive sentence (rule read in a summary, section from memory)',
    'a name printed for a reference, a number with its unit and a hyphenated word count as one (ASD-STE100 section 8, memory)',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          hazard: Trapped water scalds the hands.\n',
        to: '          hazard: «Water that is still trapped between the two valves after the drain has stopped running stays hot for a long time and scalds the hands and the face.»\n',
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          hazard: Trapped water scalds the hands.\n',
        to: '          hazard: Water trapped between the valves stays hot after the drain has stopped. It scalds hands and face.\n',
      },
    ],
  },
  found: eachText(['note', 'hazard', 'avoid', 'intro', 'purpose'], (reading, kind) =>
    tooLong(reading, MOST_WORDS_DESCRIPTION, KIND_NAMES[kind], 'leave out what the reader knows'),
  ),
};
