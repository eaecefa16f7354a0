/** A heavy part that is moved without a word on how it is lifted. */

import { isWritten, keyPlaceOf, type Part, placeOf, type Step } from '../../resolve/index.ts';
import { formatQuantity } from '../../units/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachStep, type Scene } from '../rule.ts';

/** Masses may be rounded; a part heavier than its lift by more than this is another weight. */
const ROUNDING = 1.05;
/** 51 lb is the same limit as 23 kg, rounded. */
const SAME_LIMIT = 1.01;

export const liftNotStated: Check = {
  code: 'SAF010',
  name: 'lift-not-stated',
  severity: 'warning',
  title:
    'A part above the limit for one person is taken off or fitted with no lift stated, or with one that disagrees with its mass.',
  why: 'The mechanic learns how heavy it is when the last screw is out and both hands hold it.',
  sources: [
    'NIOSH lifting equation: load constant 23 kg (memory), unless shop.yaml sets another limit',
    'common practice: the mass and the lifting point stand at the step',
  ],
  example: {
    bad: [
      { file: 'machines/pump.yaml', from: 'number: MW-100, mass: 18 kg', to: 'number: MW-100, mass: 38 kg' },
      {
        file: 'procedures/mw-1.yaml',
        from: 'lift: { mass: 18 kg, by: chain hoist }',
        to: 'lift: { mass: 38 kg, by: chain hoist }',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Lay on the new <part:gasket>.
        fit: [gasket, cover]
`,
        to: `      - do: Lay on the new <part:gasket>.
        fit: [gasket, «cover»]
`,
      },
    ],
  },
  found: eachStep(
    function* (step, scene): Iterable<Fault> {
      const tooMuch = liftedTooMuch(step, scene);
      if (tooMuch !== undefined) yield tooMuch;
      for (const field of ['remove', 'fit'] as const) {
        for (const { id } of step[field]) {
          const part = heavyParts(scene).get(id);
          if (part?.mass === undefined) continue;
          const { lift } = step;
          const mass = formatQuantity(part.mass);
          if (lift !== undefined && part.mass.si > lift.mass.si * ROUNDING) {
            yield {
              range: placeOf(step, 'lift', 'mass'),
              message: `the lift is of ${formatQuantity(lift.mass)}, and \`${id}\` alone weighs ${mass}`,
              related: [{ range: placeOf(part, 'mass'), message: 'its mass in the parts list' }],
              hint: `correct the one that is wrong: \`mass: ${mass}\` in \`lift\`, or the mass of the part`,
            };
          } else if (lift === undefined && !isWritten(step, 'lift')) {
            yield {
              range: keyPlaceOf(step, field, id),
              message: `\`${id}\` weighs ${mass}, and the step does not say how it is lifted`,
              related: [{ range: placeOf(part, 'mass'), message: 'its mass in the parts list' }],
              hint: `add \`lift: { mass: ${mass}, by: … }\` with the gear or the number of people`,
            };
          }
        }
      }
    },
    ({ remove, fit }) => remove.length > 0 || fit.length > 0,
  ),
};

/** What else hangs on a heavy part is seldom twice its mass again: beyond this one of the two has a slipped figure. */
const TOO_MUCH = 3;

/** The lift is of several times what the parts list says of all that the step moves. */
function liftedTooMuch(step: Step, scene: Scene): Fault | undefined {
  const { lift } = step;
  const moved = [...step.remove, ...step.fit];
  const first = moved.map((m) => heavyParts(scene).get(m.id)).find((p) => p !== undefined);
  if (lift === undefined || first?.mass === undefined) return undefined;
  const masses = moved.map(({ id, quantity }) => {
    const part = scene.machine?.parts.find((p) => p.id === id);
    return (part?.mass?.si ?? 0) * quantity;
  });
  if (lift.mass.si <= TOO_MUCH * masses.reduce((a, b) => a + b, 0)) return undefined;
  return {
    range: placeOf(step, 'lift', 'mass'),
    message: `the lift is of ${formatQuantity(lift.mass)}, and \`${first.id}\` weighs ${formatQuantity(first.mass)}`,
    related: [{ range: placeOf(first, 'mass'), message: 'its mass in the parts list' }],
    hint: `correct the one that is wrong: \`mass: ${formatQuantity(first.mass)}\` in \`lift\`, or the mass of the part`,
  };
}

const heavy = new WeakMap<object, ReadonlyMap<string, Part>>();

/** Parts of the machine that one person does not lift. */
function heavyParts({ machine, shop }: Scene): ReadonlyMap<string, Part> {
  if (machine === undefined) return new Map();
  const known = heavy.get(machine);
  if (known !== undefined) return known;
  const made = new Map(
    machine.parts.filter((p) => (p.mass?.si ?? 0) > shop.info.liftAlone.si * SAME_LIMIT).map((p) => [p.id, p]),
  );
  heavy.set(machine, made);
  return made;
}
