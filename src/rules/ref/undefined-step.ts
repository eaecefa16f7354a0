/** A step is referred to that the procedure does not have. */

import type { Check } from '../check.ts';

export const undefinedStep: Check = {
  code: 'REF006',
  name: 'undefined-step',
  severity: 'error',
  title: 'A step is referred to that the procedure does not have.',
  why: 'A card that says `when step … is done` without a number lets the work begin before what it hangs on.',
  sources: ['DOE-STD-1029-92: a cross reference gives the step (memory)'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: When <step:locked> is done, tighten the <joint:cover>.\n',
        to: '      - do: When <«step:lockd»> is done, tighten the <joint:cover>.\n',
      },
    ],
  },
  found: 'resolving',
};
