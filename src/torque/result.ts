/** What is computed of a joint. Plain data, so that a checked shop can be stored and compared as JSON. */

import type { Band, BandPlace } from './band.ts';
import type { TorqueParts } from './formulas.ts';
import type { FrictionPair } from './input.ts';
import type { Scatter } from './preload.ts';
import type { WorkingLine } from './working.ts';

/** Torques in N·m, forces in N, stresses in MPa, shares and factors without unit. */
export interface TorqueResult {
  readonly preloadBasis: 'proof' | 'yield';
  /** Proof stress (or yield) times stress area. */
  readonly basisLoadN: number;
  /** Preload asked for: share of the basis load. */
  readonly askedPreloadN: number;
  /** Nut factor used, and where it is from: `long form` when only friction was stated. */
  readonly nutFactor: Band;
  readonly nutFactorFrom: 'condition' | 'stated' | 'long form';
  /** Friction used, and where it is from. */
  readonly friction: FrictionPair;
  readonly frictionFrom: 'condition' | 'stated';
  /**
   * Preload at the target torque: nominal with nominal K; low with high K and a wrench reading high; high with low K
   * and a wrench reading low. K carries the friction band, the wrench its own deviation.
   */
  readonly preloadN: Band;
  /** The same as shares of the basis load. */
  readonly preloadShare: Band;
  /** Preload at the target torque by the long form, with the same extremes of wrench and friction. */
  readonly longPreloadN: Band;
  /** What friction and wrench do to the preload, apart and together. */
  readonly scatter: Scatter;
  /** Torque for the asked preload by T = K d F, K low to high. */
  readonly shortForm: Band;
  /** Torque for the asked preload by the long form, mu low to high. */
  readonly longForm: Band;
  readonly longParts: TorqueParts;
  /** Nut factor that the long form amounts to at nominal friction. */
  readonly effectiveNutFactor: number;
  /** The long form at nominal friction lies inside the short-form band. */
  readonly routesAgree: boolean;
  /** (long - short)/short, both nominal. */
  readonly routesDiffer: number;
  /** Stated torque where there is one, else the nominal short form; without run-down torque. */
  readonly targetNm: number;
  /** Where the stated torque lies in `shortForm`; absent when none is stated. */
  readonly statedPlace?: BandPlace;
  /** Torque at the bolt: target plus run-down torque. */
  readonly boltNm: number;
  /** What the wrench is set to: the torque at the bolt, corrected for an adapter. */
  readonly settingNm: number;
  readonly wrenchDeviation: number;
  /** Stresses at nominal preload and nominal friction; torsion on pi d0³/12, the plastic modulus of VDI 2230. */
  readonly tensionMPa: number;
  readonly torsionMPa: number;
  readonly equivalentMPa: number;
  /** The same on pi d0³/16, the elastic modulus of the editions before 2001, for comparison. */
  readonly torsionElasticMPa: number;
  readonly equivalentElasticMPa: number;
  /**
   * Combined stress over yield, plastic modulus: at the lowest preload with high friction, nominal, and at the highest
   * preload with the low friction that goes with it.
   */
  readonly yieldUse: Band;
  /** Combined stress over yield at nominal preload on the elastic modulus. */
  readonly yieldUseElastic: number;
  readonly working: readonly WorkingLine[];
}
