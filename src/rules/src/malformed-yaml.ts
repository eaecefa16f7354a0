/** A content file is not well-formed YAML. */

import type { Check } from '../check.ts';

export const malformedYaml: Check = {
  code: 'SRC006',
  name: 'malformed-yaml',
  severity: 'error',
  title: 'A content file is not well-formed YAML.',
  why: 'A file that is almost YAML could be read in two ways, and one of them leaves out a warning or hangs a limit on the wrong step.',
  sources: ['YAML 1.2.2, 7.3.3: `: ` ends a key, so that plain text cannot hold it (memory)'],
  example: {
    bad: [
      {
        file: 'stages/isolate.yaml',
        from: '  - do: Open the drain.\n',
        to: '  - do: «O»pen the drain: the lower cock.\n',
      },
    ],
    good: [
      {
        file: 'stages/isolate.yaml',
        from: '  - do: Open the drain.\n',
        to: '  - do: "Open the drain: the lower cock."\n',
      },
    ],
  },
  found: 'reading files',
};
