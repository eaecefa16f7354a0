/** The diameter or radius of a bolt circle, on a line through its middle with an arrowhead at the circle. */

import { arrowhead } from './arrow.ts';
import type { InTheWay } from './beside.ts';
import { boxToCircle, boxToSegment, pointToSegment } from './collide.ts';
import { along } from './dimensions.ts';
import type { FigureStyle } from './figure-style.ts';
import { onCircle, type Point, type Primitive, type Segment } from './primitives.ts';
import { type Box, CAP_HEIGHT, overlaps, textWidth } from './text-size.ts';

export interface DiameterDimension {
  readonly marks: readonly Primitive[];
  /** The text, with its air. */
  readonly box?: Box;
  readonly lines: readonly Segment[];
  /** The text stands free of moves and symbols. */
  readonly clear: boolean;
}

export interface DiameterInput {
  readonly label: string;
  /** In the drawing, mm. */
  readonly radius: number;
  /** Directions in which the line may run, degrees clockwise from the top. */
  readonly angles: readonly number[];
  /** The line ends behind its text: a radius whose middle may lie outside the figure. */
  readonly short: boolean;
  /** Radii of other circles about the same middle, whose lines the text must not cross. */
  readonly others: readonly number[];
}

const MIDDLE: Point = { x: 0, y: 0 };
/** Room about the middle for the lines of several circles, mm. */
const CROSSING = 1.5;
/** Of more directions than this only some are tried. */
const MOST_ANGLES = 60;
/** How far inside its arc the line of a radius reaches at most, mm. */
const SHORT_REACH = 20;

interface Found {
  readonly direction: Point;
  readonly centre: Point;
  readonly box: Box;
  readonly score: number;
  readonly air: number;
}

/** The text interrupts the line where it keeps the greatest distance from everything in the way. */
export function diameterDimension(input: DiameterInput, style: FigureStyle, way: InTheWay): DiameterDimension {
  const w = textWidth(input.label, style.small);
  const h = CAP_HEIGHT * style.small;
  const best = bestPlace(input, w, h, style, way);
  if (best === undefined) return { marks: [], lines: [], clear: true };
  const { direction, centre, box } = best;
  const tip = along(MIDDLE, direction, input.radius);
  const t = centre.x * direction.x + centre.y * direction.y;
  const half = halfAlong(w + 1.2, h + 1, direction);
  const behind = tailOf(input, t, half);
  const pieces = [
    [behind, t - half],
    [t + half, input.radius],
  ] as const;
  const lines = pieces
    .filter(([from, to]) => to - from > 0.3)
    .map(([from, to]) => ({ from: along(MIDDLE, direction, from), to: along(MIDDLE, direction, to) }));
  const marks: Primitive[] = lines.map((line) => ({ kind: 'line', ...line, stroke: 'thin', ink: 'ink' }));
  marks.push(arrowhead(MIDDLE, tip, style.dimensionHead, 'ink'));
  marks.push({
    kind: 'text',
    at: { x: centre.x, y: centre.y + h / 2 },
    text: input.label,
    size: style.small,
    anchor: 'middle',
    weight: 'regular',
    role: 'dimension',
    ink: 'ink',
  });
  return { marks, box, lines, clear: best.air > 0 };
}

function bestPlace(input: DiameterInput, w: number, h: number, style: FigureStyle, way: InTheWay): Found | undefined {
  const every = Math.ceil(input.angles.length / MOST_ANGLES);
  const near = withinCircle(way, input.radius);
  const lines = input.angles
    .filter((_, i) => i % every === 0)
    .map((angle) => {
      const direction = onCircle(MIDDLE, 1, angle);
      const from = input.short ? Math.max(0, input.radius - SHORT_REACH) : -leastTail(input);
      const line = { from: along(MIDDLE, direction, from), to: along(MIDDLE, direction, input.radius) };
      return { direction, air: lineAir(line, near) };
    });
  const free = lines.filter((line) => line.air > 0.2);
  let best: Found | undefined;
  for (const { direction, air: beside } of free.length === 0 ? lines : free) {
    const half = halfAlong(w + 1.2, h + 1, direction);
    for (const t of textPlaces(input, half, style)) {
      const centre = along(MIDDLE, direction, input.radius * t);
      const box: Box = {
        left: centre.x - w / 2 - 0.6,
        right: centre.x + w / 2 + 0.6,
        top: centre.y - h / 2 - 0.5,
        bottom: centre.y + h / 2 + 0.5,
      };
      const tail = tailOf(input, input.radius * t, half);
      const air = Math.min(
        beside,
        tail < -leastTail(input) ? lineAir({ from: along(MIDDLE, direction, tail), to: MIDDLE }, near) : 2,
        airAround(box, near, input.others),
        // Room for the arrowhead beyond the text.
        input.radius * (1 - t) - half - style.dimensionHead,
      );
      const flat = Math.abs(direction.x) * 0.4;
      // On the arrow's side of the middle where that is free.
      const score = Math.min(air, 1.5) + (air < 0.2 ? -5 : 0) + flat - (t < 0.15 ? 0.8 : 0);
      if (best === undefined || score > best.score + 1e-6) best = { direction, centre, box, score, air };
    }
  }
  return best;
}

/** The line runs on past the middle by this much, mm. */
function leastTail({ radius }: DiameterInput): number {
  return Math.min(5, radius / 3);
}

/** Where the line ends behind a text at `t` mm from the middle that takes `half` mm of it to either side. */
function tailOf(input: DiameterInput, t: number, half: number): number {
  return input.short ? t - half - 2.5 : Math.min(-leastTail(input), t - half - 3);
}

/** What reaches into the circle: numbers outside it are in nobody's way. */
function withinCircle(way: InTheWay, radius: number): InTheWay {
  const isNear = (box: Box): boolean => boxToCircle(box, MIDDLE, radius) < 0.5;
  return { ...way, boxes: way.boxes.filter(isNear) };
}

/** Places of the text along the line, as shares of the radius: anywhere inside the circle, or near its arrowhead. */
function textPlaces({ radius, short }: DiameterInput, half: number, style: FigureStyle): readonly number[] {
  if (!short) return Array.from({ length: 24 }, (_, i) => -0.3 + 0.05 * i);
  const nearest = half + style.dimensionHead + 0.5;
  return Array.from({ length: 17 }, (_, i) => 1 - (nearest + 0.5 * i) / radius);
}

function airAround(box: Box, way: InTheWay, circles: readonly number[]): number {
  let air = 2;
  for (const s of way.segments) air = Math.min(air, boxToSegment(box, s.from, s.to));
  for (const d of way.discs) air = Math.min(air, boxToCircle(box, d.centre, d.radius) - 0.6);
  for (const other of way.boxes) if (overlaps(box, other, 0.3)) air = -1;
  for (const radius of circles) if (crosses(box, radius)) air = Math.min(air, -0.5);
  // The lines of the other circles run through the middle.
  if (circles.length > 0 && boxToCircle(box, MIDDLE, CROSSING) < 0) air = Math.min(air, -0.5);
  return air;
}

/** The circle about the middle runs through the box. */
function crosses(box: Box, radius: number): boolean {
  const far = Math.max(-box.left, box.right) ** 2 + Math.max(-box.top, box.bottom) ** 2;
  return boxToCircle(box, MIDDLE, radius) < 0 && far > radius * radius;
}

/** The line itself crosses no symbol and no text; it may cross other lines but not run along them. */
function lineAir(line: Segment, way: InTheWay): number {
  let air = 2;
  for (const d of way.discs) air = Math.min(air, pointToSegment(d.centre, line.from, line.to) - d.radius);
  for (const box of way.boxes) air = Math.min(air, boxToSegment(box, line.from, line.to));
  for (const s of way.segments) if (runsAlong(line, s)) air = -1;
  return air;
}

function runsAlong(a: Segment, b: Segment): boolean {
  const [ax, ay, bx, by] = [a.to.x - a.from.x, a.to.y - a.from.y, b.to.x - b.from.x, b.to.y - b.from.y];
  const sine = Math.abs(ax * by - ay * bx) / (Math.hypot(ax, ay) * Math.hypot(bx, by) || 1);
  const apart = Math.min(pointToSegment(a.to, b.from, b.to), pointToSegment(b.from, a.from, a.to));
  return sine < 0.12 && Math.min(apart, pointToSegment(b.to, a.from, a.to)) < 1.2;
}

/** Half the length that a box takes on a line through its centre. */
function halfAlong(width: number, height: number, direction: Point): number {
  const byWidth = Math.abs(direction.x) < 1e-9 ? Number.POSITIVE_INFINITY : width / 2 / Math.abs(direction.x);
  const byHeight = Math.abs(direction.y) < 1e-9 ? Number.POSITIVE_INFINITY : height / 2 / Math.abs(direction.y);
  return Math.min(byWidth, byHeight);
}

/** Directions half-way between neighbouring places on a full circle, degrees clockwise from the top; at right angles to one alone. */
export function gapsBetween(places: readonly Point[]): readonly number[] {
  const angles = places.map((p) => (Math.atan2(p.x, -p.y) * 180) / Math.PI).sort((a, b) => a - b);
  const [first = 0] = angles;
  return angles.length < 2 ? [first + 90] : angles.map((a, i) => (a + (angles[i + 1] ?? first + 360)) / 2);
}
