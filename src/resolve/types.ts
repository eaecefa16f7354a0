/**
 * What the pipeline hands to layout, checks, painters, site and commands: every name, number and reference resolved,
 * one `Variant` per card. Plain data, so that it can be stored as JSON.
 */

import type { Range } from '../diagnostics/index.ts';
import type { Bearing, Drive, Grade, Head, Strength, Thread } from '../fasteners/index.ts';
import type { Balance, Hole, Pattern, Sequence } from '../geometry/index.ts';
import type { JointCondition, Round, TorqueResult, TorqueTable } from '../torque/index.ts';
import type { Length, Limit, Mass, Temperature, Time, Torque } from '../units/index.ts';

export type RefKind = 'tool' | 'consumable' | 'part' | 'joint' | 'step' | 'procedure';

/** A stretch of text in one style. Numbers and units are already joined by no-break spaces. */
export interface Run {
  readonly text: string;
  readonly strong?: true;
  readonly emphasis?: true;
  readonly code?: true;
  /** What the words stand for; `step` ids are resolved to `step-12`, the anchor on the page. */
  readonly ref?: { readonly kind: RefKind; readonly id: string };
  /** A web address given by the author. */
  readonly href?: string;
}

export interface Paragraph {
  readonly kind: 'paragraph' | 'item';
  readonly runs: readonly Run[];
}

export type Prose = readonly Paragraph[];

export interface SourceNote {
  readonly document: string;
  readonly edition?: string;
  readonly place?: string;
}

export interface ShopInfo {
  readonly name: string;
  /** As served, ending in `/`: `https://binder.osfw.example/`. */
  readonly address: string;
  /** Path part of the address, beginning and ending in `/`. */
  readonly basePath: string;
  readonly language: string;
  readonly leadingTorque: string;
  readonly secondTorque: string;
  readonly cardFormat: 'A4' | 'A5' | 'Letter';
  readonly safety: string;
  readonly storedEnergy?: string;
  readonly report?: string;
  /** `content/shop.yaml`, as shown to the author. */
  readonly file: string;
}

export interface Person {
  readonly id: string;
  readonly name: string;
  readonly role: string;
  readonly approves: readonly string[];
}

export interface Bench {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly lead?: string;
  /** Document numbers in binder order. */
  readonly binder: readonly string[];
}

export interface Tool {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  /** `24 mm`, `15/16 in`. */
  readonly size?: Length;
  readonly drive?: Length;
  readonly range?: Limit;
  readonly step?: { readonly text: string; readonly si: number };
  readonly capacity?: Mass;
  readonly serial?: string;
  readonly calibrationDue?: string;
  readonly kept?: string;
  readonly alsoCalled: readonly string[];
  readonly note?: string;
}

export interface Consumable {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly number?: string;
  readonly pack?: string;
  readonly condition?: string;
  readonly hazards: readonly string[];
  readonly ppe: readonly string[];
  readonly safetyData?: string;
  readonly shelfLife?: string;
  readonly waste?: string;
  readonly alsoCalled: readonly string[];
  readonly note?: string;
}

export interface Part {
  readonly id: string;
  readonly name: string;
  readonly number?: string;
  readonly kind: string;
  /** Count over the whole machine; for fasteners without a stated count it follows from the joints (first variant). */
  readonly quantity: number;
  readonly material?: string;
  readonly mass?: Mass;
  readonly alwaysReplace: boolean;
  readonly kit?: string;
  /** `size: large`, when it exists in some variants only. */
  readonly only?: string;
  readonly note?: string;
}

export interface Machine {
  readonly id: string;
  readonly name: string;
  readonly mark?: string;
  readonly where?: string;
  readonly bench: string;
  readonly about?: string;
  readonly axes: readonly { readonly axis: string; readonly values: readonly string[] }[];
  readonly serials: readonly { readonly from: number; readonly to: number; readonly is: readonly Choice[] }[];
  readonly energy: readonly string[];
  readonly manual?: SourceNote;
  readonly parts: readonly Part[];
  /** Every joint of the machine, once per different form that it takes over the variants. */
  readonly joints: readonly { readonly plan: JointPlan; readonly variants: string }[];
}

/** One value of one variant axis, such as size: large. */
export interface Choice {
  readonly axis: string;
  readonly value: string;
}

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

export type Signal = 'danger' | 'warning' | 'caution' | 'notice';
export type Fate = 'discard' | 'inspect' | 'reuse';

export interface Warning {
  readonly level: Signal;
  readonly hazard: Prose;
  readonly avoid: Prose;
}

export interface Measure {
  readonly what: string;
  /** Places or clock positions: `12 o'clock`. */
  readonly at: readonly string[];
  readonly limit: Limit;
  /** `0 to 0.10 mm` */
  readonly limitText: string;
  readonly unit: string;
  readonly tool: string;
  readonly toolName: string;
  readonly ifOut: Prose;
  readonly record?: 'as found' | 'as left';
  readonly source?: SourceNote;
}

export interface PartMove {
  readonly id: string;
  readonly name: string;
  readonly quantity: number;
  readonly fate?: Fate;
  readonly facing?: string;
}

export interface ConsumableUse {
  readonly id: string;
  readonly name: string;
  readonly amount?: string;
}

export interface Step {
  /** Counted through the whole procedure from 1. */
  readonly number: number;
  /** `step-12`: the anchor on the page. */
  readonly anchor: string;
  readonly text: Prose;
  readonly warnings: readonly Warning[];
  readonly note?: Prose;
  /** Tool ids named in the text, in fields, and by the joint tightened here. */
  readonly tools: readonly string[];
  readonly consumables: readonly ConsumableUse[];
  readonly remove: readonly PartMove[];
  readonly fit: readonly PartMove[];
  readonly facing: readonly { readonly id: string; readonly name: string; readonly facing: string }[];
  readonly lubricate?: { readonly id: string; readonly name: string; readonly where: string };
  /** Id of a joint in the variant's `joints`. */
  readonly loosen?: string;
  readonly tighten?: string;
  readonly measures: readonly Measure[];
  /** Further things written down: labels of blanks. */
  readonly records: readonly string[];
  readonly wait?: { readonly time: Time; readonly why: string };
  readonly hold?: string;
  readonly witness?: string;
  readonly lift?: { readonly mass: Mass; readonly by: string };
  readonly heat?: { readonly to: Temperature; readonly most: Temperature };
  readonly time?: Time;
  readonly range: Range;
}

export interface Stage {
  readonly number: number;
  readonly title: string;
  /** Id of the shared stage it came from. */
  readonly shared?: string;
  readonly intro?: Prose;
  readonly steps: readonly Step[];
  readonly time?: Time;
  readonly range: Range;
}

export interface ToolUse {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  /** Size or range, as printed: `24 mm`, `40 to 200 N·m`. */
  readonly detail: string;
  readonly steps: readonly number[];
}

export interface ConsumableTotal extends ConsumableUse {
  readonly kind: string;
  readonly ppe: readonly string[];
  readonly hazards: readonly string[];
  readonly steps: readonly number[];
}

export interface PartUse {
  readonly id: string;
  readonly name: string;
  readonly number?: string;
  readonly kind: string;
  readonly quantity: number;
  /** What becomes of it: new for parts fitted that did not come off. */
  readonly fate: Fate | 'new';
  readonly kit?: string;
  readonly steps: readonly number[];
}

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
  /** First 8 hex digits (upper case) of the SHA-256 over the resolved content. */
  readonly fingerprint: string;
  readonly stages: readonly Stage[];
  /** Joints that its steps loosen or tighten, in order of use. */
  readonly joints: readonly JointPlan[];
  readonly tools: readonly ToolUse[];
  readonly consumables: readonly ConsumableTotal[];
  readonly parts: readonly PartUse[];
  readonly ppe: readonly string[];
  readonly stepCount: number;
  /** Sum of working times and of waiting times, in seconds; 0 when none is stated. */
  readonly workSeconds: number;
  readonly waitSeconds: number;
}

export interface Revision {
  readonly rev: string;
  readonly effective: string;
  readonly approved: string;
  readonly author: string;
  readonly approver: string;
  readonly what: string;
  readonly why: string;
  readonly range: Range;
}

export interface Document {
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
  readonly range: Range;
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
  readonly whereUsed: WhereUsed;
}

declare const checked: unique symbol;

/** A shop without errors: the only thing that may be published. Made by `src/pipeline` alone. */
export type CheckedShop = ResolvedShop & { readonly [checked]: true };
