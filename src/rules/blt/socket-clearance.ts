/** Whether the socket passes the neighbouring bolts. */

import { formatDecimal } from '../../units/index.ts';
import { jointRule } from '../rule.ts';
import { socketRoomMm } from './socket-room.ts';

export const socketClearance = jointRule(
  'BLT002',
  'The wrench named on the card cannot be put on, and the torque is guessed with an open spanner.',
  (plan) => {
    const need = socketRoomMm(plan);
    if (need === undefined || plan.count < 2 || plan.chordMm >= need.betweenMm) return undefined;
    return {
      range: plan.ranges['pattern'] ?? plan.range,
      message: `neighbouring bolts of \`${plan.id}\` are ${formatDecimal(plan.chordMm, 1)} mm apart, and the socket needs ${formatDecimal(need.betweenMm, 1)} mm`,
      hint: `outside of the socket: ${plan.socketOutsideFrom}; check count and size of the pattern, measure the socket (\`outside\` in tools.yaml), or choose another head or tool`,
    };
  },
);
