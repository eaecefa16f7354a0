/** A person is named who is not in the register of people. */

import type { Check } from '../check.ts';

export const undefinedPerson: Check = {
  code: 'REF009',
  name: 'undefined-person',
  severity: 'error',
  title: 'A person is named who is not in the register of people.',
  why: 'A name that is in no register has signed nothing: an owner who left, an approver who never was.',
  sources: ['21 CFR 820.40(a), 2015 text: named persons review and approve'],
  example: {
    bad: [{ file: 'procedures/mw-1.yaml', from: 'owner: ben\n', to: 'owner: «bent»\n' }],
  },
  found: 'resolving',
};
