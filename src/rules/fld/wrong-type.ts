/** A value has the wrong type. */

import type { Check } from '../check.ts';

export const wrongType: Check = {
  code: 'FLD003',
  name: 'wrong-type',
  severity: 'error',
  title: 'A value has the wrong type.',
  why: 'What YAML takes for a number has lost how it was written: edition `3.10` of a manual is then 3.1, and a class compared by its letters is no longer the same.',
  sources: ['YAML 1.2.2, 10.3.2: text that looks like a number is read as one unless it stands in quotes (memory)'],
  example: {
    bad: [
      {
        file: 'shop.yaml',
        from: '  - { grade: "8.8", series: coarse, condition: oiled, preload: 70 % }\n',
        to: '  - { grade: «8.8», series: coarse, condition: oiled, preload: 70 % }\n',
      },
    ],
  },
  found: 'reading values',
};
