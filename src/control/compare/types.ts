/** What is compared, and a single finding within one variant before the variants are taken together. */

import type { Prose, Step, StepMark, Variant } from '../../resolve/types.ts';
import type { Change, ChangeKind, Snapshot } from '../types.ts';

/** One of two issues, or the draft: only what a snapshot holds is looked at, so that both may come from JSON. */
export type Side = Pick<Snapshot, 'info' | 'people' | 'tools' | 'machine' | 'document'>;

export type Subject = Change['of'];

/**
 * How the line of a finding begins. at: `Step 9: …`. new: `New step 9: …`. removed: `Step 9 of revision A removed: …`.
 * moved: `Step 7 is now step 9`. whole: it belongs to no step.
 */
export type Form = 'at' | 'new' | 'removed' | 'moved' | 'whole';

export interface Finding {
  readonly kind: ChangeKind;
  readonly of: Subject;
  readonly form: Form;
  /** The line without its beginning, in lower case where it goes on after one. */
  readonly say: string;
  readonly before?: string;
  readonly after?: string;
  /** Steps that it concerns, ascending; empty where there were or are none. */
  readonly stepsBefore: readonly number[];
  readonly stepsAfter: readonly number[];
}

/** A finding without its place: what the parts of the comparison give. */
export type Told = Pick<Finding, 'kind' | 'of' | 'say' | 'before' | 'after'>;

/** Something that took the place of something else of its kind, or got another name. Keys of references: `tool:feeler`. */
export interface Swap {
  readonly from: string;
  readonly to: string;
  readonly before: string;
  readonly after: string;
}

/** How two texts compare: `names` when only the names of things differ that are reported themselves. */
export type Likeness = 'same' | 'names' | 'different';

/** One variant of both issues, with what its parts look up. */
export interface Scene {
  readonly older: Variant;
  readonly newer: Variant;
  /** Number of a step of the older issue to its number in the newer one; undefined when it was taken out. */
  readonly nowAt: (number: number) => number | undefined;
  /** Things that kept their id and got another name. */
  readonly renamed: readonly Swap[];
  /** Names by id; the id itself where the issue does not know it. */
  readonly olderName: (kind: ThingKind, id: string) => string;
  readonly newerName: (kind: ThingKind, id: string) => string;
  /** Kind in the register: `socket`; undefined where the lists do not hold it. */
  readonly kindOf: (kind: ThingKind, id: string) => string | undefined;
  /** Compares two texts of matched steps. swaps: what was exchanged in the step besides the renamed things. */
  readonly likeness: (older: Prose, newer: Prose, swaps: readonly Swap[]) => Likeness;
}

export type ThingKind = 'tool' | 'consumable' | 'part' | 'joint';

/** What a part of a step's comparison gives. */
export interface PartResult {
  readonly told: readonly Told[];
  readonly marks: readonly StepMark[];
  readonly swaps: readonly Swap[];
}

export interface StepPair {
  readonly older: Step;
  readonly newer: Step;
}
