/** Slips in what comes off and goes back. */

import { isScalar, type Scalar } from 'yaml';
import { away, itemAway, keyAway, over, type Put, slip } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import { inEntries, inSteps, retype, retypeRaw, scalars } from './make.ts';
import { type Entry, partsIn, type Scene, type StepPlace } from './scene.ts';
import { keyOf, listAt, mapAt, scalarsIn, stretchOf, wordsAt } from './sheet.ts';
import { dropped, pairs, swapped } from './steps.ts';

interface Fate {
  readonly step: StepPlace;
  readonly part: string;
  readonly scalar: Scalar;
}

/** Entries `part: fate` of the steps. */
function fates({ steps }: Scene): readonly Fate[] {
  return steps.flatMap((step) => {
    const remove = mapAt(step.map, 'remove');
    return (remove?.items ?? []).flatMap((p) => (isScalar(p.value) ? [{ step, part: keyOf(p), scalar: p.value }] : []));
  });
}

function fateTo(wanted: (fate: Fate, part: Entry | undefined) => boolean, to: string): (scene: Scene) => Site[] {
  return (scene) =>
    fates(scene)
      .filter((f) =>
        wanted(
          f,
          scene.parts.find((p) => p.id === f.part),
        ),
      )
      .map((f) => () => slip(f.step.sheet, [over(f.step.sheet, f.scalar, to)], [f.part]));
}

/** Puts that take a part out of the list under a key of a step. */
function partAway(step: StepPlace, key: 'remove' | 'fit', part: string): Put[] {
  const list = listAt(step.map, key);
  if (list !== undefined) {
    const at = scalarsIn(list).findIndex((s) => String(s.value) === part);
    return away(list.items.length === 1 ? keyAway(step.sheet, step.map, key) : itemAway(step.sheet, list, at));
  }
  const map = mapAt(step.map, key);
  if (map === undefined) return [];
  return away(map.items.length === 1 ? keyAway(step.sheet, step.map, key) : keyAway(step.sheet, map, part));
}

function lostFrom(key: 'remove' | 'fit'): (scene: Scene) => Site[] {
  return ({ steps }) =>
    steps.flatMap((s) => partsIn(s.map, key).map((part) => () => slip(s.sheet, partAway(s, key, part), [part])));
}

/** Fitting lists of steps. */
function fits({ steps }: Scene): { step: StepPlace; scalar: Scalar }[] {
  return steps.flatMap((step) => scalarsIn(listAt(step.map, 'fit')).map((scalar) => ({ step, scalar })));
}

export const LEDGER: readonly Kind[] = [
  {
    name: 'fate of a part that is renewed each time changed to reuse',
    checks: ['PRT011'],
    sites: fateTo(
      ({ scalar }, part) => scalar.value === 'discard' && part?.map.get('always_replace') === true,
      'reuse',
    ),
  },
  {
    name: 'fate of a part that goes back changed to discard',
    checks: ['PRT004', 'PRT005', 'PRT006'],
    sites: fateTo(({ scalar }) => scalar.value !== 'discard', 'discard'),
  },
  {
    name: 'fates lost: parts that come off as a bare list',
    checks: ['PRT014'],
    sites: ({ steps }) =>
      steps.flatMap((s) => {
        const remove = s.map.get('remove', true);
        const parts = partsIn(s.map, 'remove');
        if (mapAt(s.map, 'remove') === undefined) return [];
        return [() => slip(s.sheet, [{ ...stretchOf(s.sheet, remove), put: `[${parts.join(', ')}]` }], parts)];
      }),
  },
  { name: 'part lost from what comes off', checks: ['PRT007', 'PRT015'], sites: lostFrom('remove') },
  {
    name: 'part lost from what is fitted',
    // A part that goes on in two lots or twice is then short, or comes off a second time.
    checks: ['PRT003', 'PRT005', 'PRT008', 'PRT009', 'PRT010', 'PRT013', 'PRT015', 'JNT003', 'JNT011'],
    sites: lostFrom('fit'),
  },
  {
    name: 'stripping step dropped',
    checks: ['PRT007', 'PRT015'],
    sites: dropped((s) => s.map.has('remove') && !s.map.has('loosen')),
  },
  {
    name: 'fitting step dropped',
    checks: ['PRT003', 'PRT005', 'PRT009', 'JNT003', 'JNT004', 'JNT011'],
    sites: dropped((s) => s.map.has('fit') && !s.map.has('tighten')),
  },
  {
    name: 'part fitted twice',
    // The step to which the second one slips may be of a variant that has no such part.
    checks: ['PRT007', 'REF015'],
    sites: (scene) =>
      fits(scene).flatMap(({ step, scalar }) => {
        const later = scene.steps.find(
          (s) => s.list === step.list && s.index > step.index && listAt(s.map, 'fit') !== undefined,
        );
        const first = later === undefined ? undefined : scalarsIn(listAt(later.map, 'fit'))[0];
        if (later === undefined || first === undefined) return [];
        const at = stretchOf(later.sheet, first).start;
        // Where the list is a block list, a dash would have to come with it.
        if (listAt(later.map, 'fit')?.flow !== true) return [];
        return [
          () => slip(later.sheet, [{ start: at, end: at, put: `${String(scalar.value)}, ` }], [String(scalar.value)]),
        ];
      }),
  },
  {
    name: 'two part ids exchanged between two steps',
    checks: ['PRT003', 'PRT007', 'PRT013', 'PRT015', 'JNT003', 'JNT004', 'JNT011', 'REF015'],
    sites: (scene) => {
      const all = fits(scene);
      return all.map(({ step, scalar }) => (random) => {
        const others = all.filter(
          (o) => o.step !== step && o.step.sheet === step.sheet && o.scalar.value !== scalar.value,
        );
        if (others.length === 0) return undefined;
        const other = random.pick(others);
        const [a, b] = [String(scalar.value), String(other.scalar.value)];
        return slip(step.sheet, [over(step.sheet, scalar, b), over(step.sheet, other.scalar, a)], [a, b]);
      });
    },
  },
  {
    name: 'another part of the machine listed in its place',
    checks: ['PRT003', 'PRT005', 'PRT007', 'PRT008', 'PRT015', 'JNT003', 'REF015'],
    sites: retype(
      ({ steps }) => inSteps(steps, 'fit', 'remove'),
      (v, random, { parts }) => random.pick(parts.filter((p) => p.id !== v)).id,
    ),
  },
  {
    name: 'fates of two parts exchanged, one of them thrown away',
    // Whether a part is looked at before it goes back is for its author to say: inspect and reuse contradict nothing.
    checks: ['PRT003', 'PRT004', 'PRT005', 'PRT011'],
    sites: (scene) =>
      fates(scene).flatMap((a) =>
        fates(scene)
          .filter(
            (b) =>
              a.step === b.step &&
              a.part < b.part &&
              a.scalar.value !== b.scalar.value &&
              [a, b].some((f) => f.scalar.value === 'discard'),
          )
          .map((b) => () => {
            const [x, y] = [String(a.scalar.value), String(b.scalar.value)];
            return slip(
              a.step.sheet,
              [over(a.step.sheet, a.scalar, y), over(b.step.sheet, b.scalar, x)],
              [a.part, b.part],
            );
          }),
      ),
  },
  {
    name: 'quantity of a fastener changed in the parts list',
    checks: ['PRT001', 'PRT009'],
    // Only what a joint counts too: the number of covers stands nowhere else.
    sites: retypeRaw(
      ({ parts, joints }) =>
        inEntries(
          parts.filter((p) =>
            joints.some((j) =>
              [...scalars(j.sheet, j.map, 'fastener'), ...scalars(j.sheet, j.map, 'also')].some(
                (a) => a.scalar.value === p.id,
              ),
            ),
          ),
          'quantity',
        ),
      (v, random) => String(Math.max(1, Number(v) + random.pick([-2, -1, 1, 2]))),
    ),
  },
  {
    name: 'piece count given in a step, one short',
    checks: ['PRT009'],
    sites: (scene) =>
      fits(scene).flatMap(({ step, scalar }) => {
        const id = String(scalar.value);
        const part = scene.parts.find((p) => p.id === id);
        const count = Number(part === undefined ? 0 : wordsAt(part.map, 'quantity'));
        const list = step.map.get('fit', true);
        const all = partsIn(step.map, 'fit');
        if (!(count > 1) || all.length !== 1) return [];
        return [() => slip(step.sheet, [{ ...stretchOf(step.sheet, list), put: `{ ${id}: ${count - 1} }` }])];
      }),
  },
  {
    name: 'part of one variant used in the steps of all',
    checks: ['REF015'],
    sites: (scene) => {
      const bound = scene.parts.filter((p) => p.map.has('only'));
      return scene.steps
        .filter(
          (s) =>
            s.map.has('only') &&
            [...partsIn(s.map, 'remove'), ...partsIn(s.map, 'fit')].some((id) => bound.some((p) => p.id === id)),
        )
        .map((s) => () => slip(s.sheet, away(keyAway(s.sheet, s.map, 'only')), []));
    },
  },
  {
    name: 'kit part forgotten: neither taken off nor fitted',
    checks: ['PRT010', 'PRT015'],
    sites: (scene) =>
      scene.parts
        .filter((p) => p.map.has('kit'))
        .map((p) => () => {
          const puts = scene.steps.flatMap((s) => {
            if (!s.own) return [];
            return (['remove', 'fit'] as const).flatMap((key) =>
              partsIn(s.map, key).includes(p.id) ? partAway(s, key, p.id) : [],
            );
          });
          return slip(scene.procedure, puts, [p.id]);
        }),
  },
  {
    name: 'assembly fitted before a part of it: two steps exchanged',
    checks: ['PRT013', 'PRT007', 'JNT003', 'JNT011'],
    sites: (scene) => {
      const madeOf = (id: string): readonly string[] => {
        const part = scene.parts.find((p) => p.id === id);
        return part === undefined ? [] : scalars(part.sheet, part.map, 'made_of').map((a) => String(a.scalar.value));
      };
      const built = (s: StepPlace): readonly string[] => partsIn(s.map, 'fit').flatMap(madeOf);
      return pairs(scene, (a, b) => partsIn(a.map, 'fit').some((p) => built(b).includes(p))).map(
        ([a, b]) =>
          () =>
            swapped(a, b),
      );
    },
  },
  {
    name: 'assembly fitted in an earlier step than its parts',
    checks: ['PRT013', 'PRT007'],
    sites: (scene) =>
      scene.parts
        .filter((p) => p.map.has('made_of'))
        .flatMap((p) => {
          const built = scalars(p.sheet, p.map, 'made_of').map((a) => String(a.scalar.value));
          const home = scene.steps.find((s) => s.own && partsIn(s.map, 'fit').includes(p.id));
          const earlier = scene.steps.filter(
            (s) =>
              s.own &&
              listAt(s.map, 'fit')?.flow === true &&
              home !== undefined &&
              scene.steps.indexOf(s) < scene.steps.indexOf(home) &&
              scene.steps
                .slice(scene.steps.indexOf(s))
                .some((later) => later !== s && partsIn(later.map, 'fit').some((id) => built.includes(id))),
          );
          return earlier.map((s) => () => {
            const first = scalarsIn(listAt(s.map, 'fit'))[0];
            if (first === undefined || home === undefined) return undefined;
            const at = stretchOf(s.sheet, first).start;
            return slip(s.sheet, [{ start: at, end: at, put: `${p.id}, ` }, ...partAway(home, 'fit', p.id)], [p.id]);
          });
        }),
  },
];
