/**
 * Every order that starts at bolt 1, tried for small counts. Measure: the squared distance of the clamped centroid from the
 * centre as a share of the radius, summed over the bolts: what the balance chart shows. Computed here from cosines and
 * sines, not published; the search does not use the code under test.
 */

import { describe, expect, test } from 'vitest';
import { circularSequence, type Pattern, patternHoles, tighteningSequence } from '../../src/geometry/index.ts';
import { circle } from './patterns.ts';

interface Place {
  readonly x: number;
  readonly y: number;
}

const ring = (count: number, times = 1): readonly Place[] =>
  Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i * times) / count;
    return { x: Math.cos(angle), y: Math.sin(angle) };
  });

/** Cost of a state: sum of the places tightened so far, and how many they are. */
type Cost = (x: number, y: number, tight: number) => number;
const centroid: Cost = (x, y, tight) => (x * x + y * y) / tight ** 2;
const resultant: Cost = (x, y) => x * x + y * y;

/** The least total over all orders from place `first`; every order is tried but those already dearer than the best. */
function least(places: readonly Place[], cost: Cost, first = 0): number {
  let best = Number.POSITIVE_INFINITY;
  const used = places.map((_, i) => i === first);
  const search = (x: number, y: number, tight: number, total: number): void => {
    if (total >= best) return;
    if (tight === places.length) {
      best = total;
      return;
    }
    for (const [i, place] of places.entries()) {
      if (used[i] === true) continue;
      used[i] = true;
      search(x + place.x, y + place.y, tight + 1, total + cost(x + place.x, y + place.y, tight + 1));
      used[i] = false;
    }
  };
  const { x, y } = places[first] ?? { x: 0, y: 0 };
  search(x, y, 1, cost(x, y, 1));
  return best;
}

function total(places: readonly Place[], cost: Cost, order: readonly number[]): number {
  let [x, y, sum] = [0, 0, 0];
  for (const [i, n] of order.entries()) {
    x += places[n - 1]?.x ?? 0;
    y += places[n - 1]?.y ?? 0;
    sum += cost(x, y, i + 1);
  }
  return sum;
}

describe('circles: the rule against all orders', () => {
  test.each([
    [3, 1],
    [4, 1],
    [5, 1],
    [6, 1],
    [7, 1.052],
    [8, 1],
    [9, 1.051],
    [10, 1.007],
  ])('%d bolts: at most %d times the best', (n, ratio) => {
    const best = least(ring(n), centroid);
    const rule = total(ring(n), centroid, tighteningSequence(circle(n)).order);
    expect(rule).toBeGreaterThanOrEqual(best - 1e-9);
    expect(rule).toBeLessThanOrEqual(best * ratio + 1e-9);
  });
  test.each([4, 5, 6, 7, 8, 9, 10])('%d bolts: going round is dearer, the more so the more bolts', (n) => {
    const best = least(ring(n), centroid);
    const rule = total(ring(n), centroid, tighteningSequence(circle(n)).order);
    const round = total(ring(n), centroid, circularSequence(circle(n)).order);
    // The rule has at least 96 % of what the best order gains over going round.
    expect((round - rule) / (round - best)).toBeGreaterThanOrEqual(0.96);
  });
  test('by the bare sum of directions the rule stays within 31 % of the best to 11 bolts, 0 % to 6 and for 8', () => {
    for (const [n, ratio] of [
      [3, 1],
      [4, 1],
      [5, 1],
      [6, 1],
      [7, 1.23],
      [8, 1],
      [9, 1.24],
      [10, 1.2],
      [11, 1.31],
    ] as const) {
      const rule = total(ring(n), resultant, tighteningSequence(circle(n)).order);
      expect(rule, `${n}`).toBeLessThanOrEqual(least(ring(n), resultant) * ratio + 1e-9);
    }
  });
  test('odd counts: the star and its mirror image are the only orders whose every move ends within half a pitch of opposite', () => {
    for (const n of [3, 5, 7, 9]) {
      const found: string[] = [];
      const walk = (order: readonly number[]): void => {
        if (order.length === n) found.push(order.join(' '));
        for (let next = 1; next <= n; next++) {
          const step = (next - (order.at(-1) ?? 0) + n) % n;
          if (!order.includes(next) && Math.abs(step - n / 2) <= 0.5) walk([...order, next]);
        }
      };
      walk([1]);
      expect(found.length).toBe(2);
      const rule = tighteningSequence(circle(n)).order;
      if (n > 3) expect(found).toContain(rule.join(' '));
      else expect(rule).toEqual([1, 2, 3]);
    }
  });
});

describe('opposite pairs: the order of the pairs against all orders of pairs', () => {
  // Both bolts of a pair have one doubled direction, so that a pair is one place on a ring of doubled angles.
  const doubled: (count: number) => readonly Place[] = (count) =>
    Array.from({ length: count / 2 }, (_, i) => {
      const angle = (4 * Math.PI * i) / count;
      return { x: Math.cos(angle), y: Math.sin(angle) };
    });
  test.each([
    [4, 1],
    [6, 1],
    [8, 1],
    [10, 1],
    [12, 1],
    [14, 1],
    [16, 1],
    [18, 1],
    // The published order of 20 is dearer than the best; so is the rule for 22.
    [20, 1.41],
    [22, 1.17],
  ])('%d bolts: doubled directions at most %d times the best', (n, ratio) => {
    const pairs = tighteningSequence(circle(n)).order.filter((_, i) => i % 2 === 0);
    const places = pairs.map((hole) => (hole > n / 2 ? hole - n / 2 : hole));
    expect(total(doubled(n), resultant, places)).toBeLessThanOrEqual(least(doubled(n), resultant) * ratio + 1e-9);
  });
});

describe('other layouts: the rule against all orders from its own first hole', () => {
  const rings = (a: number, b: number, turn: number): Pattern => ({
    kind: 'circles',
    circles: [
      { diameterMm: 400, count: a, firstDeg: 0 },
      { diameterMm: 300, count: b, firstDeg: turn },
    ],
  });
  test.each<[string, Pattern, number]>([
    ['circles 4 + 4', rings(4, 4, 45), 1],
    ['circles 4 + 4 in line', rings(4, 4, 0), 1.021],
    ['circles 3 + 3', rings(3, 3, 60), 1],
    ['circles 5 + 4', rings(5, 4, 0), 1.041],
    ['arc of 9 over 240°', { kind: 'arc', diameterMm: 300, count: 9, firstDeg: 0, spanDeg: 240 }, 1],
    // From the middle outwards with the side changed each time, as rows are tightened: the side that leads is never changed.
    ['arc of 7 over 120°', { kind: 'arc', diameterMm: 300, count: 7, firstDeg: 0, spanDeg: 120 }, 1.39],
    ['row of 7', { kind: 'rectangle', lengthMm: 600, widthMm: 0, along: 7, across: 1 }, 1.23],
    ['rectangle 3 by 2', { kind: 'rectangle', lengthMm: 300, widthMm: 200, along: 3, across: 2 }, 1],
    ['rectangle 3 by 3', { kind: 'rectangle', lengthMm: 300, widthMm: 200, along: 3, across: 3 }, 1],
    ['slot of 8', { kind: 'slot', lengthMm: 400, widthMm: 200, count: 8, straddle: true }, 1.021],
    ['slot of 9', { kind: 'slot', lengthMm: 600, widthMm: 200, count: 9, straddle: false }, 1.073],
  ])('%s', (_, p, ratio) => {
    const holes = patternHoles(p);
    const [cx, cy] = [
      holes.reduce((s, h) => s + h.xMm, 0) / holes.length,
      holes.reduce((s, h) => s + h.yMm, 0) / holes.length,
    ];
    const places = holes.map((h) => ({ x: (h.xMm - cx) / 100, y: (h.yMm - cy) / 100 }));
    const { order } = tighteningSequence(p);
    const best = least(places, centroid, (order[0] ?? 1) - 1);
    const rule = total(places, centroid, order);
    expect(rule / best, 'times the best').toBeLessThanOrEqual(ratio + 1e-9);
  });
});
