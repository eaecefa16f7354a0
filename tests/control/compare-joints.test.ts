/** What changes in joints, measurements, warnings and energy, in its exact words. */

import { describe, expect, test } from 'vitest';
import { compareIssues } from '../../src/control/compare/index.ts';
import { fullSide, linesOf, miniLines, miniSide, stored, swap } from './compare-sides.ts';

const BASE = miniSide();
const MW1 = 'procedures/mw-1.yaml';
const PUMP = 'machines/pump.yaml';
const procedure = (...edits: readonly (readonly [string, string])[]) => ({ [MW1]: swap(...edits) });
const machine = (...edits: readonly (readonly [string, string])[]) => ({ [PUMP]: swap(...edits) });
const SMALL_9 = 'Step 9 (Large: step 11)';
const SMALL_10 = 'Step 10 (Large: step 12)';

describe('joint', () => {
  test('a torque is told once, at the step that tightens it', () => {
    const comparison = compareIssues(BASE, miniSide(machine(['torque: 160 N·m', 'torque: 170 N·m'])));
    expect(linesOf(comparison)).toEqual([`torque value: ${SMALL_9}: torque of the cover joint 160 → 170 N·m`]);
    expect(comparison.changes[0]).toMatchObject({
      before: '160\u00a0N·m',
      after: '170\u00a0N·m',
      stepBefore: 9,
      stepAfter: 9,
    });
    expect(comparison.marks).toEqual({ small: { 9: ['joint'] }, large: { 11: ['joint'] } });
  });

  const cases: readonly (readonly [string, string, string, readonly string[]])[] = [
    [
      'rounds',
      '[30 %, 70 %, 100 %]',
      '[40 %, 70 %, 100 %]',
      [
        'torque value: @: rounds of the cover joint 30, 70, 100 %, then once from neighbour to neighbour → 40, 70, 100 %, then once from neighbour to neighbour',
      ],
    ],
    [
      'passes',
      'circular_passes: 1',
      'circular_passes: 2',
      [
        'torque value: @: rounds of the cover joint 30, 70, 100 %, then once from neighbour to neighbour → 30, 70, 100 %, then 2 times from neighbour to neighbour',
      ],
    ],
    ['grade', 'grade: "8.8"', 'grade: "10.9"', ['joint value: @: grade of the cover joint 8.8 → 10.9']],
    ['preload', 'preload: 70 %', 'preload: 65 %', ['joint value: @: preload of the cover joint 70 % → 65 %']],
    [
      'source',
      'place: page 12',
      'place: page 13',
      ['joint value: @: source of the torque of the cover joint Pump manual, 3, page 12 → Pump manual, 3, page 13'],
    ],
    [
      'surface',
      'where: thread and under the head',
      'where: thread only',
      ['joint value: @: lubricated surface of the cover joint thread and under the head → thread only'],
    ],
  ];
  test.each(cases)('%s', (_, from, to, lines) => {
    expect(miniLines(machine([from, to]))).toEqual(lines.map((l) => l.replace('@', SMALL_9)));
  });

  test('view and pattern are also shown where it is loosened', () => {
    const comparison = compareIssues(BASE, miniSide(machine(['view: the cover side', 'view: the drive side'])));
    expect(linesOf(comparison)).toEqual([
      `pattern reworded: ${SMALL_9}: view of the cover joint reworded: the drive side`,
    ]);
    expect(comparison.marks).toEqual({ small: { 5: ['joint'], 9: ['joint'] }, large: { 5: ['joint'], 11: ['joint'] } });
  });

  test('a pattern of one variant, and the parts that follow from it', () => {
    expect(miniLines(machine(['count: 12, first: 15 deg', 'count: 10, first: 18 deg']))).toEqual([
      'pattern value: Step 11: bolt pattern of the cover joint 12 on a circle of 320 mm, the first at 15° → 10 on a circle of 320 mm, the first at 18° [Large]',
      'part value: Steps 6 and 11: quantity of cover screw 12 → 10 [Large]',
    ]);
  });

  test('sequence', () => {
    expect(
      miniLines(machine(['    view: the cover side', '    sequence: { method: in turn }\n    view: the cover side'])),
    ).toEqual([`pattern value: ${SMALL_9}: tightening order of the cover joint cross, one tool → in turn, one tool`]);
  });

  test('condition and lubricant', () => {
    const changes = {
      'consumables.yaml': (t: string) =>
        `${t}paste: { name: copper paste, kind: lubricant, condition: anti-seize, medium: mineral oil, hazards: [irritates the skin], ppe: [gloves], safety_data: folder L2, shelf_life: 5 years, waste: used-oil drum }\n`,
      ...machine(['condition: oiled', 'condition: anti-seize'], ['lubricant: oil', 'lubricant: paste']),
      ...procedure(['lubricate: { with: oil', 'lubricate: { with: paste']),
    };
    expect(miniLines(changes)).toEqual([
      `joint value: ${SMALL_9}: condition of the cover joint machine oil on thread and under head → anti-seize paste, copper or nickel`,
      `consumable exchanged: ${SMALL_9}: consumable exchanged, machine oil → copper paste`,
    ]);
  });

  test('wrench and socket are told once, and not again by the step', () => {
    const changes = {
      'tools.yaml': (t: string) =>
        `${t}wrench-60-300: { name: torque wrench 60 to 300, kind: torque wrench, range: 60 to 300 N·m, step: 1 N·m, serial: MW-TW-3, calibration_due: 2027-03-01 }\n`,
      ...machine(['wrench: wrench-40-200', 'wrench: wrench-60-300'], ['rounds: [30 %', 'rounds: [40 %']),
    };
    expect(miniLines(changes).filter((l) => l.startsWith('tool'))).toEqual([
      `tool exchanged: ${SMALL_9}: tool exchanged, torque wrench 40 to 200 → torque wrench 60 to 300`,
    ]);
  });

  test('what a joint may say besides', () => {
    const older = fullSide();
    const edited = (from: string, to: string): readonly string[] =>
      linesOf(compareIssues(older, stored(fullSide(machine([from, to])))));
    expect(edited('run_down: 6 N·m', 'run_down: 8 N·m')).toEqual([
      `torque value: ${SMALL_9}: wrench setting for the cover joint 166 → 168 N·m`,
      `torque value: ${SMALL_9}: run-down torque of the cover joint 6 → 8 N·m`,
    ]);
    expect(edited('angle: 90 deg', 'angle: 0 deg')).toContain(
      `torque value: ${SMALL_9}: adapter of the cover joint 60 mm at 90° on a lever of 400 mm → 60 mm at 0° on a lever of 400 mm`,
    );
    expect(edited('nut: { grade: "8" }', 'nut: { grade: "10" }')).toEqual([
      `joint value: ${SMALL_9}: nut of the cover joint 8 → 10`,
    ]);
    expect(edited('tools: 2', 'tools: 4')).toEqual([
      `pattern value: ${SMALL_9}: tightening order of the cover joint cross, 2 tools → cross, 4 tools`,
    ]);
    expect(edited('mark: punched line', 'mark: painted line')).toEqual([
      `pattern value: ${SMALL_9}: dowels and marks of the cover joint …20 mm; clocking mark (punched line) at 0, 150 mm → …20 mm; clocking mark (painted line) at 0, 150 mm`,
    ]);
    expect(edited('wall: 40 mm', 'wall: 45 mm')).toEqual([
      `joint value: ${SMALL_9}: distance to the wall of the cover joint 40.0 mm → 45.0 mm`,
    ]);
  });

  test('another name is told once, with the texts that print it marked', () => {
    const comparison = compareIssues(BASE, miniSide(machine(['name: cover joint', 'name: end-cover joint'])));
    expect(linesOf(comparison)).toEqual([
      'joint reworded: Joint renamed: cover joint → end-cover joint',
      'document reworded: Purpose reworded: Renews the cover gasket of the end-cover joint.',
    ]);
    expect(comparison.marks['small']).toEqual({ 5: ['text', 'joint'], 9: ['text', 'joint'] });
  });
});

describe('measurement', () => {
  const cases: readonly (readonly [string, string, string, string])[] = [
    [
      'limit',
      '0.05 to 0.30 mm',
      '0.05 to 0.40 mm',
      'limit value: @: limit of cover gap 0.05 to 0.30 mm → 0.05 to 0.40 mm',
    ],
    [
      'places',
      '[12, 3, 6, 9]',
      '[12, 6]',
      'limit value: @: places for cover gap 12 o’clock, 3 o’clock, 6 o’clock, 9 o’clock → 12 o’clock, 6 o’clock',
    ],
    [
      'what',
      'what: Cover gap',
      'what: Gap under the cover',
      'limit reworded: @: measurement reworded: gap under the cover',
    ],
    [
      'answer',
      'if out: Loosen and repeat this stage.',
      'if out: Stop and call the lead.',
      'limit reworded: @: what to do when cover gap is out of its limit reworded: Stop and call the lead.',
    ],
    ['record', 'record: as left', 'record: as found', 'limit value: @: record of cover gap as left → as found'],
    [
      'source',
      'place: page 14',
      'place: page 15',
      'limit value: @: source of the limit of cover gap Pump manual, 3, page 14 → Pump manual, 3, page 15',
    ],
  ];
  test.each(cases)('%s', (_, from, to, line) => {
    const comparison = compareIssues(BASE, miniSide(procedure([from, to])));
    expect(linesOf(comparison)).toEqual([line.replace('@', SMALL_10)]);
    expect(comparison.marks).toEqual({ small: { 10: ['measures'] }, large: { 12: ['measures'] } });
  });

  test('gauge exchanged', () => {
    const changes = {
      'tools.yaml': (t: string) =>
        `${t}taper: { name: taper gauge, kind: measuring tool, range: 0.05 to 1.00 mm, step: 0.01 mm, serial: MW-FG-2, calibration_due: 2027-06-01 }\n`,
      ...procedure(['with: feeler', 'with: taper']),
    };
    expect(miniLines(changes)).toEqual([`tool exchanged: ${SMALL_10}: tool exchanged, feeler gauge → taper gauge`]);
  });

  test('added and removed', () => {
    const measure = (t: string): string => t.replace(/ {8}measure:\n(?: {10}.*\n)+/, '');
    expect(miniLines({ [MW1]: measure })).toEqual([
      `limit removed: ${SMALL_10}: measurement removed: cover gap, 0.05 to 0.30 mm`,
    ]);
    expect(linesOf(compareIssues(miniSide({ [MW1]: measure }), BASE))).toEqual([
      `limit added: ${SMALL_10}: measurement added: cover gap, 0.05 to 0.30 mm`,
    ]);
  });
});

describe('warning and energy', () => {
  const WARNING = / {8}warn:\n(?: {10}.*\n)+/;

  test('raised, reworded, both', () => {
    const text = 'Trapped water scalds the hands. Open the vent first.';
    expect(miniLines(procedure(['level: warning', 'level: danger']))).toEqual([
      `warning value: Step 5: warning raised to danger: ${text}`,
    ]);
    expect(miniLines(procedure(['level: warning', 'level: caution']))).toEqual([
      `warning value: Step 5: warning lowered to caution: ${text}`,
    ]);
    expect(miniLines(procedure(['scalds the hands', 'scalds hands and face']))).toEqual([
      'warning reworded: Step 5: warning reworded: Trapped water scalds hands and face. Open the vent first.',
    ]);
    expect(miniLines(procedure(['level: warning', 'level: danger'], ['scalds the hands', 'scalds']))).toEqual([
      'warning value: Step 5: warning raised to danger and reworded: Trapped water scalds. Open the vent first.',
    ]);
  });

  test('added and removed', () => {
    const without = { [MW1]: (t: string) => t.replace(WARNING, '') };
    const removed = compareIssues(BASE, miniSide(without));
    expect(linesOf(removed)).toEqual([
      'warning removed: Step 5: warning removed: Trapped water scalds the hands. Open the vent first.',
    ]);
    expect(removed.marks).toEqual({ small: { 5: ['warnings'] }, large: { 5: ['warnings'] } });
    expect(linesOf(compareIssues(miniSide(without), BASE))).toEqual([
      'warning added: Step 5: warning added: Trapped water scalds the hands. Open the vent first.',
    ]);
  });

  test('stored energy of the document and of a step', () => {
    expect(
      miniLines(
        procedure(['energy: [water pressure, electric motor]', 'energy: [water pressure, electric motor, spring]']),
      ),
    ).toEqual(['energy added: Stored energy added: spring']);
    const isolate = { 'stages/isolate.yaml': swap(['    release: [water pressure]\n', '']) };
    const comparison = compareIssues(BASE, miniSide(isolate));
    expect(linesOf(comparison)).toEqual(['energy removed: Step 2: release of stored energy removed: water pressure']);
    expect(comparison.marks['small']).toEqual({ 2: ['points'] });
  });

  test('protective equipment', () => {
    expect(miniLines(procedure(['ppe: [gloves, eye protection]', 'ppe: [gloves, face shield]']))).toEqual([
      'warning added: Protective equipment added: face shield',
      'warning removed: Protective equipment removed: eye protection',
    ]);
  });
});
