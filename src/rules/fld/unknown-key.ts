/** A key is not one that this entry may have. */

import type { Check } from '../check.ts';

export const unknownKey: Check = {
  code: 'FLD001',
  name: 'unknown-key',
  severity: 'error',
  title: 'A key is not one that this entry may have.',
  why: 'A mistyped key is text that nobody reads: the `wait`, the warning or the limit written under it is not on the card.',
  sources: ['common practice: a form with a field that does not exist is refused'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '  cover: { name: cover, kind: cover, quantity: 1, number: MW-100, mass: 18 kg }\n',
        to: '  cover: { name: cover, kind: cover, quantity: 1, number: MW-100, mass: 18 kg, «matreial»: bronze }\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '  cover: { name: cover, kind: cover, quantity: 1, number: MW-100, mass: 18 kg }\n',
        to: '  cover: { name: cover, kind: cover, quantity: 1, number: MW-100, mass: 18 kg, material: bronze }\n',
      },
    ],
  },
  found: 'reading values',
};
