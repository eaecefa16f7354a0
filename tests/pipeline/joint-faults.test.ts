/** Slips in the newer fields of a joint and in tables from manuals: the code, the place and the words of each. */

import { describe, expect, test } from 'vitest';
import { placer } from '../../src/diagnostics/index.ts';
import { type Changes, compileMini } from '../fixtures/mini-shop.ts';

const MACHINE = 'machines/pump.yaml';
/** Fields are added to the joint after its socket, so that the first one stands on line 36. */
const SOCKET = '    socket: socket-24\n';
const PATTERN = '{ circle: 240 mm, count: 8, first: 22.5 deg }';

const add = (yaml: string) => (text: string) => text.replace(SOCKET, `${SOCKET}${yaml}`);
const put = (from: string, to: string) => (text: string) => text.replace(from, to);
const pattern = (to: string) => put(PATTERN, to);
/** Several changes to one file. */
const both =
  (...changes: ((text: string) => string)[]) =>
  (text: string) =>
    changes.reduce((t, change) => change(t), text);

/** Without a torque of the maker: computed from the preload. */
const NO_TORQUE = put('    torque: 160 N·m\n    source: { document: Pump manual, edition: "3", place: page 12 }\n', '');
/** A second wrench with a lever, for adapters. */
const WITH_LEVER = put('step: 1 N·m,', 'step: 1 N·m, lever: 400 mm,');

interface Slip {
  readonly title: string;
  readonly changes: Changes;
}

const machine = (title: string, change: (text: string) => string): Slip => ({ title, changes: { [MACHINE]: change } });

const SLIPS: readonly Slip[] = [
  machine('an unknown nut', add('    nut: { grade: "11" }\n')),
  machine('a nut weaker than its bolt', add('    nut: { grade: "6" }\n')),
  machine('a thin nut', add('    nut: { grade: "04" }\n')),
  machine('a nut in a size that its standard has not', add('    nut: { grade: SAE 5 }\n')),
  machine('an unknown flange', add('    flange: EN 1092-1 DN 155 PN 16\n')),
  machine('a flange with another count', add('    flange: EN 1092-1 DN 200 PN 16\n')),
  machine('a flange with another circle', add('    flange: EN 1092-1 DN 100 PN 16\n')),
  machine('a wall too near', add('    wall: 12 mm\n')),
  machine('a dowel on a bolt hole', add('    dowels: [{ circle: 240 mm, at: 22.5 deg, diameter: 10 mm }]\n')),
  machine('a dowel without a size', add('    dowels: [{ circle: 240 mm, at: 0 deg, diameter: 0 mm }]\n')),
  machine(
    'jacking screws on the bolts',
    add('    jacking: { circle: 240 mm, count: 2, first: 22.5 deg, thread: M12, turn: 1/4 }\n'),
  ),
  machine('a turn that cannot be read', add('    jacking: { circle: 200 mm, count: 2, thread: M12, turn: a bit }\n')),
  machine('quadrants of eight', add('    sequence: { method: quadrants }\n')),
  machine(
    'two wrenches on an odd count',
    both(pattern('{ circle: 240 mm, count: 7 }'), add('    sequence: { tools: 2 }\n')),
  ),
  machine('three wrenches', add('    sequence: { tools: 3 }\n')),
  machine('an adapter on a wrench without a lever', add('    adapter: { length: 60 mm, angle: 0 deg }\n')),
  {
    title: 'an adapter at no angle',
    changes: { 'tools.yaml': WITH_LEVER, [MACHINE]: add('    adapter: { length: 60 mm, angle: 200 deg }\n') },
  },
  {
    title: 'an adapter that takes the setting out of the range',
    changes: { 'tools.yaml': WITH_LEVER, [MACHINE]: add('    adapter: { length: 300 mm, angle: 120 deg }\n') },
  },
  machine(
    'rounds in torque that end elsewhere',
    put('rounds: [30 %, 70 %, 100 %]', 'rounds: [50 N·m, 100 N·m, 150 N·m]'),
  ),
  machine('rounds in torque that fall', put('rounds: [30 %, 70 %, 100 %]', 'rounds: [100 N·m, 50 N·m, 160 N·m]')),
  {
    title: 'a lubricant for another condition',
    changes: { 'consumables.yaml': put('condition: oiled', 'condition: moly') },
  },
  {
    title: 'nut factors of a lubricant that do not rise',
    changes: {
      'consumables.yaml': put(
        'condition: oiled,',
        'condition: oiled, nut_factor: { low: 0.2, nominal: 0.1, high: 0.3, source: { document: Data sheet, edition: issue 2 } },',
      ),
    },
  },
  machine(
    'a thread in the parts list that is not the joint’s',
    put('number: MW-102', 'number: MW-102, thread: M16x1.5'),
  ),
  machine('a class in the parts list that is not the joint’s', put('number: MW-102', 'number: MW-102, grade: "10.9"')),
  machine('an arc without a span', pattern('{ arc: 240 mm, count: 5 }')),
  machine('an arc all the way round', pattern('{ arc: 240 mm, count: 8, span: 360 deg }')),
  machine('a slot as wide as it is long', pattern('{ slot: [200 mm, 200 mm], count: 8 }')),
  machine(
    'two circles too near each other',
    pattern('{ circles: [{ circle: 240 mm, count: 4 }, { circle: 230 mm, count: 4 }] }'),
  ),
  machine('bolts closer than flange practice', pattern('{ circle: 105 mm, count: 8 }')),
  machine('a preload that takes tension and twist near yield', both(NO_TORQUE, put('preload: 70 %', 'preload: 75 %'))),
  {
    title: 'a dry preload that takes tension and twist past yield',
    changes: {
      [MACHINE]: both(
        NO_TORQUE,
        put('preload: 70 %', 'preload: 80 %'),
        put('condition: oiled', 'condition: dry'),
        put('    lubricant: oil\n', ''),
      ),
      'procedures/mw-1.yaml': put('        lubricate: { with: oil, where: thread and under the head }\n', ''),
      'stages/close-out.yaml': put('  - do: Refit every guard.\n', '  - do: Refit every guard.\n    use: [oil]\n'),
    },
  },
  machine(
    'a run-down torque that twists the shank near yield',
    both(NO_TORQUE, add('    turned: nut\n    run_down: 36 N·m\n')),
  ),
  machine('one bolt', pattern('{ circle: 240 mm, count: 1 }')),
  machine('a circle too small', pattern('{ circle: 30 mm, count: 8 }')),
  machine('a circle of zero', pattern('{ circle: 0 mm, count: 8 }')),
  machine('a circle below zero', pattern('{ circle: -240 mm, count: 8 }')),
  machine('a circle that is no number', pattern('{ circle: .nan, count: 8 }')),
  machine('an absurd circle', pattern('{ circle: 240000 mm, count: 8 }')),
  machine('an absurd torque', put('torque: 160 N·m', 'torque: 160000000 N·m')),
  machine(
    'a gasket of no known stuff',
    add(
      '    stack: { grip: 40 mm, flange: { thickness: 20 mm, width: 40 mm }, gasket: { thickness: 2 mm, width: 20 mm, modulus: 1 Pa } }\n',
    ),
  ),
  machine(
    'a stack of a pattern that does not close',
    both(
      pattern('{ arc: 240 mm, count: 8, span: 180 deg }'),
      add('    stack: { grip: 40 mm, flange: { thickness: 20 mm, width: 40 mm } }\n'),
    ),
  ),
];

const TABLE = `id: manual-table
title: Screws of the pump
source: { document: Pump manual, edition: "3", place: page 14 }
condition: oiled
preload: 70 %
rows:
  M8: { "8.8": 19 N·m, "10.9": 27 N·m }
  M10: { "8.8": 38 N·m, "10.9": 54 N·m }
  M12: { "8.8": 66 N·m, "10.9": 94 N·m }
  M16: { "8.8": 163 N·m, "10.9": 234 N·m }
  M20: { "8.8": 330 N·m, "10.9": 455 N·m }
`;

const table = (title: string, change: (text: string) => string): Slip => ({
  title,
  changes: { 'tables/manual.yaml': change(TABLE) },
});

const TABLE_SLIPS: readonly Slip[] = [
  table('a sound table', (t) => t),
  table('a decimal point', put('66 N·m', '6.6 N·m')),
  table('lbf·ft typed as N·m', put('163 N·m', '120 N·m')),
  table('N·m typed as lbf·in', put('38 N·m', '336 N·m')),
  table('a digit', put('234 N·m', '264 N·m')),
  table('two digits exchanged', put('94 N·m', '49 N·m')),
  table('a size that the class has not', put('M20: {', 'M48: {')),
  table('a thread', put('M10: {', 'M10x1.75: {')),
  table('a class', put('"10.9": 27', '"10.8": 27')),
  table('a condition', put('condition: oiled', 'condition: oily')),
  table('another condition than the manual meant', put('condition: oiled', 'condition: wax')),
  table('a share of preload without its nought', put('preload: 70 %', 'preload: 7 %')),
  table('two units that differ', put('"8.8": 163 N·m', '"8.8": { torque: 163 N·m, second: 140 lbf·ft }')),
];

/** `CODE file:line:column message` of every fault of a slip, in order. */
const FAULTS: Readonly<Record<string, readonly string[]>> = {
  'an unknown nut': ['FLD010 machines/pump.yaml:36:19 `11` is not a nut class or grade known here'],
  'a nut weaker than its bolt': ['TRQ012 machines/pump.yaml:36:10 the nut of `cover`, 6, is weaker than its bolt, 8.8'],
  'a thin nut': [
    'TRQ012 machines/pump.yaml:36:10 the nut of `cover`, 04, holds 59.5 kN, and the preload may reach 80.0 kN',
  ],
  'a nut in a size that its standard has not': [
    'FLD010 machines/pump.yaml:36:19 a nut `SAE 5` is for inch threads and `M16` is a metric thread',
  ],
  'an unknown flange': [
    'FLD012 machines/pump.yaml:36:13 `EN 1092-1 DN 155 PN 16` has a size that is not listed for PN 16',
  ],
  'a flange with another count': [
    'BLT006 machines/pump.yaml:27:14 `cover` has 8 bolts, and EN 1092-1 DN 200 PN 16 has 12 (Small)',
    'BLT006 machines/pump.yaml:39:18 `cover` has a bolt circle of 320 mm, and EN 1092-1 DN 200 PN 16 has a bolt circle of 295 mm (Large)',
  ],
  'a flange with another circle': [
    'BLT006 machines/pump.yaml:27:14 `cover` has a bolt circle of 240 mm, and EN 1092-1 DN 100 PN 16 has a bolt circle of 180 mm (Small)',
    'BLT006 machines/pump.yaml:39:18 `cover` has 12 bolts, and EN 1092-1 DN 100 PN 16 has 8 (Large)',
  ],
  'a wall too near': [
    'BLT003 machines/pump.yaml:36:11 the wall is 12.0 mm from the bolts of `cover`, and the socket needs 18.2 mm',
  ],
  'a dowel on a bolt hole': ['BLT005 machines/pump.yaml:36:14 dowel overlaps bolt hole 1: centres `0.00 mm` apart'],
  'a dowel without a size': ['FLD005 machines/pump.yaml:36:53 `0 mm` is not more than zero'],
  'jacking screws on the bolts': [
    'BLT005 machines/pump.yaml:36:14 jacking screw overlaps bolt hole 1: centres `0.00 mm` apart',
  ],
  'a turn that cannot be read': ['FLD004 machines/pump.yaml:36:61 `a bit` is not a fraction of a turn'],
  'quadrants of eight': [
    'BLT004 machines/pump.yaml:36:15 `8` holes do not make quadrants',
    'BLT004 machines/pump.yaml:36:15 `12` holes do not make quadrants',
  ],
  'two wrenches on an odd count': ['BLT004 machines/pump.yaml:36:15 `7` holes have no opposite pairs for 2 tools'],
  'three wrenches': ['FLD004 machines/pump.yaml:36:24 `3` is not a value of `tools`'],
  'an adapter on a wrench without a lever': [
    'TRQ013 machines/pump.yaml:36:14 `wrench-40-200` has no `lever`, so its setting cannot be corrected',
  ],
  'an adapter at no angle': ['TRQ013 machines/pump.yaml:36:14 an adapter cannot stand at 200°'],
  'an adapter that takes the setting out of the range': [
    'TRQ005 machines/pump.yaml:34:13 round 3 of `cover`, 256 N·m with adapter, is above the range of `wrench-40-200`, 40 to 200 N·m',
  ],
  'rounds in torque that end elsewhere': [
    'TRQ008 machines/pump.yaml:32:13 the last round is `150 N·m`, and the torque of the joint is `160 N·m`',
  ],
  'rounds in torque that fall': [
    'TRQ008 machines/pump.yaml:32:13 the round `50 N·m` does not rise over `100 N·m` before it',
  ],
  'a lubricant for another condition': [
    'TRQ014 machines/pump.yaml:24:16 the torque of `cover` is for machine oil on thread and under head (`oiled`), and `oil` gives molybdenum disulfide paste',
  ],
  'nut factors of a lubricant that do not rise': [
    'FLD006 consumables.yaml:1:74 the nut factors 0.2, 0.1 and 0.3 do not rise',
  ],
  'a thread in the parts list that is not the joint’s': [
    'PRT002 machines/pump.yaml:14:68 the parts list has `screw` as M16×1.5, and joint `cover` has M16',
  ],
  'a class in the parts list that is not the joint’s': [
    'PRT002 machines/pump.yaml:14:67 the parts list has `screw` as 10.9, and joint `cover` has 8.8',
  ],
  'an arc without a span': ['FLD002 machines/pump.yaml:27:16 `pattern` has no `span`'],
  'an arc all the way round': ['BLT001 machines/pump.yaml:27:14 span `360°` is not an arc'],
  'a slot as wide as it is long': [
    'BLT001 machines/pump.yaml:27:14 a slot `200 mm` long is not longer than its width `200 mm`',
  ],
  'two circles too near each other': ['BLT001 machines/pump.yaml:27:14 holes 1 and 5 overlap: they lie 5.00 mm apart'],
  'bolts closer than flange practice': [
    'BLT007 machines/pump.yaml:27:14 neighbouring bolts of `cover` are 40.2 mm apart, and 44.4 mm is the least for flange bolts (Small)',
  ],
  'a preload that takes tension and twist near yield': [
    'TRQ017 machines/pump.yaml:29:14 tension and twist in `cover` may reach 92 % of yield while tightening',
  ],
  'a dry preload that takes tension and twist past yield': [
    'TRQ018 machines/pump.yaml:28:14 tension and twist in `cover` may reach 101 % of yield while tightening',
    'TRQ005 machines/pump.yaml:31:13 round 3 of `cover`, 232 N·m, is above the range of `wrench-40-200`, 40 to 200 N·m',
  ],
  'a run-down torque that twists the shank near yield': [
    'TRQ017 machines/pump.yaml:29:14 tension and twist in `cover` may reach 92 % of yield while tightening',
  ],
  'a share of preload without its nought': [
    'TRQ015 tables/manual.yaml:1:5 table `manual-table`: its torques are about 10.01 times those computed',
  ],
  'one bolt': ['BLT001 machines/pump.yaml:27:14 `1` is not a number of holes'],
  'a circle too small': [
    'BLT001 machines/pump.yaml:27:14 bolt circle `30 mm` is too small for 8 holes: they lie 11.48 mm apart',
  ],
  'a circle of zero': ['FLD005 machines/pump.yaml:27:24 `0 mm` is not more than zero'],
  'a circle below zero': ['FLD005 machines/pump.yaml:27:24 `-240 mm` is not more than zero'],
  'a circle that is no number': ['FLD005 machines/pump.yaml:27:24 `circle: NaN` has no unit'],
  'an absurd circle': ['BLT001 machines/pump.yaml:27:14 bolt circle `240000 mm` is not a size'],
  'an absurd torque': [
    'TRQ003 machines/pump.yaml:30:13 `cover` states 160000000 N·m, far from the computed 132 to 204 N·m',
  ],
  'a gasket of no known stuff': [
    'FLD005 machines/pump.yaml:36:79 no flange and no gasket has such sizes or such a modulus',
  ],
  'a stack of a pattern that does not close': [
    'FLD004 machines/pump.yaml:36:12 `stack` is of use only where the bolts stand on one closed line',
  ],
  'a sound table': [],
  'a decimal point': [
    'TRQ015 tables/manual.yaml:9:17 table `manual-table`: `M12` of `8.8`: 6.6 N·m stands out; in line with the others is 65.7 N·m',
  ],
  'lbf·ft typed as N·m': [
    'TRQ015 tables/manual.yaml:10:17 table `manual-table`: `M16` of `8.8`: 120 N·m stands out; in line with the others is 163 N·m',
  ],
  'N·m typed as lbf·in': [
    'TRQ015 tables/manual.yaml:8:17 table `manual-table`: `M10` of `8.8`: 336 N·m stands out; in line with the others is 37.7 N·m',
  ],
  'a digit': [
    'TRQ015 tables/manual.yaml:10:34 table `manual-table`: `M16` of `10.9`: 264 N·m stands out; in line with the others is 233 N·m',
  ],
  'two digits exchanged': [
    'TRQ015 tables/manual.yaml:9:33 table `manual-table`: `M12` of `10.9`: 49 N·m stands out; in line with the others is 94.1 N·m',
  ],
  'a size that the class has not': [
    'FLD010 tables/manual.yaml:11:10 `8.8` is not made in `M48`',
    'FLD010 tables/manual.yaml:11:26 `10.9` is not made in `M48`',
  ],
  'a thread': ['FLD009 tables/manual.yaml:8:3 `M10x1.75` is not a standard pitch for its diameter'],
  'a class': ['FLD010 tables/manual.yaml:7:24 `10.8` is not a property class or grade known here'],
  'a condition': ['FLD004 tables/manual.yaml:4:12 `oily` is not a joint condition'],
  'another condition than the manual meant': [
    'TRQ016 tables/manual.yaml:1:5 table `manual-table`: 10 of 10 cells lie outside the computed band, the first is `M8` of `8.8`: 19 N·m lies outside 9.51 N·m to 16.6 N·m, computed for the heading of the table',
  ],
  'two units that differ': [
    'TRQ015 tables/manual.yaml:10:17 table `manual-table`: `M16` of `8.8`: 163 N·m and 140 lbf·ft are not the same torque',
  ],
};

describe.each([...SLIPS, ...TABLE_SLIPS])('$title', ({ title, changes }) => {
  test('is named at its place', () => {
    const { diagnostics, textOf } = compileMini(changes);
    const place = placer(textOf);
    const told = diagnostics.map((d) => {
      const { line, column } = place(d.range);
      return `${d.code} ${d.range.file.replace('shop/', '')}:${line}:${column} ${d.message}`;
    });
    expect(told).toEqual(FAULTS[title]);
    for (const d of diagnostics) expect(d.hint, d.message).toBeTruthy();
  });
});
