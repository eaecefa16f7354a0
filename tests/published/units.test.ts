/** Unit factors against NIST SP 811 and the exact definitions. */

import { expect, test } from 'vitest';
import { quantity, UNITS, valueIn } from '../../src/units/index.ts';
import { readData } from './read-data.ts';

/** Names of the table to symbols here. */
const SYMBOL: Readonly<Record<string, string>> = {
  'lbf.in': 'lbf·in',
  'kgf.m': 'kgf·m',
  'kgf.cm': 'kgf·cm',
  'dN.m': 'dN·m',
  'kN.m': 'kN·m',
  'kgf/cm2': 'kgf/cm²',
  deg: '°',
};

for (const row of readData('unit-factors')) {
  const unit = UNITS.find((u) => u.symbol === (SYMBOL[row.text('from')] ?? row.text('from')));
  if (unit === undefined) throw new RangeError(`no unit ${row.text('from')}`);
  if (row.text('to') === 'ozf.in') {
    test('1 lbf·in in ozf·in (exact: 16 ounces a pound)', () => {
      expect(valueIn(quantity('torque', 1, 'lbf·in'), 'ozf·in')).toBeCloseTo(row.number('factor'), 12);
    });
    continue;
  }
  test(`1 ${unit.symbol} in SI (${row.text('source')})`, () => {
    expect(Math.abs(unit.factor / row.number('factor') - 1)).toBeLessThan(2e-13);
    if (row.has('factor_sp811_7_digit')) {
      expect(Number(unit.factor.toPrecision(7))).toBe(row.number('factor_sp811_7_digit'));
    }
  });
}

/** NIST SP 811 App. B.8 temperature rows (memory); exact by definition. */
test.each([
  ['°F', 212, '°C', 100],
  ['°C', 20, 'K', 293.15],
  ['°F', 32, '°C', 0],
  ['°C', -40, '°F', -40],
])('%s: %d is %s %d', (from, v, to, expected) => {
  expect(valueIn(quantity('temperature', v, from), to)).toBeCloseTo(expected, 9);
});

/** A difference of temperature: 18 °F are 10 K (NIST SP 811 App. B.8, memory; exact by definition). */
test('a difference of 18 °F is one of 10 K', () => {
  const K = (f: number) => valueIn(quantity('temperature', f, '°F'), 'K');
  expect(K(50) - K(32)).toBeCloseTo(10, 9);
});

/** NIST SP 811 App. B.8, seven-digit factors of torque (memory), besides those of the table. */
test.each([
  ['lbf·ft', 1.355818],
  ['lbf·in', 0.1129848],
  ['kgf·m', 9.80665],
  ['kgf·cm', 0.0980665],
  ['ozf·in', 0.007061552],
])('1 %s is %d N·m', (unit, factor) => {
  expect(Number(valueIn(quantity('torque', 1, unit), 'N·m').toPrecision(7))).toBe(factor);
});

/** Ratios that betray a slip, derived from the exact definitions. */
test.each([
  ['lbf·ft', 'lbf·in', 12],
  ['N·m', 'lbf·in', 8.8507],
  ['lbf·ft', 'N·m', 1.3558],
  ['kgf·m', 'N·m', 9.80665],
  ['N·m', 'kgf·cm', 10.1972],
])('1 %s is %s × %d', (from, to, ratio) => {
  expect(valueIn(quantity('torque', 1, from), to)).toBeCloseTo(ratio, 4);
});
