/** A consumable is used that is not in the consumable register. */

import type { Check } from '../check.ts';

export const undefinedConsumable: Check = {
  code: 'REF002',
  name: 'undefined-consumable',
  severity: 'error',
  title: 'A consumable is used that is not in the consumable register.',
  why: 'Hazards, gloves and shelf life come from the register. A consumable that is not in it reaches the bench without any of them.',
  sources: ['29 CFR 1910.1200(g)(8): a safety data sheet for each hazardous chemical used (memory)'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Wipe both faces with a <«consumable:wipes»>.\n',
      },
    ],
  },
  found: 'resolving',
};
