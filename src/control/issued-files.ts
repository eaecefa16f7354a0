/** Reads what an issue has left beside the ledger. */

import { type ControlFiles, ISSUED } from './files.ts';
import { thaw } from './snapshot.ts';
import type { Comparison, FileSeal, IssueEntry, Snapshot } from './types.ts';

function textOf(files: ControlFiles, seal: FileSeal): string | undefined {
  const bytes = files.read(`${ISSUED}/${seal.file}`);
  return bytes === undefined ? undefined : new TextDecoder().decode(bytes);
}

/** The snapshot of an issue; undefined when this version does not know its format. */
export function snapshotOf(files: ControlFiles, issue: IssueEntry, shown: string): Snapshot | undefined {
  const text = textOf(files, issue.snapshot);
  return text === undefined ? undefined : thaw(text, `${shown}/${ISSUED}/${issue.snapshot.file}`);
}

/** The comparison that was frozen with the issue. */
export function readComparison(files: ControlFiles, issue: IssueEntry): Comparison | undefined {
  const text = issue.comparison === undefined ? undefined : textOf(files, issue.comparison);
  return text === undefined ? undefined : (JSON.parse(text) as Comparison);
}
