/** A line is indented with a tab, which YAML does not allow. */

import type { Check } from '../check.ts';

export const tabIndentation: Check = {
  code: 'SRC007',
  name: 'tab-indentation',
  severity: 'error',
  title: 'A line is indented with a tab, which YAML does not allow.',
  why: 'A tab looks like spaces on one screen and like other spaces on the next, so that nobody sees to which step a line belongs.',
  sources: ['YAML 1.2.2, 6.1: a tab is never part of the indentation (memory)'],
  example: {
    bad: [
      {
        file: 'people.yaml',
        from: 'ada: { name: Ada Fern, role: Fitter }\n',
        to: 'ada:\n«\t»name: Ada Fern\n\trole: Fitter\n',
      },
    ],
    good: [
      {
        file: 'people.yaml',
        from: 'ada: { name: Ada Fern, role: Fitter }\n',
        to: 'ada:\n  name: Ada Fern\n  role: Fitter\n',
      },
    ],
  },
  found: 'reading files',
};
