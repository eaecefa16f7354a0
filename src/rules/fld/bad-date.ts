/** A date is not a day of the calendar written as YYYY-MM-DD. */

import type { Check } from '../check.ts';

export const badDate: Check = {
  code: 'FLD008',
  name: 'bad-date',
  severity: 'error',
  title: 'A date is not a day of the calendar written as YYYY-MM-DD.',
  why: 'A day that does not exist cannot be compared: whether the wrench was in calibration, or the revision in force, on the day of the job stays open.',
  sources: [
    'ISO 8601-1: calendar date as YYYY-MM-DD (memory)',
    'ISO 9001:2015, 7.1.5.2: the state of calibration is known (read second-hand)',
  ],
  example: {
    bad: [
      {
        file: 'tools.yaml',
        from: 'serial: MW-FG-1, calibration_due: 2027-06-01 }',
        to: 'serial: MW-FG-1, calibration_due: «2027-02-29» }',
      },
    ],
    good: [
      {
        file: 'tools.yaml',
        from: 'serial: MW-FG-1, calibration_due: 2027-06-01 }',
        to: 'serial: MW-FG-1, calibration_due: 2027-02-28 }',
      },
    ],
  },
  found: 'reading values',
};
