/** A part is thrown away and no new one is fitted. */

import type { Check } from '../check.ts';
import { CONSERVATION, eachLifeFault, placeOfMove } from './life-check.ts';

export const notReplaced: Check = {
  code: 'PRT005',
  name: 'not-replaced',
  severity: 'error',
  title: 'A part is thrown away, and no new one is fitted by the end of the card.',
  why: 'The joint is closed without its gasket, and leaks when the pressure comes on.',
  sources: [CONSERVATION],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: 'remove: { cover: reuse, gasket: discard, screw: inspect }',
        to: 'remove: { cover: reuse, «gasket»: discard, screw: inspect }',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Lay on the new <part:gasket>.
        fit: [gasket, cover]
`,
        to: `      - do: Set the <part:cover> on the pump.
        fit: [cover]
`,
      },
    ],
  },
  found: eachLifeFault('not replaced', ({ life: { id }, move }) => ({
    range: placeOfMove(move),
    message: `\`${id}\` is thrown away, and no new one is fitted by the end`,
    hint: `write \`fit: [${id}]\` in the step that fits the new one; when another procedure fits it, name \`<part:${id}>\` and \`<procedure:…>\` together in one step`,
  })),
};
