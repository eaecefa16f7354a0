/** Locks are hung, and no step says that each person takes off their own. */

import type { Check } from '../check.ts';
import { pointMissing, usesLocks } from './close-out.ts';

export const locksNotRemoved: Check = {
  code: 'SAF017',
  name: 'locks-not-removed',
  severity: 'error',
  title: 'A lock is hung, and no step says that each person removes their own.',
  why: 'Somebody in a hurry takes off a lock that is not theirs, and the machine starts under the hands of the one who trusts it.',
  sources: ['29 CFR 1910.147(e)(3): each lock is removed by the person who hung it (memory)'],
  example: {
    bad: [
      {
        file: 'stages/close-out.yaml',
        from: `  - do: Remove your own lock.
    close_out: [own locks removed]
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
  found: pointMissing('own locks removed', usesLocks, {
    message: 'locks are hung, and no step says that each person removes their own',
    step: 'removes the locks',
  }),
};
