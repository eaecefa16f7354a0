/** Overall length under a pattern and overall width at its right. */

import type { PlacedHole } from './bolts.ts';
import { exitFrom } from './collide.ts';
import { along, dimensionText, linearDimension } from './dimensions.ts';
import type { FigureStyle } from './figure-style.ts';
import type { PatternSpec } from './pattern-spec.ts';
import { distance, type Point, type Primitive } from './primitives.ts';
import type { Box } from './text-size.ts';

/** What is dimensioned: the line of a slot, else the box around the holes; sides in the drawing, lengths on the part in mm. */
interface Extent {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly lengthMm: number;
  readonly widthMm: number;
}

export function overallDimensions(
  spec: PatternSpec,
  holes: readonly PlacedHole[],
  scale: number,
  obstacles: readonly Box[],
  style: FigureStyle,
): Primitive[] {
  const box = extentOf(spec, holes, scale);
  // A hole at the very side is where its extension line starts; a slot's line has none there when the holes straddle it.
  const lowest = (x: number): Point =>
    holes
      .filter((h) => Math.abs(h.centre.x - x) < 1e-6)
      .reduce((p, h) => (h.centre.y > p.y ? h.centre : p), { x, y: spec.pattern.kind === 'slot' ? 0 : box.top });
  const rightmost = (y: number): Point =>
    holes
      .filter((h) => Math.abs(h.centre.y - y) < 1e-6)
      .reduce((p, h) => (h.centre.x > p.x ? h.centre : p), { x: spec.pattern.kind === 'slot' ? 0 : box.left, y });
  const common = { clear: style.symbol + 0.6, obstacles, size: style.small, head: style.dimensionHead } as const;
  const marks: Primitive[] = [];
  if (box.right - box.left > 1) {
    const down = { x: 0, y: 1 };
    marks.push(...spanning(lowest(box.left), lowest(box.right), down, box.bottom, box.lengthMm, common, style));
  }
  if (box.bottom - box.top > 1) {
    const right = { x: 1, y: 0 };
    marks.push(...spanning(rightmost(box.top), rightmost(box.bottom), right, box.right, box.widthMm, common, style));
  }
  return marks;
}

function extentOf(spec: PatternSpec, holes: readonly PlacedHole[], scale: number): Extent {
  const p = spec.pattern;
  if (p.kind === 'slot') {
    const [x, y] = [(p.lengthMm / 2) * scale, (p.widthMm / 2) * scale];
    return { left: -x, right: x, top: -y, bottom: y, lengthMm: p.lengthMm, widthMm: p.widthMm };
  }
  const xs = holes.map((h) => h.centre.x);
  const ys = holes.map((h) => h.centre.y);
  const real = (axis: 'x' | 'y'): number =>
    Math.max(...spec.holes.map((h) => h.at[axis])) - Math.min(...spec.holes.map((h) => h.at[axis]));
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
    lengthMm: real('x'),
    widthMm: real('y'),
  };
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
    // From behind the last number or bolt that stands in its way.
    const start = common.obstacles.reduce(
      (most, box) => Math.max(most, exitFrom(box, p, out, 0.5)),
      style.symbol + 0.6,
    );
    const length = distance(p, level(p)) + style.symbol + 0.6;
    if (length - start > 0.5) {
      marks.push({ kind: 'line', from: along(p, out, start), to: along(p, out, length), stroke: 'thin', ink: 'ink' });
    }
  }
  return marks;
}
