/** Stored energies of one card: which steps release them, which prove them gone, and where the work begins. */

import type { Range } from '../../diagnostics/index.ts';
import { isWritten, placeOf, type Step } from '../../resolve/index.ts';
import { lookUp, onceACard, type Scene } from '../rule.ts';

export interface Energy {
  /** As the author wrote it. */
  readonly name: string;
  /** Where the procedure lists it; where it lists none, where it names the machine that holds it. */
  readonly place: Range;
  /** Steps in the order of work. */
  readonly released: readonly Step[];
  readonly proved: readonly Step[];
}

/** Names are compared without regard to capitals and blanks. */
export function energyKey(name: string): string {
  return name.replace(/\s+/gu, ' ').trim().toLowerCase();
}

/** Empty where something of the procedure could not be read: the missing step may only be unread. */
export const energiesOf = onceACard(({ document, steps }): readonly Energy[] => {
  if (document.incomplete) return [];
  const released = stepsBy(steps, 'release');
  const proved = stepsBy(steps, 'prove');
  const own = isWritten(document, 'energy');
  return document.energy.map(
    (name, i): Energy => ({
      name,
      place: own ? placeOf(document, 'energy', i) : placeOf(document, 'machine'),
      released: released.get(energyKey(name)) ?? [],
      proved: proved.get(energyKey(name)) ?? [],
    }),
  );
});

function stepsBy(steps: readonly Step[], field: 'release' | 'prove'): ReadonlyMap<string, readonly Step[]> {
  const found = new Map<string, Step[]>();
  for (const step of steps) {
    for (const name of step[field]) {
      const key = energyKey(name);
      const there = found.get(key);
      if (there === undefined) found.set(key, [step]);
      else there.push(step);
    }
  }
  return found;
}

/** Place of one energy in `release` or `prove` of a step. */
export function placeIn(step: Step, field: 'release' | 'prove', name: string): Range {
  return placeOf(
    step,
    field,
    step[field].findIndex((n) => energyKey(n) === energyKey(name)),
  );
}

const WEIGHT = /\b(?:weight|mass|load)s?\b/iu;
const SPRING = /\bsprings?\b/iu;
const HEAT = /\b(?:heat|hot|thermal|temperature)\b/iu;
const AIR = /\b(?:oxygen|poison\w*|toxic|fumes?|smoke|asphyxia\w*|suffocat\w*|foul air|bad air)\b/iu;

export const isWeight = (name: string): boolean => WEIGHT.test(name);

/**
 * Whether an energy cannot be gone before the work begins: a weight that the step carries, a spring that the step itself
 * lets go, heat that the job brings with it, and air that can be read only through an opening.
 */
export function comesWithTheWork(name: string, step: Step, scene: Scene): boolean {
  if (WEIGHT.test(name) && carries(step, scene)) return true;
  if (SPRING.test(name) && opens(step)) return true;
  if (HEAT.test(name) && scene.steps.some((s) => s.heat !== undefined)) return true;
  return AIR.test(name);
}

/** Whether something holds the weight in this step: a lift, lifting gear or a stand. */
export function carries(step: Step, { shop }: Scene): boolean {
  if (isWritten(step, 'lift')) return true;
  const { tool } = lookUp(shop);
  return step.tools.some((id) => {
    const kind = tool(id)?.kind;
    return kind === 'lifting gear' || kind === 'stand';
  });
}

/** Loosens, takes off or fits something. */
export function opens(step: Step): boolean {
  return openedBy(step) !== undefined;
}

/** The key that says so. */
export function openedBy(step: Step): 'loosen' | 'remove' | 'fit' | undefined {
  if (isWritten(step, 'loosen')) return 'loosen';
  if (isWritten(step, 'remove')) return 'remove';
  return isWritten(step, 'fit') ? 'fit' : undefined;
}
