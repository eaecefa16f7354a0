/** A step that takes more people than the procedure has. */

import type { Range } from '../../diagnostics/index.ts';
import { isWritten, placeOf } from '../../resolve/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachStep } from '../rule.ts';
import { inEnglish, peopleIn, textOf } from './words.ts';

export const tooFewPeople: Check = {
  code: 'SAF020',
  name: 'too-few-people',
  severity: 'error',
  title: 'A step takes more people than the procedure plans for.',
  why: 'The job is given to one fitter, who stands alone with a cover for two in the middle of it.',
  sources: ['common practice: the number of people on the head of the card is the number that the work takes'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: 'lift: { mass: 18 kg, by: chain hoist }',
        to: 'lift: { mass: 18 kg, by: «two people on the chain hoist» }',
      },
    ],
  },
  found: eachStep((step, { shop, document }) => {
    if (!inEnglish(shop)) return undefined;
    const fault = (text: string, place: () => Range): Fault | undefined => {
      const people = peopleIn(text);
      if (people === undefined || people.count <= document.people) return undefined;
      const planned = document.people === 1 ? '1 person' : `${document.people} people`;
      return {
        range: place(),
        message: `this takes \`${people.words}\`, and the procedure plans for ${planned}`,
        ...(isWritten(document, 'people')
          ? { related: [{ range: placeOf(document, 'people'), message: 'people of the procedure' }] }
          : {}),
        hint: `write \`people: ${people.count}\` at the head of ${document.doc}, or let fewer do it`,
      };
    };
    const { lift } = step;
    const first =
      (lift && fault(lift.by, () => placeOf(step, 'lift', 'by'))) ??
      fault(textOf(step.text), () => placeOf(step, 'do'));
    if (first !== undefined) return first;
    for (const w of step.warnings) {
      const found = fault(textOf(w.avoid), () => placeOf(w, 'avoid'));
      if (found !== undefined) return found;
    }
    return undefined;
  }),
};
