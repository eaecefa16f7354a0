/** From a joint with its holes and order to what the pattern figure needs. */

import { loosening } from '../../geometry/index.ts';
import type { JointPlan } from '../../resolve/types.ts';
import { formatQuantity } from '../../units/index.ts';
import type { PatternSpec } from './pattern-spec.ts';

/** Geometry counts y upwards; drawings count it downwards. `loosen`: the order in which the joint comes apart. */
export function specOf(joint: JointPlan, loosen = false): PatternSpec {
  const sequence = loosen ? loosening(joint.sequence) : joint.sequence;
  return {
    kind: joint.pattern.kind,
    name: joint.name,
    holes: joint.holes.map((hole, i) => ({
      number: hole.number,
      order: sequence.orderAt[hole.number - 1] ?? i + 1,
      at: { x: hole.xMm, y: -hole.yMm },
    })),
    order: sequence.order,
    action: loosen ? 'loosen' : 'tighten',
    ...(joint.pattern.kind === 'circle' ? { diameter: joint.pattern.diameterMm } : {}),
    view: joint.view,
    ...(joint.top === undefined ? {} : { top: joint.top }),
    rounds: loosen ? '' : roundsInWords(joint),
  };
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
