/** The combined stress may pass the ceiling of the standard. */

import { YIELD_CEILING } from '../../torque/index.ts';
import type { Check } from '../check.ts';
import { stressBeyond } from './stress.ts';

export const overYield: Check = {
  code: 'TRQ017',
  name: 'over-yield',
  severity: 'warning',
  title: 'The combined stress while tightening may pass 90 % of yield.',
  why: 'Tension and twist add while the wrench turns; little is left for a wrench that reads low.',
  sources: ['VDI 2230 Part 1: combined stress at most 90 % of Rp0.2'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    preload: 70 %\n    torque: 160 N·m\n    source: { document: Pump manual, edition: "3", place: page 12 }\n',
        to: '    preload: «76 %»\n',
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
  found: stressBeyond((use) => use > YIELD_CEILING && use <= 1),
};
