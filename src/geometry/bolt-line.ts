/** Places of the bolts along the line on which they stand. */

import { type Hole, type Pattern, patternHoles } from './pattern.ts';
import { slotLineMm } from './slot-places.ts';

export interface BoltLine {
  /** In hole order, hole 1 at 0. */
  readonly positionsMm: readonly number[];
  /** Once round. */
  readonly lengthMm: number;
}

/** Undefined for a pattern whose line does not close on itself. */
export function boltLine(p: Pattern): BoltLine | undefined {
  switch (p.kind) {
    case 'circle':
      return even(p.count, Math.PI * p.diameterMm);
    case 'slot':
      return even(p.count, slotLineMm(p.lengthMm, p.widthMm));
    case 'rectangle':
      return p.along > 1 && p.across > 1 ? edge(patternHoles(p)) : undefined;
    case 'arc':
    case 'circles':
    case 'points':
      return undefined;
  }
}

function even(count: number, lengthMm: number): BoltLine {
  return { positionsMm: Array.from({ length: count }, (_, i) => (i * lengthMm) / count), lengthMm };
}

/** From hole to hole along the edge; corners are holes, so that every piece is straight. */
function edge(holes: readonly Hole[]): BoltLine {
  const positionsMm: number[] = [];
  let lengthMm = 0;
  for (const [i, hole] of holes.entries()) {
    positionsMm.push(lengthMm);
    const next = holes[(i + 1) % holes.length] ?? hole;
    lengthMm += Math.hypot(next.xMm - hole.xMm, next.yMm - hole.yMm);
  }
  return { positionsMm, lengthMm };
}
