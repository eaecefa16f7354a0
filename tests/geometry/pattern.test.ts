/** Circles and rectangles: hole places by complex roots and the law of cosines; counts. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chordMm, neighbourChordMm, type Pattern, patternCount, patternHoles } from '../../src/geometry/index.ts';

const counts = fc.integer({ min: 2, max: 200 });
const diameters = fc.double({ min: 10, max: 5000, noNaN: true });
const angles = fc.double({ min: -720, max: 720, noNaN: true });

describe('circle', () => {
  test('holes are the roots of z^n = w: every one to the power n is the same point', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 24 }), angles, (count, firstDeg) => {
        const powers = patternHoles({ kind: 'circle', diameterMm: 2, count, firstDeg }).map((h) => {
          let [re, im] = [1, 0];
          for (let k = 0; k < count; k++) [re, im] = [re * h.xMm - im * h.yMm, re * h.yMm + im * h.xMm];
          return [re, im] as const;
        });
        const [a] = powers;
        return powers.every(([re, im]) => Math.hypot(re - (a?.[0] ?? 9), im - (a?.[1] ?? 9)) < 1e-9);
      }),
    );
  });

  test("clockwise from 12 o'clock: a quarter of a turn is to the right", () => {
    const holes = patternHoles({ kind: 'circle', diameterMm: 100, count: 4, firstDeg: 0 });
    const expected = [
      [0, 50],
      [50, 0],
      [0, -50],
      [-50, 0],
    ];
    for (const [i, [x = 0, y = 0]] of expected.entries()) {
      expect(holes[i]?.xMm).toBeCloseTo(x, 9);
      expect(holes[i]?.yMm).toBeCloseTo(y, 9);
    }
    expect(holes.map((h) => h.number)).toEqual([1, 2, 3, 4]);
  });

  test('turning the pattern keeps every distance', () => {
    fc.assert(
      fc.property(diameters, fc.integer({ min: 2, max: 40 }), angles, angles, (diameterMm, count, a, b) => {
        const all = [a, b].map((firstDeg) => {
          const holes = patternHoles({ kind: 'circle', diameterMm, count, firstDeg });
          return holes.map((h) => Math.hypot(h.xMm - (holes[0]?.xMm ?? 0), h.yMm - (holes[0]?.yMm ?? 0)));
        });
        return (all[0] ?? []).every((d, i) => Math.abs(d - (all[1]?.[i] ?? 0)) < 1e-7 * diameterMm);
      }),
    );
  });

  test('chords by the law of cosines', () => {
    fc.assert(
      fc.property(diameters, counts, fc.integer({ min: 1, max: 99 }), (D, n, steps) => {
        const squared = (D * D * (1 - Math.cos((2 * Math.PI * steps) / n))) / 2;
        return Math.abs(chordMm(D, n, steps) ** 2 - squared) < 1e-9 * D * D;
      }),
    );
  });

  test('the smallest distance is that between neighbours', () => {
    fc.assert(
      fc.property(diameters, fc.integer({ min: 2, max: 60 }), angles, (diameterMm, count, firstDeg) => {
        const circle: Pattern = { kind: 'circle', diameterMm, count, firstDeg };
        const points: Pattern = { kind: 'points', points: patternHoles(circle) };
        return Math.abs(neighbourChordMm(circle) - neighbourChordMm(points)) < 1e-9 * diameterMm;
      }),
    );
  });
});

describe('rectangle', () => {
  const rectangle = (along: number, across: number): Pattern => ({
    kind: 'rectangle',
    lengthMm: 400,
    widthMm: 200,
    along,
    across,
  });

  test('4 by 3 runs clockwise from the top left', () => {
    const places = patternHoles(rectangle(4, 3)).map((h) => `${Math.round(h.xMm)},${Math.round(h.yMm)}`);
    expect(places.join(' ')).toBe('-200,100 -67,100 67,100 200,100 200,0 200,-100 67,-100 -67,-100 -200,-100 -200,0');
  });
  test.each([
    [2, 2, 4],
    [4, 3, 10],
    [5, 2, 10],
    [9, 1, 9],
    [1, 9, 9],
    [1, 1, 1],
    [6, 6, 20],
  ])('%d along, %d across: %d holes', (along, across, count) => {
    expect(patternCount(rectangle(along, across))).toBe(count);
    const holes = patternHoles(rectangle(along, across));
    expect(holes.length).toBe(count);
    expect(new Set(holes.map((h) => `${h.xMm.toFixed(6)} ${h.yMm.toFixed(6)}`)).size).toBe(count);
  });
  test('a row runs left to right, a column top to bottom, both through the centre', () => {
    expect(patternHoles(rectangle(3, 1)).map((h) => [h.xMm, h.yMm])).toEqual([
      [-200, 0],
      [0, 0],
      [200, 0],
    ]);
    expect(patternHoles(rectangle(1, 3)).map((h) => [h.xMm, h.yMm])).toEqual([
      [0, 100],
      [0, 0],
      [0, -100],
    ]);
  });
  test('every hole lies on the edge and its mirror images are holes too', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 12 }), fc.integer({ min: 2, max: 12 }), (along, across) => {
        const holes = patternHoles(rectangle(along, across));
        const has = (x: number, y: number) => holes.some((h) => Math.hypot(h.xMm - x, h.yMm - y) < 1e-6);
        return holes.every((h) => {
          const onEdge = Math.abs(Math.abs(h.xMm) - 200) < 1e-6 || Math.abs(Math.abs(h.yMm) - 100) < 1e-6;
          return onEdge && has(-h.xMm, h.yMm) && has(h.xMm, -h.yMm);
        });
      }),
    );
  });
});
