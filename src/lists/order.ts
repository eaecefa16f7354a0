/** The order list for any number of jobs over several procedures. */

import { packsFor, sumAmounts, timesAmount } from '../units/index.ts';
import type { OrderBook } from './needs.ts';
import { gather, jobsOf, kitLines, partLines, withLead } from './order-lines.ts';
import type { ConsumableLine, Jobs, OrderLine, OrderList } from './order-types.ts';
import { compareText } from './tools.ts';

/**
 * Draws up the order. Kits and new parts are multiplied, expected replacements are added up before they are rounded up,
 * amounts become whole packs. Each job takes its own kits: what one leaves over serves no other job but as a spare for
 * inspected parts. counts: jobs by card name; cards that are not in the book and counts under 1 are left out.
 */
export function orderList(book: OrderBook, counts: ReadonlyMap<string, number>): OrderList {
  const jobs = book.cards.flatMap((card): Jobs[] => {
    const count = Math.floor(counts.get(card.card) ?? 0);
    return count >= 1 ? [{ card, count }] : [];
  });
  const kits = kitLines(jobs);
  const { bought: parts, unrated } = partLines(jobs);
  const consumables = consumableLines(book, jobs);
  const bought = consumables.filter((c) => c.amounts.length > 0);
  return {
    jobs,
    lines: [...kits, ...parts, ...bought].sort(byLead),
    stock: consumables.filter((c) => c.amounts.length === 0).sort(byLead),
    unrated,
  };
}

const KINDS: readonly OrderLine['kind'][] = ['kit', 'part', 'consumable'];

function byLead(a: OrderLine, b: OrderLine): number {
  return (
    (b.lead?.si ?? -1) - (a.lead?.si ?? -1) ||
    KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind) ||
    compareText(a.number ?? '', b.number ?? '') ||
    compareText(a.name, b.name) ||
    compareText(a.key, b.key)
  );
}

function consumableLines(book: OrderBook, all: readonly Jobs[]): readonly ConsumableLine[] {
  const found = all.flatMap((jobs) => jobs.card.consumables.map((use) => ({ key: use.id, thing: { jobs, use } })));
  return [...gather(found)].flatMap(([id, uses]): ConsumableLine[] => {
    const item = book.consumables[id];
    if (item === undefined) return [];
    const amounts = sumAmounts(uses.flatMap(({ jobs, use }) => use.amounts.map((a) => timesAmount(a, jobs.count))));
    const [only, ...more] = amounts;
    const packs =
      item.pack === undefined || only === undefined || more.length > 0 ? undefined : packsFor(only, item.pack);
    return [
      {
        kind: 'consumable',
        key: `consumable ${id}`,
        consumable: id,
        name: item.name,
        amounts,
        asNeeded: uses.reduce((sum, { jobs, use }) => sum + jobs.count * use.asNeeded, 0),
        for: jobsOf(uses),
        ...(item.number === undefined ? {} : { number: item.number }),
        ...(item.pack === undefined ? {} : { pack: item.pack }),
        ...(packs === undefined ? {} : { order: packs }),
        ...withLead([item.lead]),
      },
    ];
  });
}
