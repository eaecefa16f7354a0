/** The highest preload of a joint against its proof load. */

import { formatDecimal } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint, isSuspect } from '../rule.ts';
import { lessOf } from './aim.ts';

export const overProof: Check = {
  code: 'TRQ004',
  name: 'over-proof',
  severity: 'error',
  title: 'The highest preload exceeds the proof load, or the yield load where there is no proof load.',
  why: 'A bolt past its proof load stays stretched; it loses clamp, and it must not be used again.',
  sources: [
    'ISO 898-1:2013, Tables 5 and 7, and SAE J429: proof loads',
    'Shigley, Mechanical Engineering Design, chapter 8: at most the proof load (memory)',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    preload: 70 %\n    torque: 160 N·m\n    source: { document: Pump manual, edition: "3", place: page 12 }\n',
        to: '    preload: «80 %»\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '    preload: 70 %\n    torque: 160 N·m\n    source: { document: Pump manual, edition: "3", place: page 12 }\n',
        to: '    preload: 70 %\n',
      },
    ],
  },
  found: eachJoint((plan) => {
    const { high } = plan.result.preloadShare;
    if (high <= 1 || isSuspect(plan)) return undefined;
    return {
      range: plan.ranges[plan.origin === 'stated' ? 'torque' : 'preload'] ?? plan.range,
      message: `\`${plan.id}\` may reach ${formatDecimal(high * 100, 0)} % of its ${plan.result.preloadBasis} load`,
      hint: `low friction and the deviation of the wrench are counted in: ${lessOf(plan)}`,
    };
  }),
};
