/** A gauge with four graduations within the limit that it judges, and fewer than ten. */

import type { Check } from '../check.ts';
import { COARSE_SOURCES, coarseFault, LEAST, WANTED } from './coarse.ts';
import { eachJudged } from './measured.ts';

export const gaugeCoarse: Check = {
  code: 'TOL004',
  name: 'gauge-coarse',
  severity: 'warning',
  title: 'A gauge reads in steps coarser than a tenth of the limit that it judges.',
  why: 'A reading near the end of the limit falls on either side of it by the angle from which the scale is looked at.',
  sources: COARSE_SOURCES,
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          limit: 0.05 to 0.30 mm\n          with: feeler\n',
        to: '          limit: 0.05 to 0.10 mm\n          with: «feeler»\n',
      },
    ],
  },
  found: eachJudged((judged) => coarseFault(judged, LEAST, WANTED)),
};
