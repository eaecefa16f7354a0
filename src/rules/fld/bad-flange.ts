/** A standard flange is named that is not known. */

import type { Check } from '../check.ts';

export const badFlange: Check = {
  code: 'FLD012',
  name: 'bad-flange',
  severity: 'error',
  title: 'A standard flange is named that is not known.',
  why: 'Circle, count and thread are compared with the standard flange that is named. A size that the standard does not have is compared with nothing, and the gasket is ordered by it.',
  sources: ['EN 1092-1:2018: flanges by PN', 'ASME B16.5: flanges by class'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    circular_passes: 1\n',
        to: '    circular_passes: 1\n    flange: «EN 1092-1 DN 155 PN 16»\n',
      },
    ],
  },
  found: 'reading values',
};
