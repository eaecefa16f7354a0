/** The acts of document control: lines of the ledger, snapshots, comparisons. Plain data. */

import type { READ_FROM } from '../resolve/read-from.ts';
import type { Document, Machine, Person, ShopInfo, StepMark } from '../resolve/types.ts';

/** Of a change: major needs the owner's review and approval, minor is editorial (DOE-STD-1073-2003, 6.3.5). */
export type ChangeClass = 'major' | 'minor';

/** What every line of the ledger holds. */
export interface EntryBase {
  /** Counted from 1. */
  readonly seq: number;
  /** Seal of the line before; 64 noughts in the first line. */
  readonly prev: string;
  /** SHA-256, hex, over the canonical JSON of the line without this field. */
  readonly seal: string;
  /** Day on which the line was written, by the clock of the machine that wrote it: `2026-03-02`. */
  readonly recorded: string;
  readonly signature?: Signature;
}

/** Benches whose binders held the document when the line was written, with the numbers of their copies. */
export type Distribution = readonly { readonly bench: string; readonly copy: number }[];

/** By the approver, over the canonical JSON of the line without its `signature` and its `seal`. */
export interface Signature {
  readonly by: string;
  /** First 16 hex digits of the SHA-256 over the public key's SPKI form. */
  readonly key: string;
  /** Ed25519, base64. */
  readonly value: string;
}

/** One card of an issue. */
export interface IssuedCard {
  /** Variant's key; empty when there are none. */
  readonly variant: string;
  readonly label: string;
  /** `C/OF-204/B/LARGE` */
  readonly path: string;
  readonly fingerprint: string;
  /** SHA-256, hex, of all that the card says: its first 8 digits are the fingerprint. */
  readonly digest: string;
  /** Printed sides. */
  readonly sides: number;
}

export interface IssueEntry extends EntryBase {
  readonly kind: 'issue';
  readonly distribution: Distribution;
  readonly doc: string;
  readonly rev: string;
  readonly title: string;
  readonly change: { readonly class: ChangeClass; readonly what: string; readonly why: string };
  /** Other documents that the change affects. */
  readonly affects: readonly string[];
  readonly author: string;
  readonly approver: string;
  readonly approved: string;
  readonly effective: string;
  readonly snapshot: FileSeal & { readonly format: number; readonly engine: string };
  /** The comparison with the issue before; absent in a first issue. */
  readonly comparison?: FileSeal;
  readonly cards: readonly IssuedCard[];
}

/** A file beside the ledger, by its path from `issued/`. */
export interface FileSeal {
  readonly file: string;
  readonly sha256: string;
}

/** A safety stop: no copy of the document may be used. */
export interface SuspendEntry extends EntryBase {
  readonly kind: 'suspend';
  readonly distribution: Distribution;
  readonly doc: string;
  readonly reason: string;
  readonly by: string;
}

/** Lifts a suspension. */
export interface ReinstateEntry extends EntryBase {
  readonly kind: 'reinstate';
  readonly distribution: Distribution;
  readonly doc: string;
  readonly reason: string;
  readonly by: string;
  readonly approver: string;
}

export interface WithdrawEntry extends EntryBase {
  readonly kind: 'withdraw';
  readonly distribution: Distribution;
  readonly doc: string;
  readonly reason: string;
  readonly by: string;
  readonly approver: string;
  readonly effective: string;
  /** Document to use instead. */
  readonly replacement?: string;
}

export interface TemporaryScope {
  /** Benches at which it holds; absent: all. */
  readonly benches?: readonly string[];
  /** Keys of the variants for which it holds; absent: all. */
  readonly variants?: readonly string[];
  readonly serials?: { readonly from: number; readonly to: number };
}

/** A temporary change, as it was approved. */
export interface TemporaryEntry extends EntryBase {
  readonly kind: 'temporary';
  readonly distribution: Distribution;
  /** `TC-07` */
  readonly number: string;
  readonly doc: string;
  readonly rev: string;
  /** Number of the step before which it is shown. */
  readonly step: number;
  /** What is done otherwise, Markdown without references. */
  readonly text: string;
  readonly reason: string;
  readonly scope: TemporaryScope;
  readonly author: string;
  readonly approver: string;
  readonly approved: string;
  readonly from: string;
  /** Last day on which it holds. */
  readonly until: string;
}

/** Ends a temporary change before its last day. */
export interface TemporaryEndEntry extends EntryBase {
  readonly kind: 'temporary-end';
  readonly distribution: Distribution;
  readonly number: string;
  readonly reason: string;
  readonly by: string;
}

/** The holder of a copy has done what a notice asks. */
export interface ReceiptEntry extends EntryBase {
  readonly kind: 'receipt';
  /** `CN-17`: number of the notice. */
  readonly notice: string;
  readonly bench: string;
  /** Copy number of the bench's binder. */
  readonly copy: number;
  /** Person of the register who signed. */
  readonly by: string;
  readonly on: string;
}

/** A periodic review that left the document as it is. */
export interface ReviewEntry extends EntryBase {
  readonly kind: 'review';
  readonly doc: string;
  readonly rev: string;
  readonly by: string;
  readonly on: string;
  readonly finding: string;
}

export type Entry =
  | IssueEntry
  | SuspendEntry
  | ReinstateEntry
  | WithdrawEntry
  | TemporaryEntry
  | TemporaryEndEntry
  | ReceiptEntry
  | ReviewEntry;

/** A verified ledger. */
export interface Ledger {
  readonly entries: readonly Entry[];
  /** Seal of the last line; 64 noughts for an empty ledger. */
  readonly head: string;
}

export const NO_SEAL = '0'.repeat(64);
export const EMPTY_LEDGER: Ledger = { entries: [], head: NO_SEAL };

/** What a snapshot holds: the procedure and all that its cards take from the registers. */
export interface Snapshot {
  readonly format: 1;
  /** Version of the program that froze it. */
  readonly engine: string;
  readonly info: ShopInfo;
  /** Those whom the document names. */
  readonly people: readonly Pick<Person, 'id' | 'name' | 'role' | 'approves'>[];
  readonly tools: readonly { readonly id: string; readonly name: string }[];
  /** Without its parts and joints: those used stand in the document. */
  readonly machine: Omit<Machine, 'parts' | 'joints' | 'keyRange' | typeof READ_FROM>;
  readonly document: Document;
}

// --- comparison -------------------------------------------------------------------------------------------------------

export type ChangeKind = 'value' | 'added' | 'removed' | 'moved' | 'exchanged' | 'reworded';

/** One thing that differs in meaning between two issues. */
export interface Change {
  readonly kind: ChangeKind;
  /** What it concerns: orders the list, most telling first. */
  readonly of:
    | 'torque'
    | 'limit'
    | 'pattern'
    | 'joint'
    | 'warning'
    | 'energy'
    | 'step'
    | 'tool'
    | 'consumable'
    | 'part'
    | 'time'
    | 'variant'
    | 'document';
  /** One line, complete in itself: `Torque of the end-cover joint: 85 → 95 N·m`. */
  readonly words: string;
  /** Old and new, for side by side; absent where there was or is nothing. */
  readonly before?: string;
  readonly after?: string;
  /** Number of the step in the older and in the newer issue. */
  readonly stepBefore?: number;
  readonly stepAfter?: number;
  /** Labels of the variants that it concerns; empty for all. */
  readonly variants: readonly string[];
}

export interface Comparison {
  readonly format: 1;
  readonly doc: string;
  readonly from: string;
  readonly to: string;
  readonly changes: readonly Change[];
  /** By variant key and step number of the newer issue: what of the step differs. A step that only moved has none. */
  readonly marks: Readonly<Record<string, Readonly<Record<string, readonly StepMark[]>>>>;
}

export type * from './view-types.ts';
