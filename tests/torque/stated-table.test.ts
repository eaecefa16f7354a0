/** Tables typed from a manual: correct ones raise nothing, and one slip names one cell. */

import { describe, expect, test } from 'vitest';
import { CONDITIONS } from '../../src/torque/index.ts';
import { quantity } from '../../src/units/index.ts';
import { cellAt, compare, faulty, METRIC, mistyped, OILED, typed } from './typed-table.ts';

describe('correct tables raise nothing', () => {
  const kinds = [
    ['coarse', ['8.8', '10.9', '12.9']],
    ['coarse', ['A4-70']],
    ['UNC', ['SAE 2', 'SAE 5', 'SAE 8']],
    ['UNF', ['SAE 5', 'SAE 8']],
  ] as const;
  test.each(CONDITIONS.map((c) => [c.id, c] as const))('%s, to two and three figures, in four units', (_, c) => {
    for (const [series, grades] of kinds) {
      for (const unit of ['N·m', 'lbf·ft', 'lbf·in', 'kgf·m']) {
        for (const figures of [2, 3]) {
          const r = compare(typed(series, grades, c.nutFactor.nominal, unit, figures), c);
          expect(r.cells.filter((x) => x.verdict !== 'holds').map((x) => x.problem)).toEqual([]);
          expect(Math.abs(r.medianRatio - 1)).toBeLessThan(0.03);
        }
      }
    }
  });
  test('a friction of the maker that is not ours is kept as the ratio of the table', () => {
    const r = compare(typed('coarse', ['8.8', '10.9'], 0.14));
    expect(faulty(r)).toEqual([]);
    expect(r.medianRatio).toBeCloseTo(0.14 / 0.16, 2);
  });
});

describe('what the hint names', () => {
  const m16 = cellAt('M16', '8.8');
  const m20 = cellAt('M20', '8.8');
  const at = (i: number) => METRIC[i]?.stated.value ?? 0;

  test('M16 8.8 at K 0.15 is 164 N·m, reckoned by hand: 0.15 × 16 × 0.75 × 580 × 156.7 / 1000', () => {
    expect(at(m16)).toBe(164);
  });
  test.each([
    [164 * 12, 'unit slip', /lbf·in written as lbf·ft/],
    [164 / 1.3558, 'unit slip', /lbf·ft written as N·m/],
    [1640, 'digit slip', /decimal point one place too far right/],
    [614, 'digit slip', /1st and 2nd digit exchanged: 164 N·m/],
    [184, 'digit slip', /2nd digit 8 instead of 6: 164 N·m/],
    [144, 'digit slip', /2nd digit 4 instead of 6: 164 N·m/],
  ] as const)('%d N·m for 164: %s', (value, verdict, hint) => {
    const cell = mistyped(new Map([[m16, value]])).cells[m16];
    expect(cell?.verdict).toBe(verdict);
    expect(cell?.hint).toMatch(hint);
    expect(cell?.problem).toMatch(/`M16` of `8.8`: .* stands out; in line with the others is 16[345]\sN·m/);
  });
  test('two cells exchanged: both are named, and no other', () => {
    const r = mistyped(
      new Map([
        [m16, at(m20)],
        [m20, at(m16)],
      ]),
    );
    const both = [m16, m20].toSorted((a, b) => a - b);
    // M18 lies between them in the table, so they are not neighbours; M18 and M20 are.
    expect(faulty(r)).toEqual(both);
    const m18 = cellAt('M18', '8.8');
    const beside = mistyped(
      new Map([
        [m18, at(m20)],
        [m20, at(m18)],
      ]),
    );
    expect(beside.cells[m18]?.hint).toBe('exchanged with `M20` of `8.8`?');
    expect(beside.cells[m20]?.hint).toBe('exchanged with `M18` of `8.8`?');
  });
  test('two grades of one size exchanged', () => {
    const strong = cellAt('M16', '12.9');
    const r = mistyped(
      new Map([
        [m16, at(strong)],
        [strong, at(m16)],
      ]),
    );
    expect(faulty(r)).toEqual([m16, strong]);
    expect(r.cells[m16]?.hint).toBe('exchanged with `M16` of `12.9`?');
  });
  test('a column shifted by a row from some size on', () => {
    const sizes = ['M16', 'M18', 'M20', 'M22', 'M24'].map((d) => cellAt(d, '8.8'));
    const r = mistyped(new Map(sizes.slice(0, -1).map((i, k) => [i, at(sizes[k + 1] ?? 0)])));
    expect(faulty(r)).toEqual(sizes.slice(0, -1));
    expect(r.cells[m16]?.hint).toBe('shifted by a row? it would fit `M18` of `8.8`');
  });
  test('a number copied from the row beside', () => {
    const m18 = cellAt('M18', '8.8');
    const cell = mistyped(new Map([[m18, at(m16)]])).cells[m18];
    expect(cell?.verdict).not.toBe('holds');
    expect(cell?.hint).toMatch(/copied from `M16` of `8.8`|written as/);
  });
});

describe('other faults', () => {
  test('two units that differ', () => {
    const i = cellAt('M16', '8.8');
    const r = compare(METRIC.map((c, k) => (k === i ? { ...c, second: quantity('torque', 211, 'lbf·ft') } : c)));
    expect(faulty(r)).toEqual([i]);
    expect(r.cells[i]?.verdict).toBe('units differ');
    expect(r.cells[i]?.hint).toMatch(/^164\sN·m is the one in line/);
    const right = compare(METRIC.map((c, k) => (k === i ? { ...c, second: quantity('torque', 121, 'lbf·ft') } : c)));
    expect(faulty(right)).toEqual([]);
  });
  test('a loose table: of two cells that do not rise the one further from the ratio is named, and it alone', () => {
    // Columns 6 % high, right and 6 % low make the table loose; M22 15 % high and M24 11 % low lie within that.
    const [m22, m24] = [cellAt('M22', '8.8'), cellAt('M24', '8.8')];
    const factor = (k: number) => (k === m22 ? 1.15 : k === m24 ? 0.89 : [1.06, 1, 0.94][k % 3]) ?? 1;
    const r = compare(
      METRIC.map((c, k) => ({ ...c, stated: quantity('torque', Math.round(c.stated.value * factor(k)), 'N·m') })),
    );
    expect(faulty(r)).toHaveLength(1);
    const odd = r.cells[faulty(r)[0] ?? 0];
    expect(odd?.verdict).toBe('does not rise');
    expect(odd?.thread.designation).toBe('M22');
    expect(odd?.problem).toMatch(/for `M24` is less than .* for `M22`/);
  });
  test('a whole table in another unit lies outside the band, and the hint names the unit', () => {
    const feet = typed('coarse', ['8.8', '10.9'], 0.16, 'lbf·ft');
    const r = compare(feet.map((c) => ({ ...c, stated: quantity('torque', c.stated.value, 'N·m') })));
    expect(new Set(r.cells.map((c) => c.verdict))).toEqual(new Set(['outside the band']));
    expect(r.cells[0]?.hint).toMatch(/whole table is near 0.74 times .*lbf·ft written as N·m/);
  });
  test('a whole table of another condition lies outside the band, and the hint asks for the heading', () => {
    const r = compare(typed('coarse', ['8.8'], 0.3));
    expect(r.cells[0]?.hint).toMatch(/is the heading right/);
  });
  test('a table of three cells has no ratio of its own: the computed torque stands in', () => {
    const few = METRIC.slice(0, 3).map((c, i) =>
      i === 1 ? { ...c, stated: quantity('torque', c.stated.value * 12, 'N·m') } : c,
    );
    const r = compare(few);
    expect(r.standsOutAt).toBeUndefined();
    expect(r.cells.map((c) => c.verdict)).toEqual(['holds', 'unit slip', 'holds']);
  });
  test('an empty table, or a torque that is not above zero, is a mistake of the program', () => {
    const cell = METRIC[0];
    if (cell === undefined) throw new RangeError('no cell');
    expect(() => compare([])).toThrow(RangeError);
    expect(() => compare([{ ...cell, stated: quantity('torque', 0, 'N·m') }])).toThrow(RangeError);
    expect(() => compare([cell], OILED, Number.NaN)).toThrow(RangeError);
  });
});
