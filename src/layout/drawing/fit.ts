/** The scale at which a pattern figure fills its width. */

import { boundsOf } from './bounds.ts';
import { arcEnds } from './centre-lines.ts';
import type { FigureStyle } from './figure-style.ts';
import { middleOf, patternBody } from './pattern-body.ts';
import type { PatternSpec } from './pattern-spec.ts';
import { distance, onCircle, type Point, type Primitive } from './primitives.ts';
import type { Box } from './text-size.ts';

/** Air between two symbols under which the order numbers move into a table. */
const LEAST_AIR = 0.35;
/** Symbols are made no smaller than this, mm. */
const LEAST_SYMBOL = 0.2;
/** What does not fit at the last is made smaller in such steps. */
const SHRINK = 0.94;
const MOST_SHRINKS = 40;
/** Half the width of the word TOP, which stands over the middle even where no hole is. */
const HALF_TOP = 3.6;

export interface Fitted {
  readonly marks: readonly Primitive[];
  readonly numbered: boolean;
  readonly crown: (x: number, reach: number) => number;
  /** Dimensions that have no place in the body. */
  readonly notes: readonly string[];
  /** Every feature stands where it is. */
  readonly true: boolean;
  readonly bounds: Box;
  /** Where the TOP mark stands: over the middle of the pattern, or of the figure where that shows an arc alone. */
  readonly topX: number;
}

/** Finds the scale at which the body fills the width; small symbols without numbers when the bolts stand too close for that. */
export function bodyFitting(spec: PatternSpec, style: FigureStyle, width: number, height: number): Fitted {
  const numbered = tryScale(spec, style, width, height, true);
  if (numbered !== undefined) return numbered;
  // The way from the top to an arc takes room that its numbers need more.
  if (spec.pattern.kind === 'arc' && spec.arcAlone !== true && spec.dimensions !== false) {
    return bodyFitting({ ...spec, arcAlone: true }, style, width, height);
  }
  for (let symbol = style.symbol; symbol > LEAST_SYMBOL; symbol *= 0.8) {
    const found = tryScale(spec, { ...style, symbol, moveHead: 2, dimensionHead: 2.4 }, width, height, false);
    if (found !== undefined) return found;
  }
  return (
    tryScale(spec, { ...style, symbol: LEAST_SYMBOL }, width, height, false, true) ?? {
      marks: [],
      numbered: false,
      crown: () => 0,
      notes: [],
      true: true,
      topX: 0,
      bounds: { left: 0, right: 0, top: 0, bottom: 0 },
    }
  );
}

function tryScale(
  spec: PatternSpec,
  style: FigureStyle,
  width: number,
  height: number,
  numbered: boolean,
  force = false,
): Fitted | undefined {
  const span = spanOf(spec);
  const apart = closest(spec);
  const least = 2 * style.symbol + (numbered ? LEAST_AIR : Math.min(LEAST_AIR, style.symbol * 0.4));
  // However the dimensions fall, the holes alone must not be wider than the figure.
  if (!force && span.x > 0 && (apart * width) / span.x < least) return undefined;
  let scale = (width - 4 * style.symbol - 8) / Math.max(span.x, span.y, 1e-6);
  if (!Number.isFinite(scale) || Math.max(span.x, span.y) < 1e-6) scale = 1;
  for (let i = 0; i < 6; i++) {
    const b = bodyBounds(spec, patternBody(spec, style, scale, numbered, true).marks);
    const spareX = width - (b.right - b.left) - 0.2;
    const spareY = height - (b.bottom - b.top);
    const byX = span.x < 1e-6 ? Number.POSITIVE_INFINITY : spareX / span.x;
    const byY = span.y < 1e-6 ? Number.POSITIVE_INFINITY : spareY / span.y;
    const change = Math.min(byX, byY);
    if (!Number.isFinite(change)) break;
    if (scale + change <= 0) return undefined;
    scale += change;
    if (Math.abs(change) * Math.max(span.x, span.y) < 0.02) break;
  }
  if (!force && apart * scale < least) return undefined;
  let body = patternBody(spec, style, scale, numbered);
  let b = bodyBounds(spec, body.marks);
  // Numbers that come and go with the scale can keep the search from its end.
  for (let i = 0; force && i < MOST_SHRINKS && b.right - b.left > width; i++) {
    scale *= SHRINK;
    body = patternBody(spec, style, scale, numbered);
    b = bodyBounds(spec, body.marks);
  }
  const unlabelled =
    numbered &&
    spec.holes.some((h) => h.number !== h.order) &&
    body.marks.filter((m) => m.kind === 'text' && m.role === 'hole').length < spec.holes.length;
  if (!force && (unlabelled || b.right - b.left > width + 0.05)) return undefined;
  return {
    marks: body.marks,
    numbered,
    crown: body.crown,
    notes: body.notes,
    true: body.true,
    bounds: b,
    topX: spec.arcAlone === true ? (b.left + b.right) / 2 : 0,
  };
}

/** Bounds of a body with the TOP mark that will stand over its middle. */
function bodyBounds(spec: PatternSpec, marks: readonly Primitive[]): Box {
  const b = boundsOf(marks);
  if (spec.arcAlone === true) return b;
  return { ...b, left: Math.min(b.left, -HALF_TOP), right: Math.max(b.right, HALF_TOP) };
}

/** Width and height on the part, mm, of what grows with the scale. */
function spanOf(spec: PatternSpec): Point {
  const m = middleOf(spec);
  const points = [...spec.holes, ...spec.features].map((h) => h.at).concat(linePoints(spec));
  const xs = points.map((p) => p.x - m.x);
  const ys = points.map((p) => p.y - m.y);
  return { x: Math.max(...xs) - Math.min(...xs), y: Math.max(...ys) - Math.min(...ys) };
}

/** Places that bound the line of a pattern where its holes do not; of an arc with the sector from the top to hole 1. */
function linePoints({ pattern: p, arcAlone }: PatternSpec): Point[] {
  const at = (diameterMm: number, degrees: number): Point => onCircle({ x: 0, y: 0 }, diameterMm / 2, degrees);
  const round = (diameterMm: number): Point[] => [0, 90, 180, 270].map((degrees) => at(diameterMm, degrees));
  switch (p.kind) {
    case 'circle':
      return round(p.diameterMm);
    case 'circles':
      return p.circles.flatMap((c) => round(c.diameterMm));
    case 'slot':
      return [
        { x: -p.lengthMm / 2, y: -p.widthMm / 2 },
        { x: p.lengthMm / 2, y: p.widthMm / 2 },
      ];
    case 'arc': {
      const { from, to } = arcEnds(p);
      const [low, high] = arcAlone === true ? [from, to] : [Math.min(0, from), Math.max(0, to)];
      const quarters = [-360, -270, -180, -90, 0, 90, 180, 270, 360].filter((q) => q > low && q < high);
      return [low, ...quarters, high].map((degrees) => at(p.diameterMm, degrees));
    }
    case 'rectangle':
    case 'points':
      return [];
  }
}

/** Least distance between two holes on the part, in mm. */
function closest(spec: PatternSpec): number {
  let least = Number.POSITIVE_INFINITY;
  const holes = [...spec.holes].sort((a, b) => a.at.x - b.at.x);
  holes.forEach((a, i) => {
    for (let k = i + 1; k < holes.length; k++) {
      const b = holes[k];
      if (b === undefined || b.at.x - a.at.x >= least) break;
      least = Math.min(least, distance(a.at, b.at));
    }
  });
  return least;
}
