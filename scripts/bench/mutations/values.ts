/** Quantities, dates and designations that cannot be read, or not as they were meant. */

import type { Kind, Site } from './kind.ts';
import { type At, inEntries, inMeasures, inSteps, retype, scalars } from './make.ts';
import type { Scene } from './scene.ts';
import { listAt, mapAt, mapsIn, type Sheet } from './sheet.ts';
import { besideFigure, mistyped } from './typing.ts';

/** A single number and its unit: `135 N·m`, `26 kg`, `30 min`. */
const QUANTITY = /^([\d.]+) (\S+)$/;

/** Quantities of joints, tools and steps. */
function quantities(scene: Scene): At[] {
  const nested = (sheet: Sheet, map: Parameters<typeof mapAt>[0], under: string, ...keys: string[]): At[] => {
    const inner = mapAt(map, under);
    return inner === undefined ? [] : keys.flatMap((key) => scalars(sheet, inner, key));
  };
  return [
    ...inEntries(scene.joints, 'torque', 'run_down', 'engagement', 'wall', 'protrusion'),
    ...scene.joints.flatMap((j) => nested(j.sheet, j.map, 'pattern', 'circle', 'first')),
    ...inEntries(scene.toolsUsed, 'size', 'drive', 'step', 'capacity'),
    ...inEntries(scene.consumablesUsed, 'pack', 'cure'),
    ...inEntries(scene.parts, 'mass'),
    ...inSteps(scene.steps, 'time'),
    ...scene.steps.flatMap((s) => [
      ...nested(s.sheet, s.map, 'wait', 'for'),
      ...nested(s.sheet, s.map, 'lift', 'mass'),
      ...nested(s.sheet, s.map, 'heat', 'to', 'most'),
    ]),
  ].filter((at) => QUANTITY.test(String(at.scalar.value)));
}

/** Units with the quantity that each is of. */
const UNITS: Readonly<Record<string, string>> = {
  mm: 'length',
  m: 'length',
  in: 'length',
  deg: 'angle',
  N·m: 'torque',
  lbf·ft: 'torque',
  kg: 'mass',
  g: 'mass',
  t: 'mass',
  min: 'time',
  h: 'time',
  s: 'time',
  degC: 'temperature',
  bar: 'pressure',
  ml: 'volume',
  l: 'volume',
  N: 'force',
  kN: 'force',
};

const dates = ({ procedure, toolsUsed }: Scene): At[] => [
  ...mapsIn(listAt(procedure.root, 'revisions')).flatMap((r) =>
    ['effective', 'approved'].flatMap((key) => scalars(procedure, r, key)),
  ),
  ...inEntries(toolsUsed, 'calibration_due'),
];

const limits = (scene: Scene): At[] => [...inMeasures(scene, 'limit'), ...inEntries(scene.toolsUsed, 'range')];

const threads = ({ joints, parts }: Scene): At[] => inEntries([...joints, ...parts], 'thread');
const grades = ({ joints, parts }: Scene): At[] => inEntries([...joints, ...parts], 'grade');

/** Sizes of ISO 261 coarse that are in use; a figure beside that gives another of them is not mistyped beyond reading. */
const SIZES = new Set([
  'M4',
  'M5',
  'M6',
  'M7',
  'M8',
  'M10',
  'M12',
  'M14',
  'M16',
  'M18',
  'M20',
  'M22',
  'M24',
  'M27',
  'M30',
  'M33',
  'M36',
  'M39',
  'M42',
]);

const applied =
  (select: (scene: Scene) => At[], change: Parameters<typeof retype>[1]) =>
  (scene: Scene): Site[] =>
    retype(select, change)(scene);

export const VALUES: readonly Kind[] = [
  {
    name: 'unit of a quantity lost',
    checks: ['FLD005', 'FLD003'],
    sites: applied(quantities, (v) => QUANTITY.exec(v)?.[1]),
  },
  {
    name: 'unit of another kind',
    checks: ['FLD005'],
    sites: applied(quantities, (v, random) => {
      const [, number = '', unit = ''] = QUANTITY.exec(v) ?? [];
      const others = Object.keys(UNITS).filter((u) => UNITS[u] !== UNITS[unit]);
      return UNITS[unit] === undefined ? undefined : `${number} ${random.pick(others)}`;
    }),
  },
  {
    name: 'unit mistyped',
    // `N·mm` can be read, and is a thousandth.
    checks: ['FLD005', 'TRQ001', 'TRQ005'],
    sites: applied(quantities, (v) => {
      const [, number = '', unit = ''] = QUANTITY.exec(v) ?? [];
      // The last letter struck twice: `mmm`, `barr`.
      return /[a-z]$/i.test(unit) ? `${number} ${unit}${unit.at(-1) ?? ''}` : undefined;
    }),
  },
  {
    name: 'unit of a limit lost',
    checks: ['FLD006'],
    sites: applied(limits, (v) => v.replace(/ [^\d\s]+$/, '')),
  },
  {
    name: 'range of a limit written backwards',
    checks: ['FLD006'],
    sites: applied(limits, (v) => {
      const [, from = '', to = '', unit = ''] = /^([\d.]+) to ([\d.]+)( .*)$/.exec(v) ?? [];
      return from === '' || from === to ? undefined : `${to} to ${from}${unit}`;
    }),
  },
  {
    name: 'day that no month has',
    checks: ['FLD008'],
    sites: applied(dates, (v) =>
      v.replace(/-\d\d-\d\d$/, (d) =>
        d.startsWith('-02') ? '-02-30' : `${d.slice(0, 3)}-3${d.at(-1) ?? ''}`.replace(/-3[01]$/, '-32'),
      ),
    ),
  },
  {
    name: 'date with its day before the month',
    checks: ['FLD008'],
    sites: applied(dates, (v) => v.replace(/^(\d+)-(\d+)-(\d+)$/, '$3-$2-$1')),
  },
  {
    name: 'thread mistyped',
    // Some slips give a size that the standard knows and nobody uses, such as M11: joint and parts list then differ.
    checks: ['FLD009', 'PRT002'],
    // A slip that gives another usual size is a kind of its own: the size of a joint changed.
    sites: applied(threads, (v, random) => {
      const at = random.pick([...v].flatMap((c, i) => (/\d/.test(c) ? [i] : [])));
      const made = v.slice(0, at) + besideFigure(random, v[at] ?? '') + v.slice(at + 1);
      return SIZES.has(made) ? undefined : made;
    }),
  },
  {
    name: 'grade mistyped',
    checks: ['FLD010'],
    sites: applied(grades, (v, random) =>
      /^\d+\.\d$/.test(v) ? v.replace(/.$/, () => random.pick(['0', '7'])) : mistyped(random, v),
    ),
  },
  {
    name: 'standard flange mistyped',
    checks: ['FLD012', 'BLT006'],
    sites: applied(
      ({ joints }) => inEntries(joints, 'flange'),
      (v, random) =>
        random.whole(2) === 0
          ? mistyped(random, v)
          : v.replace(/DN (\d)/, (_, d: string) => `DN ${besideFigure(random, d)}`),
    ),
  },
];
