/** A content file is not UTF-8. */

import type { Check } from '../check.ts';

/** As an old editor saves it: one byte a letter. */
function latin1(text: string): Uint8Array {
  return Uint8Array.from(text, (c) => c.charCodeAt(0));
}

export const wrongEncoding: Check = {
  code: 'SRC005',
  name: 'wrong-encoding',
  severity: 'error',
  title: 'A content file is not UTF-8.',
  why: 'In a guessed encoding a degree sign, a micrometre or a middle dot turns into another sign, and `5 µm` may stand on the card as `5 m`.',
  sources: ['YAML 1.2.2, 5.2: UTF-8 (memory)', 'RFC 3629: which bytes are UTF-8 (memory)'],
  example: {
    bad: [{ file: 'tables/pump-manual.yaml', to: latin1('id: pump-manual\ntitle: Schlüsselweiten der Pumpe\n') }],
    badFiles: ['tables/pump-manual.yaml'],
  },
  found: 'reading files',
};
