/** Resolve: checked content in, a shop with every name, number and reference resolved out. */

import type { Report } from '../diagnostics/index.ts';
import { type Content, field } from '../model/index.ts';
import { type Context, lookUp } from './context.ts';
import { type MachineAtHand, machineAtHand, resolveMachine } from './machines.ts';
import { resolveDocument } from './procedures.ts';
import {
  checkShop,
  resolveBenches,
  resolveConsumables,
  resolveInfo,
  resolvePeople,
  resolveTools,
} from './registers.ts';
import { resolveStages } from './shared-stages.ts';
import { resolveStatedTables } from './stated-tables.ts';
import { resolveTables } from './tables.ts';
import type { ResolvedShop } from './types.ts';
import { whereUsed } from './where-used.ts';

export {
  correctionText,
  isCorrected,
  jackingText,
  looseningText,
  nutText,
  turnedText,
} from './joint-words.ts';
export { type FromFile, isWritten, keyPlaceOf, placeOf, READ_FROM } from './read-from.ts';
export * from './types.ts';
export { capitalised, listed } from './words.ts';

/** Reports every reference that leads nowhere and every number that cannot be read; what could be resolved is returned. */
export function resolveShop(content: Content, report: Report): ResolvedShop {
  checkShop(content.shop, report);
  const context: Context = {
    content,
    report,
    info: resolveInfo(content.shop, report),
    tools: resolveTools(content, report),
    consumables: resolveConsumables(content, report),
    people: resolvePeople(content),
  };
  const hands = new Map<string, MachineAtHand>(
    [...content.machines.entries].map(([id, entry]) => [id, machineAtHand(context, entry)]),
  );
  const machines = [...hands.values()].map((hand) => resolveMachine(context, hand));
  const documents = [...content.procedures.entries.values()].flatMap((at) => {
    const machine = field(at, 'machine');
    lookUp(context, 'machine', content.machines, machine.value, machine.node.range);
    const hand = hands.get(machine.value);
    return hand === undefined ? [] : [resolveDocument(context, at, hand)];
  });
  return {
    info: context.info,
    people: [...context.people.values()],
    benches: resolveBenches(context),
    tools: [...context.tools.values()],
    consumables: [...context.consumables.values()],
    machines: machines.sort((a, b) => (a.name < b.name ? -1 : 1)),
    documents: documents.sort((a, b) => (a.doc < b.doc ? -1 : 1)),
    tables: resolveTables(context),
    statedTables: resolveStatedTables(context),
    whereUsed: whereUsed(documents),
    stages: resolveStages(content, documents),
  };
}
