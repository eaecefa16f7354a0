/** The clamped ring of a joint as a beam on an elastic foundation, bent straight and closed on itself. */

import { notNegative, positive } from './band.ts';

/** A beam on a Winkler foundation: its bending stiffness EI in N·mm² and its foundation in N/mm of sinking and mm of length. */
export interface FoundedBeam {
  readonly bendingNmm2: number;
  /** Foundation modulus k, N/mm² (MPa). */
  readonly foundationMPa: number;
}

/**
 * beta = (k/4EI)^(1/4) in 1/mm: how fast the dip round a load dies out.
 * Source: Hetényi, Beams on Elastic Foundation, 1946, ch. II (formula confirmed in public lecture notes; book from memory).
 * Throws RangeError on a stiffness that is not above zero.
 */
export function dampingPerMm(beam: FoundedBeam): number {
  const k = positive('foundation modulus', beam.foundationMPa);
  return (k / (4 * positive('bending stiffness', beam.bendingNmm2))) ** 0.25;
}

/** Distance from a load in mm at which an endless beam first comes back to its unloaded height: 3 pi/(4 beta), the first zero of cos + sin. */
export function reachMm(beam: FoundedBeam): number {
  return (3 * Math.PI) / (4 * dampingPerMm(beam));
}

/**
 * Sinking in mm for each newton, `distanceMm` from the load, of a beam closed on itself over `lineLengthMm`.
 * An endless beam sinks w(x) = P beta/(2k) e^(-beta x) (cos beta x + sin beta x). A closed one carries the same load again
 * at every turn; with cos + sin = Re[(1 - i) e^(i beta x)] the images are two geometric series, and their sum is exact:
 * w = beta/(2k) Re[(1 - i)(e^(-z x) + e^(-z (L - x)))/(1 - e^(-z L))], z = (1 - i) beta.
 * As beta L goes to 0 it becomes 1/(k L): a rigid ring that sinks as a whole.
 * Source: endless beam Hetényi 1946 ch. II; the sum is worked out here and tested against the images one by one, a Fourier
 * series and differences. Throws RangeError on a length that is not above zero or a distance below zero.
 */
export function ringSinkingMmPerN(beam: FoundedBeam, distanceMm: number, lineLengthMm: number): number {
  const length = positive('length of the bolt line', lineLengthMm);
  const beta = dampingPerMm(beam);
  const near = beta * (notNegative('distance along the bolt line', distanceMm) % length);
  const turn = beta * length;
  const far = turn - near;
  const real = Math.exp(-near) * Math.cos(near) + Math.exp(-far) * Math.cos(far);
  const imaginary = Math.exp(-near) * Math.sin(near) + Math.exp(-far) * Math.sin(far);
  // 1 - e^(-turn) cos(turn), written so that a small turn does not cancel.
  const below = 2 * Math.exp(-turn) * Math.sin(turn / 2) ** 2 - Math.expm1(-turn);
  const beside = Math.exp(-turn) * Math.sin(turn);
  const sum = ((real + imaginary) * below - (imaginary - real) * beside) / (below ** 2 + beside ** 2);
  return (beta / (2 * beam.foundationMPa)) * sum;
}
