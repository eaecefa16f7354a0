/** Scales of a figure: a line with round marks, in one unit or in two under each other. */

import type { Primitive } from '../drawing/primitives.ts';
import { textWidth } from '../drawing/text-size.ts';

/** Maps values from 0 to `most` onto the figure from `left` to `right`, mm. */
export interface Scale {
  readonly most: number;
  readonly left: number;
  readonly right: number;
}

export function xOf(scale: Scale, value: number): number {
  return scale.left + ((scale.right - scale.left) * value) / scale.most;
}

/** Steps of 1, 2 or 5 times a power of ten, at most `count` of them up to `most`. */
export function roundStep(most: number, count: number): number {
  const least = most / Math.max(1, count);
  const power = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5, 10].map((f) => f * power).find((step) => step >= least * (1 - 1e-9)) ?? 10 * power;
}

export interface AxisRow {
  readonly unit: string;
  /** Of this unit in one of the scale. */
  readonly factor: number;
}

const MARK = 1.2;

/** A line at `y` with marks and numbers, the unit behind the last; a second row hangs under the first. Returns the bottom. */
export function drawAxis(marks: Primitive[], scale: Scale, y: number, rows: readonly AxisRow[], size: number): number {
  let top = y;
  for (const row of rows) {
    const most = scale.most * row.factor;
    const widest = textWidth(String(Math.round(most)), size) + 3;
    const step = roundStep(most, Math.floor((scale.right - scale.left) / widest));
    const unitFrom = scale.right - textWidth(row.unit, size);
    marks.push({
      kind: 'line',
      from: { x: scale.left, y: top },
      to: { x: scale.right, y: top },
      stroke: 'thin',
      ink: 'ink',
    });
    const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
    for (let i = 0; i * step <= most * (1 + 1e-9); i++) {
      const value = i * step;
      const x = xOf(scale, value / row.factor);
      marks.push({ kind: 'line', from: { x, y: top }, to: { x, y: top + MARK }, stroke: 'thin', ink: 'ink' });
      const text = value.toFixed(decimals);
      const half = textWidth(text, size) / 2;
      if (x + half > unitFrom - 1.2) continue;
      const at = { x, y: top + MARK + 0.78 * size };
      marks.push({ kind: 'text', at, text, size, anchor: 'middle', weight: 'regular', role: 'note', ink: 'ink' });
    }
    marks.push({
      kind: 'text',
      at: { x: scale.right, y: top + MARK + 0.78 * size },
      // It belongs to no number: read as text, it must not join the last one.
      text: `\u00a0${row.unit}`,
      size,
      anchor: 'end',
      weight: 'semibold',
      role: 'note',
      ink: 'ink',
    });
    top += MARK + size + 1.6;
  }
  return top - 0.8;
}
