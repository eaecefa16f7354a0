/** A part is fitted that came from nowhere. */

import type { Check } from '../check.ts';
import { CONSERVATION, eachLifeFault, listedPart, placeOfMove } from './life-check.ts';

export const neverSupplied: Check = {
  code: 'PRT006',
  name: 'never-supplied',
  severity: 'error',
  title: 'A part is fitted that never came off and has neither a part number nor a kit.',
  why: 'The mechanic stands before the open machine with a part to fit that is neither in the bin nor in the stores.',
  sources: [CONSERVATION],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '  plug: { name: vent plug, kind: plug, quantity: 1, number: MW-103, only: { size: large } }\n',
        to: `  plug: { name: vent plug, kind: plug, quantity: 1, number: MW-103, only: { size: large } }
  shield: { name: drip shield, kind: plate, quantity: 1 }
`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Lay on the new <part:gasket>.
        fit: [gasket, cover]
`,
        to: `      - do: Lay on the new <part:gasket>.
        fit: [gasket, cover]
      - do: Clip the <part:shield> under the flange.
        fit: [«shield»]
`,
      },
    ],
  },
  found: eachLifeFault('never supplied', ({ life: { id, part }, move }) => ({
    range: placeOfMove(move),
    message: `\`${id}\` is fitted, but it never came off and has neither part number nor kit`,
    related: [listedPart(part)],
    hint: `write \`remove: { ${id}: reuse }\` in the step that takes it off; when a new one is fitted, give it its \`number\` or \`kit\` in the parts list`,
  })),
};
