/** The order asked for cannot be had with this pattern. */

import type { Check } from '../check.ts';

export const impossibleSequence: Check = {
  code: 'BLT004',
  name: 'impossible-sequence',
  severity: 'error',
  title: 'The order asked for cannot be had with this pattern.',
  why: 'The mechanic is told to pull opposite bolts where none stand opposite, and makes up an order of his own.',
  sources: ['geometry: which method suits which pattern; common practice'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    pattern: { circle: 240 mm, count: 8, first: 22.5 deg }\n',
        to: '    pattern: { circle: 240 mm, count: 9 }\n',
      },
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    sequence: «{ tools: 2 }»\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    sequence: { tools: 2 }\n',
      },
    ],
  },
  found: 'resolving',
};
