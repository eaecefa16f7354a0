/** A tool is used that is not in the tool register. */

import type { Check } from '../check.ts';

export const undefinedTool: Check = {
  code: 'REF001',
  name: 'undefined-tool',
  severity: 'error',
  title: 'A tool is used that is not in the tool register.',
  why: 'The card would name a tool that no list carries to the bench and whose range, size and calibration nobody has looked up.',
  sources: ['common practice', 'ISO 9001:2015, 7.1.5.2: measuring tools are identified (read second-hand)'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          with: feeler\n',
        to: '          with: «feeler-gauge»\n',
      },
    ],
  },
  found: 'resolving',
};
