/** The worksheet's computing: outside values, and what becomes of bad input. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { computeWorksheet, type Worksheet } from '../../src/site/client/worksheet/compute.ts';
import { FIELD_LIST, type FieldKey, INITIAL, type Inputs, inputsFrom } from '../../src/site/client/worksheet/fields.ts';

function sheet(changes: Partial<Inputs> = {}): Worksheet {
  return computeWorksheet({ ...INITIAL, ...changes });
}

function verdictOf(computed: Worksheet, name: RegExp): string | undefined {
  return computed.checks.find((c) => name.test(c.name))?.verdict;
}

describe('a fresh worksheet', () => {
  const fresh = sheet();

  test('has no fault and computes everything', () => {
    expect(fresh.faults).toEqual([]);
    expect(fresh.layout?.holes).toHaveLength(8);
    expect(fresh.read.tightening?.rounds.map((r) => r.pass)).toEqual(['sequence', 'sequence', 'sequence', 'circular']);
  });

  test('agrees with ISO 898-1:2013 Table 5, proof load of M16 class 8.8: 91 000 N, printed to three figures', () => {
    expect(fresh.read.tightening?.result.basisLoadN).toBeCloseTo(91_000, -3);
  });

  test('agrees with the short form by hand: 0.16 × 16 mm × 0.7 × 580 MPa × 157 mm² = 163.2 N·m (Shigley ch. 8), set down to a mark', () => {
    const byHand = (0.16 * 16 * 0.7 * 580 * 157) / 1000;
    const target = fresh.read.tightening?.target;
    expect(target?.unit).toBe('N·m');
    // The stress area of the table is rounded up from 156.7 mm².
    expect(target?.value).toBeLessThanOrEqual(byHand);
    expect(target?.value).toBeGreaterThan(byHand - 2);
    expect(Number.isInteger(target?.value)).toBe(true);
  });

  test('agrees with the published cross pattern for 8 bolts (ASME PCC-1-2019 Table 3) and its chord, 180 mm × 0.38268', () => {
    expect(fresh.layout?.sequence.order).toEqual([1, 5, 3, 7, 2, 6, 4, 8]);
    expect(fresh.layout?.chordMm).toBeCloseTo(180 * 0.38268, 2);
  });
});

describe('one change of a field', () => {
  test('of the count and the circle changes places, order and chord (law of cosines)', () => {
    const { layout } = sheet({ n: '12', circle: '240' });
    expect(layout?.holes).toHaveLength(12);
    const r = 120;
    expect(layout?.chordMm).toBeCloseTo(Math.sqrt(2 * r * r - 2 * r * r * Math.cos(Math.PI / 6)), 9);
  });

  test('of an inch thread turns the scale to lbf·ft: 5/8-11 UNC SAE 5 holds 19 200 lbf of proof load (SAE J429 Table 3)', () => {
    const { read, faults } = sheet({ thread: '5/8-11 UNC', grade: 'SAE 5' });
    expect(faults).toEqual([]);
    expect(read.tightening?.target.unit).toBe('lbf·ft');
    expect((read.tightening?.result.basisLoadN ?? 0) / 4.4482216152605).toBeCloseTo(19_200, -2);
  });

  test('of the adapter corrects the setting: 100 N·m, lever 400, adapter 100 straight on is 80 N·m (FAA AC 43.13-1B fig. 7-2, T L/(L + E))', () => {
    const { read } = sheet({ torque: '100 N·m', lever: '400 mm', adapter: '100 mm', step: '1 N·m' });
    expect(read.tightening?.setting.value).toBe(80);
    expect(read.tightening?.target.value).toBe(100);
  });

  test('of the run-down torque is added to what is set (FAA AC 43.13-1B 7-40)', () => {
    const { read } = sheet({ torque: '100 N·m', 'run-down': '12 N·m', step: '1 N·m' });
    expect(read.tightening?.setting.value).toBe(112);
  });

  test.each([
    ['lbf·ft as N·m', { torque: '129 N·m' }, /lbf·ft written as N·m/],
    ['a point slipped', { torque: '1750 N·m' }, /decimal point/],
  ])('of a stated torque with %s is named', (_what, changes, likely) => {
    const computed = sheet(changes);
    expect(verdictOf(computed, /Stated/)).toBe('does not hold');
    expect(computed.checks[0]?.text).toMatch(likely);
  });

  test('of the wrench, the wall and the socket is checked', () => {
    expect(verdictOf(sheet(), /Wrench/)).toBe('not checked');
    expect(verdictOf(sheet({ wrench: '40 to 200 N·m' }), /Wrench/)).toBe('holds');
    expect(verdictOf(sheet({ wrench: '20 to 100 N·m' }), /Wrench/)).toBe('does not hold');
    expect(verdictOf(sheet({ wall: '15' }), /wall/)).toBe('does not hold');
    expect(verdictOf(sheet({ wall: '30' }), /wall/)).toBe('holds');
    expect(verdictOf(sheet({ circle: '80 mm' }), /neighbouring/)).toBe('does not hold');
    expect(verdictOf(sheet({ socket: '70 mm' }), /neighbouring/)).toBe('does not hold');
  });

  test.each([
    ['30, 70, 100', [0.3, 0.7, 1]],
    ['30,70,100', [0.3, 0.7, 1]],
    ['33,3 %, 66,7 %, 100 %', [0.333, 0.667, 1]],
    ['50; 100', [0.5, 1]],
  ])('of the rounds to `%s`', (rounds, shares) => {
    const { read } = sheet({ rounds, passes: '0' });
    const found = read.tightening?.rounds.map((r) => r.share) ?? [];
    expect(found).toHaveLength(shares.length);
    for (const [i, share] of shares.entries()) expect(found[i]).toBeCloseTo(share, 9);
  });

  test('of the rounds to torques ends at the torque stated', () => {
    const { read, faults } = sheet({ torque: '90 N·m', rounds: '30 N·m, 60 N·m, 90 N·m', passes: '0' });
    expect(faults).toEqual([]);
    expect(read.tightening?.rounds.map((r) => r.torque.value)).toEqual([30, 60, 90]);
  });

  test('of the nut and the flange is checked', () => {
    expect(verdictOf(sheet({ nut: '8' }), /Nut/)).toBe('holds');
    expect(verdictOf(sheet({ grade: '10.9', nut: '8' }), /Nut/)).toBe('does not hold');
    // EN 1092-1 DN 100 PN 16: 8 holes on 180 mm for M16.
    expect(verdictOf(sheet({ flange: 'DN 100 PN 16' }), /flange/)).toBe('holds');
    expect(verdictOf(sheet({ flange: 'DN 100 PN 16', circle: '190 mm' }), /flange/)).toBe('does not hold');
  });

  test.each([
    ['arc', { pattern: 'arc', n: '5' }, 5],
    ['circles', { pattern: 'circles', n: '12', circle: '300', n2: '12', circle2: '200' }, 24],
    [
      'three circles',
      { pattern: 'circles', n: '12', circle: '400', n2: '12', circle2: '300', n3: '8', circle3: '200' },
      32,
    ],
    ['rectangle', { pattern: 'rectangle', along: '7', across: '5' }, 20],
    ['slot', { pattern: 'slot', n: '14' }, 14],
    ['points', { pattern: 'points', points: '0 40\n40; 0\n-0,5, -40\n' }, 3],
    ['anticlockwise', { numbering: 'anticlockwise', first: '22.5' }, 8],
  ])('of the pattern to %s', (_kind, changes, count) => {
    const computed = sheet(changes);
    expect(computed.faults).toEqual([]);
    expect([...(computed.layout?.sequence.order ?? [])].sort((a, b) => a - b)).toEqual(
      Array.from({ length: count }, (_, i) => i + 1),
    );
  });
});

describe('bad input', () => {
  const CASES: readonly (readonly [FieldKey, string, RegExp])[] = [
    ['thread', '5/8-10', /not a standard/],
    ['thread', 'M19', /no standard diameter/],
    ['thread', '', /./],
    ['grade', '8.9', /not a property class/],
    ['preload', '0', /not more than zero/],
    ['preload', '-75', /not more than zero/],
    ['preload', '120 %', /more than the whole load/],
    ['preload', 'NaN', /not a number/],
    ['torque', '180', /has no unit/],
    ['torque', '-5 N·m', /not more than zero/],
    ['torque', '12 mm', /is a length/],
    ['run-down', 'much', /not a number/],
    ['n', '1', /fewer than 2/],
    ['n', '8.5', /not a whole number/],
    ['n', '-8', /fewer than 2/],
    ['n', '99999', /more than 400/],
    ['n', '', /not a whole number/],
    ['circle', '30 mm', /too small/],
    ['circle', '0 mm', /not more than zero/],
    ['circle', '180 N·m', /is a torque/],
    ['circle', '900 m', /more than 100 m/],
    ['first', 'a quarter', /not a number/],
    ['first', '4000', /more than one turn/],
    ['rounds', '70, 30, 100', /does not rise/],
    ['rounds', '30, 70', /last round/],
    ['rounds', '', /0 rounds/],
    ['rounds', '30, 0, 100', /not more than zero/],
    ['passes', '9', /more than 4/],
    ['wrench', '200 to 40 N·m', /runs backwards/],
    ['wrench', '0 to 40 N·m', /zero or below/],
    ['wrench', 'big', /not a limit/],
    ['step', '0 N·m', /not more than zero/],
    ['adapter', '0 mm', /not more than zero/],
    ['k', '0.2', /not three nut factors/],
    ['k', '0.2 0.1 0.3', /no band/],
    ['k', '1.6 2 2.5', /no band/],
    ['wall', '-4', /not more than zero/],
    ['socket', 'wide', /not a number/],
    ['nut', 'butterfly', /./],
    ['flange', 'DN 101 PN 16', /./],
    ['method', 'quadrants', /quadrants/],
  ];

  test.each(CASES)('in %s, `%s`, is named there', (key, text, problem) => {
    const more: Partial<Inputs> = key === 'adapter' ? { lever: '400 mm' } : {};
    const { faults } = sheet({ [key]: text, ...more });
    const own = faults.find((f) => f.field === key);
    expect(own?.problem).toMatch(problem);
    expect(own?.hint).not.toBe('');
  });

  test('a class outside the sizes of its standard is named: 9.8 ends at M16 (ISO 898-1 Table 1)', () => {
    expect(sheet({ grade: '9.8' }).faults).toEqual([]);
    expect(sheet({ grade: '9.8', thread: 'M20' }).faults[0]).toMatchObject({ field: 'grade' });
  });

  test('an adapter without a lever, or past the grip, is named', () => {
    expect(sheet({ adapter: '100 mm' }).faults[0]).toMatchObject({ field: 'lever' });
    expect(sheet({ adapter: '500 mm', lever: '400 mm', angle: '180' }).faults[0]).toMatchObject({ field: 'adapter' });
  });

  test('a check whose value has a fault says so, and not that nothing is typed', () => {
    const nut = sheet({ nut: 'butterfly' }).checks.find((c) => /Nut/.test(c.name));
    expect(nut).toMatchObject({ verdict: 'not checked', text: expect.stringContaining('cannot be used') });
    const none = sheet().checks.find((c) => /Nut/.test(c.name));
    expect(none).toMatchObject({ verdict: 'not checked', text: 'no nut is given' });
  });

  test('tools that the count does not allow are named, and the usual order is shown', () => {
    const computed = sheet({ n: '9', tools: '2' });
    expect(computed.faults[0]).toMatchObject({ field: 'tools' });
    expect(computed.layout?.sequence.order).toHaveLength(9);
  });

  test('leaves everything that does not rest on it', () => {
    const noThread = sheet({ thread: 'M17' });
    expect(noThread.layout?.holes).toHaveLength(8);
    expect(noThread.read.tightening).toBeUndefined();
    const noCircle = sheet({ circle: 'wide' });
    expect(noCircle.layout).toBeUndefined();
    expect(noCircle.read.tightening?.target.value).toBeGreaterThan(0);
    const noRange = sheet({ wrench: 'big' });
    expect(noRange.layout).toBeDefined();
    expect(noRange.fastener.drive?.size.value).toBe(24);
  });

  test('never throws and never gives a number that is none, whatever is typed', () => {
    const text = fc.oneof(
      fc.string({ maxLength: 20 }),
      fc.constantFrom('', '0', '-1', 'NaN', 'Infinity', '1e308', '9'.repeat(60), '0.0000001', '1/0', '٣'),
      fc
        .tuple(fc.double({ noNaN: true }), fc.constantFrom(' mm', ' N·m', ' %', '°', ' in', ' lbf·ft', ''))
        .map(([n, u]) => n + u),
    );
    const inputs = fc.dictionary(fc.constantFrom(...FIELD_LIST.map((f) => f.key)), text, { maxKeys: 6 });
    fc.assert(
      fc.property(inputs, (changes) => {
        const typed = inputsFrom((key) => {
          const field = FIELD_LIST.find((f) => f.key === key);
          return field?.options === undefined ? (changes[key] ?? INITIAL[key]) : INITIAL[key];
        });
        const { read, layout } = computeWorksheet(typed);
        const numbers = [
          ...(read.tightening?.rounds.flatMap((r) => [r.torque.value, r.setting.value]) ?? [1]),
          ...(layout?.holes.map((h) => h.xMm + h.yMm) ?? []),
        ];
        expect(numbers.every(Number.isFinite)).toBe(true);
        expect(read.tightening?.target.value ?? 1).toBeGreaterThan(0);
      }),
      { numRuns: 600 },
    );
  });
});
