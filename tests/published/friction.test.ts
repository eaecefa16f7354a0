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
  ['stainless-dry', 'K', 'stainless on stainless'],
  ['wax', 'mu', 'class B'],
  ['stainless-dry', 'mu', 'class D'],
];

describe('published ranges', () => {
  const table = readData('friction-factors');
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
