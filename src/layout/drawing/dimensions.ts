/** Dimensions with extension lines that leave room for the hole numbers in their way. */

import { dimensionLine } from './arrow.ts';
import { exitFrom, extent } from './collide.ts';
import type { Point, Primitive, TextMark } from './primitives.ts';
import { type Box, CAP_HEIGHT, textWidth } from './text-size.ts';

/** A length in mm as drawings show it: at most one decimal, none when it is whole. */
export function dimensionText(value: number): string {
  const text = value.toFixed(1).replace(/\.0$/u, '');
  return `${text}\u00a0mm`;
}

export interface LinearDimension {
  readonly a: Point;
  readonly b: Point;
  /** Unit vector at right angles to a-b, towards the side on which the dimension stands. */
  readonly out: Point;
  /** Least distance of the dimension line from a-b. */
  readonly offset: number;
  /** Radius around a and b in which the extension lines do not start. */
  readonly clear: number;
  /** Texts in the way of the extension lines. */
  readonly obstacles: readonly Box[];
  readonly text: string;
  readonly size: number;
  readonly head: number;
}

/** A linear dimension with its text beyond the dimension line. */
export function linearDimension(d: LinearDimension): Primitive[] {
  const marks: Primitive[] = [];
  const middle = { x: (d.a.x + d.b.x) / 2, y: (d.a.y + d.b.y) / 2 };
  // The line clears every obstacle near its two ends.
  const reach = d.obstacles
    .map((box) => {
      const centre = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
      return (centre.x - middle.x) * d.out.x + (centre.y - middle.y) * d.out.y + extent(box, d.out) + 1.4;
    })
    .reduce((most, v) => Math.max(most, v), d.offset);
  for (const end of [d.a, d.b]) {
    const start = d.obstacles.reduce((most, box) => Math.max(most, exitFrom(box, end, d.out, 0.5)), d.clear);
    marks.push({
      kind: 'line',
      from: along(end, d.out, start),
      to: along(end, d.out, reach + 1),
      stroke: 'thin',
      ink: 'ink',
    });
  }
  marks.push(...dimensionLine(along(d.a, d.out, reach), along(d.b, d.out, reach), d.head, 'ink'));
  const w = textWidth(d.text, d.size);
  const box: Box = { left: -w / 2, right: w / 2, top: (-CAP_HEIGHT * d.size) / 2, bottom: (CAP_HEIGHT * d.size) / 2 };
  const centre = along(middle, d.out, reach + extent(box, d.out) + 0.9);
  marks.push(dimensionMark(centre, d.text, d.size));
  return marks;
}

/** A dimension's text about `centre`. */
export function dimensionMark(centre: Point, text: string, size: number): TextMark {
  return {
    kind: 'text',
    at: { x: centre.x, y: centre.y + (CAP_HEIGHT * size) / 2 },
    text,
    size,
    anchor: 'middle',
    weight: 'regular',
    role: 'dimension',
    ink: 'ink',
  };
}

export function along(p: Point, direction: Point, length: number): Point {
  return { x: p.x + direction.x * length, y: p.y + direction.y * length };
}
