/** A quantity cannot be read, has no unit, or has a unit of another kind. */

import type { Check } from '../check.ts';

export const badQuantity: Check = {
  code: 'FLD005',
  name: 'bad-quantity',
  severity: 'error',
  title: 'A quantity cannot be read, has no unit, or has a unit of another kind.',
  why: 'A number without its unit is read in the unit of the reader. 160 meant as N·m and set as lbf·ft stretches the screw by a third too far.',
  sources: [
    'ISO 80000-1: a quantity is a number and a unit (memory)',
    'NIST SP 811, 7.4: the unit stands with the number (memory)',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    torque: 160 N·m\n',
        to: '    torque: «160»\n',
      },
    ],
  },
  found: 'reading values',
};
