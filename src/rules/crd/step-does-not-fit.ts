/** A step with its warnings and torque block is taller than a card side. */

import type { Check } from '../check.ts';

export const stepDoesNotFit: Check = {
  code: 'CRD001',
  name: 'step-does-not-fit',
  severity: 'error',
  title: 'A step with its warnings and torque block is taller than a card side.',
  why: 'Half a step on one side and half on the next is done by halves: the card is turned over with the job open.',
  sources: ['NUREG-0899 and DOE-STD-1029-92: a step and its warnings stand together on one page'],
  example: {
    bad: [
      {
        file: 'stages/isolate.yaml',
        from: '  - do: Lock the switch with <tool:lock>.\n    id: locked\n',
        to: `  - do: «Lock the switch with <tool:lock>.»
    id: locked
    record: [
      Padlock 1, Padlock 2, Padlock 3, Padlock 4, Padlock 5, Padlock 6, Padlock 7, Padlock 8,
      Padlock 9, Padlock 10, Padlock 11, Padlock 12, Padlock 13, Padlock 14, Padlock 15, Padlock 16,
      Padlock 17, Padlock 18, Padlock 19, Padlock 20, Padlock 21, Padlock 22, Padlock 23, Padlock 24,
      Padlock 25, Padlock 26, Padlock 27, Padlock 28, Padlock 29, Padlock 30, Padlock 31, Padlock 32,
      Padlock 33, Padlock 34, Padlock 35, Padlock 36, Padlock 37, Padlock 38, Padlock 39, Padlock 40,
      Padlock 41, Padlock 42, Padlock 43, Padlock 44, Padlock 45, Padlock 46, Padlock 47, Padlock 48,
    ]
`,
      },
    ],
  },
  found: 'laying out cards',
};
