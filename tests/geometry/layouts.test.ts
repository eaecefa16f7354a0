/** Arcs, concentric circles, slots and the direction of counting, each by a second route. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  acrossMm,
  chordMm,
  type Hole,
  neighbourChordMm,
  type Pattern,
  patternCount,
  patternHoles,
  placeOn,
  slotLineMm,
} from '../../src/geometry/index.ts';
import { angles, anyPattern, circlePatterns, circlesPatterns, mismatchMm, slotPatterns, turned } from './patterns.ts';

const apart = (a: Hole | undefined, b: Hole | undefined) =>
  Math.hypot((a?.xMm ?? 1e9) - (b?.xMm ?? 0), (a?.yMm ?? 1e9) - (b?.yMm ?? 0));

describe('any pattern', () => {
  test('has as many holes as it counts, numbered from 1', () => {
    fc.assert(
      fc.property(anyPattern, (p) => {
        const holes = patternHoles(p);
        return holes.length === patternCount(p) && holes.every((h, i) => h.number === i + 1);
      }),
    );
  });
  test('across is the greatest distance, the chord the least', () => {
    fc.assert(
      fc.property(anyPattern, (p) => {
        const holes = patternHoles(p);
        const distances = holes.flatMap((a) => holes.filter((b) => b !== a).map((b) => apart(a, b)));
        return (
          Math.abs(acrossMm(p) - distances.reduce((a, b) => Math.max(a, b))) < 1e-6 &&
          Math.abs(neighbourChordMm(p) - distances.reduce((a, b) => Math.min(a, b))) < 1e-6
        );
      }),
      { numRuns: 60 },
    );
  });
  test('turning the first hole turns every hole (rotation matrix)', () => {
    fc.assert(
      fc.property(fc.oneof(circlePatterns, circlesPatterns), angles, (p, deg) => {
        if (p.kind !== 'circle' && p.kind !== 'circles') return false;
        const more: Pattern =
          p.kind === 'circle'
            ? { ...p, firstDeg: p.firstDeg + deg }
            : { ...p, circles: p.circles.map((c) => ({ ...c, firstDeg: c.firstDeg + deg })) };
        return mismatchMm(patternHoles(more), turned(patternHoles(p), deg)) < 1e-7;
      }),
    );
  });
});

describe('full circles', () => {
  test('the places sum to nothing (roots of unity), circle by circle', () => {
    fc.assert(
      fc.property(fc.oneof(circlePatterns, circlesPatterns), (p) => {
        const holes = patternHoles(p);
        return [holes.reduce((s, h) => s + h.xMm, 0), holes.reduce((s, h) => s + h.yMm, 0)].every(
          (sum) => Math.abs(sum) < 1e-6,
        );
      }),
    );
  });
  test('across a circle: the diameter for even counts, D cos(pi/2n) for odd ones', () => {
    for (let n = 2; n <= 60; n++) {
      const p: Pattern = { kind: 'circle', diameterMm: 500, count: n, firstDeg: 7 };
      expect(acrossMm(p)).toBeCloseTo(n % 2 === 0 ? 500 : 500 * Math.cos(Math.PI / (2 * n)), 9);
    }
  });
  test('neighbours on two circles by the law of cosines', () => {
    const p: Pattern = {
      kind: 'circles',
      circles: [
        { diameterMm: 400, count: 12, firstDeg: 15 },
        { diameterMm: 300, count: 12, firstDeg: 0 },
      ],
    };
    const holes = patternHoles(p);
    const between = Math.sqrt(200 ** 2 + 150 ** 2 - 2 * 200 * 150 * Math.cos(Math.PI / 12));
    expect(apart(holes[0], holes[12])).toBeCloseTo(between, 9);
    expect(neighbourChordMm(p)).toBeCloseTo(Math.min(between, chordMm(300, 12)), 9);
    expect(holes.map((h) => Math.round(Math.hypot(h.xMm, h.yMm)))).toEqual([
      ...Array<number>(12).fill(200),
      ...Array<number>(12).fill(150),
    ]);
  });
});

describe('arcs', () => {
  test('five over 120° from -60°: both ends drilled, every pitch 30°', () => {
    const holes = patternHoles({ kind: 'arc', diameterMm: 300, count: 5, firstDeg: -60, spanDeg: 120 });
    const half = 75 * Math.sqrt(3);
    expect(holes[0]?.xMm).toBeCloseTo(-half, 9);
    expect(holes[0]?.yMm).toBeCloseTo(75, 9);
    expect(holes[2]?.xMm).toBeCloseTo(0, 9);
    expect(holes[2]?.yMm).toBeCloseTo(150, 9);
    expect(holes[4]?.xMm).toBeCloseTo(half, 9);
  });
  test('chords by the law of cosines, and the ends by the span', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 60 }),
        fc.double({ min: 1, max: 359, noNaN: true }),
        angles,
        (count, spanDeg, firstDeg) => {
          const holes = patternHoles({ kind: 'arc', diameterMm: 100, count, firstDeg, spanDeg });
          const chord = (deg: number) => Math.sqrt(2 * 50 ** 2 * (1 - Math.cos((deg * Math.PI) / 180)));
          const steps = holes.slice(1).map((h, i) => apart(holes[i], h));
          const pitch = chord(spanDeg / (count - 1));
          return (
            steps.every((step) => Math.abs(step - pitch) < 1e-6) &&
            Math.abs(apart(holes[0], holes.at(-1)) - chord(spanDeg)) < 1e-6
          );
        },
      ),
    );
  });
  test('counted anticlockwise it runs the other way from the same hole 1: the mirror image', () => {
    const arc = { kind: 'arc', diameterMm: 300, count: 7, firstDeg: 0, spanDeg: 200 } as const;
    const mirrored = patternHoles(arc).map((h) => ({ ...h, xMm: -h.xMm }));
    expect(mismatchMm(patternHoles({ ...arc, numbering: 'anticlockwise' }), mirrored)).toBeLessThan(1e-9);
  });
});

describe('slots', () => {
  /** Length along the line between two places, by 25 000 short chords of a line drawn without the code's formulas. */
  function walked(lengthMm: number, widthMm: number): (h: Hole) => number {
    const [half, r] = [(lengthMm - widthMm) / 2, widthMm / 2];
    const line: [x: number, y: number][] = [];
    const steps = 5000;
    for (let i = 0; i <= steps; i++) line.push([(half * i) / steps, r]);
    for (let i = 0; i <= steps; i++)
      line.push([half + r * Math.cos(Math.PI * (0.5 - i / steps)), r * Math.sin(Math.PI * (0.5 - i / steps))]);
    for (let i = 0; i <= steps; i++) line.push([half - (2 * half * i) / steps, -r]);
    for (let i = 0; i <= steps; i++)
      line.push([-half + r * Math.cos(Math.PI * (1.5 - i / steps)), r * Math.sin(Math.PI * (1.5 - i / steps))]);
    for (let i = 0; i <= steps; i++) line.push([-half + (half * i) / steps, r]);
    let walkedMm = 0;
    const along = line.map(([x, y], i) => {
      const [px, py] = line[i - 1] ?? [x, y];
      walkedMm += Math.hypot(x - px, y - py);
      return walkedMm;
    });
    return (h) => {
      let best = 0;
      const off = (i: number) => Math.hypot((line[i]?.[0] ?? 1e9) - h.xMm, (line[i]?.[1] ?? 1e9) - h.yMm);
      for (let i = 1; i < line.length; i++) if (off(i) < off(best)) best = i;
      expect(off(best)).toBeLessThan(0.1);
      return along[best] ?? 0;
    };
  }

  test.each([
    [400, 200, 14, true],
    [400, 200, 14, false],
    [1200, 150, 9, false],
    [260, 250, 11, true],
  ])('%d by %d, %d holes: equal lengths along the line (numerical)', (lengthMm, widthMm, count, straddle) => {
    const place = walked(lengthMm, widthMm);
    const pitch = (2 * (lengthMm - widthMm) + Math.PI * widthMm) / count;
    for (const [i, h] of patternHoles({ kind: 'slot', lengthMm, widthMm, count, straddle }).entries()) {
      if (i === 0 && !straddle) expect([h.xMm, h.yMm]).toEqual([0, widthMm / 2]);
      else expect(Math.abs(place(h) - pitch * (i + (straddle ? 0.5 : 0)))).toBeLessThan(0.2);
    }
  });
  test('every hole lies half a width from the spine between the two end centres', () => {
    fc.assert(
      fc.property(slotPatterns, (p) => {
        if (p.kind !== 'slot') return false;
        const half = (p.lengthMm - p.widthMm) / 2;
        return patternHoles(p).every(({ xMm, yMm }) => {
          const onSpine = Math.max(-half, Math.min(half, xMm));
          return Math.abs(Math.hypot(xMm - onSpine, yMm) - p.widthMm / 2) < 1e-6;
        });
      }),
    );
  });
  test('an even count is the same turned by half a turn, and straddling holes mirror about the centre line', () => {
    fc.assert(
      fc.property(slotPatterns, (p) => {
        const holes = patternHoles(p);
        const has = (x: number, y: number) => holes.some((h) => Math.hypot(h.xMm - x, h.yMm - y) < 1e-6);
        return (
          holes.every((h) => has(-h.xMm, h.yMm)) && (holes.length % 2 === 1 || holes.every((h) => has(-h.xMm, -h.yMm)))
        );
      }),
    );
  });
  test('a slot hardly longer than wide is a circle', () => {
    const slot = patternHoles({ kind: 'slot', lengthMm: 300 + 1e-7, widthMm: 300, count: 12, straddle: true });
    expect(mismatchMm(slot, patternHoles({ kind: 'circle', diameterMm: 300, count: 12, firstDeg: 15 }))).toBeLessThan(
      1e-6,
    );
    expect(slotLineMm(300, 300)).toBeCloseTo(Math.PI * 300, 9);
  });
  test('no slot without a straight side', () => {
    expect(() => patternHoles({ kind: 'slot', lengthMm: 200, widthMm: 200, count: 8, straddle: false })).toThrow(
      RangeError,
    );
  });
});

describe('counting anticlockwise', () => {
  const closed = fc.oneof(circlePatterns, circlesPatterns, slotPatterns);
  test('leaves hole 1 and the drilling of a closed line where they are', () => {
    fc.assert(
      fc.property(closed, (p) => {
        if (p.kind === 'points') return false;
        const [there, back] = [
          patternHoles({ ...p, numbering: 'clockwise' }),
          patternHoles({ ...p, numbering: 'anticlockwise' }),
        ];
        return apart(there[0], back[0]) < 1e-9 && back.every((h) => there.some((o) => apart(h, o) < 1e-6));
      }),
    );
  });
  test('is the mirror image about the line through hole 1', () => {
    fc.assert(
      fc.property(circlePatterns, (p) => {
        if (p.kind !== 'circle') return false;
        // Mirror about the direction of hole 1: turn it to the top, change the sign of x, turn it back.
        const top = turned(patternHoles({ ...p, numbering: 'clockwise' }), -p.firstDeg);
        const mirrored = turned(
          top.map((h) => ({ ...h, xMm: -h.xMm })),
          p.firstDeg,
        );
        return mismatchMm(patternHoles({ ...p, numbering: 'anticlockwise' }), mirrored) < 1e-6;
      }),
    );
  });
  test('a rectangle goes down from the top left', () => {
    const p: Pattern = {
      kind: 'rectangle',
      lengthMm: 40,
      widthMm: 20,
      along: 3,
      across: 2,
      numbering: 'anticlockwise',
    };
    expect(patternHoles(p).map((h) => [h.xMm, h.yMm])).toEqual([
      [-20, 10],
      [-20, -10],
      [0, -10],
      [20, -10],
      [20, 10],
      [0, 10],
    ]);
  });
});

test('a place on a circle is the first hole of that circle', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 5000, noNaN: true }), angles, (diameterMm, deg) => {
      const [first] = patternHoles({ kind: 'circle', diameterMm, count: 3, firstDeg: deg });
      const place = placeOn(diameterMm, deg);
      return Math.hypot(place.xMm - (first?.xMm ?? 1e9), place.yMm - (first?.yMm ?? 1e9)) < 1e-9;
    }),
  );
  expect(() => placeOn(Number.NaN, 0)).toThrow(RangeError);
});
