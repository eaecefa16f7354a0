/** Resolve: checked content in, a shop with every name, number and reference resolved out. */

import type { Report } from '../diagnostics/index.ts';
import { type Content, field } from '../model/index.ts';
import { type Context, lookUp } from './context.ts';
import { resolveFeedback, resolveOutside, resolveTemporary } from './control-registers.ts';
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
  measuredText,
  nutText,
  turnedText,
} from './joint-words.ts';
export { type FromFile, isWritten, keyPlaceOf, placeOf, READ_FROM } from './read-from.ts';
export * from './types.ts';
export { whereUsed } from './where-used.ts';
export { capitalised, listed } from './words.ts';

/** Reports every reference that leads nowhere and every number that cannot be read; what could be resolved is returned. */
export function resolveShop(content: Content, tell: Report): ResolvedShop {
  let { sound } = content;
  const report: Report = (...fault) => {
    sound = false;
    tell(...fault);
  };
  checkShop(content.shop, report);
  const context: Context = {
    content,
    report,
    info: resolveInfo(content.shop, report),
    tools: resolveTools(content, report),
    consumables: resolveConsumables(content, report),
    people: resolvePeople(content),
  };
  const hands = new Map<string, { readonly hand: MachineAtHand; readonly watch: Watch }>();
  const machines = [...content.machines.entries].map(([id, entry]) => {
    const watch = watched(context);
    const hand = machineAtHand(watch.context, entry);
    hands.set(id, { hand, watch });
    return resolveMachine(watch.context, hand);
  });
  const shaky = [content.tools, content.consumables].some((r) => r.unread || r.faulty.size > 0);
  const documents = [...content.procedures.entries.values()].flatMap((at) => {
    const machine = field(at, 'machine');
    lookUp(context, 'machine', content.machines, machine.value, machine.node.range);
    const found = hands.get(machine.value);
    if (found === undefined) return [];
    const watch = watched(context);
    const document = resolveDocument(watch.context, at, found.hand);
    return [shaky || watch.met() || found.watch.met() ? { ...document, incomplete: true as const } : document];
  });
  const shop: ResolvedShop = {
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
    outside: resolveOutside(context),
    temporaryChanges: resolveTemporary(context),
    feedback: resolveFeedback(context),
    stages: resolveStages(content, documents),
  };
  return sound ? shop : { ...shop, incomplete: true };
}

interface Watch {
  readonly context: Context;
  /** Whether a fault was reported through this context. */
  readonly met: () => boolean;
}

function watched(context: Context): Watch {
  let met = false;
  const report: Report = (...fault) => {
    met = true;
    context.report(...fault);
  };
  return { context: { ...context, report }, met: () => met };
}
