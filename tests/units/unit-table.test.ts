/** The unit table as data: no spelling means two units of one dimension. */

import { expect, test } from 'vitest';
import { findUnit, UNITS, unitSymbols } from '../../src/units/index.ts';

test('a spelling names one unit in its dimension', () => {
  const seen = new Set<string>();
  for (const u of UNITS) {
    for (const spelling of [u.symbol, ...u.spellings]) {
      expect(seen, spelling).not.toContain(`${u.dimension} ${spelling}`);
      seen.add(`${u.dimension} ${spelling}`);
      expect(findUnit(spelling, u.dimension)).toBe(u);
    }
  }
});

test('every dimension has one unit whose factor is 1', () => {
  for (const dimension of new Set(UNITS.map((u) => u.dimension))) {
    expect(unitSymbols(dimension).length).toBeGreaterThan(0);
    if (['angle', 'volume', 'ratio'].includes(dimension)) continue;
    expect(UNITS.filter((u) => u.dimension === dimension && u.factor === 1 && u.offset === 0).length, dimension).toBe(
      1,
    );
  }
});
