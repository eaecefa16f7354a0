/** Filled arrowheads and the lines that carry them. */

import { distance, type Ink, type LineMark, type PathMark, type Point, type Primitive } from './primitives.ts';

/** Half-width to length of an arrowhead: about 20 degrees between the flanks, as ISO 129-1 draws them. */
const HALF_WIDTH_RATIO = 0.17;

/** A filled arrowhead with its tip at `tip`, pointing away from `from`; `length` in mm. */
export function arrowhead(from: Point, tip: Point, length: number, ink: Ink): PathMark {
  const d = distance(from, tip) || 1;
  const u = { x: (tip.x - from.x) / d, y: (tip.y - from.y) / d };
  const base = { x: tip.x - u.x * length, y: tip.y - u.y * length };
  const w = length * HALF_WIDTH_RATIO;
  return {
    kind: 'path',
    points: [tip, { x: base.x - u.y * w, y: base.y + u.x * w }, { x: base.x + u.y * w, y: base.y - u.x * w }],
    curved: false,
    closed: true,
    stroke: 'none',
    ink,
    fill: ink,
  };
}

/** A straight move from one place to another with an arrowhead at its end, kept `clear` mm away from both. */
export function move(from: Point, to: Point, clear: number, headLength: number, ink: Ink): Primitive[] {
  const d = distance(from, to);
  if (d <= 2 * clear + headLength) return [];
  const u = { x: (to.x - from.x) / d, y: (to.y - from.y) / d };
  const start = { x: from.x + u.x * clear, y: from.y + u.y * clear };
  const tip = { x: to.x - u.x * clear, y: to.y - u.y * clear };
  const neck = { x: tip.x - u.x * headLength * 0.8, y: tip.y - u.y * headLength * 0.8 };
  const line: LineMark = { kind: 'line', from: start, to: neck, stroke: 'move', ink };
  return [line, arrowhead(start, tip, headLength, ink)];
}

/** A dimension line with a filled arrowhead at both ends; the arrows point outwards to `a` and `b`. */
export function dimensionLine(a: Point, b: Point, headLength: number, ink: Ink): Primitive[] {
  const line: LineMark = { kind: 'line', from: a, to: b, stroke: 'thin', ink };
  if (distance(a, b) < 2.4 * headLength) {
    // Too short for arrows inside: they come from outside, with tails.
    const d = distance(a, b) || 1;
    const u = { x: (b.x - a.x) / d, y: (b.y - a.y) / d };
    const tail = headLength * 1.8;
    const outA = { x: a.x - u.x * tail, y: a.y - u.y * tail };
    const outB = { x: b.x + u.x * tail, y: b.y + u.y * tail };
    return [
      { kind: 'line', from: outA, to: outB, stroke: 'thin', ink },
      arrowhead(outA, a, headLength, ink),
      arrowhead(outB, b, headLength, ink),
    ];
  }
  return [line, arrowhead(b, a, headLength, ink), arrowhead(a, b, headLength, ink)];
}
