/** Comparison of two issues of a document by their meaning: what a mechanic has to do, set, fit or watch otherwise. */

import type { StepMark, Variant } from '../../resolve/types.ts';
import type { Comparison } from '../types.ts';
import { compareDocument, planVariants } from './document.ts';
import { Gatherer } from './merge.ts';
import { MARKS } from './step.ts';
import type { Side } from './types.ts';
import { compareVariant, type Marks } from './variant.ts';

export { panelOf } from './panel.ts';
export type { Side } from './types.ts';

/**
 * What differs in meaning. Both sides may be drafts or read back from JSON; revision data, places in files, marks and
 * temporary changes are not looked at. Sorted by what it concerns, then by step; the same for the same sides.
 */
export function compareIssues(older: Side, newer: Side): Comparison {
  const gatherer = new Gatherer();
  const { pairs, findings } = planVariants(older.document, newer.document);
  for (const { finding, variants } of findings) gatherer.add(finding, variants);
  for (const finding of compareDocument(older, newer)) gatherer.add(finding, []);
  const marks: Record<string, Readonly<Record<string, readonly StepMark[]>>> = {};
  for (const pair of pairs) {
    const found: Marks = new Map();
    gatherer.addVariant(pair.newer.label, compareVariant(pair.older, pair.newer, found));
    if (found.size > 0) marks[pair.newer.key] = inOrder(found);
  }
  return {
    format: 1,
    doc: newer.document.doc,
    from: older.document.revision.rev,
    to: newer.document.revision.rev,
    changes: gatherer.changes(
      newer.document.variants.map((v: Variant) => v.label),
      older.document.revision.rev,
    ),
    marks,
  };
}

/** Whether nothing differs in meaning: ends at the first thing that does. */
export function compareEqual(older: Side, newer: Side): boolean {
  if (older === newer) return true;
  const { pairs, findings } = planVariants(older.document, newer.document);
  if (findings.length > 0) return false;
  for (const _ of compareDocument(older, newer)) return false;
  for (const pair of pairs) {
    for (const _ of compareVariant(pair.older, pair.newer, new Map())) return false;
  }
  return true;
}

function inOrder(marks: Marks): Readonly<Record<string, readonly StepMark[]>> {
  const steps = [...marks].sort(([a], [b]) => a - b);
  return Object.fromEntries(steps.map(([step, parts]) => [String(step), MARKS.filter((m) => parts.has(m))]));
}
