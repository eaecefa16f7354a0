/** Signs for warnings, of our own drawing after the shapes of ISO 3864: yellow triangle for hazards, blue disc for a notice. */

import type { Signal } from '../../resolve/types.ts';
import type { Drawing, Point, Primitive } from './primitives.ts';

const TITLES: Readonly<Record<Signal, string>> = {
  danger: 'Danger',
  warning: 'Warning',
  caution: 'Caution',
  notice: 'Notice',
};

/** The sign of a signal word, `sizeMm` wide. It always stands beside its word and is never the only cue. */
export function safetySign(level: Signal, sizeMm: number): Drawing {
  const marks = level === 'notice' ? disc(sizeMm) : triangle(sizeMm);
  const height = level === 'notice' ? sizeMm : sizeMm * 0.9;
  return { width: sizeMm, height, title: TITLES[level], description: `${TITLES[level]} sign`, marks };
}

/** Equilateral, black border with rounded corners, black mark on yellow. */
function triangle(w: number): Primitive[] {
  const h = w * 0.9;
  const outer = roundedTriangle({ x: w / 2, y: 0 }, { x: w, y: h }, { x: 0, y: h }, w * 0.09);
  const inset = w * 0.075;
  const inner = roundedTriangle(
    { x: w / 2, y: inset * 2 },
    { x: w - inset * 1.78, y: h - inset },
    { x: inset * 1.78, y: h - inset },
    w * 0.055,
  );
  return [
    { kind: 'path', points: outer, curved: true, closed: true, stroke: 'none', ink: 'black', fill: 'black' },
    { kind: 'path', points: inner, curved: true, closed: true, stroke: 'none', ink: 'black', fill: 'safety-yellow' },
    ...exclamation({ x: w / 2, y: h * 0.36 }, h * 0.31, w * 0.055, 'black'),
  ];
}

function disc(w: number): Primitive[] {
  return [
    {
      kind: 'circle',
      centre: { x: w / 2, y: w / 2 },
      radius: w / 2,
      stroke: 'none',
      ink: 'safety-blue',
      fill: 'safety-blue',
    },
    ...exclamation({ x: w / 2, y: w * 0.2 }, w * 0.38, w * 0.065, 'white'),
  ];
}

/** A tapering bar with a round point under it; `top` is the middle of the bar's upper edge. */
function exclamation(top: Point, length: number, half: number, ink: 'black' | 'white'): Primitive[] {
  const foot = top.y + length;
  return [
    {
      kind: 'path',
      points: [
        { x: top.x - half, y: top.y },
        { x: top.x + half, y: top.y },
        { x: top.x + half * 0.5, y: foot },
        { x: top.x - half * 0.5, y: foot },
      ],
      curved: false,
      closed: true,
      stroke: 'none',
      ink,
      fill: ink,
    },
    { kind: 'circle', centre: { x: top.x, y: foot + half * 1.9 }, radius: half * 1.05, stroke: 'none', ink, fill: ink },
  ];
}

/** Cubic pieces around a triangle whose corners are rounded off by `r` mm along each side. */
function roundedTriangle(a: Point, b: Point, c: Point, r: number): Point[] {
  const corners = [a, b, c];
  const points: Point[] = [];
  corners.forEach((corner, i) => {
    const before = corners[(i + 2) % 3] ?? corner;
    const after = corners[(i + 1) % 3] ?? corner;
    const start = towards(corner, before, r);
    const end = towards(corner, after, r);
    const last = points.at(-1);
    if (last === undefined) points.push(start);
    else points.push(towards(last, start, 0.001), towards(start, last, 0.001), start);
    points.push(between(start, corner, 0.6), between(end, corner, 0.6), end);
  });
  const first = points[0];
  const last = points.at(-1);
  if (first !== undefined && last !== undefined)
    points.push(between(last, first, 0.33), between(last, first, 0.67), first);
  return points;
}

function towards(from: Point, to: Point, length: number): Point {
  const d = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return { x: from.x + ((to.x - from.x) * length) / d, y: from.y + ((to.y - from.y) * length) / d };
}

function between(a: Point, b: Point, t: number): Point {
  return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
}
