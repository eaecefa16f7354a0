/** A part is used that the machine does not have. */

import type { Check } from '../check.ts';

export const undefinedPart: Check = {
  code: 'REF003',
  name: 'undefined-part',
  severity: 'error',
  title: 'A part is used that the machine does not have.',
  why: 'A part that the machine does not have cannot be ordered, and the step that fits it cannot be done.',
  sources: ['common practice: a part is named as on the parts list'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '        fit: [gasket, cover]\n',
        to: '        fit: [«gaskit», cover]\n',
      },
    ],
  },
  found: 'resolving',
};
