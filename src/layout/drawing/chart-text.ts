/** Text and ticks shared by the charts: one size of type, thin lines. */

import { LEAST_TYPE } from './figure-style.ts';
import type { Ink, Point, Primitive, TextMark } from './primitives.ts';
import { CAP_HEIGHT } from './text-size.ts';
import { wrapText } from './wrap.ts';

/** Type of all charts: 8 pt. */
export const CHART_TYPE = LEAST_TYPE;
/** From baseline to baseline, mm. */
export const CHART_LINE = 3.7;

export interface ChartTextStyle {
  readonly anchor?: TextMark['anchor'];
  readonly weight?: TextMark['weight'];
  readonly ink?: Ink;
}

/** `at`: the anchor on the baseline. */
export function chartText(at: Point, text: string, style: ChartTextStyle = {}): TextMark {
  return {
    kind: 'text',
    at,
    text,
    size: CHART_TYPE,
    anchor: style.anchor ?? 'start',
    weight: style.weight ?? 'regular',
    role: 'label',
    ink: style.ink ?? 'ink',
  };
}

/** The baseline that centres figures on the height `y`. */
export function centredOn(y: number): number {
  return y + (CAP_HEIGHT * CHART_TYPE) / 2;
}

export function thinLine(from: Point, to: Point, ink: Ink = 'ink'): Primitive {
  return { kind: 'line', from, to, stroke: 'thin', ink };
}

/** Lines of a caption under a chart, from `y` down; returns where they end. */
export function chartCaption(text: string, width: number, y: number, marks: Primitive[]): number {
  let end = y;
  for (const line of wrapText(text, CHART_TYPE, width)) {
    end += CHART_LINE;
    marks.push(chartText({ x: 0, y: end - 0.8 }, line));
  }
  return end;
}
