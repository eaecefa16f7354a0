/** Whether a ledger goes on from what was published: what tells an older copy of the whole folder from a newer one. */

import { type Ledger, NO_SEAL } from './types.ts';

/** What a published folder says of the ledger that it was built from. */
export interface PublishedHead {
  /** Number of lines. */
  readonly entries: number;
  /** Seal of the last one; 64 noughts when there is none. */
  readonly head: string;
}

/**
 * True when the published lines are the beginning of the ledger, whole and unaltered: the seal of a line stands for all lines up to
 * it. False for a ledger that was set back, rewritten, or begun anew. ledger: as verified.
 */
export function isPrefix({ entries, head }: PublishedHead, ledger: Ledger): boolean {
  if (!Number.isInteger(entries) || entries < 0) return false;
  if (entries === 0) return head === NO_SEAL;
  return ledger.entries[entries - 1]?.seal === head;
}
