/** Whether the socket passes the neighbouring bolts. */

import { formatDecimal } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint } from '../rule.ts';
import { socketRoomMm } from './socket-room.ts';

export const socketClearance: Check = {
  code: 'BLT002',
  name: 'socket-clearance',
  severity: 'error',
  title: 'The socket does not pass its neighbour.',
  why: 'The wrench named on the card cannot be put on, and the torque is guessed with an open spanner.',
  sources: [
    'common practice: 1 mm of air round the socket; its outside from the tool register, else 1.35 times the width across flats and 2 mm',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    pattern: { circle: 240 mm, count: 8, first: 22.5 deg }\n',
        to: '    pattern: «{ circle: 240 mm, count: 24, first: 7.5 deg }»\n',
      },
    ],
  },
  found: eachJoint((plan) => {
    const need = socketRoomMm(plan);
    if (need === undefined || plan.count < 2 || plan.chordMm >= need.betweenMm) return undefined;
    return {
      range: plan.ranges['pattern'] ?? plan.range,
      message: `neighbouring bolts of \`${plan.id}\` are ${formatDecimal(plan.chordMm, 1)} mm apart, and the socket needs ${formatDecimal(need.betweenMm, 1)} mm`,
      hint: `check count and size of the pattern, measure the socket and write its \`outside\` in tools.yaml, or choose another tool; now reckoned with: ${plan.socketOutsideFrom}`,
    };
  }),
};
