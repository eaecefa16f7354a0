/** Whether the socket passes the neighbouring bolts. */

import { socketOutsideMm } from '../../fasteners/index.ts';
import { formatDecimal } from '../../units/index.ts';
import { jointRule } from '../rule.ts';

/** Common practice, no source: a socket needs a millimetre of air to be put on and taken off. */
const AIR_MM = 1;

export const socketClearance = jointRule(
  'BLT002',
  'The wrench named on the card cannot be put on, and the torque is guessed with an open spanner.',
  (plan) => {
    if (plan.drive.kind === 'key' || plan.count < 2) return undefined;
    const need = socketOutsideMm(plan.drive) + AIR_MM;
    if (plan.chordMm >= need) return undefined;
    return {
      range: plan.ranges['pattern'] ?? plan.range,
      message: `neighbouring bolts of \`${plan.id}\` are ${formatDecimal(plan.chordMm, 1)} mm apart, and the socket needs ${formatDecimal(need, 1)} mm`,
      hint: 'check count and size of the pattern; if it is really so, the joint needs another head or tool',
    };
  },
);
