/** Dowels, jacking screws and clocking marks beside the bolt holes. */

import { describe, expect, test } from 'vitest';
import { checkFeatures, type Feature, type Pattern, placeOn } from '../../src/geometry/index.ts';

const EIGHT: Pattern = { kind: 'circle', diameterMm: 240, count: 8, firstDeg: 22.5 };
const dowel = (deg: number, diameterMm?: number, circleMm = 240): Feature => ({
  kind: 'dowel',
  ...placeOn(circleMm, deg),
  ...(diameterMm === undefined ? {} : { diameterMm }),
});

test("12 o'clock is up, 90° is to the right", () => {
  expect(placeOn(100, 0)).toEqual({ xMm: 0, yMm: 50 });
  expect(placeOn(100, 90).xMm).toBeCloseTo(50, 12);
  expect(placeOn(100, 90).yMm).toBeCloseTo(0, 12);
});

describe('checkFeatures', () => {
  test('dowels between the holes are sound, and so is a mark anywhere', () => {
    expect(checkFeatures(EIGHT, 22, [dowel(0, 10), dowel(180, 10)])).toEqual([]);
    expect(checkFeatures(EIGHT, 22, [{ kind: 'clocking mark', ...placeOn(240, 22.5) }])).toEqual([]);
  });
  test.each<[string, readonly Feature[], number, RegExp]>([
    ['in a bolt hole', [dowel(0, 10), dowel(67.5, 10)], 1, /dowel overlaps bolt hole 2: centres `0(\.00)? mm` apart/],
    ['half in a bolt hole', [dowel(20, 12)], 0, /dowel overlaps bolt hole 1/],
    [
      'two in one place',
      [dowel(0, 10), { ...dowel(0, 10), kind: 'jacking screw' }],
      1,
      /jacking screw overlaps the dowel before it/,
    ],
    ['no size', [dowel(0)], 0, /dowel has no size/],
    ['a negative size', [dowel(0, -4)], 0, /`-4 mm` has no size/],
    ['no number for a size', [dowel(0, Number.NaN)], 0, /`NaN mm` has no size/],
    ['a mark without a place', [{ kind: 'clocking mark', xMm: Number.NaN, yMm: 0 }], 0, /has no place/],
  ])('%s is named with its index', (_, features, index, problem) => {
    const faults = checkFeatures(EIGHT, 22, features);
    expect(faults.map((f) => f.index)).toEqual([index]);
    expect(faults[0]?.problem).toMatch(problem);
    expect(faults[0]?.hint).not.toBe('');
  });
  test('touching is not overlapping', () => {
    // Law of cosines: the chord over 22.5° of 240 mm is 46.82 mm; 22 and 71.6 mm leave 0.02 mm.
    expect(checkFeatures(EIGHT, 22, [dowel(0, 71.6)])).toEqual([]);
    expect(checkFeatures(EIGHT, 22, [dowel(0, 71.7)]).length).toBe(1);
  });
  test("a mark is in nobody's way", () => {
    const mark: Feature = { kind: 'clocking mark', ...placeOn(240, 0), diameterMm: 50 };
    expect(checkFeatures(EIGHT, 22, [mark, dowel(0, 10)])).toEqual([]);
  });
});
