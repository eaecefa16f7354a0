/** The bolt pattern figure: geometry by a second route, and legibility by the true widths of the faces. */

import { describe, expect, test } from 'vitest';
import { boundsOf, type CircleMark, patternFigure, patternWidthMm } from '../../src/layout/drawing/index.ts';
import { inkBox, symbols, texts } from './figure-boxes.ts';
import { circle, jointWith } from './joints.ts';

const COUNTS = Array.from({ length: 46 }, (_, i) => i + 3);

describe.each(COUNTS)('%i bolts on a circle', (count) => {
  const joint = jointWith(circle(count, 1200, count % 2 === 0 ? 180 / count : 0), {
    view: 'from the cover side',
    top: 'arrow on the rim',
  });
  const drawing = patternFigure(joint, { widthMm: patternWidthMm(joint) });

  test('neighbouring symbols stand a chord apart, by the sine rule', () => {
    const found = new Map(symbols(drawing).map((s) => [s.bolt?.hole ?? 0, s.centre]));
    const ring = drawing.marks.find((m): m is CircleMark => m.kind === 'circle' && m.stroke === 'centre');
    expect(found.size).toBe(count);
    const chord = 2 * (ring?.radius ?? 0) * Math.sin(Math.PI / count);
    for (let hole = 1; hole <= count; hole++) {
      const a = found.get(hole);
      const b = found.get((hole % count) + 1);
      expect(Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0))).toBeCloseTo(chord, 6);
    }
  });

  test('hole numbers run clockwise from the first', () => {
    const ring = drawing.marks.find((m): m is CircleMark => m.kind === 'circle' && m.stroke === 'centre');
    const angle = (hole: number): number => {
      const s = symbols(drawing).find((x) => x.bolt?.hole === hole);
      const a = Math.atan2((s?.centre.x ?? 0) - (ring?.centre.x ?? 0), (ring?.centre.y ?? 0) - (s?.centre.y ?? 0));
      return ((a * 180) / Math.PI + 360) % 360;
    };
    expect((angle(2) - angle(1) + 360) % 360).toBeCloseTo(360 / count, 6);
  });

  test('each symbol holds its place in the order', () => {
    const shown = texts(drawing).filter((t) => t.role === 'order');
    expect(shown.length).toBe(count);
    for (const t of shown) {
      expect(joint.sequence.order[Number(t.text) - 1]).toBe(t.bolt?.hole);
      const symbol = symbols(drawing).find((s) => s.bolt?.hole === t.bolt?.hole);
      expect(Math.abs(t.at.x - (symbol?.centre.x ?? 0))).toBeLessThan(1e-9);
    }
  });

  test('hole numbers stand outside where they differ from the order', () => {
    const ring = drawing.marks.find((m): m is CircleMark => m.kind === 'circle' && m.stroke === 'centre');
    const differ = joint.sequence.order.some((hole, i) => hole !== i + 1);
    const shown = texts(drawing).filter((t) => t.role === 'hole');
    expect(shown.map((t) => Number(t.text)).sort((a, b) => a - b)).toEqual(
      differ ? Array.from({ length: count }, (_, i) => i + 1) : [],
    );
    for (const t of shown) {
      const middle = t.at.y - 0.33 * t.size;
      expect(Math.hypot(t.at.x - (ring?.centre.x ?? 0), middle - (ring?.centre.y ?? 0))).toBeGreaterThan(
        ring?.radius ?? 0,
      );
    }
  });

  test('no two texts overlap, none crosses a symbol that is not its own, none is too small', () => {
    const all = texts(drawing).map((mark) => ({ mark, box: inkBox(mark) }));
    const clashes: string[] = [];
    all.forEach((a, i) => {
      for (const b of all.slice(i + 1)) {
        if (
          a.box.left < b.box.right &&
          b.box.left < a.box.right &&
          a.box.top < b.box.bottom &&
          b.box.top < a.box.bottom
        ) {
          clashes.push(`${a.mark.text} and ${b.mark.text}`);
        }
      }
      for (const s of symbols(drawing)) {
        if (a.mark.role === 'order') continue;
        const dx = Math.max(a.box.left - s.centre.x, 0, s.centre.x - a.box.right);
        const dy = Math.max(a.box.top - s.centre.y, 0, s.centre.y - a.box.bottom);
        if (Math.hypot(dx, dy) < s.radius) clashes.push(`${a.mark.text} and the symbol of hole ${s.bolt?.hole}`);
      }
    });
    expect(clashes).toEqual([]);
    // 8 pt
    for (const { mark } of all) expect(mark.size).toBeGreaterThanOrEqual(2.82);
  });

  test('symbols do not touch and their numbers lie within them', () => {
    const all = symbols(drawing);
    all.forEach((a, i) => {
      for (const b of all.slice(i + 1))
        expect(Math.hypot(a.centre.x - b.centre.x, a.centre.y - b.centre.y)).toBeGreaterThan(a.radius + b.radius);
      const text = texts(drawing).find((t) => t.role === 'order' && t.bolt?.hole === a.bolt?.hole);
      if (text === undefined) throw new Error('no number');
      const box = inkBox(text);
      for (const x of [box.left, box.right])
        for (const y of [box.top, box.bottom])
          expect(Math.hypot(x - a.centre.x, y - a.centre.y)).toBeLessThan(a.radius);
    });
  });

  test('lies within its own size', () => {
    const b = boundsOf(drawing.marks);
    expect(b.left).toBeGreaterThanOrEqual(-0.01);
    expect(b.top).toBeGreaterThanOrEqual(-0.01);
    expect(b.right).toBeLessThanOrEqual(drawing.width + 0.01);
    expect(b.bottom).toBeLessThanOrEqual(drawing.height + 0.01);
  });

  test('dimensions the bolt circle and one chord, marks TOP, names the view', () => {
    const said = texts(drawing).map((t) => t.text);
    expect(said).toContain('Ø\u00a01200\u00a0mm');
    expect(said).toContain(`${(1200 * Math.sin(Math.PI / count)).toFixed(1).replace(/\.0$/u, '')}\u00a0mm`);
    expect(said).toContain('TOP');
    expect(said.join(' ')).toContain('Seen from the cover side');
    expect(said.join(' ')).toContain('arrow on the rim');
  });
});

describe('other patterns', () => {
  test('a rectangle is dimensioned both ways, at one scale', () => {
    const joint = jointWith({ kind: 'rectangle', lengthMm: 300, widthMm: 200, along: 4, across: 3 });
    const drawing = patternFigure(joint, { widthMm: 70 });
    const said = texts(drawing).map((t) => t.text);
    expect(said).toContain('300\u00a0mm');
    expect(said).toContain('200\u00a0mm');
    const at = (hole: number) => symbols(drawing).find((s) => s.bolt?.hole === hole)?.centre ?? { x: 0, y: 0 };
    const [first, fourth] = [at(1), at(4)];
    const lowest = Math.max(...symbols(drawing).map((s) => s.centre.y));
    expect((fourth.x - first.x) / (lowest - first.y)).toBeCloseTo(300 / 200, 6);
  });

  test('listed points keep their places: y counts upwards on the part and downwards on paper', () => {
    const joint = jointWith({
      kind: 'points',
      points: [
        { xMm: 0, yMm: 0 },
        { xMm: 100, yMm: 0 },
        { xMm: 50, yMm: 80 },
      ],
    });
    const drawing = patternFigure(joint, { widthMm: 60 });
    const at = (hole: number) => symbols(drawing).find((s) => s.bolt?.hole === hole)?.centre ?? { x: 0, y: 0 };
    expect(at(3).y).toBeLessThan(at(1).y);
    expect((at(2).x - at(1).x) / (at(1).y - at(3).y)).toBeCloseTo(100 / 80, 6);
  });

  test.each([100, 400])(
    '%i bolts: no number is squeezed; the order stands in a table that names every hole once',
    (count) => {
      const joint = jointWith(circle(count, 4000));
      const drawing = patternFigure(joint, { widthMm: patternWidthMm(joint) });
      const order = texts(drawing).filter((t) => t.role === 'order');
      expect(order.map((t) => Number(t.text))).toEqual([...joint.sequence.order]);
      const boxes = texts(drawing).map(inkBox);
      let clashes = 0;
      boxes.forEach((a, i) => {
        for (const b of boxes.slice(i + 1))
          if (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom) clashes++;
      });
      expect(clashes).toBe(0);
      expect(symbols(drawing).length).toBe(count);
    },
  );

  test.each([1, 2])('%i bolts need no chord', (count) => {
    const joint = jointWith(circle(count, 100));
    const drawing = patternFigure(joint, { widthMm: 52 });
    expect(symbols(drawing).length).toBe(count);
    expect(texts(drawing).filter((t) => t.role === 'dimension').length).toBe(count - 1);
  });

  test('loosening runs the other way', () => {
    const joint = jointWith(circle(8, 160));
    const drawing = patternFigure(joint, { widthMm: 60, loosen: true });
    const first = texts(drawing).find((t) => t.role === 'order' && t.text === '1');
    expect(first?.bolt?.hole).toBe(joint.sequence.order.at(-1));
    expect(drawing.description).toContain(
      `Loosen the holes in this order: ${[...joint.sequence.order].reverse().join(', ')}`,
    );
  });

  test('the description gives the order and the rounds in words', () => {
    const joint = jointWith(circle(8, 160));
    const { description, title } = patternFigure(joint, { widthMm: 60 });
    expect(description).toContain(`Tighten the holes in this order: ${joint.sequence.order.join(', ')}.`);
    for (const round of joint.rounds) expect(description).toContain(`Round ${round.number}: `);
    expect(title).toContain('8 bolts');
  });

  test('hostile words stay whole and inside', () => {
    const joint = jointWith(circle(6, 160), { view: `from ${'x'.repeat(90)} & <side>`, top: 'שלום <b>' });
    const drawing = patternFigure(joint, { widthMm: 60 });
    expect(
      texts(drawing)
        .map((t) => t.text)
        .join('')
        .replaceAll(' ', ''),
    ).toContain('x'.repeat(90));
    const b = boundsOf(drawing.marks);
    expect(b.left).toBeGreaterThanOrEqual(-0.01);
    expect(b.right).toBeLessThanOrEqual(drawing.width + 0.01);
  });
});
