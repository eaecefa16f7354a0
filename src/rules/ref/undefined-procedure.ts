/** A procedure is referred to that the shop does not have. */

import type { Check } from '../check.ts';

export const undefinedProcedure: Check = {
  code: 'REF005',
  name: 'undefined-procedure',
  severity: 'error',
  title: 'A procedure is referred to that the shop does not have.',
  why: 'A binder whose list names a card that does not exist is short of a card, and the mechanic who is sent to it stands there with nothing.',
  sources: ['MIL-STD-38784A, 4.5.3: the list of effective pages names every page'],
  example: {
    bad: [{ file: 'benches.yaml', from: '  binder: [MW-1]\n', to: '  binder: [MW-1, «MW-2»]\n' }],
  },
  found: 'resolving',
};
