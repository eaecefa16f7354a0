/** Tightening order of concentric circles: one joint, worked crosswise by direction. */

import { balancedOrder } from './balanced-order.ts';
import { crossOrder } from './circle-order.ts';
import { type CirclesPattern, countingSign, patternHoles } from './pattern.ts';
import type { Ring } from './places.ts';
import type { SequenceParts } from './sequence.ts';

interface Bolt {
  readonly hole: number;
  readonly diameterMm: number;
  /** From the inner circle's first hole in the direction of counting, degrees in 0..360. */
  readonly direction: number;
}

/** Directions are compared to this part of a degree: rounding of the author's angles. */
const STEPS_A_DEGREE = 1e6;

/**
 * Even counts: the bolts of all circles by direction, from the inner circle's first hole in the direction of counting, the
 * inner first where two share a direction; then crosswise as one ring, so that each second move goes to the opposite bolt of
 * the same circle. With an odd count there are no opposites: by balance, from the inner circle's first hole.
 * Source: common practice, no published order.
 */
export function circlesOrder(p: CirclesPattern): SequenceParts {
  const inner = innerOf(p);
  if (p.circles.some((c) => c.count % 2 === 1)) {
    const before = p.circles.slice(0, p.circles.indexOf(inner)).reduce((sum, c) => sum + c.count, 0);
    return balancedOrder(patternHoles(p), before + 1);
  }
  const bolts = byDirection(p, inner);
  return {
    order: crossOrder(bolts.length).order.map((n) => bolts[n - 1]?.hole ?? n),
    rule: 'Crosswise over all circles as one ring; where two bolts lie in one direction, the inner first.',
  };
}

function innerOf(p: CirclesPattern): Ring {
  return p.circles.reduce((best, c) => (c.diameterMm < best.diameterMm ? c : best));
}

function byDirection(p: CirclesPattern, inner: Ring): readonly Bolt[] {
  const bolts: Bolt[] = [];
  for (const { diameterMm, count, firstDeg } of p.circles) {
    const start = countingSign(p) * (firstDeg - inner.firstDeg);
    for (let i = 0; i < count; i++) {
      bolts.push({ hole: bolts.length + 1, diameterMm, direction: turned(start + (360 * i) / count) });
    }
  }
  return bolts.sort((a, b) => a.direction - b.direction || a.diameterMm - b.diameterMm || a.hole - b.hole);
}

/** Into 0..360 degrees, rounded, so that equal directions are equal numbers. */
function turned(deg: number): number {
  const full = 360 * STEPS_A_DEGREE;
  return (((Math.round(deg * STEPS_A_DEGREE) % full) + full) % full) / STEPS_A_DEGREE;
}
