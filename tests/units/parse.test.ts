/** Quantities as authors write them, and the words that answer a slip. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Dimension,
  formatQuantity,
  NO_BREAK_SPACE,
  parseQuantity,
  quantity,
  UNITS,
} from '../../src/units/index.ts';

describe('parseQuantity reads', () => {
  test.each<[string, Dimension, number, string]>([
    ['12.5 mm', 'length', 12.5, 'mm'],
    ['12.5mm', 'length', 12.5, 'mm'],
    ['0,05 mm', 'length', 0.05, 'mm'],
    ['.5 mm', 'length', 0.5, 'mm'],
    ['15/16 in', 'length', 0.9375, 'in'],
    ['1 1/8 in', 'length', 1.125, 'in'],
    ['1-1/8 in', 'length', 1.125, 'in'],
    ['-1/2 in', 'length', -0.5, 'in'],
    ['3"', 'length', 3, 'in'],
    ['85 N·m', 'torque', 85, 'N·m'],
    ['85 N.m', 'torque', 85, 'N·m'],
    ['85 Nm', 'torque', 85, 'N·m'],
    ['62.7 lbf ft', 'torque', 62.7, 'lbf·ft'],
    ['750 in-lbf', 'torque', 750, 'lbf·in'],
    ['63 ft-lb', 'torque', 63, 'lbf·ft'],
    ['63 lb-ft', 'torque', 63, 'lbf·ft'],
    ['63 lbf·ft', 'torque', 63, 'lbf·ft'],
    ['40 in.lb', 'torque', 40, 'lbf·in'],
    ['8.7 kgf-m', 'torque', 8.7, 'kgf·m'],
    ['8.7 kp m', 'torque', 8.7, 'kgf·m'],
    ['120 kgf.cm', 'torque', 120, 'kgf·cm'],
    ['20 in-ozf', 'torque', 20, 'ozf·in'],
    ['22.5°', 'angle', 22.5, '°'],
    ['22.5 deg', 'angle', 22.5, '°'],
    ['−3 degC', 'temperature', -3, '°C'],
    ['30 %', 'ratio', 30, '%'],
    ['640 N/mm2', 'stress', 640, 'MPa'],
    ['0,125 in', 'length', 0.125, 'in'],
  ])('%s', (text, dimension, value, unit) => {
    const parsed = parseQuantity(text, dimension);
    expect(parsed).toMatchObject({ ok: true, value: { value, unit, dimension } });
  });

  test('keeps the decimals and the fraction as written', () => {
    expect(parseQuantity('0.10 mm', 'length')).toMatchObject({ ok: true, value: { decimals: 2 } });
    expect(parseQuantity('1-1/8 in', 'length')).toMatchObject({ ok: true, value: { fraction: '1 1/8', decimals: 0 } });
  });

  test('takes the first dimension that has the unit', () => {
    expect(parseQuantity('3 mm', ['angle', 'length'])).toMatchObject({ ok: true, value: { dimension: 'length' } });
  });
});

describe('parseQuantity refuses and says what would do', () => {
  test.each<[string, Dimension, RegExp, RegExp]>([
    ['85', 'torque', /has no unit/, /`85 N·m`/],
    ['85 Nmm', 'torque', /`Nmm` is not a unit/, /accepted units: `N·m`/],
    ['85 nm', 'torque', /`nm` is not a unit/, /did you mean `N·m`/],
    ['12 MM', 'length', /`MM` is not a unit/, /did you mean `mm`/],
    ['12 kN', 'torque', /is a force, and a torque is wanted/, /accepted units/],
    ['1/0 in', 'length', /is not a number/, /write it like/],
    ['1.2.3 mm', 'length', /is not a number/, /write it like/],
    ['5. mm', 'length', /is not a number/, /write it like/],
    ['1 000 mm', 'length', /is not a number/, /write it like/],
    ['1,250 lbf.in', 'torque', /two ways/, /`1250` or `1\.250`/],
    ['1e3 mm', 'length', /`e3 mm` is not a unit/, /accepted units/],
    ['NaN mm', 'length', /is not a number/, /write it like/],
    ['Infinity mm', 'length', /is not a number/, /write it like/],
    ['', 'length', /is not a number/, /write it like/],
    ['mm', 'length', /is not a number/, /write it like/],
    ['about 5 mm', 'length', /is not a number/, /write it like/],
  ])('%s', (text, dimension, problem, hint) => {
    const parsed = parseQuantity(text, dimension);
    if (parsed.ok) throw new RangeError(`${text} was read as ${formatQuantity(parsed.value)}`);
    expect(parsed.problem).toMatch(problem);
    expect(parsed.hint).toMatch(hint);
    expect(parsed.problem).not.toMatch(/^[A-Z]|\.$/);
  });

  test('never throws, whatever is typed', () => {
    fc.assert(fc.property(fc.string(), (text) => typeof parseQuantity(text, 'length').ok === 'boolean'));
    const digits = fc.string({ unit: fc.constantFrom(...'0123456789.,/-± mmin'.split('')) });
    fc.assert(fc.property(digits, (text) => typeof parseQuantity(text, 'length').ok === 'boolean'));
  });
});

test('what is printed is read back: every unit, any number with up to four decimals', () => {
  const numbers = fc.tuple(fc.integer({ min: -999_999, max: 999_999 }), fc.integer({ min: 0, max: 4 }));
  fc.assert(
    fc.property(fc.constantFrom(...UNITS), numbers, (unit, [digits, decimals]) => {
      const q = quantity(unit.dimension, digits / 10 ** decimals, unit.symbol, decimals);
      const back = parseQuantity(formatQuantity(q).replaceAll(NO_BREAK_SPACE, ' '), unit.dimension);
      expect(back.ok).toBe(true);
      if (back.ok) {
        expect(back.value.si).toBeCloseTo(q.si, 9);
        expect([back.value.unit, back.value.decimals]).toEqual([q.unit, decimals]);
      }
    }),
  );
});
