/** A machine is named that the shop does not have. */

import type { Check } from '../check.ts';

export const undefinedMachine: Check = {
  code: 'REF007',
  name: 'undefined-machine',
  severity: 'error',
  title: 'A machine is named that the shop does not have.',
  why: 'Parts, joints and variants all come from the machine. A procedure for one that is not there is a text without a number behind it.',
  sources: ['common practice'],
  example: {
    bad: [{ file: 'procedures/mw-1.yaml', from: 'machine: pump\n', to: 'machine: «pumps»\n' }],
  },
  found: 'resolving',
};
