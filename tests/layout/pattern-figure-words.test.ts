/** What a pattern figure says: its dimensions against the geometry by a second route, its features, its legend. */

import { describe, expect, test } from 'vitest';
import { type Pattern, placeOn } from '../../src/geometry/index.ts';
import { boundsOf, type Drawing } from '../../src/layout/drawing/index.ts';
import { symbols, texts } from './figure-boxes.ts';
import { draw, KINDS, problems } from './figure-kinds.ts';
import { featuresAbout } from './joints.ts';

const COUNTS = Array.from({ length: 57 }, (_, i) => i + 4);

describe('dimensions and words', () => {
  const words = (drawing: Drawing) => texts(drawing).map((t) => t.text);

  test('an arc has its radius or diameter, the angle of hole 1 and its span', () => {
    const short = words(draw({ kind: 'arc', diameterMm: 300, count: 5, firstDeg: -60, spanDeg: 120 }, 70));
    expect(short).toEqual(expect.arrayContaining(['R\u00a0150\u00a0mm', '60°', '120°']));
    const long = words(draw({ kind: 'arc', diameterMm: 300, count: 9, firstDeg: 0, spanDeg: 240 }, 86));
    expect(long).toEqual(expect.arrayContaining(['Ø\u00a0300\u00a0mm', '240°']));
  });

  test('the end of an arc lies where the span says, by the law of cosines', () => {
    const pattern: Pattern = { kind: 'arc', diameterMm: 300, count: 5, firstDeg: -60, spanDeg: 130 };
    const drawing = draw(pattern, 70);
    const at = (hole: number) => symbols(drawing).find((s) => s.bolt?.hole === hole)?.centre ?? { x: 0, y: 0 };
    const line = drawing.marks.find((m) => m.kind === 'arc' && m.stroke === 'centre');
    if (line?.kind !== 'arc') throw new Error('no centre line');
    const apart = Math.hypot(at(1).x - at(5).x, at(1).y - at(5).y);
    const byCosines = Math.sqrt(2 * line.radius ** 2 * (1 - Math.cos((130 * Math.PI) / 180)));
    expect(apart).toBeCloseTo(byCosines, 6);
  });

  test('concentric circles are both dimensioned, in the figure or under it', () => {
    for (const count of COUNTS) {
      const said = words(draw(KINDS['concentric circles']?.(count) ?? { kind: 'points', points: [] }, 86)).join(' ');
      expect(said).toContain('Ø\u00a0600\u00a0mm');
      expect(said).toContain('Ø\u00a0420\u00a0mm');
    }
  });

  test('a slot is dimensioned over its line, not over its holes', () => {
    const drawing = draw({ kind: 'slot', lengthMm: 400, widthMm: 200, count: 14, straddle: true }, 70);
    expect(words(drawing)).toEqual(expect.arrayContaining(['400\u00a0mm', '200\u00a0mm']));
    const line = drawing.marks.find((m) => m.kind === 'path' && m.stroke === 'centre');
    if (line === undefined) throw new Error('no centre line');
    const b = boundsOf([line]);
    expect((b.right - b.left - 0.25) / (b.bottom - b.top - 0.25)).toBeCloseTo(2, 6);
    // Every bolt stands on the line: half the width from the middle line of the slot.
    const scale = (b.bottom - b.top - 0.25) / 200;
    const middle = { x: (b.left + b.right) / 2, y: (b.top + b.bottom) / 2 };
    for (const { centre } of symbols(drawing)) {
      const past = Math.max(0, Math.abs(centre.x - middle.x) - 100 * scale);
      expect(Math.hypot(past, centre.y - middle.y)).toBeCloseTo(100 * scale, 6);
    }
  });

  test('counting anticlockwise is drawn and said', () => {
    const drawing = draw({ kind: 'circle', diameterMm: 400, count: 8, firstDeg: 0, numbering: 'anticlockwise' }, 64);
    const at = (hole: number) => symbols(drawing).find((s) => s.bolt?.hole === hole)?.centre ?? { x: 0, y: 0 };
    expect(at(2).x).toBeLessThan(at(1).x);
    expect(at(8).x).toBeGreaterThan(at(1).x);
    expect(words(drawing).join(' ')).toContain('counted anticlockwise');
    expect(drawing.description).toContain('numbered anticlockwise');
  });

  test('the legend names what is there, with its size, and nothing else', () => {
    const all = words(draw({ kind: 'circle', diameterMm: 400, count: 8, firstDeg: 0 }, 64, featuresAbout(400)));
    expect(all).toEqual(
      expect.arrayContaining([
        '2\u00a0dowels Ø\u00a010\u00a0mm',
        'J1 to J3: 3\u00a0jacking screws Ø\u00a010\u00a0mm',
        'punched line on both flanges',
        'J1',
        'J2',
        'J3',
      ]),
    );
    const none = words(draw({ kind: 'circle', diameterMm: 400, count: 8, firstDeg: 0 }, 64)).join(' ');
    expect(none).not.toMatch(/dowel|jacking|line/u);
  });

  test('features that share a symbol but differ in size are told apart by letters', () => {
    const said = words(
      draw({ kind: 'circle', diameterMm: 400, count: 8, firstDeg: 0 }, 70, [
        { kind: 'dowel', ...placeOn(280, 10), diameterMm: 10 },
        { kind: 'dowel', ...placeOn(280, 190), diameterMm: 8 },
        { kind: 'dowel', ...placeOn(280, 100), diameterMm: 8 },
      ]),
    );
    expect(said).toContain('A: dowel Ø\u00a010\u00a0mm');
    expect(said).toContain('B: 2\u00a0dowels Ø\u00a08\u00a0mm');
    expect(said.filter((t) => t === 'A').length).toBe(1);
    expect(said.filter((t) => t === 'B').length).toBe(2);
  });

  test('a dowel under a bolt symbol is drawn beside it with a line to its place', () => {
    // 12 mm from a bolt on a circle of 400 mm: less than a symbol's radius in a figure of 60 mm.
    const angle = 45 + (12 / 200) * (180 / Math.PI);
    const drawing = draw({ kind: 'circle', diameterMm: 400, count: 4, firstDeg: 45 }, 60, [
      { kind: 'dowel', ...placeOn(400, angle), diameterMm: 8 },
    ]);
    expect(problems(drawing)).toEqual([]);
    const ring = drawing.marks.find((m) => m.kind === 'circle' && m.stroke === 'centre');
    const dowel = drawing.marks.find((m) => m.kind === 'circle' && m.stroke === 'thin');
    if (ring?.kind !== 'circle' || dowel?.kind !== 'circle') throw new Error('not drawn');
    const { radius, centre: c } = ring;
    const [x, y] = [c.x + radius * Math.sin((angle * Math.PI) / 180), c.y - radius * Math.cos((angle * Math.PI) / 180)];
    const leader = drawing.marks.find(
      (m) => m.kind === 'line' && Math.hypot(m.from.x - x, m.from.y - y) < 1e-6 && m.to.x === dowel.centre.x,
    );
    expect(leader).toBeDefined();
  });

  test('a dowel is drawn where it is', () => {
    const drawing = draw({ kind: 'circle', diameterMm: 400, count: 4, firstDeg: 45 }, 70, [
      { kind: 'dowel', ...placeOn(200, 90), diameterMm: 12 },
    ]);
    const ring = drawing.marks.find((m) => m.kind === 'circle' && m.stroke === 'centre');
    const dowel = drawing.marks.find((m) => m.kind === 'circle' && m.stroke === 'thin');
    if (ring?.kind !== 'circle' || dowel?.kind !== 'circle') throw new Error('not drawn');
    expect(dowel.centre.x - ring.centre.x).toBeCloseTo(ring.radius / 2, 6);
    expect(dowel.centre.y).toBeCloseTo(ring.centre.y, 6);
  });
});
