/** A shared stage is used by no procedure. */

import type { Check } from '../check.ts';

const DRAIN = `id: drain
title: Drain
steps:
  - do: Open the lower cock.
`;

export const unusedStage: Check = {
  code: 'REF021',
  name: 'unused-stage',
  severity: 'warning',
  title: 'A shared stage is used by no procedure.',
  why: 'A stage that isolates or closes out and that nobody uses is mostly one that a procedure has lost.',
  sources: ['common practice'],
  example: {
    bad: [{ file: 'stages/drain.yaml', to: DRAIN.replace('id: drain', 'id: «drain»') }],
    good: [
      { file: 'stages/drain.yaml', to: DRAIN },
      { file: 'procedures/mw-1.yaml', from: '  - use: isolate\n', to: '  - use: isolate\n  - use: drain\n' },
    ],
  },
  found: (shop, tell) => {
    if (shop.incomplete) return;
    for (const { id, usedBy, range } of shop.stages) {
      if (usedBy.length > 0) continue;
      tell(range, `shared stage \`${id}\` is used by no procedure`, {
        hint: `write \`- use: ${id}\` among the stages where it belongs, or delete its file`,
      });
    }
  },
};
