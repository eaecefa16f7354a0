/**
 * What one bolt does to its neighbours while a joint is tightened, and what the rounds leave in each bolt: an illustration
 * of why a joint is tightened in rounds and gone round again, not a figure to set a torque by.
 *
 * Model: two like flanges, each a beam on an elastic foundation, closed on itself over the length of the bolt line; bolts
 * as linear springs between them; a linear gasket, or metal to metal. Two flanges sink towards the middle, so a bolt force
 * brings the joint together by twice what one flange sinks.
 */

import { positive } from './band.ts';
import { reachMm, ringSinkingMmPerN } from './interaction-beam.ts';
import {
  type InteractionOptions,
  predictRounds,
  type RoundPrediction,
  type TighteningRound,
} from './interaction-rounds.ts';
import { at, inverse, type Matrix } from './interaction-solve.ts';
import { boltStiffnessNPerMm, flangeBeam, type Stack } from './interaction-stack.ts';

/** Where the model comes from, for the page. */
export const INTERACTION_SOURCE =
  'Beam on an elastic foundation: Hetényi, Beams on Elastic Foundation, 1946. Bolt as a spring: VDI 2230 Part 1 (memory).';

/** What the model leaves out; the page prints every sentence beside the figures. */
export const INTERACTION_LIMITS: readonly string[] = [
  'An illustration, not a prediction: no torque is set by it and it stands on no card.',
  'Every wrench is taken to reach its preload exactly; the scatter of friction, which is larger, comes on top.',
  'The gasket is a linear spring that also pulls. A real one is stiffer when unloaded, keeps part of its compression and creeps.',
  'Each flange is a straight beam closed on itself: no curvature, no torsion, no tilt of the whole flange, no rotation about the bolt line.',
  'Both flanges are alike, on one line of like bolts. A pipe, hub or cover plate behind the flange would stiffen it.',
  'The flange is not squeezed under head and nut, and threads and faces do not embed.',
];

/** All that a page needs to show the model with its numbers. */
export interface Interaction {
  readonly stack: Stack;
  readonly boltStiffnessNPerMm: number;
  /** Foundation of one flange, MPa. */
  readonly foundationMPa: number;
  /** Bolts nearer than this along the bolt line take preload from each other, those beyond gain a little. */
  readonly reachMm: number;
  /** As `interactionMatrix`. */
  readonly matrix: Matrix;
  readonly rounds: readonly RoundPrediction[];
  /** What a single pass at full torque would leave, in the order of the first round. */
  readonly onePass: RoundPrediction;
}

/**
 * How far the joint and the bolt give at bolt i for each newton in bolt j, mm/N: the bolt's own stretch (on the diagonal)
 * and twice the sinking of one flange. Symmetric (Maxwell and Betti) and positive definite.
 * positionsMm: place of each bolt along the closed bolt line, in hole order, from any zero. lineLengthMm: once round.
 * Throws RangeError on no bolts, a place that is no number, or a size that is not above zero.
 */
export function jointCompliance(positionsMm: readonly number[], lineLengthMm: number, stack: Stack): Matrix {
  if (positionsMm.length === 0) throw new RangeError('a joint has at least one bolt');
  const beam = flangeBeam(stack);
  const stretch = 1 / boltStiffnessNPerMm(stack);
  positive('length of the bolt line', lineLengthMm);
  return positionsMm.map((a, i) =>
    positionsMm.map((b, j) => {
      const joint = 2 * ringSinkingMmPerN(beam, Math.abs(a - b), lineLengthMm);
      return i === j ? stretch + joint : joint;
    }),
  );
}

/**
 * A[i][j]: change of the preload of bolt j for each unit by which the preload of bolt i rises while its nut is turned and
 * every other nut stands still, all bolts being tight. A[i][i] = 1; a neighbour within the reach of the beam loses, so its
 * A is below zero. For like bolts at like distances A is symmetric; in general A[i][j] S[i][i] is, S being the stiffness of
 * the joint at its nuts.
 * Arguments and errors as `jointCompliance`.
 */
export function interactionMatrix(positionsMm: readonly number[], lineLengthMm: number, stack: Stack): Matrix {
  return inverse(jointCompliance(positionsMm, lineLengthMm, stack)).map((row, i) =>
    row.map((value) => value / at(row, i)),
  );
}

/** The model with its numbers and what the rounds leave. Arguments and errors as `jointCompliance` and `predictRounds`. */
export function predictInteraction(
  positionsMm: readonly number[],
  lineLengthMm: number,
  stack: Stack,
  rounds: readonly TighteningRound[],
  options: InteractionOptions = {},
): Interaction {
  const beam = flangeBeam(stack);
  const compliance = jointCompliance(positionsMm, lineLengthMm, stack);
  const [first] = rounds;
  const [onePass] = first === undefined ? [] : predictRounds(compliance, [{ share: 1, order: first.order }], options);
  if (onePass === undefined) throw new RangeError('a joint is tightened in at least one round');
  return {
    stack,
    boltStiffnessNPerMm: boltStiffnessNPerMm(stack),
    foundationMPa: beam.foundationMPa,
    reachMm: reachMm(beam),
    matrix: interactionMatrix(positionsMm, lineLengthMm, stack),
    rounds: predictRounds(compliance, rounds, options),
    onePass,
  };
}
