/** A hazard that says what is there, and not what it does. */

import { placeOf } from '../../resolve/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachStep } from '../rule.ts';
import { onlyNames } from './harm-words.ts';
import { inEnglish, textOf } from './words.ts';

/** Fewer words than this name a thing and no more: `Hot surface`. */
const LEAST_WORDS = 3;

export const noConsequence: Check = {
  code: 'SAF006',
  name: 'no-consequence',
  severity: 'warning',
  title: 'A hazard does not say how it hurts.',
  why: 'Two bare words such as `High pressure` are on every card and nobody reads them any more; a jet that goes through a glove and poisons the hand is remembered.',
  sources: [
    'DOE-STD-1029-92 and ANSI Z535.6: a message names the hazard, its consequence and how to avoid it (memory)',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          hazard: Trapped water scalds the hands.\n',
        to: '          hazard: «The water behind the cover is under pressure.»\n',
      },
    ],
  },
  found: eachStep(
    function* (step, { shop }): Iterable<Fault> {
      if (!inEnglish(shop)) return;
      for (const warning of step.warnings) {
        const text = textOf(warning.hazard);
        const short = text.split(' ').length < LEAST_WORDS;
        if (!short && !onlyNames(text)) continue;
        yield {
          range: placeOf(warning, 'hazard'),
          message: short
            ? `\`${text.replace(/\.$/u, '')}\` names a hazard in ${text.includes(' ') ? 'two words' : 'one word'}, and not what it does`
            : 'this hazard says what is there, and not what it does',
          hint: 'say how it hurts or what it breaks: scalds the hand, crushes fingers, throws the pieces, cracks the seal',
        };
      }
    },
    ({ warnings }) => warnings.length > 0,
  ),
};
