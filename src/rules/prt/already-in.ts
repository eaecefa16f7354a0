/** A part is fitted while it is in. */

import type { Check } from '../check.ts';
import { CONSERVATION, eachLifeFault, placeOfMove } from './life-check.ts';

export const alreadyIn: Check = {
  code: 'PRT007',
  name: 'already-in',
  severity: 'error',
  title: 'A part is fitted while it is in the machine: it is fitted twice, or never came off.',
  why: 'Two gaskets lie in one joint, or the mechanic stops the job to find out which step he has missed.',
  sources: [CONSERVATION],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: 'remove: { cover: reuse, gasket: discard, screw: inspect }',
        to: 'remove: { cover: reuse, screw: inspect }',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: '        fit: [gasket, cover]\n',
        to: '        fit: [«gasket», cover]\n',
      },
    ],
  },
  found: eachLifeFault('already in', ({ life, move, earlier }) => {
    const { id } = life;
    const fate = life.part.alwaysReplace ? 'discard' : 'reuse';
    return {
      range: placeOfMove(move),
      message:
        earlier === undefined
          ? `\`${id}\` is fitted, but the one in the machine never came off`
          : `\`${id}\` is fitted a second time without having come off`,
      ...(earlier === undefined ? {} : { related: [{ range: placeOfMove(earlier), message: 'fitted here before' }] }),
      hint:
        earlier === undefined
          ? `write \`remove: { ${id}: ${fate} }\` in the step that takes it off; where this job adds it for the first time, begin the step with \`Add\``
          : `take \`${id}\` out of one of the two; when it goes on a few at a time, count them: \`fit: { ${id}: 4 }\``,
    };
  }),
};
