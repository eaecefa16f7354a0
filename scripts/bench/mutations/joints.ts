/** Slips in pattern, tools and rounds of a joint. */

import type { Scalar, YAMLMap } from 'yaml';
import { away, itemAway, over, type Slip, slip } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import { type At, lineAfter, lose, retype, retypeRaw, scalars, without } from './make.ts';
import type { Entry, Scene } from './scene.ts';
import { entriesOf, listAt, mapAt, mapsIn, scalarAt, scalarsIn, wordsAt } from './sheet.ts';
import { transposed } from './typing.ts';

/** Patterns of the joint and of its other forms. */
function patterns(scene: Scene): readonly (readonly [Entry, YAMLMap])[] {
  return scene.joints.flatMap((j) =>
    [j.map, ...mapsIn(listAt(j.map, 'when'))].flatMap((m) => {
      const pattern = mapAt(m, 'pattern');
      return pattern === undefined ? [] : [[j, pattern] as const];
    }),
  );
}

function inPatterns(...keys: string[]): (scene: Scene) => At[] {
  return (scene) => patterns(scene).flatMap(([j, p]) => keys.flatMap((key) => scalars(j.sheet, p, key)));
}

/** Joints with three rounds or more written as shares or torques. */
function rounds(change: (list: readonly Scalar[], joint: Entry) => Slip | undefined): (scene: Scene) => Site[] {
  return ({ joints }) =>
    joints.flatMap((j) => {
      const list = scalarsIn(listAt(j.map, 'rounds'));
      return list.length < 3 ? [] : [() => change(list, j)];
    });
}

/** Another tool of the same kind from the register. */
function otherTool(key: 'wrench' | 'socket'): (scene: Scene) => Site[] {
  return ({ joints, tools }) =>
    joints.flatMap((joint) => {
      const scalar = scalarAt(joint.map, key);
      const right = scalar === undefined ? undefined : mapAt(tools.root, String(scalar.value));
      if (scalar === undefined || right === undefined) return [];
      const others = entriesOf(tools.root).filter(([, other]) => {
        // A socket of the same size fits as well, and a wrench of the same range reads as well.
        const same = ['size', 'range'].every((k) => wordsAt(other, k) === wordsAt(right, k));
        return wordsAt(other, 'kind') === wordsAt(right, 'kind') && !same && !reaches(other, joint);
      });
      return others.length === 0
        ? []
        : [(random) => slip(joint.sheet, [over(joint.sheet, scalar, random.pick(others)[0])])];
    });
}

/** N·m in a lbf·ft (NIST SP 811). */
const LBF_FT = 1.35582;

/** A wrench that takes the stated torque and its first round within 20 to 100 % of its scale does the job as well. */
function reaches(wrench: YAMLMap, joint: Entry): boolean {
  const [, number, unit] = /^([\d.]+) (.+)$/.exec(wordsAt(joint.map, 'torque')) ?? [];
  const [, from, to, marked] = /^([\d.]+) to ([\d.]+) (.+)$/.exec(wordsAt(wrench, 'range')) ?? [];
  const inNm = (value: string | undefined, of: string | undefined): number =>
    Number(value) * (of === 'lbf·ft' ? LBF_FT : 1);
  const first = 0.3 * inNm(number, unit);
  const most = inNm(to, marked);
  return first >= Math.max(inNm(from, marked), 0.2 * most) && inNm(number, unit) <= most;
}

export const JOINTS: readonly Kind[] = [
  {
    name: 'count of bolts changed in a pattern',
    checks: ['PRT001', 'PRT009', 'BLT001', 'BLT002', 'BLT004', 'BLT005', 'BLT006', 'BLT007'],
    sites: retypeRaw(inPatterns('count'), (v, random) => String(Number(v) + random.pick([-2, 2]))),
  },
  {
    name: 'figures of a bolt circle exchanged',
    checks: ['BLT001', 'BLT002', 'BLT005', 'BLT006', 'BLT007'],
    sites: retype(inPatterns('circle'), (v, random) => transposed(random, v)),
  },
  {
    name: 'decimal point of a bolt circle slipped',
    checks: ['BLT001', 'BLT002', 'BLT005', 'BLT006', 'FLD005'],
    sites: retype(inPatterns('circle'), (v) => v.replace(/(\d)( \S+)$/, '.$1$2')),
  },
  { name: 'another socket or key named', checks: ['TRQ009'], sites: otherTool('socket') },
  { name: 'another torque wrench named', checks: ['TRQ005', 'TRQ006', 'TRQ013'], sites: otherTool('wrench') },
  {
    name: 'two rounds exchanged',
    checks: ['TRQ008'],
    sites: rounds(([a, b], j) =>
      a === undefined || b === undefined
        ? undefined
        : slip(j.sheet, [over(j.sheet, a, String(b.value)), over(j.sheet, b, String(a.value))]),
    ),
  },
  {
    name: 'last round lost',
    checks: ['TRQ008'],
    sites: rounds((list, j) => {
      const seq = listAt(j.map, 'rounds');
      return seq === undefined ? undefined : slip(j.sheet, away(itemAway(j.sheet, seq, list.length - 1)));
    }),
  },
  {
    name: 'first round half of the torque',
    checks: ['TRQ027', 'TRQ008'],
    sites: rounds(([first], j) =>
      first === undefined || !String(first.value).endsWith('%') || few(j)
        ? undefined
        : slip(j.sheet, [over(j.sheet, first, '50 %')]),
    ),
  },
  {
    name: 'all rounds but the last lost',
    checks: ['TRQ029'],
    // Three bolts or fewer may be taken up in one round.
    sites: rounds(([first, ...rest], j) => {
      const last = rest.at(-1);
      const range = (first as { range?: [number, number, number] } | undefined)?.range;
      const end = (last as { range?: [number, number, number] } | undefined)?.range;
      if (range === undefined || end === undefined || few(j)) return undefined;
      return slip(j.sheet, [{ start: range[0], end: end[0], put: '' }]);
    }),
  },
  {
    name: 'tightened in turn instead of crosswise',
    checks: ['BLT008'],
    // With three bolts there is no other order.
    sites: ({ joints }) =>
      joints
        .filter((j) => !j.map.has('sequence') && !few(j))
        .map((j) => () => {
          const put = lineAfter(j.sheet, j.map, 'wrench', 'sequence: { method: in turn }');
          return put === undefined ? undefined : slip(j.sheet, [put]);
        }),
  },
  {
    name: 'circular pass lost on a gasket',
    checks: ['TRQ028'],
    // An O-ring lies in a groove between faces that meet: nothing creeps there, and once round is enough.
    sites: lose(({ joints, parts }) => {
      const pressed = parts.filter((p) => wordsAt(p.map, 'kind') === 'gasket').map((p) => p.id);
      return without(
        joints.filter((j) => pressed.includes(wordsAt(j.map, 'gasket'))),
        'circular_passes',
      );
    }),
  },
];

/** Fewer than four bolts. */
function few(joint: Entry): boolean {
  const pattern = mapAt(joint.map, 'pattern');
  return pattern === undefined || Number(wordsAt(pattern, 'count') || '4') < 4;
}
