/** Slips in the torque of a joint and in what it is reckoned from. */

import type { Code } from '../../../src/diagnostics/index.ts';
import type { Random } from '../random.ts';
import type { Kind, Site } from './kind.ts';
import { type At, inEntries, lose, retype, without } from './make.ts';
import type { Scene } from './scene.ts';
import { wordsAt } from './sheet.ts';
import { besideFigure, moved, transposed } from './typing.ts';

/** Beside the computed band; or the rounds are torques too, and the last one differs. */
const FAR: readonly Code[] = ['TRQ001', 'TRQ003', 'TRQ008'];
/** Outside the band, or within it and past what the bolt bears. */
const OFF: readonly Code[] = ['TRQ001', 'TRQ002', 'TRQ003', 'TRQ004', 'TRQ008', 'TRQ017', 'TRQ018'];

function torques(
  change: (number: string, unit: string, random: Random) => string | undefined,
): (scene: Scene) => Site[] {
  return retype(
    ({ joints }) => inEntries(joints, 'torque'),
    (value, random) => {
      const [, number = '', unit = ''] = /^([\d.]+) (.*)$/.exec(value) ?? [];
      return change(number, unit, random);
    },
  );
}

/** Conditions that a hand picks from the list instead of the right one. */
const CONDITIONS = ['dry', 'zinc-dry', 'oiled', 'anti-seize', 'moly', 'stainless-dry'];

/** Property classes that lie side by side in a table. */
const CLASSES: Readonly<Record<string, readonly string[]>> = {
  '8.8': ['10.9', '5.8'],
  '10.9': ['8.8', '12.9'],
  '12.9': ['10.9'],
  'A2-70': ['A2-50', 'A4-80'],
  'A4-70': ['A4-80', 'A4-50'],
  'A4-80': ['A4-70'],
  'SAE 5': ['SAE 8', 'SAE 2'],
  'SAE 8': ['SAE 5'],
  'ASTM A193 B7': ['ASTM A193 B16', 'SAE 5'],
};

const NEXT_SIZE: Readonly<Record<string, readonly string[]>> = {
  M6: ['M8'],
  M8: ['M6', 'M10'],
  M10: ['M8', 'M12'],
  M12: ['M10', 'M16'],
  M16: ['M12', 'M20'],
  M20: ['M16', 'M24'],
  M24: ['M20', 'M30'],
  M30: ['M24', 'M36'],
};

function grades(entries: (scene: Scene) => At[]): (scene: Scene) => Site[] {
  return retype(entries, (v, random) => {
    const others = CLASSES[v];
    return others === undefined ? undefined : random.pick(others);
  });
}

function sizes(entries: (scene: Scene) => At[]): (scene: Scene) => Site[] {
  return retype(entries, (v, random) => {
    const others = NEXT_SIZE[v];
    return others === undefined ? undefined : random.pick(others);
  });
}

export const TORQUE: readonly Kind[] = [
  { name: 'torque with a nought too many', checks: FAR, sites: torques((n, unit) => `${moved(n, 1)} ${unit}`) },
  { name: 'decimal point of a torque slipped', checks: FAR, sites: torques((n, unit) => `${moved(n, -1)} ${unit}`) },
  {
    name: 'two figures of a torque exchanged',
    checks: OFF,
    sites: torques((n, unit, random) => {
      const made = transposed(random, n);
      return made === undefined ? undefined : `${made} ${unit}`;
    }),
  },
  {
    name: 'first figure of a torque one key beside',
    checks: OFF,
    sites: torques((n, unit, random) => `${besideFigure(random, n[0] ?? '')}${n.slice(1)} ${unit}`),
  },
  {
    name: 'lbf·ft written for N·m, or N·m for lbf·ft',
    // 1.36 times may still lie within the band, and then passes what the bolt bears or what holds a joint.
    checks: [...OFF, 'TRQ019'],
    sites: torques((n, unit) => `${n} ${unit === 'N·m' ? 'lbf·ft' : 'N·m'}`),
  },
  { name: 'kgf·m written for the unit of a torque', checks: FAR, sites: torques((n) => `${n} kgf·m`) },
  { name: 'lbf·in written for the unit of a torque', checks: FAR, sites: torques((n) => `${n} lbf·in`) },
  {
    name: 'condition of a joint exchanged',
    checks: ['TRQ014', 'JNT006', 'JNT008', ...OFF],
    sites: retype(
      ({ joints }) => inEntries(joints, 'condition'),
      (v, random) => random.pick(CONDITIONS.filter((c) => c !== v)),
    ),
  },
  {
    name: 'lubricant of a joint exchanged',
    checks: ['TRQ014', 'JNT006'],
    // A lubricant of the same condition gives the same clamp: only another condition is a mistake for the torque.
    sites: retype(
      ({ joints }) => inEntries(joints, 'lubricant'),
      (v, random, scene) => {
        const condition = (id: string): string => {
          const entry = scene.consumables.root.get(id);
          return entry === undefined ? '' : wordsAt(entry as Parameters<typeof wordsAt>[0], 'condition');
        };
        const ids = scene.consumables.root.items.map((p) => String(p.key));
        const others = ids.filter((id) => condition(id) !== '' && condition(id) !== condition(v));
        return others.length === 0 ? undefined : random.pick(others);
      },
    ),
  },
  {
    name: 'class of a joint exchanged',
    checks: ['PRT002', 'TRQ012', ...OFF],
    sites: grades(({ joints }) => inEntries(joints, 'grade')),
  },
  {
    name: 'class exchanged in the parts list',
    checks: ['PRT002'],
    // Only of fasteners that a joint tightens: a class that nothing is reckoned from stands beside nothing else.
    sites: grades(({ joints, parts }) =>
      inEntries(
        parts.filter((p) => joints.some((j) => wordsAt(j.map, 'fastener') === p.id)),
        'grade',
      ),
    ),
  },
  {
    name: 'thread of a joint one size beside',
    checks: ['PRT002', 'TRQ009', 'BLT006'],
    sites: sizes(({ joints }) => inEntries(joints, 'thread')),
  },
  {
    name: 'thread one size beside in the parts list',
    checks: ['PRT002'],
    sites: sizes(({ joints, parts }) =>
      inEntries(
        parts.filter((p) => joints.some((j) => wordsAt(j.map, 'fastener') === p.id)),
        'thread',
      ),
    ),
  },
  {
    name: 'pitch of a joint exchanged for a fine one',
    checks: ['PRT002', ...OFF],
    sites: retype(
      ({ joints }) => inEntries(joints, 'thread'),
      (v) =>
        ({ M8: 'M8x1', M10: 'M10x1.25', M12: 'M12x1.5', M16: 'M16x1.5', M20: 'M20x1.5', M24: 'M24x2', M30: 'M30x2' })[
          v
        ],
    ),
  },
  {
    name: 'preload of a joint above the proof load',
    checks: OFF,
    // The first figure slips upwards: 62 % becomes 92 %.
    sites: retype(
      ({ joints }) => inEntries(joints, 'preload'),
      (v) => v.replace(/^\d/, '9'),
    ),
  },
  {
    name: 'preload of a joint far too low',
    checks: ['TRQ019', ...OFF],
    sites: retype(
      ({ joints }) => inEntries(joints, 'preload'),
      (v) => v.replace(/^\d/, '2'),
    ),
  },
  {
    name: 'source of a torque lost',
    checks: ['TRQ010'],
    sites: lose(({ joints }) =>
      without(
        joints.filter((j) => j.map.has('torque')),
        'source',
      ),
    ),
  },
  {
    name: 'class of a nut lowered',
    checks: ['TRQ012', 'PRT002'],
    sites: (scene) =>
      scene.joints.flatMap((j) => {
        const nut = j.map.get('nut');
        if (nut === undefined || typeof nut !== 'object') return [];
        const at = inEntries([{ ...j, map: nut as typeof j.map }], 'grade');
        return retype(
          () => at,
          (v) =>
            ({ '8': '5', '10': '6', '12': '8', 'A2-70': 'A2-50', 'A4-80': 'A4-50', 'ASTM A194 2H': 'ASTM A563 A' })[v],
        )(scene);
      }),
  },
  {
    name: 'thread engagement with its first figure lost',
    checks: ['TRQ021', 'FLD005'],
    sites: retype(
      ({ joints }) => inEntries(joints, 'engagement'),
      (v) => (/^\d\d/.test(v) ? v.slice(1) : undefined),
    ),
  },
];
