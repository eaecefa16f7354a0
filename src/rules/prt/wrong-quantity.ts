/** More or fewer pieces go on than came off. */

import type { Check } from '../check.ts';
import { CONSERVATION, eachLifeFault, placeOfMove } from './life-check.ts';

export const wrongQuantity: Check = {
  code: 'PRT009',
  name: 'wrong-quantity',
  severity: 'error',
  title: 'More or fewer pieces of a part are fitted than came off.',
  why: 'Holes stay empty, or the mechanic counts his screws again and again; the joint carries less than it should.',
  sources: [CONSERVATION],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `        fit: [screw]
        lubricate:`,
        to: `        fit: { «screw»: 8 }
        lubricate:`,
      },
    ],
  },
  found: eachLifeFault('wrong quantity', ({ life: { id, part }, move, earlier, expected = 0, found = 0 }) => {
    const tooMany = found > expected;
    return {
      range: placeOfMove(move),
      message: tooMany
        ? `${found} of \`${id}\` are fitted here, and ${expected === 1 ? 'only 1 is' : `only ${expected} are`} off`
        : `${expected} of \`${id}\` came off, and ${found} ${found === 1 ? 'goes' : 'go'} back`,
      related: [
        ...(earlier === undefined ? [] : [{ range: placeOfMove(earlier), message: 'they came off here' }]),
        { range: part.keyRange, message: 'the parts list says how many there are' },
      ],
      hint: `write \`fit: [${id}]\` for all of them at once, or counts that add up over the steps; a count that hangs on the variant stands in steps marked \`only:\``,
    };
  }),
};
