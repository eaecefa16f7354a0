/** Turns arcs into cubic pieces, so that every painter needs straight and cubic pieces only. */

import type { ArcMark, Point } from './primitives.ts';
import { onCircle } from './primitives.ts';

/**
 * Points of the cubic pieces of an arc: a start, then three points a piece, no piece longer than 90 degrees
 * (error of the approximation under 0.03 % of the radius).
 */
export function arcPoints(arc: ArcMark): readonly Point[] {
  const sweep = arc.to - arc.from;
  const pieces = Math.max(1, Math.ceil(Math.abs(sweep) / 90 - 1e-9));
  const step = sweep / pieces;
  const handle = (4 / 3) * Math.tan((step * Math.PI) / 720) * arc.radius;
  const points: Point[] = [onCircle(arc.centre, arc.radius, arc.from)];
  for (let i = 0; i < pieces; i++) {
    const a = arc.from + i * step;
    const b = a + step;
    const start = onCircle(arc.centre, arc.radius, a);
    const end = onCircle(arc.centre, arc.radius, b);
    const ta = tangent(a);
    const tb = tangent(b);
    points.push(
      { x: start.x + ta.x * handle, y: start.y + ta.y * handle },
      { x: end.x - tb.x * handle, y: end.y - tb.y * handle },
      end,
    );
  }
  return points;
}

/** Unit vector along the circle, clockwise, at an angle clockwise from 12 o'clock. */
function tangent(degrees: number): Point {
  const a = (degrees * Math.PI) / 180;
  return { x: Math.cos(a), y: Math.sin(a) };
}
