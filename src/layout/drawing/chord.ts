/** One chord across neighbours of a bolt circle, dimensioned where the figure leaves room. */

import type { PlacedHole } from './bolts.ts';
import { dimensionText, linearDimension } from './dimensions.ts';
import type { FigureStyle } from './figure-style.ts';
import { distance, type Primitive } from './primitives.ts';
import type { Box } from './text-size.ts';

/** The distance of two neighbours, in the corner at lower right where the circle leaves room. `holes`: of one full circle. */
export function chordDimension(
  holes: readonly PlacedHole[],
  obstacles: readonly Box[],
  style: FigureStyle,
): Primitive[] {
  // Two holes stand a diameter apart, which is dimensioned already.
  if (holes.length < 3) return [];
  let best: { a: PlacedHole; b: PlacedHole; turn: number } | undefined;
  holes.forEach((a, i) => {
    const b = holes[(i + 1) % holes.length];
    if (b === undefined) return;
    const middle = { x: (a.centre.x + b.centre.x) / 2, y: (a.centre.y + b.centre.y) / 2 };
    const angle = (Math.atan2(middle.x, -middle.y) * 180) / Math.PI;
    const turn = Math.abs(angle - 135);
    if (best === undefined || turn < best.turn - 1e-6) best = { a, b, turn };
  });
  if (best === undefined) return [];
  const { a, b } = best;
  const real = distance(a.at, b.at);
  const d = distance(a.centre, b.centre) || 1;
  let out = { x: -(b.centre.y - a.centre.y) / d, y: (b.centre.x - a.centre.x) / d };
  const middle = { x: (a.centre.x + b.centre.x) / 2, y: (a.centre.y + b.centre.y) / 2 };
  if (out.x * middle.x + out.y * middle.y < 0) out = { x: -out.x, y: -out.y };
  const rise = Math.hypot(a.centre.x, a.centre.y) - Math.hypot(middle.x, middle.y);
  const near = obstacles.filter((box) => {
    const c = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
    return Math.min(distance(c, a.centre), distance(c, b.centre)) < style.symbol * 3 + 2 || distance(c, middle) < d;
  });
  return linearDimension({
    a: a.centre,
    b: b.centre,
    out,
    // Outside the circle, which rises above the chord of few holes.
    offset: Math.max(style.symbol + 3.2, rise + 2.4),
    clear: style.symbol + 0.6,
    obstacles: near,
    text: dimensionText(real),
    size: style.small,
    head: style.dimensionHead,
  });
}
