/** The wrench cannot be corrected for its adapter. */

import type { Check } from '../check.ts';

export const adapter: Check = {
  code: 'TRQ013',
  name: 'adapter',
  severity: 'error',
  title: 'The wrench cannot be corrected for its adapter.',
  why: 'An adapter lengthens the lever: the wrench clicks at its setting, and the bolt has had a fifth more.',
  sources: [
    'FAA AC 43.13-1B, 7-40: setting of a wrench with an adapter',
    'TM 1-1500-204-23-9, paragraph 8 (same formula)',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    adapter: «{ length: 60 mm, angle: 0 deg }»\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    adapter: { length: 60 mm, angle: 0 deg }\n',
      },
      {
        file: 'tools.yaml',
        from: 'range: 40 to 200 N·m, step: 1 N·m',
        to: 'range: 40 to 200 N·m, lever: 400 mm, step: 1 N·m',
      },
    ],
  },
  found: 'resolving',
};
