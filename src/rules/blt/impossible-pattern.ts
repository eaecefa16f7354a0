/** A bolt pattern cannot exist: too few bolts, no size, or holes that overlap. */

import type { Check } from '../check.ts';

export const impossiblePattern: Check = {
  code: 'BLT001',
  name: 'impossible-pattern',
  severity: 'error',
  title: 'A bolt pattern cannot exist: too few bolts, no size, or holes that overlap.',
  why: 'The drawing on the card shows holes that cannot be drilled, and the order points at bolts that are not there.',
  sources: ['geometry; common practice'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    pattern: { circle: 240 mm, count: 8, first: 22.5 deg }\n',
        to: '    pattern: «{ circle: 24 mm, count: 8, first: 22.5 deg }»\n',
      },
    ],
  },
  found: 'resolving',
};
