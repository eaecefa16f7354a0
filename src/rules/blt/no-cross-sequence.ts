/** A joint of four bolts or more that is tightened going round. */

import { defaultMethod, sequenceFault } from '../../geometry/index.ts';
import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { eachJoint } from '../rule.ts';

/** With fewer, going round and going crosswise are one. */
const LEAST_BOLTS = 4;

export const noCrossSequence: Check = {
  code: 'BLT008',
  name: 'no-cross-sequence',
  severity: 'warning',
  title: 'Four bolts or more are tightened in turn, and another order is possible.',
  why: 'Going round pulls the cover down on one side first: the gasket is pinched there and gapes on the other side, and the cover cracks at the ear.',
  sources: [
    'ASME PCC-1-2019, Table 1: cross-pattern rounds come before circular passes',
    'common practice on covers of every kind',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    sequence: { method: «in turn» }\n',
      },
    ],
  },
  found: eachJoint((plan) => {
    const { id, count, pattern, sequence } = plan;
    if (count < LEAST_BOLTS || sequence.method !== 'in turn') return undefined;
    const usual = defaultMethod(pattern);
    if (usual === 'in turn' || sequenceFault(pattern, { method: usual }) !== undefined) return undefined;
    return {
      range: placeOf(plan, 'sequence', 'method'),
      message: `the bolts of \`${id}\` are tightened in turn, and they can be tightened in the order \`${usual}\``,
      hint: `take \`method\` out, and the order is \`${usual}\`; where the maker wants them in turn, accept the warning and name the page that says so`,
    };
  }),
};
