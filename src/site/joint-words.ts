/** The phrases in which a joint is described, the same on every page. */

import type { JointPlan, SourceNote } from '../resolve/types.ts';

/** `Bellringer manual, 3rd edition, p. 14`. */
export function sourceText(source: SourceNote | undefined): string | undefined {
  if (source === undefined) return undefined;
  return [source.document, source.edition, source.place].filter((part) => part !== undefined).join(', ');
}

/** `16 × M16, 8.8`. */
export function fastenerText(joint: JointPlan): string {
  return `${joint.count}\u00a0×\u00a0${joint.thread.designation.replaceAll(' ', '\u00a0')}, ${joint.grade.id}`;
}

/** What lies on the thread: `nickel anti-seize on thread and under the head`, `dry, as received`. */
export function conditionText(joint: JointPlan): string {
  if (joint.lubricantName === undefined) return joint.condition.name;
  return joint.where === undefined ? joint.lubricantName : `${joint.lubricantName} on ${joint.where}`;
}

/** Where the torque comes from: never to be taken for the maker's when it is computed. */
export function originText(joint: JointPlan): string {
  if (joint.origin === 'stated') return sourceText(joint.source) ?? 'stated';
  return `computed, ${Math.round(joint.preloadShare * 100)}\u00a0% of ${joint.strength.proofMPa === undefined ? 'yield' : 'proof'} load`;
}
