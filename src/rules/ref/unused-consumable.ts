/** A consumable of the register is used nowhere. */

import type { Check } from '../check.ts';
import { usedIn } from './used.ts';

export const unusedConsumable: Check = {
  code: 'REF018',
  name: 'unused-consumable',
  severity: 'warning',
  title: 'A consumable of the register is used by no step, text or joint.',
  why: 'Either a step has forgotten it, and the joint goes together dry, or the stores keep a tin until it is out of date.',
  sources: ['common practice'],
  example: {
    bad: [
      {
        file: 'consumables.yaml',
        from: 'wipe: { name: lint-free wipe, kind: wipe }\n',
        to: 'wipe: { name: lint-free wipe, kind: wipe }\n«pad»: { name: scouring pad, kind: abrasive }\n',
      },
    ],
    good: [
      {
        file: 'consumables.yaml',
        from: 'wipe: { name: lint-free wipe, kind: wipe }\n',
        to: 'wipe: { name: lint-free wipe, kind: wipe }\npad: { name: scouring pad, kind: abrasive }\n',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Rub both faces with a <consumable:pad>.\n      - do: Wipe both faces with a <consumable:wipe>.\n',
      },
    ],
  },
  found: (shop, tell) => {
    if (shop.incomplete) return;
    const { consumables } = usedIn(shop);
    for (const { id, keyRange } of shop.consumables) {
      if (consumables.has(id)) continue;
      tell(keyRange, `consumable \`${id}\` is used by no step, text or joint`, {
        hint: `write \`<consumable:${id}>\` or \`use: [${id}]\` where it is used, or take it out of the register`,
      });
    }
  },
};
