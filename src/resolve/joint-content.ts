/** The content of a joint as it stands for one variant. */

import type { z } from 'zod';
import { type At, type Entry, items, optional } from '../model/index.ts';
import type { jointShape } from '../model/shapes/joint.ts';
import { defined } from './quantities.ts';
import type { Choice } from './types.ts';
import { holdsFor } from './variants.ts';

export type JointContent = z.output<typeof jointShape>;
export type JointEntry = Entry<JointContent>;

/** The content of the joint as it stands for `choices`: later `when` entries win over earlier ones. */
export function effectiveJoint(joint: JointEntry, choices: readonly Choice[]): At<JointContent> {
  const when = optional(joint, 'when');
  if (when === undefined) return joint;
  let value: JointContent = joint.value;
  let { node } = joint;
  for (const w of items(when)) {
    if (!holdsFor(w.value.only, choices)) continue;
    const { only: _, ...changes } = w.value;
    value = { ...value, ...defined(changes) } as JointContent;
    if (node.kind === 'map' && w.node.kind === 'map') {
      const changed = new Set(Object.keys(changes));
      const own = w.node;
      node = {
        ...node,
        entries: [...node.entries.filter((e) => !changed.has(e.key)), ...own.entries.filter((e) => changed.has(e.key))],
      };
    }
  }
  return { value, node };
}

/** The axes that change a joint. */
export function jointAxes(joint: JointEntry): readonly string[] {
  return [
    ...new Set([
      ...Object.keys(joint.value.only ?? {}),
      ...(joint.value.when ?? []).flatMap((w) => Object.keys(w.only)),
    ]),
  ];
}

/** The number of fasteners from the content alone, so that a pattern with other faults does not hide a wrong parts list. */
export function contentCount(pattern: JointContent['pattern']): number {
  if ('count' in pattern) return pattern.count;
  if ('circles' in pattern) return pattern.circles.reduce((sum, c) => sum + c.count, 0);
  if ('points' in pattern) return pattern.points.length;
  const { along, across } = pattern;
  return along < 2 || across < 2 ? along * across : 2 * (along + across) - 4;
}
