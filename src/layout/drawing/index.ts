/** Drawings: marks in mm, and the figures made of them. */

export { type BalanceChartInput, balanceChart, type ChartOptions } from './balance-chart.ts';
export { boundsOf } from './bounds.ts';
export { INK_COLOURS } from './inks.ts';
export { arcPoints } from './paths.ts';
export {
  drawPattern,
  type PatternFigureOptions,
  patternFigure,
  patternWidthMm,
  suitableWidth,
} from './pattern-figure.ts';
export { type PatternSpec, type SpecFeature, type SpecHole, type SpecInput, specFrom } from './pattern-spec.ts';
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
export { type RoundsChartInput, roundsChart } from './rounds-chart.ts';
export { safetySign } from './safety-sign.ts';
export { CAP_HEIGHT, textBox, textWidth } from './text-size.ts';
