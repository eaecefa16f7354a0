/** A part comes off and nothing says what becomes of it. */

import type { Check } from '../check.ts';
import { eachStep } from '../rule.ts';
import { placeOfMove } from './life-check.ts';

export const removedWithoutFate: Check = {
  code: 'PRT014',
  name: 'removed-without-fate',
  severity: 'error',
  title: 'A part comes off and nothing says whether it is thrown away, inspected or used again.',
  why: 'One mechanic throws the gasket away and the other puts it back; the order list counts neither.',
  sources: ['common practice: each part that comes off is tagged with its fate'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '        remove: { plug: reuse }\n',
        to: '        remove: [«plug»]\n',
      },
    ],
  },
  found: eachStep(
    (step) =>
      step.remove
        .filter((m) => m.fate === undefined)
        .map((move) => ({
          range: placeOfMove({ kind: 'off', step, move }),
          message: `\`${move.id}\` comes off, and nothing says what becomes of it`,
          hint: `write \`remove: { ${move.id}: … }\` with its fate: discard, inspect or reuse`,
        })),
    ({ remove }) => remove.length > 0,
  ),
};
