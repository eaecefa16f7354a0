/** A torque is stated without saying where it comes from. */

import type { Check } from '../check.ts';

export const unsourcedTorque: Check = {
  code: 'TRQ010',
  name: 'unsourced-torque',
  severity: 'error',
  title: 'A torque is stated without saying where it comes from.',
  why: 'Nobody can look it up when it is doubted, and nobody hears of it when the maker changes it.',
  sources: [
    'ISO 9001:2015, 7.5.3.2: documents from outside are identified and controlled (read second-hand)',
    'common practice',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    torque: 160 N·m\n    source: { document: Pump manual, edition: "3", place: page 12 }\n',
        to: '    torque: «160 N·m»\n',
      },
    ],
  },
  found: 'resolving',
};
