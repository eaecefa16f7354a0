/** A kit is opened and one of its items is fitted nowhere. */

import { listed } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { eachVariant } from '../rule.ts';
import { type Ledger, ledgerOf, type Move } from './ledger.ts';
import { labelled, placeOfMove } from './life-check.ts';

export const kitItemUnused: Check = {
  code: 'PRT010',
  name: 'kit-item-unused',
  severity: 'warning',
  title: 'A card fits parts of a kit and leaves another part of the same kit unused.',
  why: 'A new seal stays in the box while the old one stays in the machine, and nobody knows whether that was meant.',
  sources: ['common practice: the list of a kit is compared with the bagged parts before the first step'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: `number: MW-101, always_replace: true }
`,
        to: `number: MW-101, always_replace: true, kit: Cover kit MW-K1 }
  plug-seal: { name: vent plug seal, kind: o-ring, quantity: 1, kit: Cover kit MW-K1, only: { size: large } }
`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Take out the <part:plug>.
`,
        to: `      - do: Take out the <part:plug> with its <part:plug-seal>.
`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Lay on the new <part:gasket>.
        fit: [gasket, cover]
`,
        to: `      - do: Lay on the new <part:gasket>.
        fit: [«gasket», cover]
`,
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: `number: MW-101, always_replace: true }
`,
        to: `number: MW-101, always_replace: true, kit: Cover kit MW-K1 }
  plug-seal: { name: vent plug seal, kind: o-ring, quantity: 1, kit: Cover kit MW-K1, only: { size: large } }
`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `        remove: { plug: reuse }
`,
        to: `        remove: { plug: reuse, plug-seal: discard }
`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Fit the <part:plug>.
        only: { size: large }
        fit: [plug]
`,
        to: `      - do: Fit the <part:plug> with a new seal.
        only: { size: large }
        fit: [plug, plug-seal]
`,
      },
    ],
  },
  found: eachVariant(function* (scene) {
    const ledger = ledgerOf(scene);
    const opened = openedKits(ledger);
    if (opened.size === 0) return;
    const inVariant = new Set(scene.variant.inventory.map((i) => i.id));
    for (const [kit, first] of opened) {
      const unused = (scene.machine?.parts ?? []).filter(
        (p) => p.kit === kit && inVariant.has(p.id) && !isMoved(ledger, p.id),
      );
      if (unused.length === 0) continue;
      const names = listed(unused.map((p) => `\`${p.id}\``));
      yield labelled(first.step, {
        range: placeOfMove(first),
        message: `\`${kit}\` is opened for \`${first.move.id}\`, and its ${names} ${unused.length === 1 ? 'is' : 'are'} fitted nowhere`,
        related: unused.map((p) => ({ range: p.keyRange, message: 'comes in the same kit' })),
        hint: `write where it is renewed (\`remove: { ${unused[0]?.id}: discard }\`, then \`fit: [${unused[0]?.id}]\`), or take \`kit\` from a part that does not come in it`,
      });
    }
  }),
};

/** First fitting from each kit. */
function openedKits(ledger: Ledger): ReadonlyMap<string, Move> {
  const found = new Map<string, Move>();
  for (const { part, moves } of ledger.lives.values()) {
    const on = part.kit === undefined ? undefined : moves.find((m) => m.kind === 'on');
    if (part.kit === undefined || on === undefined) continue;
    const known = found.get(part.kit);
    if (known === undefined || on.step.number < known.step.number) found.set(part.kit, on);
  }
  return found;
}

/** What comes off and is not replaced is a fault of its own. */
function isMoved(ledger: Ledger, id: string): boolean {
  return ledger.lives.has(id);
}
