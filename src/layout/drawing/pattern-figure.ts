/** The numbered bolt pattern of a joint: which bolt, in what order, seen from where. */

import type { JointPlan } from '../../resolve/types.ts';
import { moveMarks } from './bounds.ts';
import { captions, orderTable, topMark } from './captions.ts';
import { figureStyle, LEAST_TYPE } from './figure-style.ts';
import { bodyFitting } from './fit.ts';
import { descriptionOf, titleOf } from './in-words.ts';
import type { PatternSpec } from './pattern-spec.ts';
import type { Drawing, Primitive } from './primitives.ts';
import { specOf } from './spec-of-joint.ts';

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

/** The figure of a joint. Pure: the same joint and options give the same marks. */
export function patternFigure(joint: JointPlan, options: PatternFigureOptions): Drawing {
  return drawPattern(specOf(joint, options.loosen === true), options);
}

/** A width in mm at which every order number has its own symbol, or 94 when no card could hold that. */
export function patternWidthMm(joint: JointPlan, options: { readonly dimensions?: boolean } = {}): number {
  const spec = specOf(joint);
  return suitableWidth(options.dimensions === false ? { ...spec, dimensions: false } : spec);
}

const WIDTHS: readonly number[] = [52, 58, 64, 70, 78, 86, 94, 104];
/** A figure is made this much wider at most to show its features where they are. */
const FOR_FEATURES = 1.4;

/** Widths from 52 mm (a few bolts) to 104 mm (a flange of 48). */
export function suitableWidth(spec: PatternSpec): number {
  let first: number | undefined;
  for (const width of [...(spec.dimensions === false ? [46] : []), ...WIDTHS]) {
    if (first !== undefined && width > first * FOR_FEATURES) break;
    const found = bodyFitting(spec, figureStyle(spec.holes.length, ORDER_TYPE), width, width * 1.15);
    if (!found.numbered || found.notes.length > 0) continue;
    if (found.true) return width;
    first ??= width;
  }
  return first ?? 94;
}

/** The figure of any pattern; pure, so that a page in the browser can draw what its reader types. */
export function drawPattern(spec: PatternSpec, options: PatternFigureOptions): Drawing {
  const width = Math.max(30, Math.min(400, options.widthMm));
  const style = figureStyle(spec.holes.length, Math.max(LEAST_TYPE, options.textHeightMm ?? ORDER_TYPE));
  const shown = options.dimensions === false ? { ...spec, dimensions: false } : spec;
  const fitted = bodyFitting(shown, style, width, options.heightMm ?? width * 1.15);
  const { bounds } = fitted;
  const shiftX = width / 2 - (bounds.left + bounds.right) / 2;
  const marks: Primitive[] = [];
  let y = Math.max(topMark(spec, style, fitted, shiftX, width, marks), 0.5 - bounds.top);
  const body = moveMarks(fitted.marks, shiftX, y);
  marks.push(...body);
  y += bounds.bottom + 1.5;
  y = captions(spec, style, width, y, fitted, options.legend !== false, marks);
  if (!fitted.numbered) y = orderTable(spec, style, width, y + 1, marks);
  return { width, height: Math.ceil(y * 10) / 10, title: titleOf(spec), description: descriptionOf(spec), marks };
}
