/** A bolt in aluminium that is tightened as hard as one in steel. */

import { placeOf } from '../../resolve/index.ts';
import { formatDecimal } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint, isSuspect } from '../rule.ts';
import { aimPlace } from './aim.ts';
import { tappedInto } from './tapped.ts';

/** Usual for joints in steel that are taken apart again. */
const USUAL = 0.75;
/** Military manuals cut the torque of their tables by 30 % in aluminium. */
const CUT = 0.3;
const MOST = USUAL * (1 - CUT);
/** Half a per cent, so that 52.5 % may be written as 53 %. */
const SLACK = 0.005;

export const aluminiumThread: Check = {
  code: 'TRQ023',
  name: 'aluminium-thread',
  severity: 'warning',
  title: 'A bolt in a plain aluminium thread is tightened as hard as one in steel.',
  why: 'The torque for a bolt in steel pulls the thread out of an aluminium housing, at the latest the third time it is taken apart.',
  sources: [
    'TM 5-3895-367-14&P, H-2: torques of the table less 30 % in aluminium',
    'a cut of 30 % from the usual 75 % of proof load leaves 52.5 %',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    into: «aluminium»\n    engagement: 34 mm\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    into: aluminium\n    insert: true\n    engagement: 34 mm\n',
      },
    ],
  },
  found: eachJoint((plan) => {
    if (tappedInto(plan) !== 'aluminium' || plan.reason !== undefined || isSuspect(plan)) return undefined;
    const share = plan.result.preloadShare.nominal;
    if (share <= MOST + SLACK) return undefined;
    const percent = (part: number, decimals = 0) => `${formatDecimal(part * 100, decimals)} %`;
    return {
      range: placeOf(plan, 'into'),
      message: `\`${plan.id}\` is tightened into aluminium to ${percent(share)} of its ${plan.result.preloadBasis} load, and plain threads in aluminium bear ${percent(MOST, 1)}`,
      related: [{ range: aimPlace(plan), message: 'how tight it is' }],
      hint: 'write `preload: 50 %` where the torque is computed, or `insert: true` where the hole has a thread insert; where the maker gives this torque for this housing, say so in `reason`',
    };
  }),
};
