/** A load that is too heavy for the people who lift it. */

import { placeOf } from '../../resolve/index.ts';
import { formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachStep, lookUp } from '../rule.ts';
import { inEnglish, namesGear, peopleIn, textOf } from './words.ts';

/** 51 lb is the same limit as 23 kg, rounded. */
const ROUNDING = 1.01;

export const liftAlone: Check = {
  code: 'SAF009',
  name: 'lift-alone',
  severity: 'error',
  title: 'A load above the limit for one person is lifted without gear and without enough people.',
  why: 'He lifts it, because the card says so and nobody else is there: the back goes, or the cover lands on a foot.',
  sources: [
    'NIOSH lifting equation: load constant 23 kg or 51 lb (memory), unless shop.yaml sets another limit',
    'several people: as many times that, at the very most (common practice allows less)',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `        fit: [gasket, cover]
`,
        to: `        fit: [gasket, cover]
        lift: «{ mass: 26 kg, by: one person }»
`,
      },
    ],
  },
  found: eachStep((step, { shop }) => {
    const { lift } = step;
    const { liftAlone: limit } = shop.info;
    if (lift === undefined || lift.mass.si <= limit.si * ROUNDING || !inEnglish(shop)) return undefined;
    const { tool } = lookUp(shop);
    if (step.tools.some((id) => tool(id)?.kind === 'lifting gear')) return undefined;
    const text = textOf(step.text);
    if (namesGear(lift.by) || namesGear(text)) return undefined;
    const people = (peopleIn(lift.by) ?? peopleIn(text))?.count ?? 1;
    if (lift.mass.si <= people * limit.si * ROUNDING) return undefined;
    return {
      range: placeOf(step, 'lift'),
      message:
        people === 1
          ? `${formatQuantity(lift.mass)} is lifted by \`${lift.by}\`, and one person lifts at most ${formatQuantity(limit)}`
          : `${formatQuantity(lift.mass)} is lifted by \`${lift.by}\`, and ${people} people lift at most ${people} times ${formatQuantity(limit)}`,
      hint: 'name lifting gear in `with`, or more people in `by`, such as `by: two people`',
    };
  }),
};
