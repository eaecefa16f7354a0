/** A part that was thrown away goes back. */

import type { Check } from '../check.ts';
import { CONSERVATION, eachLifeFault, listedPart, placeOfMove } from './life-check.ts';
import { isRenewed } from './life-faults.ts';

export const discardedRefitted: Check = {
  code: 'PRT004',
  name: 'discarded-refitted',
  severity: 'error',
  title:
    'A part that the card throws away is put back: its words say so, there is no new one to be had, or nothing says that a new one goes on.',
  why: 'The mechanic looks for the part in the scrap bin, and the machine runs on a gasket that has been pressed before.',
  sources: [CONSERVATION],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Lay on the new <part:gasket>.
        fit: [gasket, cover]
`,
        to: `      - do: Lay the old <part:gasket> back on the flange.
        fit: [«gasket», cover]
`,
      },
    ],
  },
  found: eachLifeFault('discarded refitted', ({ life, move, earlier }, scene) => {
    const { id } = life;
    if (life.supplied && !isRenewed(life, move, scene))
      return {
        range: placeOfMove(move),
        message: `\`${id}\` is thrown away when it comes off, and nothing says that a new one goes on`,
        related: earlier === undefined ? [] : [{ range: placeOfMove(earlier), message: 'thrown away here' }],
        hint: `say \`the new <part:${id}>\` here or \`always_replace: true\` in the parts list, or give it the fate \`inspect\` or \`reuse\` where it comes off`,
      };
    return {
      range: placeOfMove(move),
      message: life.supplied
        ? `\`${id}\` is thrown away when it comes off, and the step puts the old one back`
        : `\`${id}\` is thrown away when it comes off, and has neither part number nor kit from which a new one could come`,
      related: [
        ...(earlier === undefined ? [] : [{ range: placeOfMove(earlier), message: 'thrown away here' }]),
        ...(life.supplied ? [] : [listedPart(life.part)]),
      ],
      hint: life.supplied
        ? `say \`the new <part:${id}>\`, or give it the fate \`inspect\` or \`reuse\` where it comes off`
        : `give the part its \`number\` or \`kit\` in the parts list, or the fate \`inspect\` or \`reuse\` where it comes off`,
    };
  }),
};
