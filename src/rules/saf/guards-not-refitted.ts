/** A machine is opened and handed back without a look at its guards. */

import type { Check } from '../check.ts';
import { opensAnything, pointMissing } from './close-out.ts';

export const guardsNotRefitted: Check = {
  code: 'SAF016',
  name: 'guards-not-refitted',
  severity: 'error',
  title: 'Something is opened, and no step sees every guard back in place.',
  why: 'A guard that stands against the wall is forgotten when the machine runs again, and the next sleeve goes into the coupling.',
  sources: ['29 CFR 1910.147(e)(1): the machine is whole before the locks come off (memory)'],
  example: {
    bad: [
      {
        file: 'stages/close-out.yaml',
        from: `  - do: Refit every guard.
    close_out: [guards refitted]
`,
        to: '',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `stages:
  - use: isolate
`,
        to: `«stages»:
  - use: isolate
`,
      },
    ],
  },
  found: pointMissing('guards refitted', opensAnything, {
    message: 'the machine is opened, and no step sees every guard back in place',
    step: 'refits the guards',
  }),
};
