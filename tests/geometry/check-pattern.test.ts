/** What is refused in a pattern, and with which words. */

import { describe, expect, test } from 'vitest';
import { checkPattern, chordMm, type Pattern, patternHoles } from '../../src/geometry/index.ts';

describe('checkPattern', () => {
  test.each<[string, Pattern, number | undefined, RegExp | undefined]>([
    ['a sound circle', { kind: 'circle', diameterMm: 240, count: 8, firstDeg: 22.5 }, 22, undefined],
    ['one hole', { kind: 'circle', diameterMm: 240, count: 1, firstDeg: 0 }, undefined, /`1` is not a number of holes/],
    ['half a hole', { kind: 'circle', diameterMm: 240, count: 7.5, firstDeg: 0 }, undefined, /`7\.5`/],
    ['no count', { kind: 'circle', diameterMm: 240, count: Number.NaN, firstDeg: 0 }, undefined, /`NaN`/],
    ['no size', { kind: 'circle', diameterMm: 0, count: 8, firstDeg: 0 }, undefined, /`0 mm` is not a size/],
    ['a negative size', { kind: 'circle', diameterMm: -240, count: 8, firstDeg: 0 }, undefined, /`-240 mm`/],
    ['no angle', { kind: 'circle', diameterMm: 240, count: 8, firstDeg: Number.NaN }, undefined, /not an angle/],
    ['too many', { kind: 'circle', diameterMm: 240, count: 100000, firstDeg: 0 }, undefined, /`100000` holes/],
    ['a circle too small', { kind: 'circle', diameterMm: 40, count: 12, firstDeg: 0 }, 18, /too small for 12 holes/],
    ['a hole that is no size', { kind: 'circle', diameterMm: 240, count: 8, firstDeg: 0 }, -1, /hole diameter/],
    ['a sound row', { kind: 'rectangle', lengthMm: 400, widthMm: 0, along: 5, across: 1 }, 18, undefined],
    [
      'a row without length',
      { kind: 'rectangle', lengthMm: 0, widthMm: 0, along: 5, across: 1 },
      undefined,
      /length `0 mm`/,
    ],
    [
      'a rectangle without width',
      { kind: 'rectangle', lengthMm: 400, widthMm: 0, along: 5, across: 2 },
      undefined,
      /width `0 mm`/,
    ],
    [
      'a single hole',
      { kind: 'rectangle', lengthMm: 400, widthMm: 200, along: 1, across: 1 },
      undefined,
      /at least|`1` holes/,
    ],
    [
      'overlapping holes',
      { kind: 'rectangle', lengthMm: 100, widthMm: 100, along: 11, across: 2 },
      18,
      /holes 1 and 2 overlap/,
    ],
    [
      'sound points',
      {
        kind: 'points',
        points: [
          { xMm: 0, yMm: 0 },
          { xMm: 50, yMm: 0 },
        ],
      },
      18,
      undefined,
    ],
    [
      'the same point twice',
      {
        kind: 'points',
        points: [
          { xMm: 5, yMm: 5 },
          { xMm: 5, yMm: 5 },
        ],
      },
      undefined,
      /same place/,
    ],
    [
      'a point nowhere',
      {
        kind: 'points',
        points: [
          { xMm: 5, yMm: Number.NaN },
          { xMm: 5, yMm: 5 },
        ],
      },
      undefined,
      /hole 1 .* no place/,
    ],
    ['no points', { kind: 'points', points: [] }, undefined, /`0` holes/],
  ])('%s', (_, pattern, hole, problem) => {
    const faults = checkPattern(pattern, hole);
    if (problem === undefined) expect(faults).toEqual([]);
    else {
      expect(faults[0]?.problem).toMatch(problem);
      expect(faults[0]?.hint).not.toBe('');
    }
  });
  test('what it refuses for its numbers, patternHoles throws on', () => {
    expect(() => patternHoles({ kind: 'circle', diameterMm: 240, count: 7.5, firstDeg: 0 })).toThrow(RangeError);
    expect(() => patternHoles({ kind: 'circle', diameterMm: Number.NaN, count: 8, firstDeg: 0 })).toThrow(RangeError);
    expect(() => chordMm(100, 1)).toThrow(RangeError);
  });
});

describe('checkPattern: arcs, concentric circles, slots', () => {
  const arc = { kind: 'arc', diameterMm: 300, count: 5, firstDeg: -60, spanDeg: 120 } as const;
  const slot = { kind: 'slot', lengthMm: 400, widthMm: 200, count: 14, straddle: true } as const;
  const circles = (...rings: [diameterMm: number, count: number, firstDeg: number][]): Pattern => ({
    kind: 'circles',
    circles: rings.map(([diameterMm, count, firstDeg]) => ({ diameterMm, count, firstDeg })),
  });
  test.each<[string, Pattern, number]>([
    ['an arc', arc, 22],
    ['an arc over nearly the circle', { ...arc, count: 8, spanDeg: 315 }, 22],
    ['two circles', circles([400, 12, 15], [300, 12, 0]), 22],
    ['two circles, the inner first', circles([300, 12, 0], [400, 12, 15]), 22],
    ['three circles', circles([400, 12, 15], [300, 12, 0], [200, 6, 0]), 22],
    ['a slot', slot, 22],
    [
      'a rectangle counted anticlockwise',
      { kind: 'rectangle', lengthMm: 400, widthMm: 200, along: 4, across: 3, numbering: 'anticlockwise' },
      22,
    ],
  ])('%s is sound', (_, p, hole) => {
    expect(checkPattern(p, hole)).toEqual([]);
  });
  test.each<[string, Pattern, number | undefined, RegExp]>([
    ['an arc of one hole', { ...arc, count: 1 }, undefined, /`1` is not a number of holes/],
    ['an arc without a span', { ...arc, spanDeg: 0 }, undefined, /span `0°` is not an arc/],
    ['a negative span', { ...arc, spanDeg: -120 }, undefined, /span `-120°`/],
    ['a span of a full circle', { ...arc, spanDeg: 360 }, undefined, /span `360°`/],
    ['a span that is no number', { ...arc, spanDeg: Number.NaN }, undefined, /span `NaN°`/],
    ['an arc of no size', { ...arc, diameterMm: 0 }, undefined, /bolt circle `0 mm`/],
    ['an arc from nowhere', { ...arc, firstDeg: Number.POSITIVE_INFINITY }, undefined, /first hole `Infinity°`/],
    ['a crowded arc', { ...arc, count: 40 }, 22, /arc of `300 mm` over `120°` is too small for 40 holes/],
    [
      'an arc whose ends meet',
      { ...arc, count: 10, spanDeg: 359 },
      22,
      /arc of `300 mm` over `359°` is too small for 10 holes/,
    ],
    ['one circle of several', circles([400, 12, 0]), undefined, /`1` circles/],
    ['four circles', circles([400, 4, 0], [300, 4, 0], [200, 4, 0], [100, 4, 0]), undefined, /`4` circles/],
    ['no circles', circles(), undefined, /`0` circles/],
    ['a circle of one hole', circles([400, 12, 0], [300, 1, 0]), undefined, /`1` is not a number of holes/],
    ['a circle of no size', circles([400, 12, 0], [-300, 12, 0]), undefined, /bolt circle `-300 mm`/],
    ['equal circles', circles([400, 12, 0], [400, 12, 15]), undefined, /two circles of `400 mm`/],
    [
      'circles too near each other',
      circles([400, 12, 0], [380, 12, 0]),
      22,
      /holes 1 and 13 overlap: they lie 10(\.00)? mm apart/,
    ],
    ['a crowded inner circle', circles([400, 12, 0], [60, 12, 0]), 22, /bolt circle `60 mm` is too small for 12 holes/],
    [
      'a slot as long as wide',
      { ...slot, lengthMm: 200 },
      undefined,
      /`200 mm` long is not longer than its width `200 mm`/,
    ],
    ['a slot across', { ...slot, lengthMm: 100 }, undefined, /`100 mm` long is not longer/],
    ['a slot of no width', { ...slot, widthMm: 0 }, undefined, /width `0 mm`/],
    ['a slot of no number', { ...slot, lengthMm: Number.NaN }, undefined, /length `NaN mm`/],
    ['a crowded slot', { ...slot, count: 60 }, 22, /slot `400 mm` by `200 mm` is too small for 60 holes/],
    [
      'a row counted anticlockwise',
      { kind: 'rectangle', lengthMm: 400, widthMm: 0, along: 5, across: 1, numbering: 'anticlockwise' },
      undefined,
      /a single row is not numbered/,
    ],
    [
      'a circle of a kilometre',
      { kind: 'circle', diameterMm: 1e6, count: 8, firstDeg: 0 },
      undefined,
      /`1000000 mm` is not a size/,
    ],
    [
      'a point out of reach',
      {
        kind: 'points',
        points: [
          { xMm: 0, yMm: 0 },
          { xMm: 1e7, yMm: 0 },
        ],
      },
      undefined,
      /hole 2 .* is out of reach/,
    ],
  ])('%s is refused', (_, p, hole, problem) => {
    const faults = checkPattern(p, hole);
    expect(faults[0]?.problem).toMatch(problem);
    expect(faults[0]?.hint).not.toBe('');
  });
  test('the hole diameter decides where the overlap begins', () => {
    // Twelve on 100 mm: neighbours 100 sin 15° = 25.88 mm apart.
    const p: Pattern = { kind: 'circle', diameterMm: 100, count: 12, firstDeg: 0 };
    expect(checkPattern(p, 25.88)).toEqual([]);
    expect(checkPattern(p, 25.89).length).toBe(1);
  });
  test('many overlaps name the first five', () => {
    const points = Array.from({ length: 20 }, (_, i) => ({ xMm: i, yMm: 0 }));
    expect(checkPattern({ kind: 'points', points }, 18).length).toBe(5);
  });
});
