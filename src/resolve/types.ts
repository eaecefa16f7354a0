/**
 * What the pipeline hands to layout, checks, painters, site and commands: every name, number and reference resolved,
 * one `Variant` per card. Plain data, so that it can be stored as JSON.
 */

import type { Range } from '../diagnostics/index.ts';
import type { JointCondition, StatedTableComparison, TorqueTable } from '../torque/index.ts';
import type { Feedback, OutsideDocument, TemporaryDraft } from './control-types.ts';
import type { JointPlan } from './joint-types.ts';
import type { FromFile } from './read-from.ts';
import type { Bench, Choice, Consumable, Machine, Person, ShopInfo, Tool } from './register-types.ts';
import type { ConsumableTotal, PartUse, Stage, ToolUse } from './step-types.ts';
import type { Prose, SourceNote } from './text-types.ts';

export type * from './control-types.ts';
export type * from './joint-types.ts';
export type * from './register-types.ts';
export type * from './step-types.ts';
export type * from './text-types.ts';

/** One procedure for one variant: one card, one page. */
export interface Variant {
  /** `large`, `large-left`; empty when the procedure has no variants. */
  readonly key: string;
  /** `Large`, `Large, left`; empty when there are none. Printed on the variant tag. */
  readonly label: string;
  readonly choices: readonly Choice[];
  /** Serial numbers that it covers, as printed: `1001 to 1040`. */
  readonly serials: readonly string[];
  /** Folder of the page in dist, without slashes at the ends: `C/OF-204/B/LARGE`. */
  readonly path: string;
  /** What the QR code holds and what is printed under it: `HTTPS://BINDER.OSFW.EXAMPLE/C/OF-204/B/LARGE/`. */
  readonly address: string;
  /** `OF-204-LARGE`: stem of its card file. */
  readonly cardName: string;
  /** SHA-256, hex, of everything that the card says. */
  readonly digest: string;
  /** Its first 8 digits, upper case: printed. */
  readonly fingerprint: string;
  readonly stages: readonly Stage[];
  /** Joints that its steps loosen or tighten, in order of use. */
  readonly joints: readonly JointPlan[];
  readonly tools: readonly ToolUse[];
  readonly consumables: readonly ConsumableTotal[];
  readonly parts: readonly PartUse[];
  /** Parts that the machine has in this variant, with how many. */
  readonly inventory: readonly { readonly id: string; readonly quantity: number }[];
  readonly ppe: readonly string[];
  readonly stepCount: number;
  /** Sum of working times and of waiting times, in seconds; 0 when none is stated. */
  readonly workSeconds: number;
  readonly waitSeconds: number;
}

/** A torque table typed from a manual. */
export interface StatedTable extends FromFile {
  readonly id: string;
  readonly title: string;
  readonly source: SourceNote;
  readonly condition: JointCondition;
  readonly preloadShare: number;
  /** Cells in the order of the file. */
  readonly comparison: StatedTableComparison;
  /** Place of each cell, in the same order. */
  readonly ranges: readonly Range[];
  readonly range: Range;
  readonly reason?: string;
  readonly note?: string;
}

export interface Revision {
  readonly rev: string;
  readonly effective: string;
  readonly approved: string;
  readonly author: string;
  readonly approver: string;
  /** Class of the change. */
  readonly class: 'major' | 'minor';
  /** Other documents that it affects. */
  readonly affects: readonly string[];
  readonly what: string;
  readonly why: string;
  readonly range: Range;
}

/** The panel of a new issue: what changed since the one before. */
export interface ChangePanel {
  readonly since: string;
  /** At most five lines, the most telling first. */
  readonly lines: readonly string[];
  /** How many further changes there are. */
  readonly more: number;
}

/** Shown on page and card of a document that must not be worked from as it stands. */
export type Standing = 'draft' | 'not yet effective';

export interface Document extends FromFile {
  /** `OF-204` */
  readonly doc: string;
  /** `of-204`: folder of its landing page, `procedures/of-204`. */
  readonly slug: string;
  readonly title: string;
  readonly machine: string;
  readonly machineName: string;
  readonly purpose: Prose;
  readonly owner: string;
  readonly review: string;
  readonly level: string;
  readonly energy: readonly string[];
  readonly people: number;
  readonly formerly: readonly string[];
  readonly sources: readonly SourceNote[];
  readonly revisions: readonly Revision[];
  /** The one in force: the last of `revisions`. */
  readonly revision: Revision;
  readonly variants: readonly Variant[];
  /** Benches whose binder holds it. */
  readonly benches: readonly string[];
  /** Absent when it is in force. */
  readonly standing?: Standing;
  /** Set when an issue is published that followed another. */
  readonly changes?: ChangePanel;
  readonly range: Range;
  /** A fault was met while it, a shared stage or its machine was read or resolved: what seems to be missing may be there. */
  readonly incomplete?: true;
}

/** Where something is used: steps of a document, over the variants named (empty keys mean all). */
export interface Use {
  readonly doc: string;
  readonly title: string;
  readonly variantKey: string;
  readonly variantLabel: string;
  readonly path: string;
  readonly steps: readonly number[];
}

/** Keys: tool id, consumable id, `machine/part`, `machine/joint`. */
export interface WhereUsed {
  readonly tools: Readonly<Record<string, readonly Use[]>>;
  readonly consumables: Readonly<Record<string, readonly Use[]>>;
  readonly parts: Readonly<Record<string, readonly Use[]>>;
  readonly joints: Readonly<Record<string, readonly Use[]>>;
}

/** The whole shop, resolved. Only the pipeline turns it into a `CheckedShop`, and only when no error stands. */
export interface ResolvedShop {
  readonly info: ShopInfo;
  readonly people: readonly Person[];
  readonly benches: readonly Bench[];
  readonly tools: readonly Tool[];
  readonly consumables: readonly Consumable[];
  readonly machines: readonly Machine[];
  readonly documents: readonly Document[];
  readonly tables: readonly TorqueTable[];
  /** Torque tables typed from manuals, compared cell by cell. */
  readonly statedTables: readonly StatedTable[];
  readonly whereUsed: WhereUsed;
  /** Shared stages by id, with the documents that use them. */
  readonly stages: readonly (FromFile & {
    readonly id: string;
    readonly usedBy: readonly string[];
    readonly range: Range;
  })[];
  /** Documents from outside on which the shop's numbers rest. */
  readonly outside: readonly OutsideDocument[];
  /** Temporary changes as written; only those issued are published. */
  readonly temporaryChanges: readonly TemporaryDraft[];
  readonly feedback: readonly Feedback[];
  /** A fault was met while it was read or resolved: what seems to be used nowhere may be meant where the fault is. */
  readonly incomplete?: true;
}

declare const checked: unique symbol;

/** A shop without errors: the only thing that may be published. Made by `src/pipeline` alone. */
export type CheckedShop = ResolvedShop & { readonly [checked]: true };
