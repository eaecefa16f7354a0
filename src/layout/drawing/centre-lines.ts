/** The line on which the holes of a pattern lie, as drawn: circles, arc, obround, edges; and which way is out from it. */

import type { Pattern } from '../../geometry/index.ts';
import type { PlacedHole } from './bolts.ts';
import { arcPoints } from './paths.ts';
import type { PatternSpec } from './pattern-spec.ts';
import { type ArcMark, onCircle, type PathMark, type Point, type Primitive } from './primitives.ts';

const MIDDLE: Point = { x: 0, y: 0 };
/** An arc's centre line runs on this far past its last holes, mm. */
const RUN_ON = 2.4;

/** From hole 1 to the last, degrees clockwise from the top; `from` is the smaller. */
export function arcEnds(p: Extract<Pattern, { kind: 'arc' }>): { readonly from: number; readonly to: number } {
  const end = p.firstDeg + (p.numbering === 'anticlockwise' ? -p.spanDeg : p.spanDeg);
  return { from: Math.min(p.firstDeg, end), to: Math.max(p.firstDeg, end) };
}

/** Centre lines about the middle of the pattern. `symbol`: radius of a bolt symbol, past which an arc's line runs on. */
export function centreLines(spec: PatternSpec, scale: number, symbol: number): Primitive[] {
  const p = spec.pattern;
  switch (p.kind) {
    case 'circle':
      return [ring(p.diameterMm, scale)];
    case 'circles':
      return p.circles.map((c) => ring(c.diameterMm, scale));
    case 'arc':
      return [arcLine(p, scale, symbol)];
    case 'slot':
      return [obround(p.lengthMm * scale, p.widthMm * scale)];
    case 'rectangle':
      if (p.along < 2 && p.across < 2) return [];
      return [edges(p.along > 1 ? p.lengthMm * scale : 0, p.across > 1 ? p.widthMm * scale : 0)];
    case 'points':
      return [];
  }
}

function ring(diameterMm: number, scale: number): Primitive {
  return { kind: 'circle', centre: MIDDLE, radius: (diameterMm / 2) * scale, stroke: 'centre', ink: 'ink' };
}

function arcLine(p: Extract<Pattern, { kind: 'arc' }>, scale: number, symbol: number): ArcMark {
  const radius = (p.diameterMm / 2) * scale;
  const { from, to } = arcEnds(p);
  const run = Math.min(((symbol + RUN_ON) / Math.max(radius, 0.1)) * (180 / Math.PI), (360 - (to - from)) / 2);
  return { kind: 'arc', centre: MIDDLE, radius, from: from - run, to: to + run, stroke: 'centre', ink: 'ink' };
}

/** Two straight sides and two half circles, clockwise from the top left. */
function obround(length: number, width: number): PathMark {
  const radius = width / 2;
  const straight = (length - width) / 2;
  const cap = (x: number, from: number): readonly Point[] =>
    arcPoints({ kind: 'arc', centre: { x, y: 0 }, radius, from, to: from + 180, stroke: 'none', ink: 'ink' });
  const right = cap(straight, 0);
  const left = cap(-straight, 180);
  const points = [...straightPiece({ x: -straight, y: -radius }, right[0]), ...right.slice(1)];
  points.push(...straightPiece(right.at(-1) ?? MIDDLE, left[0]).slice(1), ...left.slice(1));
  return { kind: 'path', points, curved: true, closed: true, stroke: 'centre', ink: 'ink' };
}

/** A straight line as one cubic piece with its start. */
function straightPiece(from: Point, to: Point = from): Point[] {
  const at = (t: number): Point => ({ x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t });
  return [from, at(1 / 3), at(2 / 3), to];
}

function edges(length: number, width: number): PathMark {
  const [x, y] = [length / 2, width / 2];
  const flat = length === 0 || width === 0;
  const points: Point[] = flat
    ? [
        { x: -x, y: -y },
        { x, y },
      ]
    : [
        { x: -x, y: -y },
        { x, y: -y },
        { x, y },
        { x: -x, y },
      ];
  return { kind: 'path', points, curved: false, closed: !flat, stroke: 'centre', ink: 'ink' };
}

/**
 * The direction in which a hole's number stands: away from the line, at right angles to it. Numbers of an inner circle stand
 * inside it unless `roomBetween` mm between the circles leave place for them.
 */
export function outwards(
  spec: PatternSpec,
  holes: readonly PlacedHole[],
  scale: number,
  roomBetween: number,
): (hole: PlacedHole) => Point {
  const p = spec.pattern;
  if (p.kind === 'circle' || p.kind === 'arc') return ({ centre }) => centre;
  if (p.kind === 'circles') {
    const radii = p.circles.map((c) => (c.diameterMm / 2) * scale);
    return ({ centre, ring: own }) => {
      const next = radii.filter((r) => r > (radii[own] ?? 0));
      const inside = next.length > 0 && Math.min(...next) - (radii[own] ?? 0) < roomBetween;
      return inside ? { x: -centre.x, y: -centre.y } : centre;
    };
  }
  if (p.kind === 'slot') {
    const straight = ((p.lengthMm - p.widthMm) / 2) * scale;
    return ({ centre }) => {
      const past = Math.max(0, Math.abs(centre.x) - straight - 1e-6) * Math.sign(centre.x);
      return { x: past, y: centre.y };
    };
  }
  return fromEdges(holes);
}

/** At right angles to the edge of the box around the holes, from the middle for holes within it; above a row, left of a column. */
function fromEdges(holes: readonly PlacedHole[]): (hole: PlacedHole) => Point {
  const halfX = Math.max(...holes.map((h) => Math.abs(h.centre.x)));
  const halfY = Math.max(...holes.map((h) => Math.abs(h.centre.y)));
  if (halfY < 1e-6) return () => ({ x: 0, y: -1 });
  if (halfX < 1e-6) return () => ({ x: -1, y: 0 });
  return ({ centre }) => {
    const edge = {
      x: Math.abs(Math.abs(centre.x) - halfX) < 1e-6 ? Math.sign(centre.x) : 0,
      y: Math.abs(Math.abs(centre.y) - halfY) < 1e-6 ? Math.sign(centre.y) : 0,
    };
    return edge.x !== 0 || edge.y !== 0 ? edge : centre;
  };
}

/** Out from the bolt line, for features that are moved off a bolt: from the middle; upwards at the middle itself. */
export function onCircleOut(at: Point): Point {
  const d = Math.hypot(at.x, at.y);
  return d < 1e-6 ? onCircle(MIDDLE, 1, 0) : { x: at.x / d, y: at.y / d };
}
