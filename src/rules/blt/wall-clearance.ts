/** Whether the socket passes the nearest wall. */

import { formatDecimal } from '../../units/index.ts';
import { jointRule } from '../rule.ts';
import { socketRoomMm } from './socket-room.ts';

export const wallClearance = jointRule(
  'BLT003',
  'Against a hub or a web the socket sits askew: it rounds the head off and the wrench reads wrong.',
  (plan) => {
    const need = socketRoomMm(plan);
    if (need === undefined || plan.wallMm === undefined || plan.wallMm >= need.toWallMm) return undefined;
    return {
      range: plan.ranges['wall'] ?? plan.range,
      message: `the wall is ${formatDecimal(plan.wallMm, 1)} mm from the bolts of \`${plan.id}\`, and the socket needs ${formatDecimal(need.toWallMm, 1)} mm`,
      hint: `outside of the socket: ${plan.socketOutsideFrom}; measure the socket (\`outside\` in tools.yaml), or use an adapter`,
    };
  },
);
