/** The charts: values by a second route, and legibility by the true widths of the faces. */

import { describe, expect, test } from 'vitest';
import {
  balance,
  circularSequence,
  type Pattern,
  type SequenceOptions,
  tighteningSequence,
} from '../../src/geometry/index.ts';
import {
  balanceChart,
  boundsOf,
  type Drawing,
  type PathMark,
  type Point,
  roundsChart,
} from '../../src/layout/drawing/index.ts';
import { clashes, texts } from './figure-boxes.ts';
import { circle } from './joints.ts';

function chartOf(pattern: Pattern, options: SequenceOptions = {}): Drawing {
  const { order, moves } = tighteningSequence(pattern, options);
  return balanceChart({
    order: balance(pattern, order, moves),
    circular: balance(pattern, circularSequence(pattern).order),
    count: order.length,
  });
}

function curve(drawing: Drawing, stroke: PathMark['stroke']): readonly Point[] {
  return drawing.marks.flatMap((m) => (m.kind === 'path' && m.stroke === stroke && !m.closed ? m.points : []));
}

function problems(drawing: Drawing): string[] {
  const found = clashes(drawing);
  const b = boundsOf(drawing.marks);
  if (b.left < -0.01 || b.top < -0.01 || b.right > drawing.width + 0.01 || b.bottom > drawing.height + 0.01) {
    found.push(`out of bounds: ${JSON.stringify(b)} in ${drawing.width} by ${drawing.height}`);
  }
  for (const t of texts(drawing)) if (t.size < 2.82) found.push(`${t.text} is set at ${t.size} mm`);
  return found;
}

/** Least distance from a text's box to the places of a curve and the pieces between them, by walking along it. */
function airTo(drawing: Drawing, text: string, points: readonly Point[]): number {
  const mark = texts(drawing).find((t) => t.text === text);
  if (mark === undefined) throw new Error(`${text} is not written`);
  const b = boundsOf([mark]);
  let least = Number.POSITIVE_INFINITY;
  points.forEach((to, i) => {
    const from = points[i - 1] ?? to;
    for (let t = 0; t <= 1; t += 0.05) {
      const [x, y] = [from.x + (to.x - from.x) * t, from.y + (to.y - from.y) * t];
      least = Math.min(least, Math.hypot(Math.max(b.left - x, 0, x - b.right), Math.max(b.top - y, 0, y - b.bottom)));
    }
  });
  return least;
}

describe('the balance chart', () => {
  test('84 by 34 mm unless told otherwise', () => {
    const { width, height } = chartOf(circle(12));
    expect([width, height]).toEqual([84, 34]);
    const { order } = tighteningSequence(circle(12));
    const b = balance(circle(12), order);
    const wide = balanceChart({ order: b, circular: b, count: 12 }, { widthMm: 120, heightMm: 60 });
    expect([wide.width, wide.height]).toEqual([120, 60]);
    expect(problems(wide)).toEqual([]);
  });

  test.each(Array.from({ length: 59 }, (_, i) => i + 2))('%i bolts: legible, both curves named', (count) => {
    const drawing = chartOf(circle(count));
    expect(problems(drawing)).toEqual([]);
    const said = texts(drawing).map((t) => t.text);
    expect(said).toEqual(expect.arrayContaining(['after bolt', 'Offset of the clamped centroid, share of radius']));
    if (count < 4) return;
    expect(said).toEqual(expect.arrayContaining(['in order', 'going round']));
    const [order, round] = [curve(drawing, 'move'), curve(drawing, 'hidden')];
    // A name stands nearer to its own curve than to the other, and on neither.
    for (const [name, own, other] of [
      ['in order', order, round],
      ['going round', round, order],
    ] as const) {
      expect(airTo(drawing, name, own)).toBeGreaterThan(1);
      expect(airTo(drawing, name, own)).toBeLessThan(airTo(drawing, name, other));
    }
  });

  test('going round: the centroid of an arc of k of n bolts stands sin(k pi/n) / (k sin(pi/n)) out (geometric series)', () => {
    const n = 12;
    const drawing = chartOf(circle(n));
    const round = curve(drawing, 'hidden');
    const [zero, one] = [round.at(-1)?.y ?? 0, round[0]?.y ?? 0];
    expect(round.length).toBe(n);
    round.forEach(({ y }, i) => {
      const k = i + 1;
      const share = Math.sin((k * Math.PI) / n) / (k * Math.sin(Math.PI / n));
      expect((zero - y) / (zero - one)).toBeCloseTo(share, 9);
    });
  });

  test('with two tools each move brings the centroid back to the middle', () => {
    const drawing = chartOf(circle(12), { tools: 2 });
    const order = curve(drawing, 'move');
    expect(order.length).toBe(6);
    for (const { y } of order) expect(y).toBeCloseTo(order[0]?.y ?? 0, 9);
    expect(problems(drawing)).toEqual([]);
  });

  test('curves that are the same are named once', () => {
    const said = texts(chartOf(circle(3))).map((t) => t.text);
    expect(said).toContain('in order, the same going round');
    expect(said).not.toContain('going round');
  });

  test('the caption counts neighbours tightened in a row; the description gives the values', () => {
    const drawing = chartOf(circle(8));
    const said = texts(drawing)
      .map((t) => t.text)
      .join(' ');
    expect(said).toContain('Most neighbours tightened in a row: 1 in order, 8 going round.');
    // 1 bolt, an opposite pair, then one of three: 1/3 of the radius.
    expect(drawing.description).toContain('In order: 1: 1.00, 2: 0.00, 3: 0.33, 4: 0.00');
  });

  test.each([
    ['rectangle', { kind: 'rectangle', lengthMm: 300, widthMm: 200, along: 7, across: 5 }],
    ['slot', { kind: 'slot', lengthMm: 400, widthMm: 200, count: 14, straddle: true }],
    ['arc', { kind: 'arc', diameterMm: 300, count: 9, firstDeg: -60, spanDeg: 120 }],
    [
      'circles',
      {
        kind: 'circles',
        circles: [
          { diameterMm: 400, count: 12, firstDeg: 15 },
          { diameterMm: 300, count: 12, firstDeg: 0 },
        ],
      },
    ],
  ] satisfies [string, Pattern][])('%s: legible', (_, pattern) => {
    expect(problems(chartOf(pattern))).toEqual([]);
  });
});

describe('the rounds chart', () => {
  const rounds = [
    { name: 'Round 1, 30 %', shares: [0.1, 0.3, 0.2, 0.2] },
    { name: 'Round 2, 100 %', shares: [0.8, 1, 0.9, 0.9] },
    { name: 'Round 3, from neighbour to neighbour', shares: [1, 1, 1, 1] },
  ];

  test('gives least, mean and most of each round', () => {
    const drawing = roundsChart({ rounds });
    const figures = texts(drawing).filter((t) => t.anchor === 'end' && /^\d+$/u.test(t.text));
    expect(figures.map((t) => t.text)).toEqual(['10', '20', '30', '80', '90', '100', '100', '100', '100']);
    expect(drawing.description).toContain('Round 1, 30 %: least 10 %, mean 20 %, most 30 %.');
  });

  test('every bolt is a dot at its share, on the scale of the axis', () => {
    const drawing = roundsChart({ rounds });
    const dots = drawing.marks.flatMap((m) => (m.kind === 'circle' ? [m.centre] : []));
    expect(dots.length).toBe(12);
    const at = (text: string) => texts(drawing).find((t) => t.text === text && t.anchor === 'middle')?.at.x ?? 0;
    const shares = dots.map((d) => (d.x - at('0')) / (at('100') - at('0')));
    const expected = rounds.flatMap((r) => [...r.shares].sort((a, b) => a - b));
    shares.forEach((share, i) => {
      expect(share).toBeCloseTo(expected[i] ?? 0, 9);
    });
  });

  test('says that it is an illustration', () => {
    const drawing = roundsChart({ rounds });
    expect(texts(drawing).map((t) => t.text)).toContain('illustration');
    expect(drawing.title).toContain('illustration');
  });

  test.each([1, 4, 8, 12, 20, 36, 60])('%i bolts over five rounds: legible, bolts above the target too', (count) => {
    const many = [0.3, 0.6, 1, 1, 1].map((target, r) => ({
      name: `Round ${r + 1}, ${target * 100} %${r > 2 ? ', from neighbour to neighbour' : ''}`,
      shares: Array.from({ length: count }, (_, i) => target * (1 + 0.25 * Math.sin(i * 2.3))),
    }));
    for (const widthMm of [60, 84, 110]) {
      const drawing = roundsChart({ rounds: many }, { widthMm });
      expect(problems(drawing).filter((p) => !p.includes('feature'))).toEqual([]);
    }
  });
});
