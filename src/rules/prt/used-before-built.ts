/** An assembly goes on before a part of it is back in it. */

import type { Check } from '../check.ts';
import { eachVariant } from '../rule.ts';
import { ledgerOf } from './ledger.ts';
import { labelled, placeOfMove } from './life-check.ts';
import { missingWhenFitted } from './life-faults.ts';

export const usedBeforeBuilt: Check = {
  code: 'PRT013',
  name: 'used-before-built',
  severity: 'error',
  title: 'An assembly is fitted before a part of which it is built is back in it.',
  why: 'The mechanic has closed the machine when the card hands him the part that belongs inside, and strips it again.',
  sources: ['common practice: a sub-assembly is complete before it goes on'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '  cover: { name: cover, kind: cover, quantity: 1, number: MW-100, mass: 18 kg }\n',
        to: `  cover: { name: cover, kind: cover, quantity: 1, number: MW-100, mass: 18 kg, made_of: [bush] }
  bush: { name: cover bush, kind: ring, quantity: 1, number: MW-104 }
`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Wipe both faces with a <consumable:wipe>.
`,
        to: `      - do: Press the <part:bush> out of the cover.
        remove: { bush: discard }
      - do: Wipe both faces with a <consumable:wipe>.
`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `        fit: [gasket, cover]
`,
        to: `        fit: [gasket, «cover»]
      - do: Press the new <part:bush> into the cover.
        fit: [bush]
`,
      },
    ],
  },
  found: eachVariant(function* (scene) {
    const ledger = ledgerOf(scene);
    for (const whole of ledger.lives.values()) {
      if (whole.part.madeOf === undefined) continue;
      for (const { at, later } of missingWhenFitted(whole, ledger)) {
        yield labelled(at.step, {
          range: placeOfMove(at),
          message: `\`${whole.id}\` is fitted while \`${later.move.id}\`, of which it is built, is still off`,
          related: [{ range: placeOfMove(later), message: `\`${later.move.id}\` goes in here` }],
          hint: `move the step that fits \`${later.move.id}\` before this one, or take it from \`made_of\` of \`${whole.id}\` if it goes on afterwards`,
        });
      }
    }
  }),
};
