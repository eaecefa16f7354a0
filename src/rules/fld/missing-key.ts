/** A key that the entry must have is not there. */

import type { Check } from '../check.ts';

export const missingKey: Check = {
  code: 'FLD002',
  name: 'missing-key',
  severity: 'error',
  title: 'A key that the entry must have is not there.',
  why: 'A card with a hole in it sends the mechanic to guess: a tool without a kind stands in no list of the bench, a measurement without `if out` leaves him with a bad reading and no order.',
  sources: [
    '10 CFR 50 Appendix B, criterion V: acceptance criteria stand in the instruction (memory)',
    'DOE-STD-1029-92: what a procedure names (memory)',
  ],
  example: {
    bad: [
      {
        file: 'tools.yaml',
        from: 'hoist: { name: chain hoist, kind: lifting gear, capacity: 250 kg }\n',
        to: 'hoist: { name: chain hoist, kind: lifting gear, capacity: 250 kg }\nmirror: { «name»: inspection mirror }\n',
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Wipe both faces with a <consumable:wipe>.\n        with: [mirror]\n',
      },
      {
        file: 'tools.yaml',
        from: 'hoist: { name: chain hoist, kind: lifting gear, capacity: 250 kg }\n',
        to: 'hoist: { name: chain hoist, kind: lifting gear, capacity: 250 kg }\nmirror: { name: inspection mirror, kind: hand tool }\n',
      },
    ],
  },
  found: 'reading values',
};
