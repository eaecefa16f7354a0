/** Amounts of consumables: added up by dimension, printed in a unit of a sensible size, counted in packs. */

import { neededDecimals, quantity, roundToStep } from './convert.ts';
import type { Quantity } from './quantity.ts';

/** What a consumable is measured in. */
export type Amount = Quantity<'volume' | 'mass' | 'length'>;

/** From one unit to its larger neighbour: a change at the full unit, never between metric and inch units. */
const LARGER: Readonly<Record<string, string>> = { g: 'kg', ml: 'l', mm: 'm', cm: 'm' };

/** Digits after the point of an amount that was added up. */
const MOST_DECIMALS = 3;

/**
 * One sum a dimension, in the order in which the dimensions appear; 60 g and 60 g give 120 g. The unit is that of the
 * first amount of the dimension, or its larger neighbour when the sum reaches that: 600 g and 600 g give 1.2 kg.
 */
export function sumAmounts(amounts: readonly Amount[]): readonly Amount[] {
  const sums = new Map<Amount['dimension'], { readonly unit: string; si: number }>();
  for (const a of amounts) {
    const known = sums.get(a.dimension);
    if (known === undefined) sums.set(a.dimension, { unit: a.unit, si: a.si });
    else known.si += a.si;
  }
  return [...sums].map(([dimension, { unit, si }]) => inSensibleUnit(dimension, si, unit));
}

/** The amount for `n` jobs, in a unit of a sensible size. n: a whole number, 0 or more. */
export function timesAmount(amount: Amount, n: number): Amount {
  return inSensibleUnit(amount.dimension, amount.si * n, amount.unit);
}

/** Whole packs that hold the amount; undefined when the two are measured in different dimensions. */
export function packsFor(amount: Amount, pack: Amount): number | undefined {
  return amount.dimension === pack.dimension ? roundToStep(amount.si / pack.si, 1, 'up') : undefined;
}

/** `si` in the unit, or in its larger neighbour from one of that on; rounded up, so that no sum falls short. */
function inSensibleUnit(dimension: Amount['dimension'], si: number, symbol: string): Amount {
  const larger = LARGER[symbol];
  const small = quantity(dimension, 1, symbol);
  const isLarge = larger !== undefined && si >= quantity(dimension, 1, larger).si * (1 - 1e-9);
  const unit = isLarge ? larger : small.unit;
  const value = roundToStep(si / quantity(dimension, 1, unit).si, 10 ** -MOST_DECIMALS, 'up');
  const shown = quantity(dimension, value, unit, neededDecimals(value, MOST_DECIMALS));
  // The exact sum goes on: what is printed may be rounded, packs are counted from what is needed.
  return { ...shown, si };
}
