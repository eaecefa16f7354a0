/** Shared stages come before each other in a circle. */

import type { Check } from '../check.ts';

export const stageCycle: Check = {
  code: 'REF016',
  name: 'stage-cycle',
  severity: 'error',
  title: 'Shared stages come before each other in a circle.',
  why: 'No order of work satisfies it: each stage waits for the other, and the card would begin with whichever came first in the file.',
  sources: ['common practice'],
  example: {
    bad: [
      { file: 'stages/isolate.yaml', from: 'title: Isolate\n', to: 'title: Isolate\nfirst: [permit]\n' },
      {
        file: 'stages/permit.yaml',
        to: `id: permit
title: Permit to work
first: [«isolate»]
steps:
  - do: Take the permit to the control room.
    record: Permit number
`,
      },
    ],
    good: [
      { file: 'stages/isolate.yaml', from: 'title: Isolate\n', to: 'title: Isolate\nfirst: [permit]\n' },
      {
        file: 'stages/permit.yaml',
        to: `id: permit
title: Permit to work
steps:
  - do: Take the permit to the control room.
    record: Permit number
`,
      },
    ],
  },
  found: 'resolving',
};
