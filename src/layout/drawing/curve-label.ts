/** Writes the name of a curve beside it, where neither curve nor any other name stands in the way. */

import { CHART_TYPE, chartText } from './chart-text.ts';
import { boxToSegment } from './collide.ts';
import type { Point, Segment, TextMark } from './primitives.ts';
import { type Box, CAP_HEIGHT, overlaps, textBox, textWidth } from './text-size.ts';

/** Least air between a name and a curve with its marks. */
const AIR = 1.3;
/** Places are tried this far apart. */
const STEP = 0.9;
/** Farther from the other curve than this adds nothing. */
const FAR = 8;

/** The straight pieces of a curve; a single place gives a piece without length. */
export function piecesOf(points: readonly Point[]): readonly Segment[] {
  const [first] = points;
  if (first !== undefined && points.length === 1) return [{ from: first, to: first }];
  return points.slice(1).map((to, i) => ({ from: points[i] ?? to, to }));
}

/** Near its own curve and away from the others, within `area`; undefined when there is no free place. */
export function curveLabel(
  text: string,
  own: readonly Segment[],
  others: readonly Segment[],
  taken: readonly Box[],
  area: Box,
): TextMark | undefined {
  const [w, h] = [textWidth(text, CHART_TYPE), CAP_HEIGHT * CHART_TYPE];
  let best: { mark: TextMark; score: number } | undefined;
  for (let top = area.top + 0.3; top + h <= area.bottom - 0.6; top += STEP) {
    for (let left = area.left + 1; left + w <= area.right; left += STEP) {
      const mark = chartText({ x: left, y: top + h }, text, { weight: 'semibold' });
      const box = textBox(mark);
      if (taken.some((other) => overlaps(box, other, 0.8))) continue;
      const near = nearest(box, own);
      const away = nearest(box, others);
      if (near < AIR || away < AIR || away <= near) continue;
      const score = near - 0.7 * Math.min(away, FAR);
      if (best === undefined || score < best.score - 1e-6) best = { mark, score };
    }
  }
  return best?.mark;
}

function nearest(box: Box, pieces: readonly Segment[]): number {
  return pieces.reduce((least, s) => Math.min(least, boxToSegment(box, s.from, s.to)), Number.POSITIVE_INFINITY);
}
