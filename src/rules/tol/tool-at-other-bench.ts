/** A tool that cannot be carried, on a card that hangs at another bench. */

import { type Bench, keyPlaceOf, placeOf, type Step } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { eachVariant, lookUp } from '../rule.ts';
import { toolPlace } from './places.ts';

const MW_2 = `doc: MW-2
title: See the pump stand still
machine: pump
purpose: Shows that the pump is isolated.
owner: ben
review: 24 months
energy: [water pressure, electric motor]
ppe: [gloves, eye protection]
revisions:
  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }
stages:
  - use: isolate
  - use: close-out
`;

export const toolAtOtherBench: Check = {
  code: 'TOL002',
  name: 'tool-at-other-bench',
  severity: 'error',
  title: 'A card uses a tool that stands at a bench where the card does not hang.',
  why: 'The machine lies open at one bench and the press it needs is bolted down at another; somebody improvises.',
  sources: ['common practice: a bench is set up with what its cards need before the first step'],
  example: {
    bad: [
      {
        file: 'tools.yaml',
        from: 'feeler: { name: feeler gauge, kind: measuring tool,',
        to: 'feeler: { name: feeler gauge, kind: measuring tool, fixed_at: [valves],',
      },
      {
        file: 'benches.yaml',
        from: '  binder: [MW-1]\n',
        to: '  binder: [MW-1]\nvalves: { name: Valves, place: Hall 2, lead: ada, binder: [MW-2] }\n',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: '          limit: 0.05 to 0.30 mm\n          with: feeler\n',
        to: '          limit: 0.05 to 0.30 mm\n          with: «feeler»\n',
      },
      { file: 'procedures/mw-2.yaml', to: MW_2 },
    ],
  },
  found: eachVariant(function* ({ document, shop, steps, variant }) {
    if (!variant.tools.some((t) => lookUp(shop).tool(t.id)?.fixedAt !== undefined)) return;
    const seen = new Set<string>();
    for (const step of steps) {
      for (const id of step.tools) {
        const tool = lookUp(shop).tool(id);
        if (tool?.fixedAt === undefined || seen.has(id)) continue;
        seen.add(id);
        // A procedure that hangs nowhere is a fault of its own.
        if (document.benches.length === 0 || tool.fixedAt.some((b) => document.benches.includes(b))) continue;
        const hangs = shop.benches.filter((b) => document.benches.includes(b.id));
        yield {
          range: toolPlace(step, id),
          message: `\`${id}\` stands at ${quoted(tool.fixedAt)}, and ${document.doc} hangs at ${quoted(document.benches)}`,
          hint: `name a tool that can be carried, hang ${document.doc} at ${quoted(tool.fixedAt.slice(0, 1))}, or correct \`fixed_at\``,
          related: [
            { range: placeOf(tool, 'fixed_at'), message: `where \`${id}\` stands` },
            ...binders(hangs, document.doc),
          ],
          ...labelOf(step),
        };
      }
    }
  }),
};

function binders(benches: readonly Bench[], doc: string) {
  return benches.map((b) => ({ range: keyPlaceOf(b, 'binder', doc), message: `binder of \`${b.id}\`` }));
}

function labelOf({ label }: Step): { readonly label?: string } {
  return label === undefined ? {} : { label };
}

function quoted(ids: readonly string[]): string {
  return ids.map((b) => `\`${b}\``).join(' and ');
}
