/** A file lies where no content file is read, or is linked from outside the shop folder. */

import type { Check } from '../check.ts';

export const misplacedFile: Check = {
  code: 'SRC012',
  name: 'misplaced-file',
  severity: 'error',
  title: 'A file lies where no content file is read, or is linked from outside the shop folder.',
  why: 'A file outside the known folders is not read: the procedure in it is neither checked nor printed, and the shop believes that it has it.',
  sources: ['common practice'],
  example: {
    bad: [{ file: 'procedure/mw-2.yaml', to: 'doc: MW-2\ntitle: Renew the shaft seal\n' }],
    badFiles: ['procedure/mw-2.yaml'],
  },
  found: 'reading files',
};
