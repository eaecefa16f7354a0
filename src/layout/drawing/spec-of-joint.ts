/** From a joint with its holes and order to what the pattern figure needs. */

import type { JointPlan } from '../../resolve/types.ts';
import { formatQuantity } from '../../units/index.ts';
import { type PatternSpec, specFrom } from './pattern-spec.ts';

/** `loosen`: the order in which the joint comes apart. */
export function specOf(joint: JointPlan, loosen = false): PatternSpec {
  return specFrom({
    pattern: joint.pattern,
    holes: joint.holes,
    sequence: loosen ? joint.loosening : joint.sequence,
    action: loosen ? 'loosen' : 'tighten',
    name: joint.name,
    view: joint.view,
    ...(joint.top === undefined ? {} : { top: joint.top }),
    features: joint.features,
    rounds: loosen ? '' : roundsInWords(joint),
  });
}

/** `Round 1: 26 N·m in order. Round 4: 85 N·m from neighbour to neighbour.` */
function roundsInWords(joint: JointPlan): string {
  return joint.rounds
    .map(
      (r) =>
        `Round ${r.number}: ${formatQuantity(r.torque)} ${r.pass === 'circular' ? 'from neighbour to neighbour' : 'in order'}.`,
    )
    .join(' ');
}
