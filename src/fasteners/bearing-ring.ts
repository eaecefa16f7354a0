/** The ring between clearance hole and bearing face, on which the turning friction acts. */

import { HOLE_INCH, HOLE_METRIC } from './bearing-sizes.ts';
import { MM_PER_INCH, type Thread } from './thread.ts';

/** Diameters in mm. faceMm: outside of the bearing face (dw). holeMm: clearance hole (dh), medium or normal series. */
export interface Bearing {
  readonly faceMm: number;
  readonly holeMm: number;
  /** Standards of both figures, or the estimate used, said in words. */
  readonly source: string;
}

/** A diameter in mm with where it comes from. */
export interface Figure {
  readonly mm: number;
  readonly source: string;
}

/** Clearance hole for `thread`: ISO 273 medium, ASME B18.2.8 normal, else an estimate of 1.1 d that says so. */
export function holeOf(thread: Thread): Figure {
  if (thread.system === 'metric') {
    const mm = HOLE_METRIC[thread.size];
    if (mm !== undefined) return { mm, source: 'ISO 273, medium' };
  } else {
    const inch = HOLE_INCH[thread.size];
    if (inch !== undefined) return { mm: inch * MM_PER_INCH, source: 'ASME B18.2.8, normal' };
  }
  return { mm: 1.1 * thread.diameterMm, source: 'estimate, 1.1 d' };
}

/**
 * Face over hole for a thread of `diameterMm`; where an estimated face falls inside the hole, both are estimated
 * together.
 */
export function ring(face: Figure, hole: Figure, diameterMm: number): Bearing {
  if (face.mm <= hole.mm) {
    return { faceMm: 1.5 * diameterMm, holeMm: 1.1 * diameterMm, source: 'estimate: face 1.5 d, hole 1.1 d' };
  }
  return { faceMm: face.mm, holeMm: hole.mm, source: `face: ${face.source}; hole: ${hole.source}` };
}
