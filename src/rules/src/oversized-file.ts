/** A content file is larger than any procedure could be. */

import type { Check } from '../check.ts';

/** A scan of three megabytes, saved under the name of the table that was to be typed from it: `%PDF-1.7`. */
const SCAN = new Uint8Array(3 * 1024 * 1024);
SCAN.set([0x25, 0x50, 0x44, 0x46, 0x2d, 0x31, 0x2e, 0x37]);

export const oversizedFile: Check = {
  code: 'SRC003',
  name: 'oversized-file',
  severity: 'error',
  title: 'A content file is larger than any procedure could be.',
  why: 'No procedure is that long. Something else lies under the name of a content file, and reading it would stop the build of every card.',
  sources: ['2 MB is about ten times a procedure of 400 steps, counted on the demo shop'],
  example: {
    bad: [{ file: 'tables/pump-manual.yaml', to: SCAN }],
    badFiles: ['tables/pump-manual.yaml'],
  },
  found: 'reading files',
};
