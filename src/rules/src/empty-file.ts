/** A content file holds nothing. */

import type { Check } from '../check.ts';

export const emptyFile: Check = {
  code: 'SRC010',
  name: 'empty-file',
  severity: 'error',
  title: 'A content file holds nothing.',
  why: 'An empty file is mostly one that was emptied by accident; the procedure in it would drop out of the binder without a word.',
  sources: ['common practice'],
  example: {
    bad: [{ file: 'tables/pump-manual.yaml', to: '# to be typed from the manual\n' }],
    badFiles: ['tables/pump-manual.yaml'],
  },
  found: 'reading files',
};
