/** Amounts added up and counted in packs. */

import fc from 'fast-check';
import Qty from 'js-quantities';
import { describe, expect, test } from 'vitest';
import { amountText } from '../../src/lists/index.ts';
import { type Amount, packsFor, quantity, sumAmounts, timesAmount } from '../../src/units/index.ts';

const grams = (n: number): Amount => quantity('mass', n, 'g');
const millilitres = (n: number): Amount => quantity('volume', n, 'ml');

/** Units of each dimension, as an outside reference spells them. */
const SPELT = {
  g: 'g',
  kg: 'kg',
  t: 'tonne',
  lb: 'lb',
  ml: 'ml',
  l: 'l',
  mm: 'mm',
  m: 'm',
  in: 'in',
  ft: 'ft',
} as const;

describe('sums of amounts', () => {
  test.each([
    [[grams(60), grams(60)], '120 g'],
    [[grams(600), grams(600)], '1.2 kg'],
    [[grams(999)], '999 g'],
    [[grams(500), grams(500)], '1 kg'],
    [[millilitres(950), quantity('volume', 0.1, 'l')], '1.05 l'],
    [[quantity('volume', 14, 'l'), millilitres(15)], '14.015 l'],
    [[quantity('length', 600, 'mm'), quantity('length', 900, 'mm')], '1.5 m'],
    [[quantity('mass', 0.5, 'lb'), quantity('mass', 0.25, 'lb')], '0.75 lb'],
    [[grams(5), millilitres(2), grams(5)], '10 g + 2 ml'],
  ])('%#', (amounts, text) => {
    expect(amountText(sumAmounts(amounts), 0).replaceAll('\u00a0', ' ')).toBe(text);
  });

  test('a sum of metric and inch lengths is printed in the unit of the first', () => {
    const [sum] = sumAmounts([quantity('length', 12, 'in'), quantity('length', 25.4, 'mm')]);
    expect(sum).toMatchObject({ unit: 'in', value: 13 });
  });

  test('a sum that cannot be printed whole is rounded up, never down', () => {
    // 1 lb is 453.59237 g (international pound, 1959).
    const [sum] = sumAmounts([grams(1), quantity('mass', 1, 'lb')]);
    expect(sum?.value).toBe(454.593);
    expect(sum?.si).toBeCloseTo(0.45459237, 12);
  });

  test('random sums agree with another library', () => {
    const amount = fc.tuple(fc.constantFrom('g', 'kg', 'lb'), fc.integer({ min: 1, max: 5000 }));
    fc.assert(
      fc.property(fc.array(amount, { minLength: 1, maxLength: 8 }), (all) => {
        const [sum, ...more] = sumAmounts(all.map(([unit, n]) => quantity('mass', n / 10, unit)));
        const other = all.reduce((total, [unit, n]) => total + new Qty(n / 10, SPELT[unit as 'g']).to('kg').scalar, 0);
        expect(more).toEqual([]);
        expect(sum?.si).toBeCloseTo(other, 9);
        expect(new Qty(sum?.value ?? 0, SPELT[(sum?.unit ?? 'g') as 'g']).to('kg').scalar).toBeGreaterThanOrEqual(
          other - 1e-9,
        );
      }),
    );
  });

  test('n times an amount is the sum of n of it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 30 }), (tenths, n) => {
        const one = quantity('volume', tenths / 10, 'ml');
        const [sum] = sumAmounts(Array.from({ length: n }, () => one));
        const times = timesAmount(one, n);
        expect(times.si).toBeCloseTo(sum?.si ?? Number.NaN, 12);
        expect([times.value, times.unit]).toEqual([sum?.value, sum?.unit]);
      }),
    );
  });
});

describe('packs', () => {
  test.each([
    // 12 times 60 g is 720 g, of which two packs of 500 g are the least that hold it.
    [timesAmount(grams(60), 12), grams(500), 2],
    [grams(500), grams(500), 1],
    [grams(501), grams(500), 2],
    // 0.1 is no binary number: ten of them must not ask for a second pack.
    [timesAmount(quantity('mass', 0.1, 'kg'), 10), quantity('mass', 1, 'kg'), 1],
    [millilitres(15), quantity('volume', 1, 'l'), 1],
    [quantity('volume', 42, 'l'), quantity('volume', 20, 'l'), 3],
  ])('%#', (amount, pack, packs) => {
    expect(packsFor(amount, pack)).toBe(packs);
  });

  test('a mass is not counted in packs of a volume', () => {
    expect(packsFor(grams(5), millilitres(50))).toBeUndefined();
  });
});
