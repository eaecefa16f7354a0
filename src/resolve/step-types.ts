/** Stages and steps of one variant, and the lists drawn up from them. */

import type { Range } from '../diagnostics/index.ts';
import type { Limit, Mass, Quantity, Temperature, Time } from '../units/index.ts';
import type { FromFile } from './read-from.ts';
import type { Prose, SourceNote } from './text-types.ts';

export type Signal = 'danger' | 'warning' | 'caution' | 'notice';
export type Fate = 'discard' | 'inspect' | 'reuse';

export interface Warning extends FromFile {
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
  /** Of a torque: the joint condition for which the limit holds. */
  readonly condition?: string;
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
  readonly quantity?: Quantity<'volume' | 'mass' | 'length'>;
}

/** What of a step differs from the issue before: each has its change bar. */
export type StepMark = 'text' | 'note' | 'warnings' | 'joint' | 'measures' | 'lists' | 'wait' | 'points' | 'records';

/** A temporary change as it is shown before its step. */
export interface TemporaryNote {
  /** `TC-07` */
  readonly number: string;
  readonly text: Prose;
  readonly reason: string;
  /** `at the bench Heat exchange only; serial numbers 1001 to 1040 only`; empty for everywhere. */
  readonly scope: string;
  /** Last day: `2026-12-20`. */
  readonly until: string;
  readonly approver: string;
}

export interface Step extends FromFile {
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
  /** Parts that go back although they are otherwise renewed, each with reason and source. */
  readonly reuse: readonly { readonly id: string; readonly reason: string; readonly source: SourceNote }[];
  /** Stored energy that this step releases, and that it proves to be gone. */
  readonly release: readonly string[];
  readonly prove: readonly string[];
  /** Points of the close-out that it does: `tools counted`. */
  readonly closeOut: readonly string[];
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
  /** `used by OF-204`, where the step belongs to a shared stage: printed under the caret. */
  readonly label?: string;
  /** Set when an issue is published: change bars, and temporary changes in force. */
  readonly marks?: readonly StepMark[];
  readonly temporary?: readonly TemporaryNote[];
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
