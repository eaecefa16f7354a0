/** Parts of a machine for one variant: which exist, and how many. */

import type { Entry, MachineContent } from '../model/index.ts';
import { contentCount, effectiveJoint, type JointEntry } from './joint-content.ts';
import type { Choice } from './types.ts';
import { holdsFor } from './variants.ts';

export type PartContent = MachineContent['parts'][string];

export interface FastenedBy {
  readonly joint: JointEntry;
  readonly count: number;
}

/** Joints of the variant in which the part is the fastener or goes with each fastener, with their counts. */
export function fastenedBy(
  part: string,
  joints: readonly JointEntry[],
  choices: readonly Choice[],
): readonly FastenedBy[] {
  return joints
    .filter((j) => holdsFor(j.value.only, choices))
    .flatMap((joint) => {
      const { value } = effectiveJoint(joint, choices);
      return value.fastener === part || (value.also ?? []).includes(part)
        ? [{ joint, count: contentCount(value.pattern) }]
        : [];
    });
}

/** The count stated for the part, or the one that follows from its joints; undefined when neither is there. */
export function partQuantity(
  part: Entry<PartContent>,
  joints: readonly JointEntry[],
  choices: readonly Choice[],
): number | undefined {
  if (part.value.quantity !== undefined) return part.value.quantity;
  const found = fastenedBy(part.key, joints, choices);
  return found.length === 0 ? undefined : found.reduce((sum, f) => sum + f.count, 0);
}
