/** Default nut factors and friction against the published ranges of their condition. */

import { describe, expect, test } from 'vitest';
import { CONDITIONS, findCondition } from '../../src/torque/index.ts';
import { readData } from './read-data.ts';

/** Condition of the project to rows of the table that speak of it. */
const ROWS: readonly (readonly [id: string, quantity: 'K' | 'mu', words: string])[] = [
  ['dry', 'K', 'plain steel'],
  ['dry', 'K', 'bare steel'],
  ['zinc-dry', 'K', 'zinc plate'],
  ['oiled', 'K', 'machine oil'],
  ['oiled', 'K', 'lubricated'],
  ['oiled', 'mu', 'class B'],
  ['anti-seize', 'K', 'copper or nickel anti-seize'],
  ['anti-seize', 'K', 'nickel or moly anti-seize'],
  ['anti-seize', 'K', 'proprietary anti-seize'],
  ['anti-seize', 'K', 'low-friction flange bolt coating'],
  ['oiled', 'K', 'clean threads; little lubricant'],
  ['dry', 'K', 'clean threads; little lubricant'],
  ['stainless-dry', 'K', 'stainless on stainless'],
  ['wax', 'mu', 'class B'],
  ['stainless-dry', 'mu', 'class D'],
];

const table = readData('friction-factors');

describe('published ranges', () => {
  test.each(ROWS)('%s: %s of "%s" overlaps the band', (id, quantity, words) => {
    const row = table.find((r) => r.text('quantity') === quantity && r.text('condition').startsWith(words));
    const condition = findCondition(id);
    if (row === undefined || condition === undefined) throw new RangeError(`no row or condition for ${id}`);
    const band = quantity === 'K' ? condition.nutFactor : condition.friction;
    const low = row.has('low') ? row.number('low') : row.number('nominal');
    const high = row.has('high') ? row.number('high') : row.number('nominal');
    expect(band.low).toBeLessThanOrEqual(high);
    expect(band.high).toBeGreaterThanOrEqual(low);
  });
});

/** NASA table of preload uncertainty (as in NSTS 08307 3.4): ±25 % lubricated, ±35 % unlubricated. */
test.each(CONDITIONS.map((c) => [c.id, c] as const))('%s: scatter as the NASA table says', (_, c) => {
  expect(c.scatter).toBe(c.lubricated ? 0.25 : 0.35);
});

/** Shigley's 0.30 for black, non-plated bolts lies above every default of plain steel: no condition claims to cover it. */
test('the black finish of Shigley Table 8-15 is outside the dry band, so its torque would be reported', () => {
  const row = table.find((r) => r.text('condition').startsWith('non-plated'));
  expect(row?.number('nominal')).toBeGreaterThan(findCondition('dry')?.nutFactor.high ?? Number.NaN);
});

/** TM 5-3895-367-14&P H-2: engine oil takes 10 % off the dry torque, so the K of oil is about 0.9 of the dry one. */
test('the K of oil lies under the dry one, and nine tenths of the dry one in its band', () => {
  const factor = table.find((r) => r.text('quantity') === 'torque_factor')?.number('nominal') ?? Number.NaN;
  const [dry, oiled] = [findCondition('dry')?.nutFactor, findCondition('oiled')?.nutFactor];
  expect(oiled?.nominal).toBeLessThan(dry?.nominal ?? Number.NaN);
  expect(factor * (dry?.nominal ?? 0)).toBeGreaterThanOrEqual(oiled?.low ?? Number.NaN);
  expect(factor * (dry?.nominal ?? 0)).toBeLessThanOrEqual(oiled?.high ?? Number.NaN);
});
