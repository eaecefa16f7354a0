/** Slips with tools and gauges. */

import { over, slip } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import { inEntries, inMeasures, lose, references, retype, typedOver, without } from './make.ts';
import { type Entry, measuresOf, type Scene } from './scene.ts';
import { mapAt, scalarAt, wordsAt } from './sheet.ts';
import { moved } from './typing.ts';

interface Scale {
  readonly from: number;
  readonly to: number;
  readonly unit: string;
}

/** `0 to 0.15 mm`, `at most 45 degC`, `at least 30 mm`. */
function scaleOf(words: string): Scale | undefined {
  const range = /^([\d.]+) to ([\d.]+) (\S+)$/.exec(words);
  if (range !== null) return inSeconds({ from: Number(range[1]), to: Number(range[2]), unit: range[3] ?? '' });
  const one = /^at (?:most|least) ([\d.]+) (\S+)$/.exec(words);
  return one === null ? undefined : inSeconds({ from: Number(one[1]), to: Number(one[1]), unit: one[2] ?? '' });
}

/** A stopwatch has its range in minutes and its graduation in seconds. */
function inSeconds({ from, to, unit }: Scale): Scale {
  return unit === 'min' ? { from: 60 * from, to: 60 * to, unit: 's' } : { from, to, unit };
}

function quantityOf(words: string): number | undefined {
  const [, number, unit = ''] = /^([\d.]+) (\S+)$/.exec(words) ?? [];
  return number === undefined ? undefined : inSeconds({ from: Number(number), to: 0, unit }).from;
}

/** Measures with the tool that judges them. */
function judged(scene: Scene) {
  return scene.steps.flatMap((s) =>
    measuresOf(s.map).flatMap((measure) => {
      const gauge = mapAt(scene.tools.root, wordsAt(measure, 'with'));
      const scalar = scalarAt(measure, 'with');
      const limit = scaleOf(wordsAt(measure, 'limit'));
      return gauge === undefined || scalar === undefined || limit === undefined
        ? []
        : [{ sheet: s.sheet, gauge, scalar, limit }];
    }),
  );
}

const unitOf = (words: string): string => /(\S+)$/.exec(words)?.[1] ?? '';

/** Another tool of the register in place of the one that measures. */
function otherGauge(fits: (other: Entry['map'], of: ReturnType<typeof judged>[number]) => boolean) {
  return (scene: Scene): Site[] =>
    judged(scene).map((place) => (random) => {
      const ids = scene.tools.root.items
        .map((p) => String(p.key))
        .filter((id) => {
          const other = mapAt(scene.tools.root, id);
          return other !== undefined && id !== String(place.scalar.value) && fits(other, place);
        });
      return ids.length === 0 ? undefined : slip(place.sheet, [over(place.sheet, place.scalar, random.pick(ids))]);
    });
}

/** Does the job as well: covers the limit and reads it in tenths or finer, which is common practice for a gauge. */
function judgesToo(gauge: Entry['map'], place: { limit: Scale }): boolean {
  return judges({ range: wordsAt(gauge, 'range'), step: wordsAt(gauge, 'step') }, place);
}

function judges(scale: ScaleWords, place: { limit: Scale }): boolean {
  const { limit } = place;
  const step = quantityOf(scale.step);
  const width = limit.to === limit.from ? limit.to : limit.to - limit.from;
  const range = scaleOf(scale.range);
  // A feeler of just that thickness goes in or does not: its graduation is not read.
  const tried = limit.from === 0 && range !== undefined && range.from > 0;
  return covers(scale, place) && (tried || (step !== undefined && step <= width / 10));
}

function covers({ range: words }: ScaleWords, { limit }: { limit: Scale }): boolean {
  const range = scaleOf(words);
  if (range === undefined || range.unit !== limit.unit || limit.to > range.to) return false;
  // A limit from zero is judged at its upper end: feelers begin above zero.
  return limit.from === 0 || limit.from >= range.from;
}

interface ScaleWords {
  readonly range: string;
  readonly step: string;
}

const measuring = ({ toolsUsed }: Scene): readonly Entry[] =>
  toolsUsed.filter((e) => ['measuring tool', 'torque wrench'].includes(wordsAt(e.map, 'kind')));

export const TOOLS: readonly Kind[] = [
  {
    name: 'another gauge of the same quantity named',
    checks: ['TOL003', 'TOL004', 'TOL005', 'TOL008', 'TOL009'],
    sites: otherGauge(
      (other, place) =>
        wordsAt(other, 'kind') === 'measuring tool' &&
        unitOf(wordsAt(other, 'range')) === place.limit.unit &&
        !judgesToo(other, place),
    ),
  },
  {
    name: 'gauge of another quantity named',
    checks: ['TOL008'],
    sites: otherGauge(
      (other, { limit }) =>
        wordsAt(other, 'kind') === 'measuring tool' &&
        other.has('range') &&
        !sameDimension(unitOf(wordsAt(other, 'range')), limit.unit),
    ),
  },
  {
    name: 'tool that measures nothing named as the gauge',
    checks: ['TOL008'],
    sites: otherGauge((other) => ['hand tool', 'socket', 'stand', 'lifting gear'].includes(wordsAt(other, 'kind'))),
  },
  {
    name: 'decimal point of a limit slipped to ten times as wide',
    checks: ['TOL005'],
    sites: retype(
      (scene) => inMeasures(scene, 'limit'),
      (v) =>
        v.replace(/([\d.]+)( [^\d\s]+)$/, (_, n: string, unit: string) =>
          Number(n) === 0 ? `${n}${unit}` : `${moved(n, 1)}${unit}`,
        ),
    ),
  },
  {
    name: 'decimal point of a limit slipped to a tenth',
    checks: ['FLD006', 'TOL003', 'TOL004', 'TOL005'],
    sites: retype(
      (scene) => inMeasures(scene, 'limit'),
      (v) =>
        v.replace(/([\d.]+)( [^\d\s]+)$/, (_, n: string, unit: string) =>
          Number(n) === 0 ? `${n}${unit}` : `${moved(n, -1)}${unit}`,
        ),
    ),
  },
  {
    name: 'calibration date of a tool in use passed',
    checks: ['TOL006'],
    sites: retype(
      (scene) => inEntries(measuring(scene), 'calibration_due'),
      (v, random) => v.replace(/^\d{4}/, (year) => String(Number(year) - random.pick([3, 10]))),
    ),
  },
  {
    name: 'calibration date of a gauge lost',
    checks: ['TOL007'],
    sites: lose((scene) => without(measuring(scene), 'calibration_due')),
  },
  {
    name: 'graduation of a gauge lost',
    checks: ['TOL009'],
    sites: lose((scene) =>
      without(
        measuring(scene).filter((e) => e.map.has('range')),
        'step',
      ),
    ),
  },
  {
    name: 'graduation of a gauge slipped by a decimal point',
    checks: ['TOL003', 'TOL004'],
    // Of gauges that judge a limit of this procedure, and only where the coarser scale no longer judges every one of them.
    sites: (scene) => slippedScale(scene, 'step', (v) => v.replace(/^[\d.]+/, (n) => moved(n, 1))),
  },
  {
    name: 'range of a tool slipped by a decimal point',
    checks: ['TOL005', 'TRQ005', 'FLD006'],
    // Where the shorter range still covers every limit of this procedure, nothing is wrong with it here.
    sites: (scene) =>
      slippedScale(scene, 'range', (v) =>
        v.replace(/([\d.]+)( [^\d\s]+)$/, (_, n: string, unit: string) => `${moved(n, -1)}${unit}`),
      ),
  },
  {
    name: 'tool typed in plain words in place of its reference',
    checks: ['TOL001'],
    // Where the step lists the tool under `with` too, it is carried to the bench all the same.
    sites: (scene) => plainWords(scene, 'tool'),
  },
  {
    name: 'consumable typed in plain words in place of its reference',
    checks: ['CSM005'],
    sites: (scene) => plainWords(scene, 'consumable'),
  },
  {
    name: 'tool fixed at a bench where the card does not hang',
    checks: ['TOL002'],
    whole: true,
    sites: (scene) =>
      retype(
        () =>
          inEntries(
            scene.toolsUsed.filter((e) => e.map.has('fixed_at')),
            'fixed_at',
          ),
        (v, random) => random.pick(scene.benches.root.items.map((p) => String(p.key)).filter((b) => b !== v)),
      )(scene),
  },
];

/** A scale typed wrong in the register, of tools that judge a limit or tighten a joint of the procedure. */
function slippedScale(scene: Scene, key: 'step' | 'range', change: (value: string) => string): Site[] {
  const limits = judged(scene);
  return scene.toolsUsed.flatMap((e): Site[] => {
    const own = limits.filter((j) => String(j.scalar.value) === e.id);
    const tightens = scene.joints.some((j) => wordsAt(j.map, 'wrench') === e.id);
    const scalar = scalarAt(e.map, key);
    if (scalar === undefined || (own.length === 0 && !(key === 'range' && tightens))) return [];
    const value = change(String(scalar.value));
    const words = { range: wordsAt(e.map, 'range'), step: wordsAt(e.map, 'step'), [key]: value };
    const does = key === 'range' ? covers : judges;
    if (!tightens && own.every((j) => does(words, j))) return [];
    return [() => slip(e.sheet, [over(e.sheet, scalar, value)])];
  });
}

/** Units of one quantity. */
const DIMENSIONS = [
  ['mm', 'in', 'm'],
  ['bar', 'psi'],
  ['N·m', 'lbf·ft'],
  ['N', 'kN', 'lbf'],
  ['min', 's', 'h'],
];

function sameDimension(a: string, b: string): boolean {
  return a === b || DIMENSIONS.some((d) => d.includes(a) && d.includes(b));
}

function plainWords(scene: Scene, scheme: 'tool' | 'consumable'): Site[] {
  const register = scheme === 'tool' ? scene.tools : scene.consumables;
  return references(scene, scheme)
    .filter(({ sheet, stretch }) => sheet.text[stretch.end] === '>')
    .map(({ sheet, stretch, id }) => () => {
      const entry = mapAt(register.root, id);
      const step = scene.steps.find((s) => {
        const range = (s.map as { range?: [number, number, number] | null }).range;
        return s.sheet === sheet && range != null && range[0] <= stretch.start && stretch.end <= range[1];
      });
      const inDo = step !== undefined && wordsAt(step.map, 'do').includes(`<${scheme}:${id}>`);
      const once = inDo && String(step.map).split(id).length === 2;
      if (entry === undefined || !once) return undefined;
      return typedOver(
        sheet,
        { start: stretch.start - scheme.length - 2, end: stretch.end + 1 },
        wordsAt(entry, 'name'),
        [id],
      );
    });
}
