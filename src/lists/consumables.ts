/** Consumables of one card: amounts added up, uses without an amount counted, and where the waste goes. */

import type { Consumable, ConsumableUse, Step } from '../resolve/types.ts';
import { type Amount, sumAmounts } from '../units/index.ts';
import { compareText } from './tools.ts';

export interface ConsumableNeed {
  readonly id: string;
  readonly name: string;
  /** One sum a dimension; empty when no step states an amount. */
  readonly amounts: readonly Amount[];
  /** Steps that use it as needed: they state no amount. */
  readonly asNeeded: readonly number[];
  readonly steps: readonly number[];
}

type Using = Pick<Step, 'number'> & { readonly consumables: readonly ConsumableUse[] };

/** What the steps use, by name. */
export function consumableNeeds(steps: readonly Using[]): readonly ConsumableNeed[] {
  const found = new Map<string, { name: string; amounts: Amount[]; asNeeded: number[]; steps: number[] }>();
  for (const { number, consumables } of steps) {
    for (const use of consumables) {
      const entry = found.get(use.id) ?? { name: use.name, amounts: [], asNeeded: [], steps: [] };
      entry.steps.push(number);
      if (use.quantity === undefined) entry.asNeeded.push(number);
      else entry.amounts.push(use.quantity);
      found.set(use.id, entry);
    }
  }
  return [...found]
    .map(([id, { name, amounts, asNeeded, steps: all }]) => ({
      id,
      name,
      amounts: sumAmounts(amounts),
      asNeeded,
      steps: all,
    }))
    .sort((a, b) => compareText(a.name, b.name) || compareText(a.id, b.id));
}

export interface Waste {
  /** Where it goes, in the shop's own words. */
  readonly where: string;
  readonly names: readonly string[];
}

/** Containers for waste, each with the consumables that end there; in the order of the consumables. */
export function wasteOf(consumables: readonly Pick<Consumable, 'name' | 'waste'>[]): readonly Waste[] {
  const found = new Map<string, string[]>();
  for (const { name, waste } of consumables) {
    if (waste !== undefined) found.set(waste, [...(found.get(waste) ?? []), name]);
  }
  return [...found].map(([where, names]) => ({ where, names }));
}
