/** The angles of a bolt arc: from the top to hole 1, and from the first hole to the last, on arcs outside the holes. */

import type { ArcPattern } from '../../geometry/index.ts';
import { arrowhead } from './arrow.ts';
import { arcEnds } from './centre-lines.ts';
import { extent } from './collide.ts';
import { dimensionMark } from './dimensions.ts';
import type { FigureStyle } from './figure-style.ts';
import { onCircle, type Point, type Primitive } from './primitives.ts';
import { type Box, CAP_HEIGHT, overlaps, textWidth } from './text-size.ts';

const MIDDLE: Point = { x: 0, y: 0 };
/** From one dimension arc to the next, mm. */
const STEP = 4.4;

/** An angle with at most one decimal: `22.5°`. */
export function angleText(degrees: number): string {
  return `${degrees.toFixed(1).replace(/\.0$/u, '')}°`;
}

/** Where hole 1 of an arc is: `60° before TOP`, clockwise being forwards. */
export function fromTop(firstDeg: number): string {
  const turn = signed(firstDeg);
  if (Math.abs(turn) < 0.05) return 'at TOP';
  return `${angleText(Math.abs(turn))} ${turn < 0 ? 'before' : 'past'} TOP`;
}

interface Sector {
  readonly from: number;
  readonly to: number;
}

/** `radius` of the bolt arc in the drawing; `obstacles`: hole numbers outside it; `alone`: without the angle of hole 1. */
export function arcAngles(
  p: ArcPattern,
  radius: number,
  obstacles: readonly Box[],
  style: FigureStyle,
  alone: boolean,
): Primitive[] {
  const ends = arcEnds(p);
  const turn = signed(p.firstDeg);
  const first: Sector | undefined =
    alone || Math.abs(turn) < 0.05 ? undefined : { from: Math.min(0, turn), to: Math.max(0, turn) };
  const least = obstacles.reduce((most, box) => {
    const c = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
    const d = Math.hypot(c.x, c.y) || 1;
    return Math.max(most, d + extent(box, { x: c.x / d, y: c.y / d }));
  }, radius + style.symbol);
  const inner = least + 2.2;
  // An angle too small for its text has it outside its arc, so that it must be the outer one.
  const firstOutside = first !== undefined && !holdsText(first, inner, style);
  const outer = inner + STEP;
  const firstRadius = firstOutside ? outer : inner;
  const spanRadius = first === undefined || firstOutside ? inner : outer;
  const spanFrom = turn + (ends.from - p.firstDeg);
  const span: Sector = { from: spanFrom, to: spanFrom + p.spanDeg };
  const far = turn === span.from ? span.to : span.from;
  const reach = Math.max(spanRadius, first === undefined ? 0 : firstRadius) + 1;
  const marks: Primitive[] = [
    // Through hole 1 to both arcs, through the last hole to that of the span.
    ray(turn, radius + style.symbol + 0.6, reach, obstacles),
    ray(far, radius + style.symbol + 0.6, spanRadius + 1, obstacles),
  ];
  if (first !== undefined) {
    marks.push({ ...ray(0, radius - 1, Math.max(reach, outer), obstacles), stroke: 'centre' });
    marks.push(
      ...sectorMarks(first, firstRadius, { angles: spanRadius > firstRadius ? [far] : [], boxes: obstacles }, style),
    );
  }
  marks.push(...sectorMarks(span, spanRadius, { angles: alone ? [] : [0], boxes: obstacles }, style));
  return marks;
}

/** Degrees from the top, the short way: -180 to 180. */
function signed(degrees: number): number {
  const turn = ((degrees % 360) + 360) % 360;
  return turn > 180 ? turn - 360 : turn;
}

/** A radial extension line. */
function ray(
  degrees: number,
  from: number,
  to: number,
  obstacles: readonly Box[],
): Extract<Primitive, { kind: 'line' }> {
  const u = onCircle(MIDDLE, 1, degrees);
  const start = obstacles.reduce((most, box) => {
    const c = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
    const t = c.x * u.x + c.y * u.y;
    const aside = Math.abs(c.x * u.y - c.y * u.x);
    const wide = extent(box, { x: -u.y, y: u.x }) + 0.5;
    return t > 0 && aside < wide ? Math.max(most, t + extent(box, u) + 0.5) : most;
  }, from);
  return {
    kind: 'line',
    from: { x: u.x * Math.min(start, to - 0.5), y: u.y * Math.min(start, to - 0.5) },
    to: { x: u.x * to, y: u.y * to },
    stroke: 'thin',
    ink: 'ink',
  };
}

function label(sector: Sector, style: FigureStyle): { readonly text: string; readonly w: number; readonly h: number } {
  const text = angleText(sector.to - sector.from);
  return { text, w: textWidth(text, style.small), h: CAP_HEIGHT * style.small };
}

/** The arc has room for its text and an arrowhead at either end. */
function holdsText(sector: Sector, radius: number, style: FigureStyle): boolean {
  const { w } = label(sector, style);
  return lengthOf(sector, radius) > w + 1.6 + 2 * style.dimensionHead + 2;
}

function lengthOf(sector: Sector, radius: number): number {
  return ((sector.to - sector.from) * Math.PI * radius) / 180;
}

/** What the text of an angle keeps away from: directions of lines, and numbers. */
interface Avoid {
  readonly angles: readonly number[];
  readonly boxes: readonly Box[];
}

/** The arc with an arrowhead at either end; its text interrupts it. */
function sectorMarks(sector: Sector, radius: number, avoid: Avoid, style: FigureStyle): Primitive[] {
  const { text, w, h } = label(sector, style);
  const perMm = 180 / (Math.PI * radius);
  if (!holdsText(sector, radius, style)) return shortSector(sector, radius, style);
  const middle = textPlace(sector, radius, avoid, w, h);
  const centre = onCircle(MIDDLE, radius, middle);
  const half = halfOnArc(centre, radius, w + 1.4, h + 1.2) * perMm;
  const head = style.dimensionHead * 0.5 * perMm;
  return [
    piece(radius, sector.from + head, middle - half),
    piece(radius, middle + half, sector.to - head),
    ...heads(sector, radius, style, 1),
    dimensionMark(centre, text, style.small),
  ];
}

/** Arrowheads from outside with tails, the text beyond the arc. */
function shortSector(sector: Sector, radius: number, style: FigureStyle): Primitive[] {
  const { text, w, h } = label(sector, style);
  const perMm = 180 / (Math.PI * radius);
  const tail = style.dimensionHead * 1.8 * perMm;
  const u = onCircle(MIDDLE, 1, (sector.from + sector.to) / 2);
  const box = { left: 0, right: w, top: 0, bottom: h };
  const away = radius + extent(box, u) + 1;
  return [
    piece(radius, sector.from - tail, sector.to + tail),
    ...heads(sector, radius, style, -1),
    dimensionMark({ x: u.x * away, y: u.y * away }, text, style.small),
  ];
}

/** Tips at the ends of the sector; `side` 1: heads lie within it, -1: outside. */
function heads(sector: Sector, radius: number, style: FigureStyle, side: 1 | -1): Primitive[] {
  const back = (style.dimensionHead * 180 * side) / (Math.PI * radius);
  return [
    arrowhead(
      onCircle(MIDDLE, radius, sector.from + back),
      onCircle(MIDDLE, radius, sector.from),
      style.dimensionHead,
      'ink',
    ),
    arrowhead(
      onCircle(MIDDLE, radius, sector.to - back),
      onCircle(MIDDLE, radius, sector.to),
      style.dimensionHead,
      'ink',
    ),
  ];
}

function piece(radius: number, from: number, to: number): Primitive {
  return { kind: 'arc', centre: MIDDLE, radius, from, to, stroke: 'thin', ink: 'ink' };
}

/** The middle of the sector, or the place nearest to it where the text stands free. */
function textPlace(sector: Sector, radius: number, avoid: Avoid, w: number, h: number): number {
  const middle = (sector.from + sector.to) / 2;
  const half = (sector.to - sector.from) / 2;
  const need = ((w / 2 + 1.6) * 180) / (Math.PI * radius);
  const isFree = (at: number): boolean => {
    const { x, y } = onCircle(MIDDLE, radius, at);
    const box = { left: x - w / 2, right: x + w / 2, top: y - h / 2, bottom: y + h / 2 };
    return avoid.angles.every((a) => Math.abs(signed(at - a)) > need) && avoid.boxes.every((b) => !overlaps(box, b, 1));
  };
  for (let i = 0; i <= 40; i++) {
    for (const side of [1, -1]) {
      const at = middle + (side * half * 0.8 * i) / 40;
      if (isFree(at)) return at;
    }
  }
  return middle;
}

/** Half the length of the arc that a box about a place on it takes, mm: found by walking, since the arc bends. */
function halfOnArc(centre: Point, radius: number, width: number, height: number): number {
  const start = Math.atan2(centre.x, -centre.y);
  const isIn = (s: number): boolean => {
    const p = { x: radius * Math.sin(start + s / radius), y: -radius * Math.cos(start + s / radius) };
    return Math.abs(p.x - centre.x) < width / 2 && Math.abs(p.y - centre.y) < height / 2;
  };
  let s = 0.1;
  while ((isIn(s) || isIn(-s)) && s < width) s += 0.1;
  return s;
}
