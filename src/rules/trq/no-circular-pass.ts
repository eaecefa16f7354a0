/** A joint with a gasket that is not gone round at full torque. */

import { isWritten, placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { eachJoint, lookUp } from '../rule.ts';
import { roundPlace } from './rounds.ts';

/** Two bolts have no way round. */
const LEAST_BOLTS = 3;

export const noCircularPass: Check = {
  code: 'TRQ028',
  name: 'no-circular-pass',
  severity: 'warning',
  title: 'A joint with a gasket is not gone round once more at full torque.',
  why: 'Each bolt of the last round slackens its neighbours, because the gasket gives; without going round the first ones stay at half their torque.',
  sources: ['ASME PCC-1-2019, Table 1: circular passes at full torque until no nut turns', 'common practice'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    rounds: [30 %, 70 %, 100 %]\n    circular_passes: 1\n',
        to: '    rounds: «[30 %, 70 %, 100 %]»\n',
      },
    ],
  },
  found: eachJoint((plan, shop) => {
    if (plan.gasket === undefined || plan.count < LEAST_BOLTS) return undefined;
    if (plan.rounds.some((r) => r.pass === 'circular')) return undefined;
    // An O-ring or a lip lies in its groove, metal meets metal, and nothing gives.
    const gasket = lookUp(shop)
      .machine(plan.machine)
      ?.parts.find((p) => p.id === plan.gasket);
    if (gasket?.kind !== 'gasket') return undefined;
    return {
      range: isWritten(plan, 'circular_passes') ? placeOf(plan, 'circular_passes') : roundPlace(plan),
      message: `\`${plan.id}\` presses \`${gasket.id}\`, and its bolts are not gone round after the last round`,
      related: [{ range: placeOf(plan, 'gasket'), message: 'the gasket' }],
      hint: 'write `circular_passes: 1` or more, until no bolt turns',
    };
  }),
};
