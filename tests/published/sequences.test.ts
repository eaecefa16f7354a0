/** Tightening orders against the ASME PCC-1 legacy cross-pattern table and the properties stated for other layouts. */

import { describe, expect, test } from 'vitest';
import { balance, circularSequence, type Pattern, tighteningSequence } from '../../src/geometry/index.ts';
import { planRounds } from '../../src/torque/index.ts';
import { quantity } from '../../src/units/index.ts';

const circle = (count: number): Pattern => ({ kind: 'circle', diameterMm: 200, count, firstDeg: 0 });

/** ASME PCC-1-2019 Table 3 (4 to 24; 16 and 24 as quoted in a public source file); 28 and up memory, ASME PCC-1 (2010, 2013). */
const LEGACY: readonly (readonly [count: number, order: string])[] = [
  [4, '1 3 2 4'],
  [8, '1 5 3 7 2 6 4 8'],
  [12, '1 7 4 10 2 8 5 11 3 9 6 12'],
  [16, '1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16'],
  [20, '1 11 6 16 3 13 8 18 5 15 10 20 2 12 7 17 4 14 9 19'],
  [24, '1 13 7 19 4 16 10 22 2 14 8 20 5 17 11 23 3 15 9 21 6 18 12 24'],
  [28, '1 15 8 22 4 18 11 25 6 20 13 27 2 16 9 23 5 19 12 26 7 21 14 28 3 17 10 24'],
  [36, '1 2 3 19 20 21 10 11 12 28 29 30 4 5 6 22 23 24 13 14 15 31 32 33 7 8 9 25 26 27 16 17 18 34 35 36'],
  [
    44,
    '1 2 3 4 25 26 27 28 13 14 15 16 37 38 39 40 5 6 7 8 29 30 31 32 17 18 19 20 41 42 43 44 9 10 11 12 33 34 35 36 21 22 23 24',
  ],
];

/** Place in the order of each position, clockwise from 1: the same table read the other way. */
const ORDER_AT: readonly (readonly [count: number, orderAt: string])[] = [
  [4, '1 3 2 4'],
  [8, '1 5 3 7 2 6 4 8'],
  [12, '1 5 9 3 7 11 2 6 10 4 8 12'],
  [20, '1 13 5 17 9 3 15 7 19 11 2 14 6 18 10 4 16 8 20 12'],
  [28, '1 13 25 5 17 9 21 3 15 27 7 19 11 23 2 14 26 6 18 10 22 4 16 28 8 20 12 24'],
  [36, '1 2 3 13 14 15 25 26 27 7 8 9 19 20 21 31 32 33 4 5 6 16 17 18 28 29 30 10 11 12 22 23 24 34 35 36'],
  [
    44,
    '1 2 3 4 17 18 19 20 33 34 35 36 9 10 11 12 25 26 27 28 41 42 43 44 5 6 7 8 21 22 23 24 37 38 39 40 13 14 15 16 29 30 31 32',
  ],
];

describe('ASME PCC-1 legacy cross pattern', () => {
  test.each(LEGACY)('%d bolts', (count, order) => {
    const sequence = tighteningSequence(circle(count));
    expect(sequence.order.join(' ')).toBe(order);
    expect(sequence.published).toContain('ASME PCC-1');
  });
  test.each(ORDER_AT)('%d bolts, place of each position', (count, orderAt) => {
    expect(tighteningSequence(circle(count)).orderAt.join(' ')).toBe(orderAt);
  });
  test.each([4, 8, 12, 16, 20, 24, 28, 32])('%d bolts: every four sum to nothing, plain and doubled', (count) => {
    const p = circle(count);
    const b = balance(p, tighteningSequence(p).order);
    for (let k = 4; k <= count; k += 4) {
      expect(b.offsetAfter[k - 1]).toBeLessThan(1e-9);
      expect(b.doubledAfter[k - 1]).toBeLessThan(1e-9);
    }
    expect(b.largestOffset).toBeCloseTo(1, 4);
  });
  test.each([
    [36, 1.9924, 2.9696],
    [44, 5.1723, 5.1723],
  ])('%d bolts: largest sum %d after an even number, %d after any', (count, even, any) => {
    const p = circle(count);
    const b = balance(p, tighteningSequence(p).order);
    expect(Math.max(...b.offsetAfter.filter((_, i) => i % 2 === 1))).toBeCloseTo(even, 4);
    expect(b.largestOffset).toBeCloseTo(any, 4);
    expect(b.longestRun).toBe(tighteningSequence(p).groups?.[0]?.length);
  });
  test.each([
    [36, 12, '1 7 4 10 2 8 5 11 3 9 6 12'],
    [44, 11, '1 7 4 10 2 8 5 11 3 9 6'],
  ])('%d bolts in %d groups', (count, groups, order) => {
    const found = tighteningSequence(circle(count)).groups ?? [];
    const size = count / groups;
    expect(found.map((g) => ((g[0] ?? 0) - 1) / size + 1).join(' ')).toBe(order);
  });
  test('the five-stud star is 1 3 5 2 4 (common practice), and no table is claimed for it', () => {
    const sequence = tighteningSequence(circle(5));
    expect(sequence.order).toEqual([1, 3, 5, 2, 4]);
    expect(sequence.published).toBeUndefined();
  });
});

describe('properties where no order is published', () => {
  test.each([6, 10, 14, 18, 22, 26, 30, 34])(
    '%d bolts: opposite pairs, the second a quarter turn on to within a pitch',
    (count) => {
      const p = circle(count);
      const { order, published } = tighteningSequence(p);
      for (let k = 0; k < count; k += 2) expect(Math.abs((order[k] ?? 0) - (order[k + 1] ?? 0))).toBe(count / 2);
      for (const [i, offset] of balance(p, order).offsetAfter.entries())
        if (i % 2 === 1) expect(offset).toBeLessThan(1e-9);
      const turn = (((order[2] ?? 0) - (order[0] ?? 0)) * 360) / count;
      expect(Math.abs(turn - 90)).toBeLessThanOrEqual(360 / count);
      expect(published).toBeUndefined();
    },
  );
  test.each([3, 5, 7, 9, 11, 13, 15, 17])('%d bolts: every move to within a pitch of opposite', (count) => {
    const { order } = tighteningSequence(circle(count));
    for (let k = 1; k < count; k++) {
      const step = ((order[k] ?? 0) - (order[k - 1] ?? 0) + count) % count;
      expect(Math.abs(step - count / 2)).toBeLessThanOrEqual(1);
    }
  });
  test('six as wheel studs are tightened (common practice): across, then a quarter turn on', () => {
    expect(tighteningSequence(circle(6)).order).toEqual([1, 4, 2, 5, 3, 6]);
  });
  test.each([52, 60, 64, 100])(
    '%d bolts, for which no row is known: groups opposite to within one, none claimed',
    (count) => {
      const { groups = [], published } = tighteningSequence(circle(count));
      expect(published).toBeUndefined();
      const places = groups.map((g) => ((g[0] ?? 0) - 1) / 4);
      for (let k = 0; k + 1 < places.length; k += 2) {
        expect(Math.abs(Math.abs((places[k] ?? 0) - (places[k + 1] ?? 0)) - groups.length / 2)).toBeLessThanOrEqual(1);
      }
    },
  );
  test('a row of nine (after TM 5-3805-248-23-1): from the centre outwards, sides alternate', () => {
    const { order } = tighteningSequence({ kind: 'rectangle', lengthMm: 800, widthMm: 0, along: 9, across: 1 });
    expect(order[0]).toBe(5);
    const places = order.map((n) => n - 5);
    for (let k = 1; k < 9; k++) expect(Math.abs(places[k] ?? 0)).toBeGreaterThanOrEqual(Math.abs(places[k - 1] ?? 0));
    for (let k = 2; k < 9; k++) expect(Math.sign(places[k] ?? 0)).toBe(-Math.sign(places[k - 1] ?? 0));
  });
  test('a head of two rows of five: middle column first, outwards, rows alternate', () => {
    const points = [40, -40].flatMap((yMm) => [0, 1, 2, 3, 4].map((i) => ({ xMm: 90 * i, yMm })));
    const { order } = tighteningSequence({ kind: 'points', points });
    const column = order.map((n) => Math.abs(((n - 1) % 5) - 2));
    const row = order.map((n) => Math.floor((n - 1) / 5));
    expect(new Set(order.slice(0, 2))).toEqual(new Set([3, 8]));
    for (let k = 1; k < 10; k++) expect(column[k]).toBeGreaterThanOrEqual(column[k - 1] ?? 9);
    for (let k = 1; k < 10; k++) if (column[k] === column[k - 1]) expect(row[k]).not.toBe(row[k - 1]);
  });
  test('tie bolts in pairs along a bedplate (marine engine practice): the centre pair first, then outwards in pairs', () => {
    const points = [0, 1, 2, 3, 4, 5, 6].flatMap((i) => [1, -1].map((side) => ({ xMm: 900 * i, yMm: 700 * side })));
    const { order } = tighteningSequence({ kind: 'points', points });
    const pair = order.map((n) => Math.abs(Math.floor((n - 1) / 2) - 3));
    expect(pair.slice(0, 2)).toEqual([0, 0]);
    for (let k = 1; k < 14; k++) expect(pair[k]).toBeGreaterThanOrEqual(pair[k - 1] ?? 9);
  });
});

describe('several tools (memory of ASME PCC-1-2013 App. F: opposite bolts together)', () => {
  test.each([8, 12, 20])(
    '%d bolts with 2 and with 4 tools: the cross pattern, pair by pair and four by four',
    (count) => {
      const legacy =
        LEGACY.find(([n]) => n === count)?.[1]
          .split(' ')
          .map(Number) ?? [];
      for (const tools of [2, 4] as const) {
        const { moves } = tighteningSequence(circle(count), { tools });
        expect(moves.flat()).toEqual(legacy);
        expect(moves.every((m) => m.length === tools)).toBe(true);
      }
    },
  );
  test('quadrant by quadrant (memory of the same): sixteen bolts, one of each quadrant in every four', () => {
    const { order, published } = tighteningSequence(circle(16), { method: 'quadrants' });
    for (let k = 0; k < 16; k += 4) {
      expect(new Set(order.slice(k, k + 4).map((n) => Math.floor((n - 1) / 4))).size).toBe(4);
    }
    expect(published).toBeUndefined();
  });
});

describe('rounds: shares rise strictly to 100 %, the cross pattern is followed by a circular pass at 100 %', () => {
  test.each<[string, readonly number[], boolean]>([
    ['ASME PCC-1-2019 Table 1, lower shares', [0.2, 0.5, 1], true],
    ['ASME PCC-1-2019 Table 1, upper shares', [0.3, 0.7, 1], true],
    ['isolation-gasket sheet after PCC-1-2010', [0.3, 0.7, 1], true],
    ['gasket trade after the Fluid Sealing Association', [0.3, 0.6, 1], true],
    ['TM 5-3805-248-23-1, two passes above 30 lbf·ft', [0.7, 1], false],
  ])('%s', (_, shares, gasketed) => {
    const rounds = planRounds(quantity('torque', 200, 'N·m'), shares, gasketed ? 1 : 0, 1);
    const sequence = rounds.filter((r) => r.pass === 'sequence').map((r) => r.torque.value);
    expect(sequence).toEqual(shares.map((share) => Math.round(200 * share)));
    if (!gasketed) return;
    expect((sequence[0] ?? 0) / 200).toBeGreaterThanOrEqual(0.15);
    expect((sequence[0] ?? 0) / 200).toBeLessThanOrEqual(0.35);
    expect(rounds.at(-1)?.pass).toBe('circular');
    expect(rounds.at(-1)?.torque.value).toBe(200);
  });
  test('the circular pass goes clockwise from neighbour to neighbour', () => {
    const { order } = circularSequence(circle(12));
    expect(order).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(balance(circle(12), order).longestRun).toBe(12);
  });
});
