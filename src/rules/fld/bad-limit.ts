/** An acceptance limit cannot be read, has no unit, or runs backwards. */

import type { Check } from '../check.ts';

export const badLimit: Check = {
  code: 'FLD006',
  name: 'bad-limit',
  severity: 'error',
  title: 'An acceptance limit cannot be read, has no unit, or runs backwards.',
  why: 'A limit that runs backwards accepts nothing or everything: the mechanic decides for himself what was meant, and the record says that it was in limits.',
  sources: [
    '10 CFR 50 Appendix B, criterion V: quantitative acceptance criteria (memory)',
    'DOE-STD-1029-92: a range with its unit at the step (memory)',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          limit: 0.05 to 0.30 mm\n',
        to: '          limit: «0.30 to 0.05 mm»\n',
      },
    ],
  },
  found: 'reading values',
};
