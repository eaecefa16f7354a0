/** The spacing of flange bolts against the least that flange practice allows. */

import { minimumSpacing } from '../../geometry/index.ts';
import { formatDecimal } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint } from '../rule.ts';
import { socketRoomMm } from './socket-room.ts';

const MM_PER_INCH = 25.4;

export const closeSpacing: Check = {
  code: 'BLT007',
  name: 'close-spacing',
  severity: 'warning',
  title: 'Neighbouring bolts stand closer than flange practice allows.',
  why: 'Bolts that stand too close leave no room for a socket or a hammer wrench, and the holes weaken the flange.',
  sources: ['TEMA Standards, Table D-5, bolt spacing for heavy hexagon nuts (read second-hand, edition not stated)'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    pattern: { circle: 240 mm, count: 8, first: 22.5 deg }\n',
        to: '    pattern: «{ circle: 105 mm, count: 8, first: 22.5 deg }»\n',
      },
    ],
  },
  found: eachJoint((plan) => {
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
      hint: `check count, size and thread against the drawing; the least is from ${least.source}`,
    };
  }),
};
