/** Every method and number of tools on every pattern: each hole once, opposites together, refusals in words. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  balance,
  circularSequence,
  defaultMethod,
  type Method,
  type Pattern,
  patternCount,
  patternHoles,
  type SequenceOptions,
  sequenceFault,
  type Tools,
  tighteningSequence,
} from '../../src/geometry/index.ts';
import { angles, anyPattern, circle, circlePatterns, circlesPatterns, isComplete, slotPatterns } from './patterns.ts';

const METHODS: readonly Method[] = ['cross', 'spiral', 'quadrants', 'in turn'];
const TOOLS: readonly Tools[] = [1, 2, 4];
const COUNTS = Array.from({ length: 199 }, (_, i) => i + 2);

const options = fc.record({ method: fc.constantFrom(...METHODS), tools: fc.constantFrom(...TOOLS) });

describe('any pattern, method and tools', () => {
  test('either each hole once with its moves, or a refusal in words', () => {
    let sound = 0;
    fc.assert(
      fc.property(anyPattern, options, (p, o) => {
        const fault = sequenceFault(p, o);
        if (fault !== undefined) {
          expect(() => tighteningSequence(p, o)).toThrow(RangeError);
          return fault.problem !== '' && fault.hint !== '';
        }
        sound++;
        const sequence = tighteningSequence(p, o);
        return isComplete(sequence, patternCount(p)) && sequence.method === o.method && sequence.tools === o.tools;
      }),
      { numRuns: 1000 },
    );
    expect(sound).toBeGreaterThan(200);
  });
  test('without options there is always a sequence, with one tool', () => {
    fc.assert(
      fc.property(anyPattern, (p) => {
        const sequence = tighteningSequence(p);
        return isComplete(sequence, patternCount(p)) && sequence.tools === 1 && sequence.method === defaultMethod(p);
      }),
    );
  });
  test('circles of 2 to 200 with all methods and tools', () => {
    for (const n of COUNTS) {
      for (const method of METHODS) {
        for (const tools of TOOLS) {
          const o: SequenceOptions = { method, tools };
          if (sequenceFault(circle(n), o) !== undefined) continue;
          expect(isComplete(tighteningSequence(circle(n), o), n), `${n} ${method} ${tools}`).toBe(true);
        }
      }
    }
  });
  test('every rule fits three lines of a card', () => {
    fc.assert(
      fc.property(
        anyPattern,
        options,
        (p, o) => sequenceFault(p, o) !== undefined || tighteningSequence(p, o).rule.length <= 140,
      ),
    );
  });
  test('the order does not change when the pattern is turned, nor does its balance', () => {
    fc.assert(
      fc.property(fc.oneof(circlePatterns, circlesPatterns), angles, (p, deg) => {
        if (p.kind !== 'circle' && p.kind !== 'circles') return false;
        const more: Pattern =
          p.kind === 'circle'
            ? { ...p, firstDeg: p.firstDeg + deg }
            : { ...p, circles: p.circles.map((c) => ({ ...c, firstDeg: c.firstDeg + deg })) };
        const { order } = tighteningSequence(p);
        if (tighteningSequence(more).order.join() !== order.join()) return false;
        const [a, b] = [balance(p, order), balance(more, order)];
        return a.offsetAfter.every((offset, i) => Math.abs(offset - (b.offsetAfter[i] ?? 9)) < 1e-6);
      }),
    );
  });
  test('counted the other way a circle has the same order, and claims no table', () => {
    for (const n of COUNTS) {
      const other = tighteningSequence(circle(n, { numbering: 'anticlockwise' }));
      expect(other.order).toEqual(tighteningSequence(circle(n)).order);
      expect(other.published).toBeUndefined();
    }
  });
  test('only one tool crosswise claims the table', () => {
    for (const n of [4, 8, 12, 16, 20, 24, 28, 32, 36, 40, 44, 48, 56]) {
      expect(tighteningSequence(circle(n)).published).toContain('ASME PCC-1');
      expect(tighteningSequence(circle(n), { tools: 2 }).published).toBeUndefined();
      expect(tighteningSequence(circle(n), { tools: 4 }).published).toBeUndefined();
      expect(circularSequence(circle(n)).published).toBeUndefined();
    }
  });
});

describe('several tools', () => {
  const opposite = (p: Pattern, a: number, b: number) => {
    const holes = patternHoles(p);
    const [x, y] = [holes[a - 1], holes[b - 1]];
    return Math.hypot((x?.xMm ?? 9) + (y?.xMm ?? 9), (x?.yMm ?? 9) + (y?.yMm ?? 9)) < 1e-6;
  };
  test('two: every move is a pair of opposite bolts, and nothing ever leans', () => {
    for (const n of COUNTS.filter((c) => c % 2 === 0)) {
      const { moves, order, rule } = tighteningSequence(circle(n), { tools: 2 });
      for (const [a = 0, b = 0] of moves) expect(opposite(circle(n), a, b), `${n}`).toBe(true);
      for (const { offset } of balance(circle(n), order, moves).afterMove) expect(offset).toBe(0);
      expect(rule).toContain('together with the one opposite');
    }
  });
  test('four: every move is a square', () => {
    for (const n of COUNTS.filter((c) => c % 4 === 0)) {
      const { moves } = tighteningSequence(circle(n), { tools: 4 });
      for (const move of moves) {
        const sorted = [...move].sort((a, b) => a - b);
        expect(sorted.map((h) => h - (sorted[0] ?? 0))).toEqual([0, n / 4, n / 2, (3 * n) / 4]);
      }
    }
  });
  test('two on concentric circles: opposite bolts of the same circle', () => {
    const p: Pattern = {
      kind: 'circles',
      circles: [
        { diameterMm: 400, count: 16, firstDeg: 11.25 },
        { diameterMm: 300, count: 8, firstDeg: 0 },
      ],
    };
    for (const tools of [2, 4] as const) {
      for (const move of tighteningSequence(p, { tools }).moves) {
        expect(move.every((h) => h <= 16 === (move[0] ?? 0) <= 16)).toBe(true);
        expect(opposite(p, move[0] ?? 0, move[1] ?? 0)).toBe(true);
      }
    }
  });
  test.each<[string, Pattern, SequenceOptions, RegExp]>([
    ['an odd count', circle(7), { tools: 2 }, /`7` holes have no opposite pairs for 2 tools/],
    ['a count that four does not divide', circle(10), { tools: 4 }, /`10` holes do not make fours/],
    [
      'one odd circle of two',
      {
        kind: 'circles',
        circles: [
          { diameterMm: 400, count: 8, firstDeg: 0 },
          { diameterMm: 300, count: 5, firstDeg: 0 },
        ],
      },
      { tools: 2 },
      /`5` holes/,
    ],
    ['going round', circle(8), { method: 'in turn', tools: 2 }, /do not go with the method `in turn`/],
    [
      'a row',
      { kind: 'rectangle', lengthMm: 90, widthMm: 0, along: 4, across: 1 },
      { tools: 2 },
      /a single row is worked with one/,
    ],
    ['few for quadrants', circle(12), { method: 'quadrants' }, /`12` holes do not make quadrants/],
    ['no fours for quadrants', circle(18), { method: 'quadrants' }, /`18` holes/],
    [
      'quadrants of a slot',
      { kind: 'slot', lengthMm: 400, widthMm: 200, count: 16, straddle: true },
      { method: 'quadrants' },
      /a slot has no quadrants/,
    ],
    ['a spiral on a circle', circle(8), { method: 'spiral' }, /no spiral/],
    [
      'crosswise on points',
      { kind: 'points', points: [] },
      { method: 'cross' },
      /a list of points has no opposite holes/,
    ],
    [
      'crosswise on a short arc',
      { kind: 'arc', diameterMm: 300, count: 5, firstDeg: 0, spanDeg: 180 },
      { method: 'cross' },
      /an arc has no opposite holes/,
    ],
  ])('%s is refused', (_, p, o, problem) => {
    expect(sequenceFault(p, o)?.problem).toMatch(problem);
  });
});

describe('quadrants', () => {
  test('each four moves take one bolt of every quadrant, the opposite one second; every quadrant from end to end', () => {
    for (const n of COUNTS.filter((c) => c % 4 === 0 && c >= 16)) {
      const { order } = tighteningSequence(circle(n), { method: 'quadrants' });
      const quadrant = order.map((h) => Math.floor((h - 1) / (n / 4)) + 1);
      for (let k = 0; k < n; k += 4) expect(quadrant.slice(k, k + 4)).toEqual([1, 3, 2, 4]);
      for (const q of [1, 2, 3, 4]) {
        const own = order.filter((h) => Math.floor((h - 1) / (n / 4)) + 1 === q);
        expect(own).toEqual([...own].sort((a, b) => a - b));
      }
      const b = balance(circle(n), order);
      expect(b.largestOffset).toBeCloseTo(1, 9);
      expect(b.longestRun).toBe(1);
    }
  });
  test('sixteen, written out', () => {
    expect(tighteningSequence(circle(16), { method: 'quadrants' }).order.join(' ')).toBe(
      '1 9 5 13 2 10 6 14 3 11 7 15 4 12 8 16',
    );
    expect(tighteningSequence(circle(16), { method: 'quadrants', tools: 2 }).moves.slice(0, 3)).toEqual([
      [1, 9],
      [5, 13],
      [2, 10],
    ]);
  });
});

describe('arcs, slots, concentric circles', () => {
  test('an arc goes from its middle outwards, changing sides', () => {
    const p: Pattern = { kind: 'arc', diameterMm: 300, count: 9, firstDeg: -60, spanDeg: 120 };
    expect(tighteningSequence(p).order).toEqual([5, 6, 4, 7, 3, 8, 2, 9, 1]);
    expect(tighteningSequence({ ...p, count: 6 }).order).toEqual([3, 4, 2, 5, 1, 6]);
  });
  test('over more than a half circle it goes crosswise, and leans less than from the middle outwards', () => {
    for (const [count, spanDeg] of [
      [8, 270],
      [13, 300],
      [9, 200],
      [24, 345],
    ] as const) {
      const p: Pattern = { kind: 'arc', diameterMm: 300, count, firstDeg: 20, spanDeg };
      const cross = tighteningSequence(p);
      expect(cross.method).toBe('cross');
      const spiral = tighteningSequence(p, { method: 'spiral' });
      expect(sumOfShares(p, cross.order)).toBeLessThan(sumOfShares(p, spiral.order));
    }
  });
  test('a slot goes outwards from its middle; even counts in opposite pairs', () => {
    fc.assert(
      fc.property(slotPatterns, (p) => {
        const holes = patternHoles(p);
        const { order } = tighteningSequence(p);
        const cx = holes.reduce((s, h) => s + h.xMm, 0) / holes.length;
        const cy = holes.reduce((s, h) => s + h.yMm, 0) / holes.length;
        const away = order.map((n) => Math.hypot((holes[n - 1]?.xMm ?? 0) - cx, (holes[n - 1]?.yMm ?? 0) - cy));
        const rising = away.every((d, i) => i === 0 || d >= (away[i - 1] ?? 0) - 1e-5 * Math.max(...away));
        const even = holes.length % 2 === 1 || balance(p, order).offsetAfter.every((o, i) => i % 2 === 0 || o < 1e-6);
        return rising && even;
      }),
    );
  });
  test('two circles are worked as one: after an even number nothing leans (even counts), the inner circle first', () => {
    fc.assert(
      fc.property(circlesPatterns, (p) => {
        if (p.kind !== 'circles' || p.circles.some((c) => c.count % 2 === 1)) return true;
        const { order } = tighteningSequence(p);
        const first = patternHoles(p)[(order[0] ?? 1) - 1];
        const radius = Math.hypot(first?.xMm ?? 0, first?.yMm ?? 0);
        const { offsetAfter } = balance(p, order);
        return (
          Math.abs(radius - Math.min(...p.circles.map((c) => c.diameterMm)) / 2) < 1e-6 &&
          offsetAfter.every((o, i) => o <= (i % 2 === 0 ? 1 + 1e-6 : 1e-6))
        );
      }),
      { numRuns: 300 },
    );
  });
  test('odd circles go by balance: never as much as two bolts to one side, and better than going round', () => {
    for (const [a, b] of [
      [3, 3],
      [5, 5],
      [7, 7],
      [5, 6],
      [9, 6],
      [10, 5],
      [15, 10],
      [21, 7],
    ] as const) {
      for (const firstDeg of [0, 180 / b]) {
        const p: Pattern = {
          kind: 'circles',
          circles: [
            { diameterMm: 400, count: a, firstDeg: 0 },
            { diameterMm: 300, count: b, firstDeg },
          ],
        };
        const { order } = tighteningSequence(p);
        expect(balance(p, order).largestOffset).toBeLessThan(1.35);
        expect(sumOfShares(p, order)).toBeLessThan(0.7 * sumOfShares(p, circularSequence(p).order));
      }
    }
  });
});

function sumOfShares(p: Pattern, order: readonly number[]): number {
  return balance(p, order).centroidShare.reduce((sum, share) => sum + share ** 2, 0);
}
