/** Drawings: marks in mm, and the figures made of them. */

export { boundsOf } from './bounds.ts';
export { INK_COLOURS } from './inks.ts';
export { arcPoints } from './paths.ts';
export { type PatternFigureOptions, patternFigure, patternWidthMm } from './pattern-figure.ts';
export {
  type ArcMark,
  type BoltTag,
  type CircleMark,
  DASHES_MM,
  type Drawing,
  type Ink,
  type LineMark,
  type PathMark,
  type Point,
  type Primitive,
  STROKE_WIDTH_MM,
  type Stroke,
  type TextMark,
  type TextRole,
} from './primitives.ts';
export { safetySign } from './safety-sign.ts';
export { CAP_HEIGHT, textBox, textWidth } from './text-size.ts';
