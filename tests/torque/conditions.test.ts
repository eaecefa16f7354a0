/** Joint conditions as data. */

import { expect, test } from 'vitest';
import { CONDITIONS, findCondition } from '../../src/torque/index.ts';

test('the conditions are those that content may name', () => {
  expect(CONDITIONS.map((c) => c.id)).toEqual([
    'dry',
    'zinc-dry',
    'oiled',
    'anti-seize',
    'moly',
    'wax',
    'stainless-dry',
    'threadlocked',
  ]);
  for (const c of CONDITIONS) expect(findCondition(c.id)).toBe(c);
  expect(findCondition('butter')).toBeUndefined();
});

test('bands are in order and every condition has a source', () => {
  for (const { nutFactor, friction, source } of CONDITIONS) {
    for (const band of [nutFactor, friction]) {
      expect(band.low).toBeLessThanOrEqual(band.nominal);
      expect(band.nominal).toBeLessThanOrEqual(band.high);
    }
    expect(source).not.toBe('');
  }
});
