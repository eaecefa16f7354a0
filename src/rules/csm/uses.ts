/** What a step really uses: a warning or a note names a consumable only to speak of it. */

import type { ConsumableUse, Step } from '../../resolve/index.ts';
import { lists, refersTo } from '../tol/places.ts';

const uses = new WeakMap<Step, readonly ConsumableUse[]>();

export function usedIn(step: Step): readonly ConsumableUse[] {
  if (step.consumables.length === 0) return step.consumables;
  const known = uses.get(step);
  if (known !== undefined) return known;
  const made = step.consumables.filter(
    ({ id }) => step.lubricate?.id === id || refersTo(step.text, 'consumable', id) || lists(step, 'use', id),
  );
  uses.set(step, made);
  return made;
}
