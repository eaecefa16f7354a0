/** A content file holds more than one YAML document. */

import type { Check } from '../check.ts';

export const severalDocuments: Check = {
  code: 'SRC011',
  name: 'several-documents',
  severity: 'error',
  title: 'A content file holds more than one YAML document.',
  why: 'Only the first document of a file is read: what stands below the line never becomes a card, and nobody misses it until the job.',
  sources: ['YAML 1.2.2, 9.2: `---` begins another document (memory)'],
  example: {
    bad: [
      {
        file: 'stages/close-out.yaml',
        from: '  - do: Remove your own lock.\n    close_out: [own locks removed]\n',
        to: '  - do: Remove your own lock.\n    close_out: [own locks removed]\n«---»\nid: hand-over\ntitle: Hand over\nsteps:\n  - do: Tell the shift that the pump is back.\n',
      },
    ],
  },
  found: 'reading files',
};
