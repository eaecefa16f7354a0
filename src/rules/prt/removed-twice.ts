/** A part comes off while it is off. */

import type { Check } from '../check.ts';
import { CONSERVATION, eachLifeFault, placeOfMove } from './life-check.ts';

export const removedTwice: Check = {
  code: 'PRT008',
  name: 'removed-twice',
  severity: 'error',
  title: 'A part comes off that is off already.',
  why: 'The mechanic looks for a part that lies in the bin, and doubts the rest of the card.',
  sources: [CONSERVATION],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Loosen the <joint:cover>.
        loosen: cover
`,
        to: `      - do: Unscrew the <part:screw>s of the <joint:cover>.
        loosen: cover
        remove: { screw: inspect }
`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: '        remove: { cover: reuse, gasket: discard, screw: inspect }\n',
        to: '        remove: { cover: reuse, gasket: discard, «screw»: inspect }\n',
      },
    ],
  },
  found: eachLifeFault('removed twice', ({ life: { id }, move, earlier }) => ({
    range: placeOfMove(move),
    message: `\`${id}\` comes off, but it is off already`,
    ...(earlier === undefined ? {} : { related: [{ range: placeOfMove(earlier), message: 'it came off here' }] }),
    hint: `keep \`${id}\` in the step after which none of it is left in the machine, or say in between where it is fitted`,
  })),
};
