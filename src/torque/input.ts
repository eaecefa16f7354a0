/** What is known of a joint before its torque is computed. */

import type { Bearing, Strength, Thread } from '../fasteners/index.ts';
import type { Band } from './band.ts';
import type { JointCondition } from './conditions.ts';

/** An adapter (crowfoot) between wrench and bolt. Lengths in mm, measured as `adapterSetting` says. */
export interface Adapter {
  /** Centre of the wrench's drive square to centre of the bolt. */
  readonly lengthMm: number;
  /** 0 pointing on beyond the wrench, 90 square to it, 180 back over the handle. */
  readonly angleDeg: number;
  /** Drive square to mid grip of the wrench. */
  readonly leverMm: number;
}

/** Friction in the thread and under the turned face, each with its band, without unit. */
export interface FrictionPair {
  readonly thread: Band;
  readonly bearing: Band;
}

export interface TorqueInput {
  readonly thread: Thread;
  readonly strength: Strength;
  readonly condition: JointCondition;
  /** Bearing face and hole under the part that is turned. */
  readonly bearing: Bearing;
  /** Asked preload as a share of proof load, or of yield load when the grade has no proof stress. */
  readonly preloadShare: number;
  /** Torque stated by the maker, N·m, without run-down torque. */
  readonly statedNm?: number;
  /** Run-down (prevailing) torque of a locking nut, N·m: it makes no preload and is added to the setting. */
  readonly prevailingNm?: number;
  /** ± share; default ISO 6789: 0.06 for a setting up to 10 N·m, 0.04 above. */
  readonly wrenchDeviation?: number;
  readonly adapter?: Adapter;
  /** Friction stated by the maker of the lubricant; goes before that of the condition. */
  readonly friction?: FrictionPair;
  /** Nut factor stated by the maker of the lubricant; goes before that of the condition. */
  readonly nutFactor?: Band;
}
