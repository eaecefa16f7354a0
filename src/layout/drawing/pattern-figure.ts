/** The numbered bolt pattern of a joint: which bolt, in what order, seen from where. */

import type { JointPlan } from '../../resolve/types.ts';
import { boundsOf, moveMarks } from './bounds.ts';
import { type FigureStyle, figureStyle, LEAST_TYPE } from './figure-style.ts';
import { middleOf, patternBody } from './pattern-body.ts';
import type { PatternSpec } from './pattern-spec.ts';
import { type Drawing, distance, type Primitive, type TextMark } from './primitives.ts';
import { specOf } from './spec-of-joint.ts';
import { textWidth } from './text-size.ts';
import { wrapText } from './wrap.ts';

export interface PatternFigureOptions {
  /** Width that the drawing fills, in mm. */
  readonly widthMm: number;
  /** Type size of the order numbers in mm; default 3.0 (8.5 pt). */
  readonly textHeightMm?: number;
  /** The body (without captions) is made no higher than this; default 1.15 times the width. */
  readonly heightMm?: number;
  /** Shows the order in which the joint is loosened instead. */
  readonly loosen?: boolean;
  /** Bolt circle, chord and overall lengths; default true. */
  readonly dimensions?: boolean;
  /** Caption that explains the numbers; default true. */
  readonly legend?: boolean;
}

/** 8.5 pt. */
const ORDER_TYPE = 3.0;
/** Air between two symbols under which the order numbers move into a table. */
const LEAST_AIR = 0.35;
const LINE = 3.7;

/** The figure of a joint. Pure: the same joint and options give the same marks. */
export function patternFigure(joint: JointPlan, options: PatternFigureOptions): Drawing {
  return drawPattern(specOf(joint, options.loosen === true), options);
}

/** A width in mm at which every order number has its own symbol, or 90 when no card could hold that. */
export function patternWidthMm(joint: JointPlan, options: { readonly dimensions?: boolean } = {}): number {
  const spec = specOf(joint);
  return suitableWidth(options.dimensions === false ? { ...spec, dimensions: false } : spec);
}

/** Widths from 52 mm (a few bolts) to 104 mm (a flange of 48). */
export function suitableWidth(spec: PatternSpec): number {
  for (const width of [...(spec.dimensions === false ? [46] : []), 52, 58, 64, 70, 78, 86, 94, 104]) {
    const found = bodyFitting(spec, figureStyle(spec.holes.length, ORDER_TYPE), width, width * 1.15);
    if (found.numbered && found.clear) return width;
  }
  return 94;
}

export function drawPattern(spec: PatternSpec, options: PatternFigureOptions): Drawing {
  const width = Math.max(30, Math.min(400, options.widthMm));
  const style = figureStyle(spec.holes.length, Math.max(LEAST_TYPE, options.textHeightMm ?? ORDER_TYPE));
  const shown = options.dimensions === false ? { ...spec, dimensions: false } : spec;
  const fitted = bodyFitting(shown, style, width, options.heightMm ?? width * 1.15);
  const bounds = boundsOf(fitted.marks);
  const shiftX = width / 2 - (bounds.left + bounds.right) / 2;
  const marks: Primitive[] = [];
  let y = 0;
  y = topMark(spec, style, fitted.crown, bounds.top, shiftX, width, marks);
  const body = moveMarks(fitted.marks, shiftX, y);
  marks.push(...body);
  y += bounds.bottom + 1.5;
  y = captions(spec, style, width, y, fitted.numbered, options.legend !== false, marks);
  if (!fitted.numbered) y = orderTable(spec, style, width, y + 1, marks);
  return { width, height: Math.ceil(y * 10) / 10, title: titleOf(spec), description: describe(spec), marks };
}

interface Fitted {
  readonly marks: readonly Primitive[];
  readonly numbered: boolean;
  readonly crown: (reach: number) => number;
  readonly clear: boolean;
}

/** Finds the scale at which the body fills the width; small symbols without numbers when the bolts stand too close for that. */
function bodyFitting(spec: PatternSpec, style: FigureStyle, width: number, height: number): Fitted {
  const numbered = tryScale(spec, style, width, height, true);
  if (numbered !== undefined) return numbered;
  for (let symbol = style.symbol; symbol > 0.5; symbol *= 0.8) {
    const found = tryScale(spec, { ...style, symbol, moveHead: 2, dimensionHead: 2.4 }, width, height, false);
    if (found !== undefined) return found;
  }
  return (
    tryScale(spec, { ...style, symbol: 0.5 }, width, height, false, true) ?? {
      marks: [],
      numbered: false,
      crown: () => 0,
      clear: true,
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
  let scale = (width - 4 * style.symbol - 8) / Math.max(span.x, span.y, 1e-6);
  if (!Number.isFinite(scale) || Math.max(span.x, span.y) < 1e-6) scale = 1;
  for (let i = 0; i < 6; i++) {
    const b = boundsOf(patternBody(spec, style, scale, numbered, true).marks);
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
  const body = patternBody(spec, style, scale, numbered);
  const b = boundsOf(body.marks);
  const crowded = closest(spec) * scale < 2 * style.symbol + LEAST_AIR;
  const unlabelled =
    numbered &&
    spec.holes.some((h) => h.number !== h.order) &&
    body.marks.filter((m) => m.kind === 'text' && m.role === 'hole').length < spec.holes.length;
  if (!force && (crowded || unlabelled || b.right - b.left > width + 0.05)) return undefined;
  return { marks: body.marks, numbered, crown: body.crown, clear: body.clear };
}

function spanOf(spec: PatternSpec): { x: number; y: number } {
  if (spec.kind === 'circle') return { x: spec.diameter ?? 0, y: spec.diameter ?? 0 };
  const m = middleOf(spec);
  return {
    x: 2 * Math.max(0, ...spec.holes.map((h) => Math.abs(h.at.x - m.x))),
    y: 2 * Math.max(0, ...spec.holes.map((h) => Math.abs(h.at.y - m.y))),
  };
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

/** TOP with a filled pointer over the middle, and what marks it. Returns where the body's own zero comes to lie. */
function topMark(
  spec: PatternSpec,
  style: FigureStyle,
  crown: (reach: number) => number,
  bodyTop: number,
  shiftX: number,
  width: number,
  marks: Primitive[],
): number {
  const lines = spec.top === undefined ? [] : wrapText(spec.top, style.small, width);
  let y = 0;
  lines.forEach((line) => {
    y += LINE;
    marks.push(caption(line, shiftX, y - 0.9, style.small, 'regular', width));
  });
  y += LINE + 0.3;
  marks.push({ ...caption('TOP', shiftX, y - 0.9, style.order + 0.2, 'bold', width), role: 'label' });
  const head = 2.6;
  const tip = { x: shiftX, y: y + head - 0.3 };
  marks.push({
    kind: 'path',
    points: [tip, { x: shiftX - 1.4, y: y - 0.3 }, { x: shiftX + 1.4, y: y - 0.3 }],
    curved: false,
    closed: true,
    stroke: 'none',
    ink: 'ink',
    fill: 'ink',
  });
  const zero = tip.y + 0.8 - crown(textWidth('TOP', style.order) / 2 + 0.5);
  return Math.max(zero, -bodyTop + Math.min(y, 0.5));
}

function captions(
  spec: PatternSpec,
  style: FigureStyle,
  width: number,
  from: number,
  numbered: boolean,
  legend: boolean,
  marks: Primitive[],
): number {
  let y = from;
  for (const line of wrapText(`Seen ${spec.view}`, style.small, width)) {
    y += LINE;
    marks.push(caption(line, width / 2, y - 0.9, style.small, 'semibold', width));
  }
  if (!legend) return y;
  for (const line of wrapText(legendOf(spec, numbered), style.small, width)) {
    y += LINE;
    marks.push(caption(line, width / 2, y - 0.9, style.small, 'regular', width));
  }
  return y;
}

function legendOf(spec: PatternSpec, numbered: boolean): string {
  if (spec.holes.length === 1) return '';
  if (!numbered) return 'Numbers at the holes: hole numbers. Filled: first. Order: table.';
  const order = spec.action === 'loosen' ? 'order to loosen' : 'order';
  const same = spec.holes.every((h) => h.number === h.order);
  return same ? `In the circle: ${order} and hole.` : `In the circle: ${order}. Outside: hole.`;
}

function caption(
  text: string,
  x: number,
  y: number,
  size: number,
  weight: TextMark['weight'],
  width: number,
): TextMark {
  // Near an edge the caption is moved in, so that it stays whole.
  const half = textWidth(text, size) / 2;
  const centre = Math.max(half, Math.min(width - half, x));
  return { kind: 'text', at: { x: centre, y }, text, size, anchor: 'middle', weight, role: 'note', ink: 'ink' };
}

/** Hole numbers in tightening order, row by row, for patterns whose symbols are too small for numbers. */
function orderTable(spec: PatternSpec, style: FigureStyle, width: number, from: number, marks: Primitive[]): number {
  const digits = String(spec.holes.length).length;
  const cell = textWidth('0'.repeat(digits), style.small) + 1.4;
  const head = textWidth(`${'0'.repeat(digits)}.`, style.small) + 2.2;
  const most = Math.floor((width - head) / cell);
  const columns = most >= 20 ? 20 : most >= 10 ? 10 : Math.max(1, most);
  const left = Math.max(0, (width - head - columns * cell) / 2);
  let y = from;
  for (let row = 0; row * columns < spec.order.length; row++) {
    y += LINE + 0.3;
    const first = row * columns;
    marks.push({
      kind: 'text',
      at: { x: left + head - 2.2, y: y - 0.9 },
      text: `${first + 1}.`,
      size: style.small,
      anchor: 'end',
      weight: 'bold',
      role: 'note',
      ink: 'ink',
    });
    spec.order.slice(first, first + columns).forEach((hole, i) => {
      marks.push({
        kind: 'text',
        at: { x: left + head + (i + 1) * cell - 1.4, y: y - 0.9 },
        text: String(hole),
        size: style.small,
        anchor: 'end',
        weight: 'regular',
        role: 'order',
        ink: 'ink',
        bolt: { hole, order: first + i + 1 },
      });
    });
  }
  return y + 0.5;
}

function titleOf(spec: PatternSpec): string {
  return `${spec.action === 'loosen' ? 'Loosening' : 'Tightening'} order of ${spec.name}, ${spec.holes.length === 1 ? '1 bolt' : `${spec.holes.length} bolts`}`;
}

/** The order and the rounds in words. */
function describe(spec: PatternSpec): string {
  const where =
    spec.kind === 'circle'
      ? `${spec.holes.length} holes on a circle of ${Number((spec.diameter ?? 0).toFixed(1))} mm, numbered clockwise`
      : `${spec.holes.length} holes, numbered as drawn`;
  const top = spec.top === undefined ? '' : ` Top: ${spec.top}.`;
  return `Seen ${spec.view}; ${where}.${top} ${spec.action === 'loosen' ? 'Loosen' : 'Tighten'} the holes in this order: ${spec.order.join(', ')}. ${spec.rounds}`.trim();
}
