/** What the rounds do to a joint, by the elastic model: only where the author states what is clamped. */

import { boltLine, circularSequence, type Pattern, type Sequence } from '../geometry/index.ts';
import { type At, field, optional } from '../model/index.ts';
import { type Interaction, type PlannedRound, predictInteraction, STEEL_MPA, type Stack } from '../torque/index.ts';
import type { Context } from './context.ts';
import type { JointContent } from './joint-content.ts';
import type { JointFastener } from './joint-fastener.ts';
import { readMm } from './joint-pattern.ts';
import { readQuantity } from './quantities.ts';

/** Beyond these a figure is a slip: rubber is about 1 MPa and more, steel 205 000. Practice. */
const LEAST_MPA = 0.1;
const MOST_MPA = 1_000_000;
const LEAST_MM = 0.01;
const MOST_MM = 10_000;

type StackContent = NonNullable<JointContent['stack']>;

/** The model with its numbers and the preload left in each bolt after each round; undefined where nothing is said of the stack, or it cannot be used. */
export function jointInteraction(
  context: Context,
  joint: At<JointContent>,
  { thread }: JointFastener,
  pattern: Pattern,
  sequence: Sequence,
  rounds: readonly PlannedRound[],
): Interaction | undefined {
  const at = optional(joint, 'stack');
  if (at === undefined) return undefined;
  const line = boltLine(pattern);
  if (line === undefined) {
    context.report('FLD004', at.node.range, '`stack` is of use only where the bolts stand on one closed line', {
      hint: 'leave it out: the model of the rounds knows circles, slots and rectangles',
    });
    return undefined;
  }
  const stack = readStack(context, at);
  if (stack === undefined) return undefined;
  const whole = { ...stack, boltDiameterMm: thread.diameterMm, boltAreaMm2: thread.stressAreaMm2 };
  const round = circularSequence(pattern);
  return predictInteraction(
    line.positionsMm,
    line.lengthMm,
    whole,
    rounds.map(({ share, pass }) => ({ share, order: (pass === 'circular' ? round : sequence).moves })),
  );
}

function readStack(context: Context, at: At<StackContent>): Pick<Stack, 'gripMm' | 'flange' | 'gasket'> | undefined {
  const gripMm = readMm(context, field(at, 'grip'));
  const flangeAt = field(at, 'flange');
  const flange = readLayer(context, flangeAt, STEEL_MPA);
  const gasketAt = optional(at, 'gasket');
  const gasket = gasketAt === undefined ? undefined : readLayer(context, gasketAt, undefined);
  if (gripMm === undefined || flange === undefined) return undefined;
  if (gripMm < LEAST_MM || gripMm > MOST_MM) {
    context.report('FLD005', field(at, 'grip').node.range, `\`${at.value.grip}\` is no length of a bolt`, {
      hint: 'give the length between head and nut',
    });
    return undefined;
  }
  if (gasketAt !== undefined && gasket === undefined) return undefined;
  return { gripMm, flange, ...(gasket === undefined ? {} : { gasket }) };
}

interface LayerContent {
  readonly thickness: string;
  readonly width: string;
  readonly modulus?: string | undefined;
}

function readLayer(context: Context, at: At<LayerContent>, usualMPa: number | undefined) {
  const thicknessMm = readMm(context, field(at, 'thickness'));
  const widthMm = readMm(context, field(at, 'width'));
  const written = optional(at, 'modulus');
  const modulus = readQuantity(context.report, written, 'stress');
  const modulusMPa = written === undefined ? usualMPa : modulus === undefined ? undefined : modulus.si / 1e6;
  if (thicknessMm === undefined || widthMm === undefined || modulusMPa === undefined) return undefined;
  const sizes = [thicknessMm, widthMm];
  if (sizes.every((mm) => mm >= LEAST_MM && mm <= MOST_MM) && modulusMPa >= LEAST_MPA && modulusMPa <= MOST_MPA) {
    return { thicknessMm, widthMm, modulusMPa };
  }
  context.report('FLD005', at.node.range, 'no flange and no gasket has such sizes or such a modulus', {
    hint: `lengths from ${LEAST_MM} to ${MOST_MM} mm and moduli from ${LEAST_MPA} to ${MOST_MPA} MPa are taken`,
  });
  return undefined;
}
