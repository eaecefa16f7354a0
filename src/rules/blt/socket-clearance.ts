/** Whether the socket passes the neighbouring bolts. */

import { socketOutsideMm } from '../../fasteners/index.ts';
import { formatDecimal } from '../../units/index.ts';
import { eachJoint, type Rule } from '../rule.ts';

/** Common practice, no source: a socket needs a millimetre of air to be put on and taken off. */
const AIR_MM = 1;

export const socketClearance: Rule = {
  code: 'BLT002',
  why: 'The wrench named on the card cannot be put on, and the torque is guessed with an open spanner.',
  check: (shop, report) =>
    eachJoint(shop, (plan, variant) => {
      if (plan.drive.kind === 'key' || plan.count < 2) return;
      const need = socketOutsideMm(plan.drive) + AIR_MM;
      if (plan.chordMm >= need) return;
      report(
        'BLT002',
        plan.ranges['pattern'] ?? plan.range,
        `neighbouring bolts of \`${plan.id}\` are ${formatDecimal(plan.chordMm, 1)} mm apart, and the socket needs ${formatDecimal(need, 1)} mm${variant}`,
        {
          hint: 'check count and size of the pattern; if it is really so, the joint needs another head or tool',
        },
      );
    }),
};
