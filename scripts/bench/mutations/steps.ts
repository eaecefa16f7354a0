/** Steps dropped, doubled and exchanged: the life of a joint within the card. */

import type { Code } from '../../../src/diagnostics/index.ts';
import { away, exchanged, itemAway, itemLines, over, type Slip, slip, textOf } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import { inSteps, lose, references, scalars, stepsWithout, typedOver } from './make.ts';
import { handled, measuresOf, partsIn, type Scene, type StepPlace } from './scene.ts';
import { scalarAt, wordsAt } from './sheet.ts';

/** A whole step lost, as by a cut without a paste. names: what else a report of the loss may name. */
export function dropped(wanted: (step: StepPlace) => boolean, names: readonly string[] = []): (scene: Scene) => Site[] {
  return ({ steps }) =>
    steps
      .filter(wanted)
      .map((s) => () => slip(s.sheet, away(itemAway(s.sheet, s.list, s.index)), [...handled(s), ...names]));
}

/** A step pasted a second time below itself. */
export function doubled(wanted: (step: StepPlace) => boolean): (scene: Scene) => Site[] {
  return ({ steps }) =>
    steps.filter(wanted).map((s) => () => {
      const lines = itemLines(s.sheet, s.list.items[s.index]);
      return slip(s.sheet, [{ start: lines.end, end: lines.end, put: textOf(s.sheet, lines) }], handled(s));
    });
}

/** Two steps of one stage change places. */
export function swapped(a: StepPlace, b: StepPlace): Slip | undefined {
  const [first, second] = [itemLines(a.sheet, a.list.items[a.index]), itemLines(b.sheet, b.list.items[b.index])];
  return slip(a.sheet, exchanged(a.sheet, first, second), [...handled(a), ...handled(b)]);
}

/** Pairs of a step and a later one of the same stage. */
export function pairs(
  scene: Scene,
  wanted: (earlier: StepPlace, later: StepPlace) => boolean,
): (readonly [StepPlace, StepPlace])[] {
  return scene.steps.flatMap((a) =>
    scene.steps
      .filter((b) => a.list === b.list && a.index < b.index && sameCards(a, b) && wanted(a, b))
      .map((b) => [a, b] as const),
  );
}

function sameCards(a: StepPlace, b: StepPlace): boolean {
  return String(a.map.get('only') ?? '') === String(b.map.get('only') ?? '');
}

/** Parts that a joint tightens or holds. */
export function partsOf(scene: Scene, joint: string): readonly string[] {
  const entry = scene.joints.find((j) => j.id === joint);
  if (entry === undefined) return [];
  return ['fastener', 'also', 'gasket'].flatMap((key) =>
    scalars(entry.sheet, entry.map, key).map((at) => String(at.scalar.value)),
  );
}

const tightens = (s: StepPlace): boolean => s.map.has('tighten');
/** Many steps fit the last parts and tighten; without the step those parts, or the step that others name, are missing. */
const LOST: readonly Code[] = ['JNT001', 'JNT004', 'PRT003', 'PRT005', 'REF006'];

export const STEPS: readonly Kind[] = [
  { name: 'tightening step dropped', checks: LOST, sites: dropped(tightens) },
  {
    name: '`tighten` lost from its step',
    checks: LOST,
    sites: lose(({ steps }) => stepsWithout(steps, 'tighten')),
  },
  {
    name: 'loosening step dropped',
    checks: ['JNT005', 'PRT007'],
    sites: dropped((s) => s.map.has('loosen')),
  },
  {
    name: '`loosen` lost from its step',
    checks: ['JNT005'],
    sites: lose(({ steps }) => stepsWithout(steps, 'loosen')),
  },
  { name: 'tightening step pasted twice', checks: ['JNT002', 'PRT007'], sites: doubled(tightens) },
  {
    name: 'tightened before its parts are fitted: two steps exchanged',
    checks: ['JNT003', 'JNT011'],
    sites: (scene) =>
      pairs(scene, (a, b) => {
        const held = partsOf(scene, wordsAt(b.map, 'tighten'));
        return tightens(b) && partsIn(a.map, 'fit').some((p) => held.includes(p));
      }).map(
        ([a, b]) =>
          () =>
            swapped(a, b),
      ),
  },
  {
    name: 'taken off before it is loosened: two steps exchanged',
    checks: ['JNT005', 'JNT001'],
    sites: (scene) =>
      pairs(scene, (a, b) => {
        const held = partsOf(scene, wordsAt(a.map, 'loosen'));
        return a.map.has('loosen') && partsIn(b.map, 'remove').some((p) => held.includes(p));
      }).map(
        ([a, b]) =>
          () =>
            swapped(a, b),
      ),
  },
  {
    name: 'another joint named in a step',
    checks: ['JNT001', 'JNT002', 'JNT003', 'JNT004', 'JNT005', 'REF015'],
    sites: ({ steps, joints }) =>
      inSteps(steps, 'tighten', 'loosen').map(({ sheet, scalar }) => (random) => {
        const right = String(scalar.value);
        const others = joints.filter((j) => j.id !== right);
        if (others.length === 0) return undefined;
        const { id } = random.pick(others);
        return slip(sheet, [over(sheet, scalar, id)], [right, id]);
      }),
  },
  {
    name: 'lubricant lost from the steps of a joint',
    checks: ['JNT008'],
    // Of steps that a joint's parts are fitted in: what goes onto a seal or a shaft is no joint's. Where the step has an
    // amount of the same under `use`, or the step that fits and the step that tightens both say it, the mechanic still has
    // it in his hand; where it says `none added`, none is.
    sites: (scene) =>
      lose(() =>
        stepsWithout(
          jointSteps(scene).filter(
            (s) => !s.map.has('use') && !/none added/.test(String(s.map)) && !saidTwice(scene, s),
          ),
          'lubricate',
        ),
      )(scene),
  },
  {
    name: 'lubricant exchanged in a step',
    checks: ['JNT006', 'JNT007', 'JNT009', 'JNT010'],
    sites: (scene) =>
      jointSteps(scene).map((s) => (random) => {
        const lubricate = s.map.get('lubricate');
        const scalar = lubricate === undefined ? undefined : scalarAt(lubricate as typeof s.map, 'with');
        if (scalar === undefined) return undefined;
        const condition = (id: string): string =>
          wordsAt((scene.consumables.root.get(id) ?? s.map) as typeof s.map, 'condition');
        // The same condition gives the same clamp.
        const others = scene.consumables.root.items
          .map((p) => String(p.key))
          .filter((id) => condition(id) !== '' && condition(id) !== condition(String(scalar.value)));
        return others.length === 0 ? undefined : slip(s.sheet, [over(s.sheet, scalar, random.pick(others))]);
      }),
  },
  {
    name: 'oil put on threads that have threadlocker, or threadlocker on oiled ones',
    checks: ['JNT006', 'JNT007', 'JNT009'],
    sites: (scene) =>
      scene.steps.filter(tightens).map((s) => () => {
        const held = scene.joints.find((j) => j.id === wordsAt(s.map, 'tighten'));
        const locked = held !== undefined && wordsAt(held.map, 'condition') === 'threadlocked';
        if (s.map.has('lubricate') || held === undefined || wordsAt(held.map, 'condition') === 'oiled')
          return undefined;
        const lines = itemLines(s.sheet, s.list.items[s.index]);
        const indent = ' '.repeat(indentOf(s));
        const line = `${indent}lubricate: { with: ${locked ? 'machine-oil' : 'threadlocker-medium'}, where: thread }\n`;
        return slip(s.sheet, [{ start: lines.end, end: lines.end, put: line }]);
      }),
  },
  {
    name: 'torque typed into a step',
    checks: ['JNT012'],
    sites: (scene) =>
      references(scene, 'joint')
        .filter(({ sheet, stretch }) =>
          /tighten/i.test(sheet.text.slice(sheet.text.lastIndexOf('do:', stretch.start), stretch.start)),
        )
        .map(({ sheet, stretch, id }) => (random) => {
          const joint = scene.joints.find((j) => j.id === id);
          const torque = joint === undefined ? '' : wordsAt(joint.map, 'torque');
          const words = torque === '' ? `${random.pick([20, 45, 90, 210])} N·m` : torque;
          return typedOver(sheet, { start: stretch.end + 1, end: stretch.end + 1 }, ` to ${words}`);
        }),
  },
  {
    name: 'condition of a measured torque lost',
    checks: ['JNT013'],
    sites: lose(({ steps }) =>
      steps.flatMap((s) =>
        measuresOf(s.map)
          .filter((m) => m.has('condition'))
          .map((map) => ({ sheet: s.sheet, map, key: 'condition', names: [] })),
      ),
    ),
  },
];

/** Steps that put a lubricant on and tighten a joint or fit its fasteners. */
function jointSteps(scene: Scene): readonly StepPlace[] {
  const held = new Set(scene.joints.flatMap((j) => partsOf(scene, j.id).filter((p) => p !== wordsAt(j.map, 'gasket'))));
  return scene.steps.filter(
    (s) => s.map.has('lubricate') && (tightens(s) || partsIn(s.map, 'fit').some((p) => held.has(p))),
  );
}

/** One step fits the fasteners and lubricates, the next one tightens and lubricates again. */
function saidTwice(scene: Scene, step: StepPlace): boolean {
  const joints = scene.joints.filter(({ id }) => {
    const held = partsOf(scene, id);
    return wordsAt(step.map, 'tighten') === id || partsIn(step.map, 'fit').some((p) => held.includes(p));
  });
  return joints.some(({ id }) => {
    const held = partsOf(scene, id);
    const lubricated = scene.steps.filter((s) => s.map.has('lubricate'));
    const fits = lubricated.some((s) => !tightens(s) && partsIn(s.map, 'fit').some((p) => held.includes(p)));
    return fits && lubricated.some((s) => wordsAt(s.map, 'tighten') === id);
  });
}

function indentOf(s: StepPlace): number {
  const range = (s.map as { range?: [number, number, number] | null }).range;
  const at = range?.[0] ?? 0;
  return at - (s.sheet.text.lastIndexOf('\n', at - 1) + 1);
}
