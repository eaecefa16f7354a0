/**
 * The bolt formulas, each with its inverse: torque in N·m, force in N, length in mm, stress in MPa. Every one throws
 * RangeError on a number that is not finite or of the wrong sign; force, torque and friction may be zero.
 */

import type { Bearing, Thread } from '../fasteners/index.ts';
import { notNegative, positive } from './band.ts';

const MM_PER_M = 1000;

/** T = K d F in N·m. K: nut factor, -. dMm: nominal diameter, mm. F: preload, N. Source: Shigley ch. 8. */
export function shortFormTorque(K: number, dMm: number, F: number): number {
  return (positive('nut factor', K) * positive('diameter', dMm) * notNegative('preload', F)) / MM_PER_M;
}

/** F = T/(K d) in N: inverse of `shortFormTorque`. */
export function shortFormPreload(K: number, dMm: number, torqueNm: number): number {
  return (notNegative('torque', torqueNm) * MM_PER_M) / (positive('nut factor', K) * positive('diameter', dMm));
}

/** K = T/(d F): the nut factor that a torque and a preload amount to, by whichever route they were found. */
export function effectiveNutFactor(dMm: number, F: number, torqueNm: number): number {
  return (notNegative('torque', torqueNm) * MM_PER_M) / (positive('diameter', dMm) * positive('preload', F));
}

/** What the long form needs to know of a joint: mu in the thread and under the turned head or nut, both without unit. */
export interface JointFriction {
  readonly thread: Thread;
  readonly frictionThread: number;
  readonly frictionBearing: number;
  readonly bearing: Bearing;
}

/** Lever of the thread, mm: 0.16 P + 0.58 d2 mu, VDI 2230 Part 1 (60 degree flanks). */
export function threadLeverMm(thread: Thread, mu: number): number {
  return 0.16 * thread.pitchMm + 0.58 * thread.pitchDiameterMm * notNegative('thread friction', mu);
}

/** Mean diameter of the bearing ring, mm: DKm = (dw + dh)/2, VDI 2230 Part 1. */
export function bearingDiameterMm(bearing: Bearing): number {
  if (notNegative('hole', bearing.holeMm) >= positive('bearing face', bearing.faceMm))
    throw new RangeError(`the bearing face of ${bearing.faceMm} mm lies inside the hole of ${bearing.holeMm} mm`);
  return (bearing.faceMm + bearing.holeMm) / 2;
}

/** T = F [0.16 P + 0.58 d2 muG + (DKm/2) muK] in N·m. F: preload, N. Source: VDI 2230 Part 1. */
export function longFormTorque(joint: JointFriction, F: number): number {
  return (notNegative('preload', F) * longFormLeverMm(joint)) / MM_PER_M;
}

/** Preload in N from a torque in N·m: inverse of `longFormTorque`. */
export function longFormPreload(joint: JointFriction, torqueNm: number): number {
  return (notNegative('torque', torqueNm) * MM_PER_M) / longFormLeverMm(joint);
}

/** The long form part by part, N·m: their sum is `longFormTorque`. */
export interface TorqueParts {
  /** 0.16 P F: what stretches the bolt. */
  readonly pitchNm: number;
  readonly threadFrictionNm: number;
  readonly bearingFrictionNm: number;
}

/** What a torque by the long form is spent on. F: preload, N. Source: VDI 2230 Part 1. */
export function longFormParts(joint: JointFriction, F: number): TorqueParts {
  const pitchNm = (F * threadLeverMm(joint.thread, 0)) / MM_PER_M;
  return {
    pitchNm,
    threadFrictionNm: (F * threadLeverMm(joint.thread, joint.frictionThread)) / MM_PER_M - pitchNm,
    bearingFrictionNm: (F * (bearingDiameterMm(joint.bearing) / 2) * joint.frictionBearing) / MM_PER_M,
  };
}

function longFormLeverMm({ thread, frictionThread, frictionBearing, bearing }: JointFriction): number {
  return (
    threadLeverMm(thread, frictionThread) +
    (bearingDiameterMm(bearing) / 2) * notNegative('bearing friction', frictionBearing)
  );
}

/** d0 in mm, the diameter of a circle as large as the stress area; for metric threads it is (d2 + d3)/2. */
export function stressDiameterMm(thread: Thread): number {
  return Math.sqrt((4 * thread.stressAreaMm2) / Math.PI);
}

/** Stresses in the shank while the wrench turns, MPa. */
export interface CombinedStress {
  readonly tensionMPa: number;
  /** On pi d0³/12, the fully plastic modulus of VDI 2230 since 2001. */
  readonly torsionMPa: number;
  /** sqrt(tension² + 3 torsion²), von Mises. */
  readonly equivalentMPa: number;
  /** The same on pi d0³/16, the elastic modulus of earlier editions: a third more torsion. */
  readonly torsionElasticMPa: number;
  readonly equivalentElasticMPa: number;
}

/**
 * Stress while tightening, by both torsion moduli. F: preload, N. threadTorqueNm: the part of the torque that twists the
 * shank, N·m. Source: VDI 2230 Part 1.
 */
export function combinedStress(thread: Thread, F: number, threadTorqueNm: number): CombinedStress {
  const tensionMPa = notNegative('preload', F) / positive('stress area', thread.stressAreaMm2);
  const perCube = (notNegative('torque', threadTorqueNm) * MM_PER_M) / (Math.PI * stressDiameterMm(thread) ** 3);
  const torsionMPa = 12 * perCube;
  const torsionElasticMPa = 16 * perCube;
  return {
    tensionMPa,
    torsionMPa,
    equivalentMPa: Math.sqrt(tensionMPa ** 2 + 3 * torsionMPa ** 2),
    torsionElasticMPa,
    equivalentElasticMPa: Math.sqrt(tensionMPa ** 2 + 3 * torsionElasticMPa ** 2),
  };
}

/**
 * Largest assembly preload in N at which the combined stress is `nu` of yield:
 * FM = As nu Rp0.2 / sqrt(1 + 3 [1.5 (d2/d0) (P/(pi d2) + 1.155 mu)]²). yieldMPa: Rp0.2. mu: in the thread.
 * Source: VDI 2230 Part 1. Throws RangeError on a yield or nu that is not above zero.
 */
export function vdiAssemblyPreload(thread: Thread, yieldMPa: number, mu: number, nu = 0.9): number {
  const d2 = thread.pitchDiameterMm;
  const slope = thread.pitchMm / (Math.PI * d2) + 1.155 * notNegative('thread friction', mu);
  const twist = 1.5 * (d2 / stressDiameterMm(thread)) * slope;
  return (thread.stressAreaMm2 * positive('nu', nu) * positive('yield', yieldMPa)) / Math.sqrt(1 + 3 * twist ** 2);
}
