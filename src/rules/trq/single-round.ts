/** Four bolts or more that are taken to full torque in one round. */

import { formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint } from '../rule.ts';
import { isMany, roundPlace, sequenceRounds } from './rounds.ts';

export const singleRound: Check = {
  code: 'TRQ029',
  name: 'single-round',
  severity: 'warning',
  title: 'Four bolts or more are taken to full torque in one round.',
  why: 'The first bolt carries the whole cover and tilts it; the last ones find the gap already closed and read tight without clamping.',
  sources: ['ASME PCC-1-2019, Table 1: three rounds', 'TM 5-3805-248-23-1: two passes above 30 lbf·ft'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    rounds: [30 %, 70 %, 100 %]\n',
        to: '    rounds: «[100 %]»\n',
      },
    ],
  },
  found: eachJoint((plan) => {
    if (!isMany(plan) || sequenceRounds(plan).length !== 1) return undefined;
    return {
      range: roundPlace(plan),
      message: `the bolts of \`${plan.id}\` are taken to ${formatQuantity(plan.target)} in one round`,
      hint: 'write the rounds of the maker, or the usual `rounds: [30 %, 70 %, 100 %]`',
    };
  }),
};
