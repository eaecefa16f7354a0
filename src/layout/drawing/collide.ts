/** Keeps texts of a drawing clear of each other and of the lines: boxes, rays out of boxes, distances. */

import type { Point } from './primitives.ts';
import type { Box } from './text-size.ts';

/** Half of the room that a box takes along a direction (unit vector), measured from its centre. */
export function extent(box: Box, direction: Point): number {
  return (Math.abs(direction.x) * (box.right - box.left) + Math.abs(direction.y) * (box.bottom - box.top)) / 2;
}

/** How far along the ray from `start` in `direction` one must go to have left the box; 0 when the ray misses it. */
export function exitFrom(box: Box, start: Point, direction: Point, margin: number): number {
  const grown: Box = {
    left: box.left - margin,
    right: box.right + margin,
    top: box.top - margin,
    bottom: box.bottom + margin,
  };
  let enter = Number.NEGATIVE_INFINITY;
  let leave = Number.POSITIVE_INFINITY;
  for (const [from, step, low, high] of [
    [start.x, direction.x, grown.left, grown.right],
    [start.y, direction.y, grown.top, grown.bottom],
  ] as const) {
    if (Math.abs(step) < 1e-9) {
      if (from < low || from > high) return 0;
      continue;
    }
    const a = (low - from) / step;
    const b = (high - from) / step;
    enter = Math.max(enter, Math.min(a, b));
    leave = Math.min(leave, Math.max(a, b));
  }
  return leave < enter || leave < 0 ? 0 : leave;
}

/** Least distance between a straight line piece and a box; 0 when they touch. */
export function boxToSegment(box: Box, a: Point, b: Point): number {
  if (inside(box, a) || inside(box, b)) return 0;
  const corners: readonly Point[] = [
    { x: box.left, y: box.top },
    { x: box.right, y: box.top },
    { x: box.right, y: box.bottom },
    { x: box.left, y: box.bottom },
  ];
  let least = Number.POSITIVE_INFINITY;
  corners.forEach((corner, i) => {
    const next = corners[(i + 1) % 4] ?? corner;
    if (cross(a, b, corner, next)) least = 0;
    least = Math.min(
      least,
      pointToSegment(corner, a, b),
      pointToSegment(a, corner, next),
      pointToSegment(b, corner, next),
    );
  });
  return least;
}

function inside(box: Box, p: Point): boolean {
  return p.x >= box.left && p.x <= box.right && p.y >= box.top && p.y <= box.bottom;
}

/** Least distance of a point from a straight piece. */
export function pointToSegment(p: Point, a: Point, b: Point): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const length = dx * dx + dy * dy;
  const t = length === 0 ? 0 : Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / length));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}

function cross(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point): number => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** Least distance between a circle's edge and a box; negative when they overlap. */
export function boxToCircle(box: Box, centre: Point, radius: number): number {
  const dx = Math.max(box.left - centre.x, 0, centre.x - box.right);
  const dy = Math.max(box.top - centre.y, 0, centre.y - box.bottom);
  return Math.hypot(dx, dy) - radius;
}
