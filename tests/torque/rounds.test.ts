/** Rounds: rising, on the wrench's scale, never past the target. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inOtherUnit, planRounds } from '../../src/torque/index.ts';
import { quantity } from '../../src/units/index.ts';

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
  ])('throws on shares %o, passes %d, step %d', (shares, passes, step) => {
    expect(() => planRounds(quantity('torque', 85, 'N·m'), shares, passes, step)).toThrow(RangeError);
  });
});

test('inOtherUnit rounds for the brackets', () => {
  expect(inOtherUnit(quantity('torque', 85, 'N·m'), 'lbf·ft')).toMatchObject({ value: 63, decimals: 0 });
  expect(inOtherUnit(quantity('torque', 5, 'N·m'), 'lbf·ft')).toMatchObject({ value: 3.7, decimals: 1 });
});
