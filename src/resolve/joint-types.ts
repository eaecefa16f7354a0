/** A joint with everything computed. */

import type { Range } from '../diagnostics/index.ts';
import type {
  Bearing,
  Drive,
  Flange,
  Grade,
  Head,
  NutGrade,
  NutStrength,
  Strength,
  Thread,
} from '../fasteners/index.ts';
import type { Balance, Feature, Hole, JackingPlan, LooseningRound, Pattern, Sequence } from '../geometry/index.ts';
import type { Interaction, JointCondition, PlannedRound, TorqueResult } from '../torque/index.ts';
import type { Area, Force, Length, Stress, Torque } from '../units/index.ts';
import type { FromFile } from './read-from.ts';
import type { SourceNote } from './text-types.ts';

/** A joint of one variant with everything computed. */
export interface JointPlan extends FromFile {
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
  /** What the wrench turns: drive and bearing face are of that. */
  readonly turned: 'head' | 'nut';
  readonly drive: Drive;
  readonly bearing: Bearing;
  /** With the lubricant maker's own nut factor where the consumable states one. */
  readonly condition: JointCondition;
  readonly nut?: JointNut;
  readonly lubricant?: string;
  readonly lubricantName?: string;
  readonly where?: string;
  readonly pattern: Pattern;
  /** `from the cover side`. */
  readonly view: string;
  /** What marks 12 o'clock. */
  readonly top?: string;
  readonly holes: readonly Hole[];
  /** Dowels, jacking screws and the clocking mark. */
  readonly features: readonly Feature[];
  readonly sequence: Sequence;
  readonly balance: Balance;
  /** Balance of going round in hole order, to compare. */
  readonly circularBalance: Balance;
  readonly loosening: Sequence;
  readonly looseningRounds: readonly LooseningRound[];
  readonly jacking?: JointJacking;
  /** Smallest distance between neighbouring holes. */
  readonly chordMm: number;
  /** Greatest distance between two holes. */
  readonly acrossMm: number;
  /** Outside diameter to allow for the socket, and where the figure comes from. */
  readonly socketOutsideMm: number;
  readonly socketOutsideFrom: string;
  /** From a bolt centre to the nearest wall. */
  readonly wallMm?: number;
  /** Standard flange with which the joint is compared. */
  readonly flange?: Flange;
  /** Final torque at the bolt above the run-down torque, in the unit of the wrench's scale. */
  readonly target: Torque;
  /** The same in the other unit, for the brackets. */
  readonly targetSecond: Torque;
  /** What the wrench is set to in the last round: with run-down torque and adapter; else the target. */
  readonly setting: Torque;
  readonly settingSecond: Torque;
  /** Run-down (prevailing) torque of a locking nut or screw. */
  readonly runDown?: Torque;
  readonly adapter?: JointAdapter;
  readonly origin: 'stated' | 'computed';
  readonly source?: SourceNote;
  readonly reason?: string;
  readonly preloadShare: number;
  readonly result: TorqueResult;
  readonly rounds: readonly PlannedRound[];
  /** What the elastic model says of the rounds: an illustration, never on a card. */
  readonly interaction?: Interaction;
  /** Gasket or seal that it presses. */
  readonly gasket?: string;
  /** Clamp force that each bolt must keep. */
  readonly clamp?: { readonly force: Force; readonly source: SourceNote };
  /** Material of the tapped hole, its thread engagement, and whether it has an insert. */
  readonly into?: 'steel' | 'cast iron' | 'bronze' | 'aluminium';
  readonly engagement?: Length;
  readonly insert?: true;
  /** Length of thread that stands out of the nut. */
  readonly protrusion?: Length;
  /** Pressure that the clamped material bears under head or nut. */
  readonly bearingLimit?: { readonly pressure: Stress; readonly source: SourceNote };
  readonly gasketLoad?: JointGasketLoad;
  readonly wrench: string;
  readonly wrenchName: string;
  readonly socket?: string;
  readonly socketName?: string;
  readonly note?: string;
  /** The joint's key in the machine's file, and the place of each of its fields: for the checks. */
  readonly range: Range;
  readonly ranges: Readonly<Record<string, Range>>;
}

export interface JointNut {
  readonly grade: NutGrade;
  readonly strength: NutStrength;
  /** Why a nut weaker than its bolt is right here. */
  readonly reason?: string;
}

/** The gasket maker's limits. */
export interface JointGasketLoad {
  readonly area: Area;
  readonly seating?: Stress;
  readonly most?: Stress;
  readonly source: SourceNote;
}

export interface JointAdapter {
  /** From the square of the wrench to the bolt. */
  readonly length: Length;
  /** 0 straight on, 90 square to the handle, 180 back over it. */
  readonly angleDeg: number;
  /** From the square to the middle of the grip. */
  readonly lever: Length;
}

export interface JointJacking {
  readonly thread: Thread;
  /** As printed: `1/4`. */
  readonly turn: string;
  readonly plan: JackingPlan;
}
