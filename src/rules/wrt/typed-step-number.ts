/** A step's number typed by hand. */

import type { Check } from '../check.ts';
import { eachText, type Finding } from './fields.ts';
import type { Reading } from './reading.ts';

const STEP =
  /(?<![\p{L}\p{N}-])steps? (?:nos?\.? |numbers? )?\d{1,3}(?:(?: ?[,–-] ?| to | and | or | through )(?:steps? )?\d{1,3})*(?![\p{L}\p{N}.]*\d)/giu;
/** A step of a document that is none of the shop's cards, or of another card: no reference reaches it. */
const ELSEWHERE =
  /^ (?:of|in|on|from) (?:\ue000|[A-Z]+-?\d|(?:the |its |their |that )?(?:[\p{L}'’-]+ ){0,2}(?:manual|handbook|sheet|leaflet|instructions?|standard|bulletin|drawing|document|procedure))/u;
/** `a step 2 mm high` is one of metal. */
const SIZE = /^ ?(?:mm|cm|m|in|inch|inches|µm|thou|mils?|ft|deg|degrees|°|")(?![\p{L}])/u;

export function* typedStepNumbersIn({ typed }: Reading): Generator<Finding> {
  if (!/step/i.test(typed)) return;
  for (const match of typed.matchAll(STEP)) {
    const end = match.index + match[0].length;
    const after = typed.slice(end, end + 60);
    if (ELSEWHERE.test(after) || SIZE.test(after)) continue;
    yield {
      message: `\`${match[0]}\` is typed, and the number changes with the next step that is added or left out`,
      hint: 'give that step an `id:` and refer to it: `<step:its-id>` prints the number that it has',
      start: match.index,
      end,
    };
  }
}

export const typedStepNumber: Check = {
  code: 'WRT011',
  name: 'typed-step-number',
  severity: 'warning',
  title: 'A text names a step by a number that was typed.',
  why: 'After the next revision, or on the card of another variant, the number is that of another step, and the mechanic goes there.',
  sources: ['common practice: numbers are counted on every card, so that variants with other steps count otherwise'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          if out: Loosen and repeat this stage.\n',
        to: '          if out: Loosen and repeat from «step 8».\n',
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Wipe both faces with a <consumable:wipe>.\n        id: wiped\n',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: '          if out: Loosen and repeat this stage.\n',
        to: '          if out: Loosen and repeat from <step:wiped>.\n',
      },
    ],
  },
  found: eachText(['do', 'note', 'hazard', 'avoid', 'if out', 'intro', 'purpose'], typedStepNumbersIn),
};
