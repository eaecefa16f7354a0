/** Lifting gear that carries less than what hangs from it. */

import { placeOf, type Step } from '../../resolve/index.ts';
import { formatQuantity } from '../../units/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachStep, lookUp } from '../rule.ts';
import { textOf } from './words.ts';

export const liftingGearOverloaded: Check = {
  code: 'SAF011',
  name: 'lifting-gear-overloaded',
  severity: 'error',
  title: 'Lifting gear or a stand carries less than what is lifted with it.',
  why: 'An eye bolt drawn out of its thread or a slipping hoist drops the load on whoever steers it.',
  sources: ['EN 13155 and the plate of the gear: the working load limit is never exceeded (memory)'],
  example: {
    bad: [
      {
        file: 'tools.yaml',
        from: 'hoist: { name: chain hoist, kind: lifting gear, capacity: 250 kg }',
        to: 'hoist: { name: chain hoist, kind: lifting gear, capacity: 15 kg }',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: 'lift: { mass: 18 kg, by: chain hoist }',
        to: 'lift: { mass: «18 kg», by: chain hoist }',
      },
    ],
  },
  found: eachStep(
    function* (step, { shop }): Iterable<Fault> {
      const { lift } = step;
      if (lift === undefined) return;
      for (const id of step.tools) {
        const tool = lookUp(shop).tool(id);
        if (tool?.capacity === undefined || (tool.kind !== 'lifting gear' && tool.kind !== 'stand')) continue;
        const share = piecesOf(step, lift.by);
        if (lift.mass.si <= tool.capacity.si * share) continue;
        const each = share === 1 ? '' : ` each, ${share} of them`;
        yield {
          range: placeOf(step, 'lift', 'mass'),
          message: `${formatQuantity(lift.mass)} is lifted with \`${id}\`, which carries ${formatQuantity(tool.capacity)}${each}`,
          related: [{ range: placeOf(tool, 'capacity'), message: 'its capacity in the register' }],
          hint: 'name gear that carries the load, or correct the mass or the capacity',
        };
      }
    },
    ({ lift }) => lift !== undefined,
  ),
};

const PIECES = /\b(two|both|pair of|three|four)\b(?!\s+(?:people|persons|fitters|men|hands|mechanics))/iu;
const COUNT: Readonly<Record<string, number>> = { two: 2, both: 2, 'pair of': 2, three: 3, four: 4 };

/** `two round slings` share the load; two people do not make a sling stronger. */
function piecesOf(step: Step, by: string): number {
  const found = PIECES.exec(by) ?? PIECES.exec(textOf(step.text));
  return COUNT[found?.[1]?.toLowerCase() ?? ''] ?? 1;
}
