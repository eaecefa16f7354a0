/** Whether the socket passes the nearest wall. */

import { formatDecimal } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint } from '../rule.ts';
import { socketRoomMm } from './socket-room.ts';

export const wallClearance: Check = {
  code: 'BLT003',
  name: 'wall-clearance',
  severity: 'error',
  title: 'The socket does not pass the wall.',
  why: 'Against a hub or a web the socket sits askew: it rounds the head off and the wrench reads wrong.',
  sources: ['common practice: 1 mm of air round the socket'],
  example: {
    bad: [
      { file: 'machines/pump.yaml', from: '    socket: socket-24\n', to: '    socket: socket-24\n    wall: «15 mm»\n' },
    ],
    good: [
      { file: 'machines/pump.yaml', from: '    socket: socket-24\n', to: '    socket: socket-24\n    wall: 25 mm\n' },
    ],
  },
  found: eachJoint((plan) => {
    const need = socketRoomMm(plan);
    if (need === undefined || plan.wallMm === undefined || plan.wallMm >= need.toWallMm) return undefined;
    return {
      range: plan.ranges['wall'] ?? plan.range,
      message: `the wall is ${formatDecimal(plan.wallMm, 1)} mm from the bolts of \`${plan.id}\`, and the socket needs ${formatDecimal(need.toWallMm, 1)} mm`,
      hint: `check \`wall\`, measure the socket and write its \`outside\` in tools.yaml, or use an adapter; now reckoned with: ${plan.socketOutsideFrom}`,
    };
  }),
};
