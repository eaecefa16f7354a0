/** The first round of a joint. */

import { formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint, isSuspect } from '../rule.ts';
import { isMany, roundPlace, sequenceRounds } from './rounds.ts';

/** ASME PCC-1 asks for 20 to 30 %; 15 to 35 % lets the marks of a wrench in. */
const LEAST = 0.15;
const MOST = 0.35;
const SLACK = 1e-9;

export const firstRound: Check = {
  code: 'TRQ027',
  name: 'first-round',
  severity: 'warning',
  title: 'The first round of four bolts or more lies outside 15 to 35 % of the torque.',
  why: 'Begun too hard, the first bolts tilt the cover and pinch the gasket before the others touch; begun too softly, nothing is drawn together and the next round does it.',
  sources: ['ASME PCC-1-2019, Table 1: round 1 at 20 to 30 % (read second-hand)', 'common practice: 15 to 35 %'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    rounds: [30 %, 70 %, 100 %]\n',
        to: '    rounds: [«50 %», 100 %]\n',
      },
    ],
  },
  found: eachJoint((plan) => {
    const [first, second] = sequenceRounds(plan);
    // One single round is a fault of its own, and so is a torque that cannot be meant.
    if (!isMany(plan) || first === undefined || second === undefined || isSuspect(plan)) return undefined;
    if (first.share >= LEAST - SLACK && first.share <= MOST + SLACK) return undefined;
    const percent = Number((first.share * 100).toFixed(1));
    return {
      range: roundPlace(plan, 0),
      message: `the first round of \`${plan.id}\` is ${formatQuantity(first.torque)}, ${percent} % of ${formatQuantity(plan.target)}, and 15 to 35 % is usual with four bolts or more`,
      hint: 'write the rounds of the maker, or the usual `rounds: [30 %, 70 %, 100 %]`, and see that the wrench reads the first of them',
    };
  }),
};
