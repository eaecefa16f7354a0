/** A part of a machine is used nowhere. */

import type { Check } from '../check.ts';
import { usedIn } from './used.ts';

export const unusedPart: Check = {
  code: 'REF019',
  name: 'unused-part',
  severity: 'warning',
  title: 'A part of a machine is used by no step, text or joint.',
  why: 'A washer that is on the parts list and in no step stays in the tray when the cover is closed, or is ordered for every job and never fitted.',
  sources: ['common practice: what is left in the tray was left out'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '  cover: { name: cover, kind: cover, quantity: 1, number: MW-100, mass: 18 kg }\n',
        to: '  cover: { name: cover, kind: cover, quantity: 1, number: MW-100, mass: 18 kg }\n  «spacer»: { name: spacer ring, kind: ring, quantity: 1, number: MW-104 }\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '  cover: { name: cover, kind: cover, quantity: 1, number: MW-100, mass: 18 kg }\n',
        to: '  cover: { name: cover, kind: cover, quantity: 1, number: MW-100, mass: 18 kg }\n  spacer: { name: spacer ring, kind: ring, quantity: 1, number: MW-104 }\n',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Wipe both faces with a <consumable:wipe>.\n        note: The <part:spacer> stays on the shaft.\n',
      },
    ],
  },
  found: (shop, tell) => {
    if (shop.incomplete) return;
    const { machines, parts } = usedIn(shop);
    for (const machine of shop.machines) {
      // A machine that waits for its first procedure is one fact, not one for each part.
      if (!machines.has(machine.id)) {
        tell(machine.keyRange, `no procedure is written for \`${machine.id}\`, so that none of its parts is used`, {
          hint: `write a procedure with \`machine: ${machine.id}\`, or take the file away`,
        });
        continue;
      }
      for (const { id, keyRange } of machine.parts) {
        if (parts.has(`${machine.id}/${id}`)) continue;
        tell(keyRange, `part \`${id}\` of \`${machine.id}\` is used by no step, text or joint`, {
          hint: `write \`<part:${id}>\`, \`remove\` or \`fit\` where it is handled, or take it out of the parts list`,
        });
      }
    }
  },
};
