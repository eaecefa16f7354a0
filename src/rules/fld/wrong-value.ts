/** A value is not one of those allowed here. */

import type { Check } from '../check.ts';

export const wrongValue: Check = {
  code: 'FLD004',
  name: 'wrong-value',
  severity: 'error',
  title: 'A value is not one of those allowed here.',
  why: 'A word outside the list means nothing to the program and something else to each reader; a reading marked `as-left` would be filed under neither as found nor as left.',
  sources: ['DOE-STD-1054-93, 3.4.4.3: readings as found and as left are both kept'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          record: as left\n',
        to: '          record: «as-left»\n',
      },
    ],
  },
  found: 'reading values',
};
