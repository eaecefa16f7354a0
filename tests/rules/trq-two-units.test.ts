/** Values in two units: pairs as manuals print them, and texts that hold none. */

import { describe, expect, test } from 'vitest';
import { isNominal, pairAgrees, unitPairs } from '../../src/rules/trq/unit-pairs.ts';
import { readData } from '../published/read-data.ts';
import { PROCEDURE, PUMP, put, told } from './told.ts';

const differing = (text: string): readonly string[] =>
  unitPairs(text)
    .filter((p) => !pairAgrees(p) && !isNominal(p, text))
    .map((p) => p.text);

describe('pairs that belong together', () => {
  test.each([
    '135 N·m (100 lbf·ft)',
    'Tighten to 135 Nm (100 ft-lb), then go round.',
    '2000 lbf.ft (2712 N.m)',
    '44 to 48 N·m (32 to 35 lbf·ft)',
    '0.10 mm [0.004 in]',
    '1 1/8 in (28.6 mm)',
    '6.0 bar / 87 psi',
    '10 bar = 1 MPa',
    '110 °C (230 °F)',
    '110 degC (230 degF)',
    // A difference of temperature: 80 K are 144 °F of difference.
    '80 °C (144 °F) above the shaft',
    '18 kg (about 40 lb)',
    '1.5 kN (337 lbf)',
    '3,5 bar (51 psi)',
  ])('%s', (text) => {
    expect(unitPairs(text).length).toBeGreaterThan(0);
    expect(differing(text)).toEqual([]);
  });
});

describe('pairs that do not', () => {
  test.each([
    // TM 10-4320-346-12&P, Table H-1, 1-1/4-12 grade 8; TM 9-6115-604-34, Table 1-3, 5/16: both read.
    ['1820 lbf·ft (2712 N·m)', '1820 lbf·ft (2712 N·m)'],
    ['5.0 lbf·in (0.46 N·m)', '5.0 lbf·in (0.46 N·m)'],
    ['Set to 135 N·m (183 lbf·ft).', '135 N·m (183 lbf·ft)'],
    ['135 N·m (1000 lbf·in) at most', '135 N·m (1000 lbf·in)'],
    ['0.10 mm (0.040 in)', '0.10 mm (0.040 in)'],
    ['44 to 48 N·m (32 to 53 lbf·ft)', '44 to 48 N·m (32 to 53 lbf·ft)'],
    ['6 bar / 78 psi', '6 bar / 78 psi'],
    ['110 °C (203 °F)', '110 °C (203 °F)'],
    ['28 mm (1 1/4 in)', '28 mm (1 1/4 in)'],
  ])('%s', (text, found) => {
    expect(differing(text)).toEqual([found]);
  });
});

describe('what is no pair, or names a size', () => {
  test.each([
    'hex bit 10 mm (1/2 in drive)',
    'socket 24 mm, 1/2 in drive',
    '4 in (100 mm) pipe',
    '1/2 in (12.5 mm) square drive',
    '0.05 mm (0.10 mm)',
    '50 kg (490 N)',
    '160 N·m (see page 12)',
    'M16 (5/8 in)',
    '30 min (2 h at 10 °C)',
    'page 12 (3 in all)',
    '60 N·m/100 %',
    '1,250 N·m (922 lbf·ft)',
  ])('%s', (text) => {
    expect(differing(text)).toEqual([]);
  });
});

test('a nominal size is let off a tenth, not more', () => {
  expect(differing('4 in (50 mm) pipe')).toEqual(['4 in (50 mm)']);
});

test('the printed columns of dry torque tables of military manuals agree', () => {
  const rows = readData('torque-military').filter((r) => r.has('torque_Nm_printed'));
  expect(rows.length).toBeGreaterThan(10);
  const wrong = rows
    .map((r) => `${r.text('torque_lbf_ft')} lbf·ft (${r.text('torque_Nm_printed')} N·m)`)
    .filter((text) => differing(text).length > 0);
  expect(wrong).toEqual([]);
});

test('every factor of NIST SP 811 is read, and a tenth beside it is not let through', () => {
  let read = 0;
  for (const row of readData('unit-factors')) {
    const pair = (factor: number) =>
      `100.000 ${row.text('from')} (${Number((100 * factor).toPrecision(9))} ${row.text('to')})`;
    const factor = Number(row.text('factor'));
    if (unitPairs(pair(factor)).length === 0) continue;
    read += 1;
    expect(differing(pair(factor))).toEqual([]);
    expect(differing(pair(factor * 1.1))).toHaveLength(1);
  }
  expect(read).toBeGreaterThanOrEqual(8);
});

describe('places', () => {
  const about = (yaml: string) => put(PUMP, 'bench: pumps\n', `bench: pumps\nabout: ${yaml}\n`);
  test.each([
    ['plain', 'Runs at 6.0 bar (78 psi) with its valve shut.'],
    ['quoted', '"Runs at 6.0 bar (78 psi), valve shut: never longer."'],
    ['single quotes', "'Runs at 6.0 bar (78 psi), valve shut: never longer.'"],
  ])('%s text: the pair itself', (_, yaml) => {
    expect(told('TRQ030', about(yaml)).map((t) => t.at)).toEqual(['6.0 bar (78 psi)']);
  });

  test('folded text: the whole text', () => {
    const [found] = told('TRQ030', about('>-\n  Runs at 6.0 bar\n  (78 psi) with its valve shut.'));
    expect(found?.at).toContain('Runs at 6.0 bar');
    expect(found?.message).toBe('`6.0 bar (78 psi)` gives two values: 6.0 bar is 87 psi');
    expect(found?.hint).toContain('78 psi would be 5.4 bar');
  });

  test.each([
    ['a step', put(PROCEDURE, 'do: Loosen the <joint:cover>.', 'do: Loosen the <joint:cover> below 6.0 bar (78 psi).')],
    ['a shared stage', put('stages/isolate.yaml', 'title: Isolate\n', 'title: Isolate from 6.0 bar (78 psi)\n')],
    ['a tool', put('tools.yaml', 'name: pressure gauge', 'name: pressure gauge 6.0 bar (78 psi)')],
    ['a consumable', put('consumables.yaml', 'name: lint-free wipe', 'name: 6.0 bar (78 psi) wipe')],
  ])('%s: once', (_, edit) => {
    expect(told('TRQ030', edit).map((t) => t.at)).toEqual(['6.0 bar (78 psi)']);
  });
});
