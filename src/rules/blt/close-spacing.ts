/** The spacing of flange bolts against the least that flange practice allows. */

import { minimumSpacing } from '../../geometry/index.ts';
import { formatDecimal } from '../../units/index.ts';
import { jointRule } from '../rule.ts';
import { socketRoomMm } from './socket-room.ts';

const MM_PER_INCH = 25.4;

export const closeSpacing = jointRule(
  'BLT007',
  'Bolts that stand too close leave no room for a socket or a hammer wrench, and the holes weaken the flange.',
  (plan) => {
    // The table leaves room for the wrench of a hexagon; screws with a key may stand closer.
    const room = socketRoomMm(plan);
    // A socket that does not go on at all has a report of its own.
    if (room === undefined || plan.count < 2 || plan.chordMm < room.betweenMm) return undefined;
    const least = minimumSpacing(plan.thread.diameterMm / MM_PER_INCH);
    if (least === undefined || plan.chordMm >= least.spacingIn * MM_PER_INCH) return undefined;
    const mm = (value: number) => `${formatDecimal(value, 1)} mm`;
    return {
      range: plan.ranges['pattern'] ?? plan.range,
      message: `neighbouring bolts of \`${plan.id}\` are ${mm(plan.chordMm)} apart, and ${mm(least.spacingIn * MM_PER_INCH)} is the least for flange bolts`,
      hint: `${least.source}; check count and size of the pattern`,
    };
  },
);
