/** The body of a pattern figure at one scale: circle or outline, bolts, moves, dimensions; the captions come later. */

import { arrowhead } from './arrow.ts';
import { boltSymbols, firstMoves, holeNumbers, moveArrows, type PlacedHole } from './bolts.ts';
import { boxToCircle, boxToSegment } from './collide.ts';
import { along, dimensionText, linearDimension } from './dimensions.ts';
import type { FigureStyle } from './figure-style.ts';
import type { PatternSpec } from './pattern-spec.ts';
import { distance, onCircle, type Point, type Primitive, type TextMark } from './primitives.ts';
import { type Box, CAP_HEIGHT, textBox, textWidth } from './text-size.ts';

export interface Body {
  readonly marks: readonly Primitive[];
  /** Middle of the pattern. */
  readonly middle: Point;
  /** Top of everything within `reach` mm left and right of the middle: the TOP mark stands on it. */
  readonly crown: (reach: number) => number;
  /** The diameter's text stands free of moves and symbols. */
  readonly clear: boolean;
}

/** In the middle of the box around the holes, or of the circle. */
export function middleOf(spec: PatternSpec): Point {
  if (spec.kind === 'circle') return { x: 0, y: 0 };
  const xs = spec.holes.map((h) => h.at.x);
  const ys = spec.holes.map((h) => h.at.y);
  return { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
}

/**
 * `scale`: mm in the drawing for each mm of the part. `numbered`: order numbers stand in the symbols. `trial`: only the outer bounds
 * matter yet, and the dimension inside the circle, whose place takes long to find, is left out.
 */
export function patternBody(
  spec: PatternSpec,
  style: FigureStyle,
  scale: number,
  numbered: boolean,
  trial = false,
): Body {
  const m = middleOf(spec);
  const holes: PlacedHole[] = spec.holes.map((h) => ({
    ...h,
    centre: { x: (h.at.x - m.x) * scale, y: (h.at.y - m.y) * scale },
  }));
  const middle: Point = { x: 0, y: 0 };
  const moves = firstMoves(spec, holes, style);
  const differ = spec.holes.some((h) => h.number !== h.order);
  const every = numbered ? 1 : labelEvery(holes, style);
  const texts =
    numbered && !differ
      ? []
      : holeNumbers(
          holes,
          outwards(spec, holes),
          style,
          (hole) => every === 1 || hole.number === 1 || hole.number % every === 0,
        );
  const obstacles = texts.map(textBox);
  const marks: Primitive[] = [];
  const radius = ((spec.diameter ?? 0) / 2) * scale;
  if (spec.kind === 'circle') {
    marks.push({ kind: 'circle', centre: middle, radius, stroke: 'centre', ink: 'ink' });
  }
  marks.push(...moveArrows(moves, style));
  let clear = true;
  if (spec.dimensions === false) {
    // Where bolts are only loosened their distances do not matter.
  } else if (spec.kind === 'circle' && holes.length > 1) {
    if (!trial) {
      const found = diameter(spec, holes, radius, moves, style);
      clear = found.clear;
      marks.push(...found.marks);
    }
    marks.push(...chord(holes, obstacles, style));
  } else if (spec.kind !== 'circle') marks.push(...overall(spec, holes, obstacles, style));
  marks.push(...boltSymbols(holes, style, numbered), ...texts);
  const crown = (reach: number): number => {
    const tops = [
      ...holes.filter((h) => Math.abs(h.centre.x) < reach + style.symbol).map((h) => h.centre.y - style.symbol),
      ...obstacles.filter((b) => b.left < reach && b.right > -reach).map((b) => b.top),
    ];
    return Math.min(
      ...tops,
      spec.kind === 'circle' ? -radius : Number.POSITIVE_INFINITY,
      ...holes.map((h) => h.centre.y),
    );
  };
  return { marks, middle, crown, clear };
}

/** The direction in which a hole's number stands: away from the middle, and at right angles to the edges of a rectangle. */
function outwards(spec: PatternSpec, holes: readonly PlacedHole[]): (hole: PlacedHole) => Point {
  const halfX = Math.max(...holes.map((h) => Math.abs(h.centre.x)));
  const halfY = Math.max(...holes.map((h) => Math.abs(h.centre.y)));
  return ({ centre }) => {
    const edge = {
      x: Math.abs(Math.abs(centre.x) - halfX) < 1e-6 ? Math.sign(centre.x) : 0,
      y: Math.abs(Math.abs(centre.y) - halfY) < 1e-6 ? Math.sign(centre.y) : 0,
    };
    return spec.kind !== 'circle' && (edge.x !== 0 || edge.y !== 0) ? edge : centre;
  };
}

/** Every how-manieth hole gets its number when not all can have one: 2, 5, 10, 20 ... so that they lie 6 mm apart or more. */
function labelEvery(holes: readonly PlacedHole[], style: FigureStyle): number {
  const [a, b] = holes;
  const pitch = a === undefined || b === undefined ? 10 : Math.max(0.1, distance(a.centre, b.centre));
  const need = textWidth('000', style.small) + 1.5;
  return [1, 2, 5, 10, 20, 50, 100].find((k) => k * pitch >= need) ?? 100;
}

/**
 * The bolt circle's diameter on a line through the middle with an arrowhead at the circle, between two bolts; the text interrupts
 * the line where it keeps the greatest distance from moves and symbols.
 */
function diameter(
  spec: PatternSpec,
  holes: readonly PlacedHole[],
  radius: number,
  moves: readonly { readonly from: Point; readonly to: Point }[],
  style: FigureStyle,
): { readonly marks: readonly Primitive[]; readonly clear: boolean } {
  const label = `Ø\u00a0${dimensionText(spec.diameter ?? 0)}`;
  const w = textWidth(label, style.small);
  const h = CAP_HEIGHT * style.small;
  const angles = holes.map((hole) => (Math.atan2(hole.centre.x, -hole.centre.y) * 180) / Math.PI).sort((a, b) => a - b);
  const gaps =
    angles.length < 2
      ? [(angles[0] ?? 0) + 90]
      : angles.map((a, i) => (a + (angles[i + 1] ?? (angles[0] ?? 0) + 360)) / 2);
  let best: { angle: number; box: Box; score: number; air: number } | undefined;
  for (const angle of gaps) {
    const direction = onCircle({ x: 0, y: 0 }, 1, angle);
    for (let t = -0.3; t <= 0.81; t += 0.05) {
      const c = { x: direction.x * radius * t, y: direction.y * radius * t };
      const box: Box = {
        left: c.x - w / 2 - 0.6,
        right: c.x + w / 2 + 0.6,
        top: c.y - h / 2 - 0.5,
        bottom: c.y + h / 2 + 0.5,
      };
      const air = Math.min(
        ...moves.map((mv) => boxToSegment(box, mv.from, mv.to)),
        ...holes.map((hole) => boxToCircle(box, hole.centre, style.symbol) - 0.6),
        // Room for the arrowhead beyond the text.
        radius * (1 - t) - halfAlong(w + 1.2, h + 1, direction) - style.dimensionHead,
      );
      const flat = Math.abs(direction.x) * 0.4;
      // On the arrow's side of the middle where that is free.
      const score = Math.min(air, 1.5) + (air < 0.2 ? -5 : 0) + flat - (t < 0.15 ? 0.8 : 0);
      if (best === undefined || score > best.score + 1e-6) best = { angle, box, score, air };
    }
  }
  if (best === undefined) return { marks: [], clear: true };
  const direction = onCircle({ x: 0, y: 0 }, 1, best.angle);
  const tip = along({ x: 0, y: 0 }, direction, radius);
  const centre = { x: (best.box.left + best.box.right) / 2, y: (best.box.top + best.box.bottom) / 2 };
  const t = centre.x * direction.x + centre.y * direction.y;
  const half = halfAlong(w + 1.2, h + 1, direction);
  const tail = Math.min(-Math.min(5, radius / 3), t - half - 3);
  const marks: Primitive[] = [];
  const piece = (from: number, to: number): void => {
    if (to - from > 0.3)
      marks.push({
        kind: 'line',
        from: along({ x: 0, y: 0 }, direction, from),
        to: along({ x: 0, y: 0 }, direction, to),
        stroke: 'thin',
        ink: 'ink',
      });
  };
  piece(tail, t - half);
  piece(t + half, radius);
  marks.push(arrowhead({ x: 0, y: 0 }, tip, style.dimensionHead, 'ink'));
  const text: TextMark = {
    kind: 'text',
    at: { x: centre.x, y: centre.y + h / 2 },
    text: label,
    size: style.small,
    anchor: 'middle',
    weight: 'regular',
    role: 'dimension',
    ink: 'ink',
  };
  marks.push(text);
  return { marks, clear: best.air > 0 };
}

/** Half the length that a box takes on a line through its centre. */
function halfAlong(width: number, height: number, direction: Point): number {
  const byWidth = Math.abs(direction.x) < 1e-9 ? Number.POSITIVE_INFINITY : width / 2 / Math.abs(direction.x);
  const byHeight = Math.abs(direction.y) < 1e-9 ? Number.POSITIVE_INFINITY : height / 2 / Math.abs(direction.y);
  return Math.min(byWidth, byHeight);
}

/** The distance of two neighbours, in the corner at lower right where the circle leaves room. */
function chord(holes: readonly PlacedHole[], obstacles: readonly Box[], style: FigureStyle): Primitive[] {
  // Two holes stand a diameter apart, which is dimensioned already.
  if (holes.length < 3) return [];
  let best: { a: PlacedHole; b: PlacedHole; turn: number } | undefined;
  holes.forEach((a, i) => {
    const b = holes[(i + 1) % holes.length];
    if (b === undefined) return;
    const middle = { x: (a.centre.x + b.centre.x) / 2, y: (a.centre.y + b.centre.y) / 2 };
    const angle = (Math.atan2(middle.x, -middle.y) * 180) / Math.PI;
    const turn = Math.abs(angle - 135);
    if (best === undefined || turn < best.turn - 1e-6) best = { a, b, turn };
  });
  if (best === undefined) return [];
  const { a, b } = best;
  const real = distance(a.at, b.at);
  const d = distance(a.centre, b.centre) || 1;
  let out = { x: -(b.centre.y - a.centre.y) / d, y: (b.centre.x - a.centre.x) / d };
  const middle = { x: (a.centre.x + b.centre.x) / 2, y: (a.centre.y + b.centre.y) / 2 };
  if (out.x * middle.x + out.y * middle.y < 0) out = { x: -out.x, y: -out.y };
  const near = obstacles.filter((box) => {
    const c = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
    return Math.min(distance(c, a.centre), distance(c, b.centre)) < style.symbol * 3 + 2 || distance(c, middle) < d;
  });
  return linearDimension({
    a: a.centre,
    b: b.centre,
    out,
    offset: style.symbol + 3.2,
    clear: style.symbol + 0.6,
    obstacles: near,
    text: dimensionText(real),
    size: style.small,
    head: style.dimensionHead,
  });
}

/** Overall length under the pattern, overall width at its right, and one pitch above it. */
function overall(
  spec: PatternSpec,
  holes: readonly PlacedHole[],
  obstacles: readonly Box[],
  style: FigureStyle,
): Primitive[] {
  const xs = holes.map((h) => h.centre.x);
  const ys = holes.map((h) => h.centre.y);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const real = (axis: 'x' | 'y'): number =>
    Math.max(...spec.holes.map((h) => h.at[axis])) - Math.min(...spec.holes.map((h) => h.at[axis]));
  const lowest = (x: number): Point =>
    holes
      .filter((h) => Math.abs(h.centre.x - x) < 1e-6)
      .reduce((p, h) => (h.centre.y > p.y ? h.centre : p), { x, y: top });
  const rightmost = (y: number): Point =>
    holes
      .filter((h) => Math.abs(h.centre.y - y) < 1e-6)
      .reduce((p, h) => (h.centre.x > p.x ? h.centre : p), { x: left, y });
  const common = { clear: style.symbol + 0.6, obstacles, size: style.small, head: style.dimensionHead } as const;
  const marks: Primitive[] = [];
  if (right - left > 1) {
    marks.push(...spanning(lowest(left), lowest(right), { x: 0, y: 1 }, bottom, real('x'), common, style));
  }
  if (bottom - top > 1) {
    marks.push(...spanning(rightmost(top), rightmost(bottom), { x: 1, y: 0 }, right, real('y'), common, style));
  }
  return marks;
}

interface Common {
  readonly clear: number;
  readonly obstacles: readonly Box[];
  readonly size: number;
  readonly head: number;
}

/** A dimension whose ends may lie at different depths: both extension lines run to one line beyond the outermost hole. */
function spanning(
  a: Point,
  b: Point,
  out: Point,
  edge: number,
  real: number,
  common: Common,
  style: FigureStyle,
): Primitive[] {
  const level = (p: Point): Point => (out.x === 0 ? { x: p.x, y: edge } : { x: edge, y: p.y });
  const marks = linearDimension({
    ...common,
    a: level(a),
    b: level(b),
    out,
    offset: style.symbol + 3.2,
    text: dimensionText(real),
  });
  for (const p of [a, b]) {
    const from = along(p, out, style.symbol + 0.6);
    const to = along(level(p), out, style.symbol + 0.6);
    if (distance(p, level(p)) > 0.5) marks.push({ kind: 'line', from, to, stroke: 'thin', ink: 'ink' });
  }
  return marks;
}
