/** Rounds: rising, on the wrench's scale, never past the target. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inOtherUnit, planRounds, roundsFault, wrenchSetting } from '../../src/torque/index.ts';
import { quantity, type Torque } from '../../src/units/index.ts';

describe('planRounds', () => {
  test('rounds to the graduation and keeps the unit', () => {
    const rounds = planRounds(quantity('torque', 85, 'lbf·ft'), [0.3, 0.7, 1], 2, 2.5);
    expect(rounds.map((r) => r.torque.value)).toEqual([25, 60, 85, 85, 85]);
    expect(rounds.map((r) => r.pass)).toEqual(['sequence', 'sequence', 'sequence', 'circular', 'circular']);
    expect(new Set(rounds.map((r) => r.torque.unit))).toEqual(new Set(['lbf·ft']));
  });
  test('a target between two graduations is rounded down', () => {
    expect(planRounds(quantity('torque', 85, 'N·m'), [1], 0, 2)[0]?.torque.value).toBe(84);
  });
  test('a target below one graduation stays as it is', () => {
    expect(planRounds(quantity('torque', 1.2, 'N·m'), [0.5, 1], 0, 2).map((r) => r.torque.value)).toEqual([1.2, 1.2]);
  });
  test('never falls, never exceeds the target, and always stands on the scale', () => {
    const target = fc.double({ min: 1, max: 2000, noNaN: true });
    const shares = fc.uniqueArray(fc.double({ min: 0.05, max: 0.99, noNaN: true }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(target, shares, fc.constantFrom(0.1, 0.25, 0.5, 1, 2, 5), (T, s, step) => {
        fc.pre(T >= step);
        const rounds = planRounds(quantity('torque', T, 'N·m'), [...s].sort((a, b) => a - b).concat(1), 1, step);
        for (const [i, r] of rounds.entries()) {
          expect(r.torque.value).toBeLessThanOrEqual(T + 1e-6);
          expect(r.torque.value).toBeGreaterThan(0);
          expect(r.torque.value).toBeGreaterThanOrEqual(rounds[i - 1]?.torque.value ?? 0);
          const steps = r.torque.value / step;
          expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
        }
      }),
    );
  });
  test.each([
    [[], 0, 1],
    [[0], 0, 1],
    [[1.2], 0, 1],
    [[1], -1, 1],
    [[1], 0.5, 1],
    [[1], 0, 0],
    [[Number.NaN], 0, 1],
    [[0.5], 0, 1],
    [[0.7, 0.3, 1], 0, 1],
    [[0.5, 0.5, 1], 0, 1],
  ])('throws on shares %o, passes %d, step %d', (shares, passes, step) => {
    expect(() => planRounds(quantity('torque', 85, 'N·m'), shares, passes, step)).toThrow(RangeError);
  });
});

describe('rounds as values', () => {
  const Nm = (value: number): Torque => quantity('torque', value, 'N·m');
  test('a value becomes the share that it is, and the last is the whole', () => {
    const rounds = planRounds(Nm(90), [Nm(30), Nm(60), Nm(90)], 1, 1);
    expect(rounds.map((r) => r.torque.value)).toEqual([30, 60, 90, 90]);
    expect(rounds.map((r) => r.share)).toEqual([30 / 90, 60 / 90, 1, 1]);
  });
  test('values and shares may stand together, and values in another unit', () => {
    const target = quantity('torque', 66, 'lbf·ft');
    const rounds = planRounds(target, [0.3, Nm(60), Nm(90)], 0, 2);
    // 60 N·m is 44.25 lbf·ft; 90 N·m is 66.38, which is the target to the rounding of both.
    expect(rounds.map((r) => r.torque.value)).toEqual([20, 44, 66]);
    expect(rounds.at(-1)?.share).toBe(1);
  });
  test.each<[string, readonly (number | Torque)[], RegExp]>([
    ['none', [], /no round/],
    ['a share of nothing', [0, 1], /`0 %` is not above zero/],
    ['a share over the whole', [0.5, 1.1], /`110 %` is more than the whole/],
    ['values that fall', [Nm(60), Nm(30), Nm(90)], /`30\sN·m` does not rise over `60\sN·m`/],
    ['the same value twice', [Nm(60), Nm(60), Nm(90)], /does not rise/],
    [
      'an end short of the target',
      [Nm(30), Nm(80)],
      /last round is `80\sN·m`, and the torque of the joint is `90\sN·m`/,
    ],
    ['an end past the target', [Nm(30), Nm(91)], /last round is `91\sN·m`/],
    ['an end that is a unit off', [Nm(30), quantity('torque', 90, 'lbf·ft')], /last round is `90\slbf·ft`/],
    ['a share and a value out of order', [0.5, Nm(40), 1], /`40\sN·m` does not rise over `50 %`/],
    ['not a number', [Number.NaN, 1], /is not above zero/],
  ])('%s is named for the author, and refused here', (_, rounds, fault) => {
    expect(roundsFault(Nm(90), rounds)).toMatch(fault);
    expect(() => planRounds(Nm(90), rounds, 0, 1)).toThrow(RangeError);
  });
});

describe('what the wrench is set to in each round', () => {
  const adapter = { lengthMm: 60, angleDeg: 0, leverMm: 480 };
  test('without a correction it is the torque', () => {
    for (const r of planRounds(quantity('torque', 85, 'N·m'), [0.3, 0.7, 1], 1, 2)) expect(r.setting).toBe(r.torque);
  });
  test('the run-down torque is added whole to every round: 12 + 30, 12 + 70, 12 + 100', () => {
    const rounds = planRounds(quantity('torque', 100, 'N·m'), [0.3, 0.7, 1], 1, 1, (torqueNm) =>
      wrenchSetting({ torqueNm, runDownNm: 12 }),
    );
    expect(rounds.map((r) => r.setting.value)).toEqual([42, 82, 112, 112]);
    expect(rounds.map((r) => r.torque.value)).toEqual([30, 70, 100, 100]);
  });
  test('an adapter straight on lowers it in the unit of the scale: 85 lbf·ft × 480/540 is 75.6, set to 75', () => {
    const rounds = planRounds(quantity('torque', 85, 'lbf·ft'), [0.5, 1], 0, 2.5, (torqueNm) =>
      wrenchSetting({ torqueNm, adapter }),
    );
    expect(rounds.map((r) => [r.setting.value, r.setting.unit])).toEqual([
      [37.5, 'lbf·ft'],
      [75, 'lbf·ft'],
    ]);
    expect(rounds.at(-1)?.torque.value).toBe(85);
  });
  test('stands on the scale, rises, and never goes past the setting for the target', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 2000, noNaN: true }),
        fc.uniqueArray(fc.double({ min: 0.05, max: 0.99, noNaN: true }), { minLength: 1, maxLength: 4 }),
        fc.constantFrom(0.1, 0.25, 0.5, 1, 2, 5),
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 180, noNaN: true }),
        (T, shares, step, runDownNm, angleDeg) => {
          const setting = (torqueNm: number) =>
            wrenchSetting({ torqueNm, runDownNm, adapter: { ...adapter, angleDeg } });
          const most = setting(T);
          fc.pre(most >= step);
          const sorted = [...shares].sort((a, b) => a - b).concat(1);
          const rounds = planRounds(quantity('torque', T, 'N·m'), sorted, 1, step, setting);
          for (const [i, r] of rounds.entries()) {
            expect(r.setting.value).toBeLessThanOrEqual(most + 1e-6);
            expect(r.torque.value).toBeLessThanOrEqual(T + 1e-6);
            expect(r.setting.value).toBeGreaterThanOrEqual(rounds[i - 1]?.setting.value ?? step - 1e-9);
            const steps = r.setting.value / step;
            expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
          }
          expect(most - (rounds.at(-1)?.setting.value ?? 0)).toBeLessThan(step + 0.001);
        },
      ),
    );
  });
});

test('inOtherUnit rounds for the brackets', () => {
  expect(inOtherUnit(quantity('torque', 85, 'N·m'), 'lbf·ft')).toMatchObject({ value: 63, decimals: 0 });
  expect(inOtherUnit(quantity('torque', 5, 'N·m'), 'lbf·ft')).toMatchObject({ value: 3.7, decimals: 1 });
});
