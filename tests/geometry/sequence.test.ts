/** Sequences for every count and layout: each hole once, opposite or outwards, balanced. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balance, type Pattern, patternCount, patternHoles, tighteningSequence } from '../../src/geometry/index.ts';
import { circle, isComplete } from './patterns.ts';

const COUNTS = Array.from({ length: 199 }, (_, i) => i + 2);

describe('circles of 2 to 200', () => {
  test('each hole once, and orderAt is the inverse of order', () => {
    for (const n of COUNTS) expect(isComplete(tighteningSequence(circle(n)), n), `${n}`).toBe(true);
  });

  test('single bolts of an even count go in opposite pairs, so that every pair is balanced', () => {
    for (const n of COUNTS.filter((c) => c % 2 === 0)) {
      const { order, groups } = tighteningSequence(circle(n));
      if (groups !== undefined) continue;
      for (let k = 0; k < n; k += 2) expect(Math.abs((order[k] ?? 0) - (order[k + 1] ?? 0)), `${n}`).toBe(n / 2);
      expect(balance(circle(n), order).largestOffset).toBeLessThanOrEqual(1 + 1e-9);
    }
  });

  test('odd counts move to within half a pitch of opposite and never lean by more than one fastener', () => {
    for (const n of COUNTS.filter((c) => c % 2 === 1)) {
      const { order } = tighteningSequence(circle(n));
      for (let k = 1; k < n; k++) {
        const step = ((order[k] ?? 0) - (order[k - 1] ?? 0) + n) % n;
        expect(Math.abs(step - n / 2), `${n}`).toBeLessThanOrEqual(0.5);
      }
      expect(balance(circle(n), order).largestOffset).toBeLessThanOrEqual(1 + 1e-9);
    }
  });

  test('groups are neighbours of one size, each group once, pairs opposite to within one group', () => {
    for (const n of COUNTS) {
      const { groups } = tighteningSequence(circle(n));
      if (groups === undefined) continue;
      expect(n).toBeGreaterThan(32);
      const size = groups[0]?.length ?? 0;
      expect(groups.every((g) => g.length === size && g.every((hole, i) => hole === (g[0] ?? 0) + i))).toBe(true);
      const places = groups.map((g) => ((g[0] ?? 0) - 1) / size);
      for (let k = 0; k + 1 < places.length; k += 2) {
        const apart = Math.abs((places[k] ?? 0) - (places[k + 1] ?? 0));
        expect(Math.abs(apart - groups.length / 2), `${n}`).toBeLessThanOrEqual(1);
      }
    }
  });

  test('published is claimed for the counts of the table alone', () => {
    const claimed = COUNTS.filter((n) => tighteningSequence(circle(n)).published !== undefined);
    expect(claimed).toEqual([4, 8, 12, 16, 20, 24, 28, 32, 36, 40, 44, 48, 56]);
  });

  test('the order does not depend on where the first hole lies', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 60 }),
        fc.double({ min: -360, max: 360, noNaN: true }),
        (count, firstDeg) => {
          const turned = tighteningSequence({ kind: 'circle', diameterMm: 77, count, firstDeg });
          return turned.order.join() === tighteningSequence(circle(count)).order.join();
        },
      ),
    );
  });
});

describe('other layouts', () => {
  const layouts = fc.oneof(
    fc.record({
      kind: fc.constant('rectangle' as const),
      lengthMm: fc.double({ min: 50, max: 2000, noNaN: true }),
      widthMm: fc.double({ min: 50, max: 2000, noNaN: true }),
      along: fc.integer({ min: 1, max: 20 }),
      across: fc.integer({ min: 1, max: 20 }),
    }),
    fc.record({
      kind: fc.constant('points' as const),
      points: fc.array(
        fc.record({ xMm: fc.integer({ min: -500, max: 500 }), yMm: fc.integer({ min: -500, max: 500 }) }),
        { minLength: 2, maxLength: 60 },
      ),
    }),
  );

  test('each hole once, and the distance from the centre never falls', () => {
    fc.assert(
      fc.property(layouts, (p: Pattern) => {
        const sequence = tighteningSequence(p);
        expect(isComplete(sequence, patternCount(p))).toBe(true);
        const holes = patternHoles(p);
        const cx = holes.reduce((s, h) => s + h.xMm, 0) / holes.length;
        const cy = holes.reduce((s, h) => s + h.yMm, 0) / holes.length;
        const distances = sequence.order.map((n) =>
          Math.hypot((holes[n - 1]?.xMm ?? 0) - cx, (holes[n - 1]?.yMm ?? 0) - cy),
        );
        for (let k = 1; k < distances.length; k++) {
          expect(distances[k]).toBeGreaterThanOrEqual((distances[k - 1] ?? 0) - 1e-5 * Math.max(1, ...distances));
        }
      }),
    );
  });

  test('a rectangle goes in opposite pairs: nothing leans after an even number (even counts)', () => {
    for (const [along, across] of [
      [2, 2],
      [4, 2],
      [4, 4],
      [6, 4],
      [5, 3],
      [6, 2],
    ] as const) {
      const p: Pattern = { kind: 'rectangle', lengthMm: 700, widthMm: 300, along, across };
      const { offsetAfter } = balance(p, tighteningSequence(p).order);
      for (const [i, offset] of offsetAfter.entries())
        if (i % 2 === 1) expect(offset, `${along} by ${across}`).toBeLessThan(1e-6);
    }
  });

  test('four in a square go crosswise, whatever their numbers', () => {
    const p: Pattern = {
      kind: 'points',
      points: [
        [0, 0],
        [1, 0],
        [0, 1],
        [1, 1],
      ].map(([x = 0, y = 0]) => ({ xMm: 90 * x, yMm: 90 * y })),
    };
    expect(tighteningSequence(p).order.slice(0, 2)).toEqual([1, 4]);
  });

  test('points that lie on a circle go as a circle does', () => {
    const p: Pattern = {
      kind: 'points',
      points: patternHoles({ kind: 'circle', diameterMm: 300, count: 8, firstDeg: 10 }),
    };
    expect(tighteningSequence(p).order).toEqual(tighteningSequence(circle(8)).order);
  });

  test('no table is claimed', () => {
    expect(
      tighteningSequence({ kind: 'rectangle', lengthMm: 100, widthMm: 100, along: 2, across: 2 }).published,
    ).toBeUndefined();
  });
});
