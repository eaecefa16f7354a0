/** A joint with everything computed. */

import type { Range } from '../diagnostics/index.ts';
import type { Bearing, Drive, Grade, Head, Strength, Thread } from '../fasteners/index.ts';
import type { Balance, Hole, Pattern, Sequence } from '../geometry/index.ts';
import type { JointCondition, Round, TorqueResult } from '../torque/index.ts';
import type { Torque } from '../units/index.ts';
import type { SourceNote } from './text-types.ts';

/** A joint of one variant with everything computed. */
export interface JointPlan {
  readonly machine: string;
  readonly id: string;
  readonly name: string;
  readonly fastener: string;
  readonly fastenerName: string;
  readonly also: readonly string[];
  readonly count: number;
  readonly thread: Thread;
  readonly grade: Grade;
  readonly strength: Strength;
  readonly head: Head;
  readonly drive: Drive;
  readonly bearing: Bearing;
  readonly condition: JointCondition;
  readonly lubricant?: string;
  readonly lubricantName?: string;
  readonly where?: string;
  readonly pattern: Pattern;
  /** `from the cover side`. */
  readonly view: string;
  /** What marks 12 o'clock. */
  readonly top?: string;
  readonly holes: readonly Hole[];
  readonly sequence: Sequence;
  readonly balance: Balance;
  /** Smallest distance between neighbouring holes. */
  readonly chordMm: number;
  /** Final torque, in the unit of the wrench's scale: what the mechanic sets. */
  readonly target: Torque;
  /** The same in the other unit, for the brackets. */
  readonly targetSecond: Torque;
  readonly origin: 'stated' | 'computed';
  readonly source?: SourceNote;
  readonly reason?: string;
  readonly preloadShare: number;
  readonly result: TorqueResult;
  readonly rounds: readonly PlannedRound[];
  readonly wrench: string;
  readonly wrenchName: string;
  readonly socket?: string;
  readonly socketName?: string;
  readonly note?: string;
  /** The joint's key in the machine's file, and the place of each of its fields: for the checks. */
  readonly range: Range;
  readonly ranges: Readonly<Record<string, Range>>;
}

export interface PlannedRound extends Round {
  /** Counted from 1 over sequence rounds and circular passes alike. */
  readonly number: number;
  readonly second: Torque;
}
