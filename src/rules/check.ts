/** What a check is: one file that holds its code, its words for the author, an example, and how it is found. */

import type { Code, DiagnosticDetails, Range, Severity } from '../diagnostics/index.ts';
import type { Document, ResolvedShop } from '../resolve/index.ts';
import type { Example } from './example/example.ts';

/** Reports one fault of the check at hand. */
export type Tell = (range: Range, message: string, details?: DiagnosticDetails) => void;

export interface Check {
  readonly code: Code;
  /** States the fault: `undefined-tool`. */
  readonly name: string;
  /** Errors stop the build and cannot be accepted; a warning can, beside its line, with a reason. */
  readonly severity: Severity;
  /** One sentence: what is reported. */
  readonly title: string;
  /** What happens at the bench if it passes unseen. */
  readonly why: string;
  /** Document, edition and place behind the threshold; `common practice` or `memory` where that is all there is. */
  readonly sources: readonly string[];
  readonly example: Example;
  /** Finds it in the resolved shop; or the stage that meets it: some faults are known only while something is read. */
  readonly found:
    | 'reading files'
    | 'reading values'
    | 'resolving'
    | 'reading the ledger'
    | 'laying out cards'
    | 'comparing acceptances'
    | Run;
}

/** Runs over the whole shop. */
export interface Run {
  (shop: ResolvedShop, tell: Tell): void;
  /**
   * The same in parts: one procedure at a time, after `ofShop`, if there is one. Checks made of parts go over the shop
   * together, so that what one of them has worked out about a card is at hand for the next.
   */
  readonly ofDocument?: (shop: ResolvedShop, document: Document, tell: Tell) => void;
  readonly ofShop?: (shop: ResolvedShop, tell: Tell) => void;
}

/** One fault as the helpers for joints and variants collect it. */
export interface Fault extends DiagnosticDetails {
  readonly range: Range;
  readonly message: string;
}
