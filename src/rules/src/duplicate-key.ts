/** A key stands twice in one entry. */

import type { Check } from '../check.ts';

export const duplicateKey: Check = {
  code: 'SRC009',
  name: 'duplicate-key',
  severity: 'error',
  title: 'A key stands twice in one entry.',
  why: 'Only one of the two is kept, and the author cannot know which: the note, the limit or the part in the other one never reaches the card.',
  sources: ['YAML 1.2.2, 3.2.1.1: the keys of a map are unique (memory)'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Wipe both faces with a <consumable:wipe>.\n        note: The cover has a groove for the bead.\n        «note»: The old gasket leaves a dark ring.\n',
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Wipe both faces with a <consumable:wipe>.\n        note: The cover has a groove for the bead. The old gasket leaves a dark ring.\n',
      },
    ],
  },
  found: 'reading files',
};
