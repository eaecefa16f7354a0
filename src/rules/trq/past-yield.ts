/** The combined stress may pass yield. */

import type { Check } from '../check.ts';
import { stressBeyond } from './stress.ts';

export const pastYield: Check = {
  code: 'TRQ018',
  name: 'past-yield',
  severity: 'error',
  title: 'The combined stress while tightening may pass yield.',
  why: 'A bolt that yields under the wrench has lost its reserve for good, and looks like a sound one.',
  sources: ['VDI 2230 Part 1: combined stress while tightening'],
  example: {
    bad: [
      { file: 'machines/pump.yaml', from: '    grade: "8.8"\n', to: '    grade: A2-70\n' },
      {
        file: 'machines/pump.yaml',
        from: '    preload: 70 %\n    torque: 160 N·m\n    source: { document: Pump manual, edition: "3", place: page 12 }\n',
        to: '    preload: «75 %»\n',
      },
    ],
  },
  found: stressBeyond((use) => use > 1),
};
