/** A content file holds bytes that no text file holds. */

import type { Check } from '../check.ts';

/** The first bytes of a photograph that was saved under a wrong name. */
const PHOTOGRAPH = Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0x00, 0x10, 0x4a, 0x46, 0x49, 0x46, 0x00, 0x01);

export const binaryFile: Check = {
  code: 'SRC004',
  name: 'binary-file',
  severity: 'error',
  title: 'A content file holds bytes that no text file holds.',
  why: 'A picture or a damaged file under a content name has no text; whatever were read out of it would be printed as if an author had written it.',
  sources: ['YAML 1.2.2, 5.1: the zero byte is no character of a YAML stream (memory)'],
  example: {
    bad: [{ file: 'stages/drain.yaml', to: PHOTOGRAPH }],
    badFiles: ['stages/drain.yaml'],
  },
  found: 'reading files',
};
