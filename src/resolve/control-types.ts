/** Registers of document control: outside documents, temporary changes as written, feedback from the benches. */

import type { Range } from '../diagnostics/index.ts';
import type { FromFile } from './read-from.ts';

/** A maker's manual, a standard: the shop does not write it, and its numbers rest on it. */
export interface OutsideDocument extends FromFile {
  readonly id: string;
  /** As sources name it. */
  readonly document: string;
  readonly kind: string;
  /** The edition that the shop holds now. */
  readonly edition: string;
  readonly owner: string;
  readonly received?: string;
  readonly kept?: string;
  /** Procedures that were compared with the present edition although they name an older one. */
  readonly confirmed: readonly {
    readonly doc: string;
    readonly by: string;
    readonly on: string;
    readonly finding: string;
  }[];
  readonly keyRange: Range;
}

/** A temporary change as written: it takes effect when it is issued. */
export interface TemporaryDraft extends FromFile {
  /** `TC-07` */
  readonly number: string;
  readonly doc: string;
  readonly rev: string;
  readonly step: number;
  readonly text: string;
  readonly reason: string;
  readonly author: string;
  readonly approver: string;
  readonly approved: string;
  readonly from: string;
  readonly until: string;
  readonly benches?: readonly string[];
  readonly variants?: readonly string[];
  readonly serials?: { readonly from: number; readonly to: number };
  readonly keyRange: Range;
}

/** What a bench has said about a card. */
export interface Feedback extends FromFile {
  readonly number: string;
  readonly doc: string;
  readonly rev: string;
  readonly step?: number;
  readonly from: string;
  readonly on: string;
  readonly text: string;
  readonly answer?: { readonly by: string; readonly on: string; readonly text: string };
  readonly keyRange: Range;
}
