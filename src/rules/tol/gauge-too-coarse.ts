/** A gauge with fewer than four graduations within the limit that it judges. */

import type { Check } from '../check.ts';
import { COARSE_SOURCES, coarseFault, LEAST } from './coarse.ts';
import { eachJudged } from './measured.ts';

export const gaugeTooCoarse: Check = {
  code: 'TOL003',
  name: 'gauge-too-coarse',
  severity: 'error',
  title: 'A gauge reads in steps coarser than a quarter of the limit that it judges.',
  why: 'The reading cannot tell good from bad: two fitters with the same gauge pass and reject the same part.',
  sources: COARSE_SOURCES,
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          limit: 0.05 to 0.30 mm\n          with: feeler\n',
        to: '          limit: 0.05 to 0.08 mm\n          with: «feeler»\n',
      },
    ],
  },
  found: eachJudged((judged) => coarseFault(judged, 0, LEAST)),
};
