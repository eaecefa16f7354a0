/** The words of a step take a part off or put it on, and the step's lists do not say so. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { eachVariant, type Scene } from '../rule.ts';
import { inPlaceAfter, isWhole, ledgerOf } from './ledger.ts';
import { labelled } from './life-check.ts';
import { lifeFaults } from './life-faults.ts';
import { type Order, ordersOf } from './ordered-moves.ts';

export const unlistedMove: Check = {
  code: 'PRT015',
  name: 'unlisted-move',
  severity: 'warning',
  title: 'The words of a step take a part off or put it on, and `remove` or `fit` does not list it.',
  why: 'A part that no list knows is missing from the order, and nobody notices when it is left on the bench.',
  sources: [
    'common practice: parts are reconciled against the lists of the card, which hold only what the steps list',
    'memory: DOE-STD-1029-92, one action a step, the verb first and the part by its name on the parts list',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Take out the <part:plug>.
        only: { size: large }
        remove: { plug: reuse }
`,
        to: `      - do: «Take out the <part:plug>.»
        only: { size: large }
`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Fit the <part:plug>.
        only: { size: large }
        fit: [plug]
`,
        to: `      - do: «Fit the <part:plug>.»
        only: { size: large }
`,
      },
    ],
  },
  found: eachVariant(function* (scene) {
    if (!scene.shop.info.language.startsWith('en') || !isWhole(scene)) return;
    // A part that does not add up over the card is named by that fault already.
    const faulty = new Set(lifeFaults(scene).map((f) => f.life.id));
    for (const step of scene.steps) {
      for (const order of ordersOf(step.text)) {
        const listed = step.remove.some((m) => m.id === order.part) || step.fit.some((m) => m.id === order.part);
        if (listed || faulty.has(order.part) || !isOpen(order, step.number, scene)) continue;
        const key = order.kind === 'off' ? `remove: { ${order.part}: … }` : `fit: [${order.part}]`;
        yield labelled(step, {
          range: placeOf(step, 'do'),
          message: `the words of the step are \`${order.verb}\` for \`${order.part}\`, and its \`${order.kind === 'off' ? 'remove' : 'fit'}\` does not list it`,
          hint: `write \`${key}\`${order.kind === 'off' ? ' with its fate: discard, inspect or reuse' : ''}`,
        });
      }
    }
  }),
};

/** The order moves the part between machine and bench: what is off already is only taken apart further. */
function isOpen({ kind, part }: Order, step: number, scene: Scene): boolean {
  const life = ledgerOf(scene).lives.get(part);
  if (life === undefined) return scene.variant.inventory.some((i) => i.id === part);
  const inPlace = inPlaceAfter(life, step - 1) ?? 0;
  return kind === 'off' ? inPlace > 0 : inPlace === 0;
}
