/** The preload of a joint against the least that keeps it closed. */

import { compareStated } from '../../torque/index.ts';
import { formatDecimal } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint } from '../rule.ts';
import { aimPlace } from './aim.ts';

/** ASME PCC-1 App. O: 40 to 70 % of yield (memory). */
const LEAST = 0.4;
/** Room for a share that is written as 40 % and computed in halves. */
const SLACK = 1e-9;

export const underTightened: Check = {
  code: 'TRQ019',
  name: 'under-tightened',
  severity: 'warning',
  title: 'The preload aimed at is under 40 % of the proof load, or of the yield load, and no reason is given.',
  why: 'A slack bolt does not hold: the joint opens and closes with every stroke, the nut works itself off, and the bolt breaks of fatigue.',
  sources: [
    'ASME PCC-1, Appendix O: 40 to 70 % of yield (memory)',
    'Shigley, Mechanical Engineering Design, chapter 8',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    preload: 70 %\n    torque: 160 N·m\n',
        to: '    preload: 35 %\n    torque: «82 N·m»\n',
      },
      { file: 'tools.yaml', from: 'range: 40 to 200 N·m', to: 'range: 20 to 100 N·m' },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '    preload: 70 %\n    torque: 160 N·m\n',
        to: '    preload: 35 %\n    torque: 82 N·m\n    reason: The rubber gasket is squeezed out above 90 N·m\n',
      },
      { file: 'tools.yaml', from: 'range: 40 to 200 N·m', to: 'range: 20 to 100 N·m' },
    ],
  },
  found: eachJoint((plan) => {
    // A set screw presses with its point and clamps nothing.
    if (plan.reason !== undefined || plan.head === 'set screw') return undefined;
    const { preloadShare, preloadBasis } = plan.result;
    // A computed torque is set down to a mark of the wrench: what counts is the share asked for.
    const share = plan.origin === 'stated' ? preloadShare.nominal : plan.preloadShare;
    if (share >= LEAST - SLACK) return undefined;
    // Outside its own band the torque is reported as that.
    if (plan.origin === 'stated' && compareStated(plan.target, plan.result).verdict !== 'inside') return undefined;
    return {
      range: aimPlace(plan),
      message: `\`${plan.id}\` is tightened to ${formatDecimal(share * 100, 0)} % of its ${preloadBasis} load, and joints are held by ${LEAST * 100} % or more`,
      hint: 'compare torque, thread and grade with the source; a computed torque aims at `preload:` 40 to 75 %; where the joint bears no more, such as on soft rubber, say why in `reason`',
    };
  }),
};
