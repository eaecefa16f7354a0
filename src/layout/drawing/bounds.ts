/** Box around a list of marks, and moving marks. */

import { type ArcMark, onCircle, type Point, type Primitive, STROKE_WIDTH_MM } from './primitives.ts';
import { type Box, textBox } from './text-size.ts';

export function boundsOf(marks: readonly Primitive[]): Box {
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  for (const mark of marks) {
    const box = boxOf(mark);
    left = Math.min(left, box.left);
    top = Math.min(top, box.top);
    right = Math.max(right, box.right);
    bottom = Math.max(bottom, box.bottom);
  }
  return { left, top, right, bottom };
}

/** The box of one mark; of a curved path that of its control points, which is never too small. */
export function boxOf(mark: Primitive): Box {
  if (mark.kind === 'text') return textBox(mark);
  const half = STROKE_WIDTH_MM[mark.stroke] / 2;
  if (mark.kind === 'arc') return arcBox(mark, half);
  if (mark.kind === 'circle') {
    const r = mark.radius + half;
    return { left: mark.centre.x - r, right: mark.centre.x + r, top: mark.centre.y - r, bottom: mark.centre.y + r };
  }
  const points = mark.kind === 'line' ? [mark.from, mark.to] : mark.points;
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  return {
    left: Math.min(...xs) - half,
    right: Math.max(...xs) + half,
    top: Math.min(...ys) - half,
    bottom: Math.max(...ys) + half,
  };
}

/** The ends of an arc and the quarter points that lie on it. */
function arcBox(arc: ArcMark, half: number): Box {
  const angles = [arc.from, arc.to];
  for (let quarter = Math.ceil(arc.from / 90) * 90; quarter < arc.to; quarter += 90) angles.push(quarter);
  const points = angles.map((a) => onCircle(arc.centre, arc.radius, a));
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  return {
    left: Math.min(...xs) - half,
    right: Math.max(...xs) + half,
    top: Math.min(...ys) - half,
    bottom: Math.max(...ys) + half,
  };
}

export function moveMarks(marks: readonly Primitive[], dx: number, dy: number): Primitive[] {
  const p = (q: Point): Point => ({ x: q.x + dx, y: q.y + dy });
  return marks.map((mark) => moveMark(mark, p));
}

function moveMark(mark: Primitive, p: (q: Point) => Point): Primitive {
  switch (mark.kind) {
    case 'line':
      return { ...mark, from: p(mark.from), to: p(mark.to) };
    case 'path':
      return { ...mark, points: mark.points.map(p) };
    case 'circle':
    case 'arc':
      return { ...mark, centre: p(mark.centre) };
    case 'text':
      return { ...mark, at: p(mark.at) };
  }
}
