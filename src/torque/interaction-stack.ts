/** What is clamped, for the elastic interaction of bolts: bolt spring, flange beam, and the layer between the flanges. */

import { positive } from './band.ts';
import type { FoundedBeam } from './interaction-beam.ts';

/** The layer between two flanges, as a strip along the bolt line. */
export interface GasketLayer {
  readonly thicknessMm: number;
  /** Width across the bolt line that is pressed, mm. */
  readonly widthMm: number;
  /** Pressure over strain, MPa: a secant at the pressure of use. */
  readonly modulusMPa: number;
}

/** One of the two like flanges, as a beam of rectangular section along the bolt line. */
export interface FlangeStrip {
  readonly thicknessMm: number;
  /** Across the bolt line, from bore to rim, mm. */
  readonly widthMm: number;
  readonly modulusMPa: number;
}

/** A joint of two like flanges with like bolts. */
export interface Stack {
  /** Clamped length between head and nut, mm. */
  readonly gripMm: number;
  /** Area that stretches, mm²: the stress area, or the shank's where it is the longer part. */
  readonly boltAreaMm2: number;
  readonly boltDiameterMm: number;
  /** `STEEL_MPA` when absent. */
  readonly boltModulusMPa?: number;
  readonly flange: FlangeStrip;
  /** Absent: the faces meet metal to metal. */
  readonly gasket?: GasketLayer;
}

/** Young's modulus of steel, MPa: VDI 2230 Part 1 takes 205 000 (memory). */
export const STEEL_MPA = 205_000;

/** Share of the diameter by which head and nut each lengthen the bolt: VDI 2230 Part 1 substitute length of a nut (memory). */
const END_SHARE = 0.4;

/**
 * Stiffness of one bolt, N/mm: E A/(grip + 0.8 d). The bolt goes on stretching inside its head and its nut, 0.4 d in each.
 * Source: VDI 2230 Part 1, substitute lengths (memory). Throws RangeError on a size that is not above zero.
 */
export function boltStiffnessNPerMm(stack: Stack): number {
  const modulus = positive('modulus of the bolt', stack.boltModulusMPa ?? STEEL_MPA);
  const ends = 2 * END_SHARE * positive('diameter of the bolt', stack.boltDiameterMm);
  return (modulus * positive('area of the bolt', stack.boltAreaMm2)) / (positive('grip', stack.gripMm) + ends);
}

/**
 * One of the two flanges on its foundation. EI = E b t³/12. The layer between the flanges takes E b/t for each mm of
 * length; the plane through its middle stands still by symmetry, so each flange rests on half its thickness and the
 * foundation of one flange is twice as stiff. Metal to metal, the layer is the two halves of flange next to the joint,
 * squeezed over the width of the flange: an assumption of this model. Throws RangeError on a size that is not above zero.
 */
export function flangeBeam(stack: Stack): FoundedBeam {
  const { thicknessMm, widthMm, modulusMPa } = stack.flange;
  positive('thickness of the flange', thicknessMm);
  positive('width of the flange', widthMm);
  positive('modulus of the flange', modulusMPa);
  const layer = stack.gasket ?? stack.flange;
  const pressed = positive('modulus of the gasket', layer.modulusMPa) * positive('width of the gasket', layer.widthMm);
  return {
    bendingNmm2: (modulusMPa * widthMm * thicknessMm ** 3) / 12,
    foundationMPa: (2 * pressed) / positive('thickness of the gasket', layer.thicknessMm),
  };
}

export type StackKind = 'metal to metal' | 'sheet gasket' | 'rubber gasket';

/** What a `StackKind` is taken to be; every number is an illustration, common practice, no source. */
interface Illustration {
  readonly thicknessMm: number;
  /** In bolt diameters: a ring inside the bolts, or the whole face. */
  readonly widthInDiameters: number;
  readonly modulusMPa: number;
  /** Gasket factor m of the spacing rule: ASME BPVC Section VIII Division 1 Appendix 2 (memory). */
  readonly gasketFactor: number;
}

const GASKETS: Readonly<Record<Exclude<StackKind, 'metal to metal'>, Illustration>> = {
  'sheet gasket': { thicknessMm: 2, widthInDiameters: 1.5, modulusMPa: 500, gasketFactor: 2.75 },
  // A free block of rubber gives at a few MPa, a thin strip whose faces cannot slip at several hundred: this lies between.
  'rubber gasket': { thicknessMm: 3, widthInDiameters: 3, modulusMPa: 100, gasketFactor: 1 },
};

/** A flange plate is about this many bolt diameters thick: an illustration. */
const FLANGE_THICKNESS = 1.25;
/** And this many wide from bore to rim: an illustration. */
const FLANGE_WIDTH = 3;

/**
 * A plausible steel joint where the author has stated none, for illustration. bolt: diameter in mm, stress area in mm².
 * pitchMm: distance of neighbours along the bolt line. The flange is 1.25 d thick and 3 d wide; where the bolts of a
 * gasketed joint stand further apart it is as thick as the spacing rule pitch <= 2 d + 6 t/(m + 0.5) asks, the rule of ASME BPVC Section VIII
 * Division 1 Appendix 2 (memory). Gasket thickness, width and modulus are illustrations too. Throws RangeError on a size
 * that is not above zero.
 */
export function defaultStack(
  bolt: { readonly diameterMm: number; readonly stressAreaMm2: number },
  kind: StackKind,
  pitchMm: number,
): Stack {
  const d = positive('diameter of the bolt', bolt.diameterMm);
  const illustration = kind === 'metal to metal' ? undefined : GASKETS[kind];
  const gap = positive('pitch', pitchMm) - 2 * d;
  const asked = illustration === undefined ? 0 : (gap * (illustration.gasketFactor + 0.5)) / 6;
  const thicknessMm = Math.max(FLANGE_THICKNESS * d, asked);
  const stack: Stack = {
    gripMm: 2 * thicknessMm + (illustration?.thicknessMm ?? 0),
    boltAreaMm2: positive('stress area', bolt.stressAreaMm2),
    boltDiameterMm: d,
    flange: { thicknessMm, widthMm: FLANGE_WIDTH * d, modulusMPa: STEEL_MPA },
  };
  if (illustration === undefined) return stack;
  const { modulusMPa, widthInDiameters } = illustration;
  return { ...stack, gasket: { thicknessMm: illustration.thicknessMm, widthMm: widthInDiameters * d, modulusMPa } };
}
