/** Stored energy, warnings, protection, lifting, heat and the close-out. */

import { away, entryLines, itemAway, itemLines, keyAway, over, slip, textOf, written } from './edit.ts';
import type { Kind } from './kind.ts';
import { inSteps, inWarnings, lose, retype, retypeRaw, scalars, stepsWithout } from './make.ts';
import { partsIn, type Scene, type StepPlace, warningsOf } from './scene.ts';
import { listAt, mapAt, mapsIn, pairOf, scalarAt, scalarsIn, stretchOf, wordsAt } from './sheet.ts';
import { dropped, pairs, swapped } from './steps.ts';
import { mistyped, moved } from './typing.ts';

/** Entries `use: isolate-…` among the stages of the procedure. */
function isolations({ order }: Scene): readonly number[] {
  return (order?.items ?? []).flatMap((_, i) => {
    const stage = mapsIn(order)[i];
    return stage !== undefined && wordsAt(stage, 'use').startsWith('isolate') ? [i] : [];
  });
}

/** Energies that the procedure lists and the step releases or proves, if the step is the only one that does. */
function onlyHere(scene: Scene, key: 'release' | 'prove'): (step: StepPlace) => boolean {
  const listed = scalarsIn(listAt(scene.procedure.root, 'energy')).map((s) => String(s.value));
  const of = (s: StepPlace): string[] => scalarsIn(listAt(s.map, key)).map((e) => String(e.value));
  return (step) =>
    of(step).some((e) => listed.includes(e) && !scene.steps.some((o) => o.map !== step.map && of(o).includes(e)));
}

function nested(scene: Scene, under: string, key: string) {
  return scene.steps.flatMap((s) => {
    const map = mapAt(s.map, under);
    return map === undefined ? [] : scalars(s.sheet, map, key).map((at) => ({ ...at, step: s }));
  });
}

/** Points of the close-out that a step does, lost or dropped. */
const closes = (point: string) => (s: StepPlace) =>
  scalarsIn(listAt(s.map, 'close_out')).some((e) => String(e.value) === point);

/** The part of a hazard that says how it hurts, cut off: the thing alone is left. */
function thingAlone(hazard: string): string | undefined {
  const subject = /^(?:An?|The) [\p{L}-]+|^[\p{L}-]+(?: [\p{L}-]+)?/u.exec(hazard)?.[0];
  return subject === undefined ? undefined : `${subject}.`;
}

/**
 * Hazard statements H330, H331 and H334 of the UN GHS, for which its annex 3 asks for respiratory protection (P284; for
 * H331 common practice). H332 and H335 ask for fresh air only.
 */
const GHS = ['fatal if inhaled', 'toxic if inhaled', 'may cause asthma symptoms if inhaled'];

export const SAFETY: readonly Kind[] = [
  {
    name: '`release` lost from its step',
    checks: ['SAF001'],
    // Where another step releases the same energy the card still says it.
    sites: (scene) => lose(() => stepsWithout(scene.steps.filter(onlyHere(scene, 'release')), 'release'))(scene),
  },
  {
    name: '`prove` lost from its step',
    checks: ['SAF002', 'SAF003'],
    sites: (scene) => lose(() => stepsWithout(scene.steps.filter(onlyHere(scene, 'prove')), 'prove'))(scene),
  },
  {
    name: 'step that releases an energy dropped',
    checks: ['SAF001'],
    sites: (scene) => dropped(onlyHere(scene, 'release'))(scene),
  },
  {
    name: 'step that proves an energy dropped',
    checks: ['SAF002', 'SAF003', 'SAF001'],
    sites: (scene) => dropped(onlyHere(scene, 'prove'))(scene),
  },
  {
    name: 'isolating stage lost',
    checks: ['SAF001', 'SAF002'],
    sites: (scene) =>
      isolations(scene).map((i) => () => {
        if (scene.order === undefined) return undefined;
        const listed = scalarsIn(listAt(scene.procedure.root, 'energy')).map((s) => String(s.value));
        return slip(scene.procedure, away(itemAway(scene.procedure, scene.order, i)), listed);
      }),
  },
  {
    name: 'isolating stage moved behind the work',
    checks: ['SAF003'],
    sites: (scene) =>
      isolations(scene).map((i) => () => {
        const list = scene.order;
        if (list === undefined) return undefined;
        const here = itemLines(scene.procedure, list.items[i]);
        const last = itemLines(scene.procedure, list.items.at(-1));
        const energies = scalarsIn(listAt(scene.procedure.root, 'energy')).map((s) => String(s.value));
        return slip(
          scene.procedure,
          [
            { ...here, put: '' },
            { start: last.end, end: last.end, put: textOf(scene.procedure, here) },
          ],
          energies,
        );
      }),
  },
  {
    name: 'energy mistyped in `release` or `prove`',
    checks: ['SAF004', 'SAF001', 'SAF002'],
    // Shared stages serve many procedures and name energies that not every one has.
    sites: retype(
      ({ steps }) =>
        inSteps(
          steps.filter((s) => s.own),
          'release',
          'prove',
        ),
      (v, random) => mistyped(random, v),
    ),
  },
  {
    name: 'warning moved into a note',
    checks: ['SAF005'],
    sites: (scene) =>
      scene.steps.flatMap((s) => {
        const warn = mapAt(s.map, 'warn');
        if (warn === undefined || s.map.has('note')) return [];
        const lines = entryLines(s.sheet, s.map, 'warn');
        const key = pairOf(s.map, 'warn')?.key;
        if (lines === undefined) return [];
        return [
          () => {
            const level = wordsAt(warn, 'level');
            const words = `${level.slice(0, 1).toUpperCase()}${level.slice(1)}: ${wordsAt(warn, 'hazard')} ${wordsAt(warn, 'avoid')}`;
            const indent = ' '.repeat(stretchOf(s.sheet, key).start - lines.start);
            return slip(s.sheet, [{ ...lines, put: `${indent}note: ${written(words)}\n` }]);
          },
        ];
      }),
  },
  {
    name: 'hazard without its consequence',
    checks: ['SAF006'],
    sites: retype((scene) => inWarnings(scene, 'hazard'), thingAlone),
  },
  {
    name: 'avoidance that only asks for care',
    checks: ['SAF007'],
    sites: retype(
      (scene) => inWarnings(scene, 'avoid'),
      (_, random) =>
        random.pick([
          'Be careful.',
          'Take care.',
          'Take extra care here.',
          'Work carefully.',
          'Use caution.',
          'Pay attention.',
        ]),
    ),
  },
  {
    name: 'avoidance lost',
    checks: ['FLD002'],
    sites: (scene) =>
      lose(() =>
        scene.steps.flatMap((s) =>
          warningsOf(s.map).map((map) => ({ sheet: s.sheet, map, key: 'avoid', names: ['has no `avoid`'] })),
        ),
      )(scene),
  },
  {
    name: 'hazard added to a consumable, its protection forgotten',
    checks: ['SAF008'],
    sites: ({ consumablesUsed }) =>
      consumablesUsed
        .filter((e) => e.map.has('hazards') && listAt(e.map, 'hazards')?.flow === true)
        .map((e) => (random) => {
          const last = scalarsIn(listAt(e.map, 'hazards')).at(-1);
          if (last === undefined) return undefined;
          const { end } = stretchOf(e.sheet, last);
          const hazard = random.pick(GHS);
          return slip(e.sheet, [{ start: end, end, put: `, ${hazard}` }], [e.id]);
        }),
  },
  {
    name: 'mass of a lift with a nought too many',
    checks: ['SAF009', 'SAF011', 'SAF010'],
    sites: retype(
      (scene) => nested(scene, 'lift', 'mass'),
      (v) => v.replace(/^[\d.]+/, (n) => moved(n, 1)),
    ),
  },
  {
    name: 'heavy lift left to one person',
    checks: ['SAF009'],
    // Lifting gear that stays listed or named in the step is a help all the same: the list goes as well, and steps whose
    // words name gear are left out.
    sites: (scene) =>
      nested(scene, 'lift', 'by').flatMap(({ scalar, sheet, step }) => {
        const lift = mapAt(step.map, 'lift');
        // 23 kg: NIOSH lifting equation, load constant.
        const named = /hoist|sling|crane|jack|hook|trolley|eye.?bolt/.test(wordsAt(step.map, 'do'));
        if (lift === undefined || named || Number.parseFloat(wordsAt(lift, 'mass')) <= 23) return [];
        const gear = step.map.has('with') ? away(keyAway(sheet, step.map, 'with')) : [];
        return [() => slip(sheet, [over(sheet, scalar, 'one person'), ...gear])];
      }),
  },
  {
    name: '`lift` lost from the step of a heavy part',
    checks: ['SAF010'],
    sites: (scene) => {
      const heavy = scene.parts.filter((p) => Number.parseFloat(wordsAt(p.map, 'mass')) > 23).map((p) => p.id);
      const steps = scene.steps.filter((s) =>
        [...partsIn(s.map, 'remove'), ...partsIn(s.map, 'fit')].some((id) => heavy.includes(id)),
      );
      return lose(() => stepsWithout(steps, 'lift'))(scene);
    },
  },
  {
    name: 'lifting gear too weak for its load',
    // Two slings or two eyes share a load, so the capacity slips to less than half of it.
    checks: ['SAF011'],
    sites: (scene) => {
      const gear = scene.toolsUsed.filter((e) => wordsAt(e.map, 'kind') === 'lifting gear' && e.map.has('capacity'));
      return scene.steps.flatMap((s) => {
        const lift = mapAt(s.map, 'lift');
        const mass = lift === undefined ? 0 : Number.parseFloat(wordsAt(lift, 'mass'));
        return gear
          .filter((e) => mass > 0 && String(s.map).includes(e.id))
          .map((e) => () => {
            const scalar = scalarAt(e.map, 'capacity');
            return scalar === undefined
              ? undefined
              : slip(e.sheet, [over(e.sheet, scalar, `${Math.floor(mass * 0.4)} kg`)]);
          });
      });
    },
  },
  {
    name: 'heat above the limit',
    checks: ['SAF012'],
    sites: retype(
      (scene) => nested(scene, 'heat', 'most'),
      (v) => v.replace(/^\d+/, (n) => String(Number(n) + 40)),
    ),
  },
  {
    name: 'heat gloves lost from a step that heats',
    checks: ['SAF013'],
    sites: (scene) =>
      scene.steps.some((s) => s.map.has('heat'))
        ? [
            () => {
              const list = listAt(scene.procedure.root, 'ppe');
              const at = scalarsIn(list).findIndex((s) => /heat/.test(String(s.value)));
              return list === undefined || at < 0
                ? undefined
                : slip(scene.procedure, away(itemAway(scene.procedure, list, at)), ['heat gloves']);
            },
          ]
        : [],
  },
  {
    name: 'step that turns the machine by hand dropped',
    checks: ['SAF014'],
    // Where the card turns it by hand only once.
    sites: (scene) => {
      const turns = scene.steps.filter(closes('turned by hand'));
      return turns.length > 1 ? [] : dropped((s) => turns.includes(s), ['by hand'])(scene);
    },
  },
  {
    name: 'step that counts the tools dropped',
    checks: ['SAF015'],
    sites: dropped(closes('tools counted'), ['counts the tools']),
  },
  {
    name: 'step that refits the guards dropped',
    checks: ['SAF016'],
    sites: dropped(closes('guards refitted'), ['guard']),
  },
  {
    name: 'step that removes the locks dropped',
    checks: ['SAF017'],
    sites: dropped(closes('own locks removed'), ['locks']),
  },
  {
    name: 'close-out stage lost',
    checks: ['SAF015', 'SAF016', 'SAF017'],
    sites: ({ order, procedure }) =>
      (order?.items ?? []).flatMap((_, i) => {
        const stage = mapsIn(order)[i];
        if (order === undefined || stage === undefined || wordsAt(stage, 'use') !== 'close-out') return [];
        return [() => slip(procedure, away(itemAway(procedure, order, i)), ['close-out', 'tools', 'guard', 'lock'])];
      }),
  },
  {
    name: 'locks removed before the tools are counted: two steps exchanged',
    checks: ['SAF018'],
    sites: (scene) =>
      pairs(scene, (a, b) => a.map.has('close_out') && closes('own locks removed')(b)).map(
        ([a, b]) =>
          () =>
            swapped(a, b),
      ),
  },
  {
    name: 'close-out stage moved before the last of the work',
    checks: ['SAF018'],
    sites: (scene) => {
      const at = mapsIn(scene.order).findIndex((s) => wordsAt(s, 'use') === 'close-out');
      const list = scene.order;
      if (list === undefined || at < 2) return [];
      const work = mapsIn(list)
        .slice(0, at)
        .flatMap((stage, i) =>
          mapsIn(listAt(stage, 'steps')).some((s) => s.has('fit') || s.has('tighten')) ? [i] : [],
        );
      return work.slice(-2).map((i) => () => {
        const here = itemLines(scene.procedure, list.items[at]);
        const before = itemLines(scene.procedure, list.items[i]);
        return slip(
          scene.procedure,
          [
            { start: before.start, end: before.start, put: textOf(scene.procedure, here) },
            { ...here, put: '' },
          ],
          ['close-out', 'lock'],
        );
      });
    },
  },
  {
    name: 'people of a card set to one',
    checks: ['SAF020'],
    // Where a step says that it takes two: elsewhere one may do.
    sites: (scene) =>
      scene.steps.some((s) => /\btwo (people|persons|fitters)\b|second (person|fitter)/.test(String(s.map)))
        ? retypeRaw(
            () => scalars(scene.procedure, scene.procedure.root, 'people'),
            () => '1',
          )(scene)
        : [],
  },
  {
    name: 'order typed into a hazard',
    checks: ['SAF019'],
    sites: retype(
      (scene) => inWarnings(scene, 'hazard'),
      (v, random) =>
        `${random.pick(['Wear gloves.', 'Close the valve first.', 'Keep hands clear.', 'Check the gauge before you begin.'])} ${v}`,
    ),
  },
];
