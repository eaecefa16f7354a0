/** A machine that turns goes back without having been turned by hand. */

import type { Check } from '../check.ts';
import { opensAnything, pointMissing } from './close-out.ts';

export const notTurnedByHand: Check = {
  code: 'SAF014',
  name: 'not-turned-by-hand',
  severity: 'error',
  title: 'A machine that turns is handed back without having been turned by hand.',
  why: 'A rubbing wheel, a wrong shim or a rag inside is felt by hand in one turn; under power the same turn breaks the machine and throws the pieces.',
  sources: ['common practice: a full turn by hand after the machine is closed, with the locks still on'],
  example: {
    bad: [
      {
        file: 'stages/close-out.yaml',
        from: `  - do: Turn the shaft by hand through a full turn.
    close_out: [turned by hand]
`,
        to: '',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `stages:
  - use: isolate
`,
        to: `«stages»:
  - use: isolate
`,
      },
    ],
  },
  found: pointMissing('turned by hand', (scene) => scene.machine?.rotates === true && opensAnything(scene), {
    message: 'this machine turns, and no step turns it by hand before it is handed back',
    step: 'turns it by hand',
  }),
};
