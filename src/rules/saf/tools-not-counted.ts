/** A machine is opened and closed without a count of the tools. */

import type { Check } from '../check.ts';
import { opensAnything, pointMissing } from './close-out.ts';

export const toolsNotCounted: Check = {
  code: 'SAF015',
  name: 'tools-not-counted',
  severity: 'error',
  title: 'Something is opened, and no step counts the tools before the machine is handed back.',
  why: 'A spanner left in a casing is found by the first start, at full speed.',
  sources: [
    '29 CFR 1910.147(e)(1): tools and parts are clear and the machine is whole (memory)',
    'NOAA policy 221-13: lost tools (read in summary)',
  ],
  example: {
    bad: [
      {
        file: 'stages/close-out.yaml',
        from: `  - do: Count the tools.
    close_out: [tools counted]
    record: Tools counted
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
  found: pointMissing('tools counted', opensAnything, {
    message: 'the machine is opened, and no step counts the tools before it is handed back',
    step: 'counts the tools',
  }),
};
