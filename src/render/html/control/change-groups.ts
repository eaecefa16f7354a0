/** Changes between two issues in the order in which they matter at the bench: numbers first, the document last. */

import type { Change, ChangeKind } from '../../../control/types.ts';

export interface ChangeGroup {
  readonly id: string;
  readonly title: string;
  readonly changes: readonly Change[];
}

const GROUPS: readonly { readonly id: string; readonly title: string; readonly of: readonly Change['of'][] }[] = [
  { id: 'numbers', title: 'Numbers', of: ['torque', 'limit', 'pattern', 'joint'] },
  { id: 'warnings', title: 'Warnings and stored energy', of: ['warning', 'energy'] },
  { id: 'steps', title: 'Steps', of: ['step', 'time'] },
  { id: 'tools', title: 'Tools, consumables and parts', of: ['tool', 'consumable', 'part'] },
  { id: 'document', title: 'Document', of: ['variant', 'document'] },
];

/** Groups that have changes; within a group by what is concerned, then in the order of the comparison. */
export function changeGroups(changes: readonly Change[]): readonly ChangeGroup[] {
  return GROUPS.map(({ id, title, of }) => ({
    id,
    title,
    changes: of.flatMap((what) => changes.filter((c) => c.of === what)),
  })).filter((group) => group.changes.length > 0);
}

/** Word and sign of each kind; the sign is a path in a field of 16 by 16. */
export const KINDS: Readonly<Record<ChangeKind, { readonly word: string; readonly path: string }>> = {
  value: { word: 'CHANGED', path: 'M2 8h11M9 4l4 4-4 4' },
  added: { word: 'ADDED', path: 'M8 2v12M2 8h12' },
  removed: { word: 'REMOVED', path: 'M2 8h12' },
  moved: { word: 'MOVED', path: 'M8 2v12M4 5.5 8 2l4 3.5M4 10.5 8 14l4-3.5' },
  exchanged: { word: 'EXCHANGED', path: 'M3 5h10M10 2l3 3-3 3M13 11H3M6 8l-3 3 3 3' },
  reworded: { word: 'REWORDED', path: 'M2 4h12M2 8h8M2 12h5M10 14l4-4' },
};
