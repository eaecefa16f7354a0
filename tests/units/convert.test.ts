/** Conversion by a second route (js-quantities), rounding, printing. */

import fc from 'fast-check';
import Qty from 'js-quantities';
import { describe, expect, test } from 'vitest';
import {
  convert,
  formatDecimal,
  formatQuantity,
  NO_BREAK_SPACE,
  neededDecimals,
  quantity,
  roundToStep,
  UNITS,
  valueIn,
} from '../../src/units/index.ts';

/** Symbols here to names there; units that the other library has not are left out. */
const OTHER: Readonly<Record<string, string>> = {
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  in: 'in',
  ft: 'ft',
  '°': 'deg',
  N·m: 'N*m',
  kN·m: 'kN*m',
  lbf·ft: 'lbf*ft',
  lbf·in: 'lbf*in',
  kgf·m: 'kg*gee*m',
  kgf·cm: 'kg*gee*cm',
  dN·m: 'dN*m',
  N: 'N',
  kN: 'kN',
  lbf: 'lbf',
  kgf: 'kg*gee',
  MPa: 'MPa',
  GPa: 'GPa',
  kPa: 'kPa',
  Pa: 'Pa',
  bar: 'bar',
  psi: 'psi',
  'kgf/cm²': 'kg*gee/cm^2',
  s: 's',
  min: 'min',
  h: 'h',
  d: 'day',
  '°C': 'tempC',
  '°F': 'tempF',
  K: 'tempK',
  kg: 'kg',
  g: 'g',
  lb: 'lb',
  ml: 'ml',
  l: 'l',
};

describe('valueIn agrees with js-quantities', () => {
  const pairs = UNITS.flatMap((a) =>
    UNITS.filter((b) => b !== a && b.dimension === a.dimension).map((b) => [a, b] as const),
  ).filter(([a, b]) => OTHER[a.symbol] !== undefined && OTHER[b.symbol] !== undefined);
  test.each(pairs.map(([a, b]) => [a.symbol, b.symbol, a.dimension] as const))('%s to %s', (from, to, dimension) => {
    const here = valueIn(quantity(dimension, 123.456, from), to);
    const there = new Qty(123.456, OTHER[from] ?? '').to(OTHER[to] ?? '').scalar;
    // That library carries gravity, pound and pi to fewer digits in places.
    expect(Math.abs(here / there - 1)).toBeLessThan(2e-6);
  });
});

test('there and back gives the same number', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...UNITS),
      fc.constantFrom(...UNITS),
      fc.double({ min: -1e5, max: 1e5, noNaN: true }),
      (a, b, v) => {
        fc.pre(a.dimension === b.dimension);
        const there = convert(quantity(a.dimension, v, a.symbol), b.symbol, 6);
        const back = valueIn(there, a.symbol);
        // Each temperature scale has its own zero: the error is that of the largest offset.
        expect(Math.abs(back - v)).toBeLessThan(
          1e-9 * Math.max(1, Math.abs(v), a.dimension === 'temperature' ? 1000 : 0),
        );
      },
    ),
  );
});

describe('roundToStep', () => {
  test.each([
    [85, 2, 'down', 84],
    [85, 2, 'up', 86],
    [85, 5, 'up', 85],
    [0.3, 0.1, 'down', 0.3],
    [62.699, 0.5, 'nearest', 62.5],
    [-3.2, 1, 'down', -4],
  ] as const)('%d by %d %s is %d', (value, step, direction, expected) => {
    expect(roundToStep(value, step, direction)).toBe(expected);
  });
  test('never widens a limit', () => {
    const values = fc.double({ min: 0, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(values, fc.constantFrom(0.01, 0.1, 0.25, 0.5, 1, 2, 5, 10), (v, step) => {
        expect(roundToStep(v, step, 'down')).toBeLessThanOrEqual(v + 1e-8 * Math.max(1, v));
        expect(roundToStep(v, step, 'up')).toBeGreaterThanOrEqual(v - 1e-8 * Math.max(1, v));
      }),
    );
  });
});

describe('printing', () => {
  test('number and unit are joined, the degree of angle stands close', () => {
    expect(formatQuantity(quantity('torque', 85, 'N·m'))).toBe(`85${NO_BREAK_SPACE}N·m`);
    expect(formatQuantity(quantity('angle', 22.5, '°'))).toBe('22.5°');
    expect(formatQuantity({ ...quantity('length', 1.125, 'in'), fraction: '1 1/8' })).toBe(
      `1${NO_BREAK_SPACE}1/8${NO_BREAK_SPACE}in`,
    );
  });
  test('a true minus sign, and no negative zero', () => {
    expect(formatDecimal(-3, 1)).toBe('\u22123.0');
    expect(formatDecimal(-0.04, 1)).toBe('0.0');
    expect(formatQuantity({ ...quantity('length', -0.5, 'in'), fraction: '-1/2' })).toBe(
      `\u22121/2${NO_BREAK_SPACE}in`,
    );
  });
  test('neededDecimals', () => {
    expect([1, 0.1, 0.25, 1 / 3].map((v) => neededDecimals(v))).toEqual([0, 1, 2, 6]);
  });
  test("an unknown unit is a programmer's mistake", () => {
    expect(() => quantity('length', 1, 'furlong')).toThrow(RangeError);
    expect(() => valueIn(quantity('length', 1, 'mm'), 'N')).toThrow(RangeError);
  });
});
