/** Balance against closed forms: geometric series of roots of unity, pairs, statics of equal forces. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  balance,
  circularSequence,
  compareWithRound,
  type Pattern,
  patternCount,
  patternHoles,
  tighteningSequence,
} from '../../src/geometry/index.ts';
import { angles, anyPattern, circle, turned } from './patterns.ts';

const row = (along: number): Pattern => ({ kind: 'rectangle', lengthMm: 100, widthMm: 0, along, across: 1 });
const upTo = (count: number) => Array.from({ length: count }, (_, i) => i + 1);

describe('sum of directions', () => {
  test('going round in a circle leans far and runs along', () => {
    const b = balance(circle(12), upTo(12));
    expect(b.longestRun).toBe(12);
    // Half of a circle of 12 leans by 1/sin(15°), the sum of a geometric series of roots of unity.
    expect(b.largestOffset).toBeCloseTo(1 / Math.sin(Math.PI / 12), 9);
    expect(b.offsetAfter.at(-1)).toBe(0);
  });
  test('opposite pairs lean by one fastener at most and never run along', () => {
    const b = balance(circle(12), tighteningSequence(circle(12)).order);
    expect(b.largestOffset).toBeCloseTo(1, 9);
    expect(b.longestRun).toBe(1);
    expect(b.doubledAfter[1]).toBeCloseTo(2, 9);
    expect(b.doubledAfter[3]).toBe(0);
  });
  test('a hole in the centre leans nowhere', () => {
    expect(balance(row(3), [2, 1, 3]).offsetAfter).toEqual([0, 1, 0]);
  });
  test("what is not the pattern's is a programmer's mistake", () => {
    expect(() => balance(circle(4), [1, 5])).toThrow(RangeError);
    expect(() =>
      balance(
        circle(4),
        [1, 3, 2, 4],
        [
          [1, 2],
          [3, 4],
        ],
      ),
    ).toThrow(RangeError);
  });
});

describe('clamped centroid', () => {
  test('going round: after k of n it lies sin(k pi/n)/(k sin(pi/n)) of the radius off (geometric series)', () => {
    for (const n of [3, 8, 12, 25]) {
      const b = balance(circle(n), circularSequence(circle(n)).order);
      for (const [i, share] of b.centroidShare.entries()) {
        const k = i + 1;
        expect(share).toBeCloseTo(Math.sin((k * Math.PI) / n) / (k * Math.sin(Math.PI / n)), 9);
        expect(b.centroidMm[i]).toBeCloseTo(100 * share, 7);
      }
    }
  });
  test('opposite pairs: 1/k after odd k, nothing after even k', () => {
    for (const n of [4, 6, 8, 10, 20]) {
      const { centroidShare } = balance(circle(n), tighteningSequence(circle(n)).order);
      for (const [i, share] of centroidShare.entries()) expect(share).toBeCloseTo(i % 2 === 0 ? 1 / (i + 1) : 0, 9);
    }
  });
  test('from half of the bolts on: the largest share, by hand for 8', () => {
    const { order, circular } = compareWithRound(circle(8), tighteningSequence(circle(8)).order);
    // Crosswise: 1/5 after the fifth. Round: 1/(4 sin 22.5°) after the fourth.
    expect(order.largestCentroidShareAfterHalf).toBeCloseTo(0.2, 9);
    expect(circular.largestCentroidShareAfterHalf).toBeCloseTo(1 / (4 * Math.sin(Math.PI / 8)), 9);
  });
  test('a row of five from the middle: 0, 1/4, 0, 1/4, 0 of the half length', () => {
    expect(balance(row(5), [3, 4, 2, 5, 1]).centroidShare).toEqual([0, 0.25, 0, 0.25, 0]);
  });
  test('any pattern and order: between 0 and 1, and nothing off when all are tight', () => {
    fc.assert(
      fc.property(anyPattern, (p) => {
        const b = balance(p, tighteningSequence(p).order);
        return b.centroidShare.every((s) => s >= 0 && s <= 1 + 1e-9) && (b.centroidShare.at(-1) ?? 1) < 1e-9;
      }),
    );
  });
  test('listed points turned and shifted have the same balance', () => {
    fc.assert(
      fc.property(anyPattern, angles, fc.integer({ min: -300, max: 300 }), (p, deg, shift) => {
        const holes = patternHoles(p);
        const at = (list: typeof holes, by: number): Pattern => ({
          kind: 'points',
          points: list.map((h) => ({ xMm: h.xMm + by, yMm: h.yMm - by })),
        });
        const order = upTo(patternCount(p));
        const [a, b] = [balance(at(holes, 0), order), balance(at(turned(holes, deg), shift), order)];
        return a.centroidMm.every((mm, i) => Math.abs(mm - (b.centroidMm[i] ?? 1e9)) < 1e-6);
      }),
    );
  });
});

describe('after each move', () => {
  test('one tool: the states after each bolt', () => {
    const b = balance(circle(8), tighteningSequence(circle(8)).order);
    expect(b.afterMove.map((m) => m.tight)).toEqual(upTo(8));
    expect(b.afterMove.map((m) => m.offset)).toEqual(b.offsetAfter);
    expect(b.afterMove.map((m) => m.centroidShare)).toEqual(b.centroidShare);
  });
  test('four tools: only the states that the joint passes, all of them even', () => {
    const { order, moves } = tighteningSequence(circle(16), { tools: 4 });
    expect(balance(circle(16), order, moves).afterMove).toEqual(
      [4, 8, 12, 16].map((tight) => ({ tight, offset: 0, centroidShare: 0 })),
    );
  });
});

describe('runs of neighbours', () => {
  test('the last and the first hole of a circle are neighbours, those of a row and of an arc are not', () => {
    expect(balance(circle(6), [6, 1, 3]).longestRun).toBe(2);
    expect(balance(row(6), [6, 1, 3]).longestRun).toBe(1);
    const arc: Pattern = { kind: 'arc', diameterMm: 200, count: 6, firstDeg: 0, spanDeg: 200 };
    expect(balance(arc, [6, 1, 3]).longestRun).toBe(1);
    expect(balance(arc, [2, 3, 6]).longestRun).toBe(2);
  });
  test('concentric circles: neighbours on one circle only, each closed on itself', () => {
    const p: Pattern = {
      kind: 'circles',
      circles: [
        { diameterMm: 400, count: 6, firstDeg: 0 },
        { diameterMm: 200, count: 4, firstDeg: 0 },
      ],
    };
    expect(balance(p, [5, 6, 7, 8]).longestRun).toBe(2);
    expect(balance(p, [6, 7]).longestRun).toBe(1);
    expect(balance(p, [6, 1]).longestRun).toBe(2);
    expect(balance(p, [10, 7, 8]).longestRun).toBe(3);
  });
  test('a slot is closed', () => {
    expect(balance({ kind: 'slot', lengthMm: 400, widthMm: 200, count: 10, straddle: true }, [10, 1]).longestRun).toBe(
      2,
    );
  });
  test('listed points: by place, not by number', () => {
    // Two rows of three, 40 by 60: 1 2 3 above 4 5 6.
    const points = [20, -20].flatMap((yMm) => [0, 60, 120].map((xMm) => ({ xMm, yMm })));
    expect(balance({ kind: 'points', points }, [3, 4]).longestRun).toBe(1);
    expect(balance({ kind: 'points', points }, [1, 4]).longestRun).toBe(2);
    expect(balance({ kind: 'points', points }, [1, 5]).longestRun).toBe(1);
    expect(balance({ kind: 'points', points }, [1, 2, 3, 6, 5, 4]).longestRun).toBe(6);
  });
  test('points on a circle have the neighbours of the circle', () => {
    const p: Pattern = { kind: 'points', points: patternHoles(circle(9)) };
    expect(balance(p, upTo(9)).longestRun).toBe(9);
    expect(balance(p, [9, 1, 3, 4]).longestRun).toBe(2);
  });
});
