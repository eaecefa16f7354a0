/** Torque and preload of one joint by two routes, with the stress while tightening and a worksheet to follow by hand. */

import type { Bearing, Strength, Thread } from '../fasteners/index.ts';
import { type Band, mapBand, positive } from './band.ts';
import type { JointCondition } from './conditions.ts';
import {
  combinedStress,
  effectiveNutFactor,
  type JointFriction,
  longFormTorque,
  shortFormPreload,
  shortFormTorque,
  threadLeverMm,
} from './formulas.ts';
import { isoWrenchDeviation } from './scatter.ts';
import { type WorkingLine, writeWorking } from './working.ts';

export interface TorqueInput {
  readonly thread: Thread;
  readonly strength: Strength;
  readonly condition: JointCondition;
  readonly bearing: Bearing;
  /** Asked preload as a share of proof load, or of yield load when the grade has no proof stress. */
  readonly preloadShare: number;
  /** Torque stated by the maker, N·m, without run-down torque. */
  readonly statedNm?: number;
  /** Run-down (prevailing) torque of a locking nut, N·m: it makes no preload and is added to the setting. */
  readonly prevailingNm?: number;
  /** ± share; default ISO 6789: 0.06 for a setting up to 10 N·m, 0.04 above. */
  readonly wrenchDeviation?: number;
}

/** Torques in N·m, forces in N, stresses in MPa, shares and factors without unit. */
export interface TorqueResult {
  readonly preloadBasis: 'proof' | 'yield';
  /** Proof stress (or yield) times stress area. */
  readonly basisLoadN: number;
  /** Preload asked for: share of the basis load. */
  readonly askedPreloadN: number;
  /**
   * Preload at the target torque: nominal with nominal K; low with high K and a wrench reading high; high with low K
   * and a wrench reading low. K carries the friction band, the wrench its own deviation.
   */
  readonly preloadN: Band;
  /** The same as shares of the basis load. */
  readonly preloadShare: Band;
  /** Torque for the asked preload by T = K d F, K low to high. */
  readonly shortForm: Band;
  /** Torque for the asked preload by the long form, mu low to high. */
  readonly longForm: Band;
  /** Nut factor that the long form amounts to at nominal friction. */
  readonly effectiveNutFactor: number;
  /** The long form at nominal friction lies inside the short-form band. */
  readonly routesAgree: boolean;
  /** (long - short)/short, both nominal. */
  readonly routesDiffer: number;
  /** Stated torque where there is one, else the nominal short form; without run-down torque. */
  readonly targetNm: number;
  /** What the wrench is set to: target plus run-down torque. */
  readonly settingNm: number;
  readonly wrenchDeviation: number;
  /** Stresses at nominal preload and nominal friction; torsion on pi d0³/12, the plastic modulus of VDI 2230. */
  readonly tensionMPa: number;
  readonly torsionMPa: number;
  readonly equivalentMPa: number;
  /** Combined stress over yield: nominal; high at the highest preload, with the low friction that goes with it. */
  readonly yieldUse: { readonly nominal: number; readonly high: number };
  readonly working: readonly WorkingLine[];
}

/**
 * Computes a joint. Throws RangeError on a share, torque or deviation that the model should have refused (zero, negative,
 * not a number). Sources: Shigley ch. 8 (short form), VDI 2230 Part 1 (long form, combined stress), FAA AC 43.13-1B
 * (run-down torque always added), ISO 6789 (wrench deviation).
 */
export function computeTorque(input: TorqueInput): TorqueResult {
  const { thread, strength, condition, bearing, preloadShare } = input;
  positive('preload share', preloadShare);
  const prevailingNm = input.prevailingNm ?? 0;
  if (!Number.isFinite(prevailingNm) || prevailingNm < 0) throw new RangeError(`run-down torque is ${prevailingNm}`);
  const d = thread.diameterMm;
  const basisMPa = strength.proofMPa ?? strength.yieldMPa;
  const basisLoadN = positive('proof or yield stress', basisMPa) * thread.stressAreaMm2;
  const askedPreloadN = preloadShare * basisLoadN;

  const shortForm = mapBand(condition.nutFactor, (K) => shortFormTorque(K, d, askedPreloadN));
  const longForm = mapBand(condition.friction, (mu) => longFormTorque(joint(thread, bearing, mu), askedPreloadN));
  const targetNm = input.statedNm === undefined ? shortForm.nominal : positive('stated torque', input.statedNm);
  const settingNm = targetNm + prevailingNm;
  const wrenchDeviation = input.wrenchDeviation ?? isoWrenchDeviation(settingNm);
  if (!(wrenchDeviation >= 0 && wrenchDeviation < 1)) throw new RangeError(`wrench deviation is ${wrenchDeviation}`);

  const lowNm = Math.max(0, settingNm * (1 - wrenchDeviation) - prevailingNm);
  const highNm = settingNm * (1 + wrenchDeviation) - prevailingNm;
  const K = condition.nutFactor;
  const preloadN = {
    low: shortFormPreload(K.high, d, lowNm),
    nominal: shortFormPreload(K.nominal, d, targetNm),
    high: shortFormPreload(K.low, d, highNm),
  };
  const stress = twist(thread, preloadN.nominal, condition.friction.nominal, prevailingNm);
  const highest = twist(thread, preloadN.high, condition.friction.low, prevailingNm);

  const figures: Omit<TorqueResult, 'working'> = {
    preloadBasis: strength.proofMPa === undefined ? 'yield' : 'proof',
    basisLoadN,
    askedPreloadN,
    preloadN,
    preloadShare: mapBand(preloadN, (F) => F / basisLoadN),
    shortForm,
    longForm,
    effectiveNutFactor: effectiveNutFactor(d, askedPreloadN, longForm.nominal),
    routesAgree: longForm.nominal >= shortForm.low && longForm.nominal <= shortForm.high,
    routesDiffer: (longForm.nominal - shortForm.nominal) / shortForm.nominal,
    targetNm,
    settingNm,
    wrenchDeviation,
    ...stress,
    yieldUse: { nominal: stress.equivalentMPa / strength.yieldMPa, high: highest.equivalentMPa / strength.yieldMPa },
  };
  return { ...figures, working: writeWorking(input, figures) };
}

function joint(thread: Thread, bearing: Bearing, mu: number): JointFriction {
  return { thread, frictionThread: mu, frictionBearing: mu, bearing };
}

/** The shank is twisted by the thread's part of the torque and by all of the run-down torque. */
function twist(thread: Thread, F: number, mu: number, prevailingNm: number) {
  return combinedStress(thread, F, (F * threadLeverMm(thread, mu)) / 1000 + prevailingNm);
}
