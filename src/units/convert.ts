/** Making quantities and turning them into other units. */

import type { Dimension, Quantity } from './quantity.ts';
import { findUnit, type Unit } from './unit-table.ts';

function need(symbol: string, dimension?: Dimension): Unit {
  const u = findUnit(symbol, dimension);
  if (u === undefined) throw new RangeError(`no unit \`${symbol}\`${dimension ? ` for ${dimension}` : ''}`);
  return u;
}

/**
 * A quantity from a bare number in a named unit. decimals: digits to print; default as many as the number needs, at most 6.
 * Throws RangeError on an unknown unit (a programmer's mistake; author's text goes through `parseQuantity`).
 */
export function quantity<D extends Dimension>(
  dimension: D,
  value: number,
  symbol: string,
  decimals: number = neededDecimals(value),
): Quantity<D> {
  const u = need(symbol, dimension);
  return { dimension, value, unit: u.symbol, decimals, si: value * u.factor + u.offset };
}

/** The bare number of `q` in another unit of its dimension, in full precision. */
export function valueIn(q: Quantity, symbol: string): number {
  const u = need(symbol, q.dimension);
  return u.symbol === q.unit ? q.value : (q.si - u.offset) / u.factor;
}

/** The same amount in another unit, to be printed with `decimals` digits (not rounded here). */
export function convert<D extends Dimension>(q: Quantity<D>, symbol: string, decimals: number): Quantity<D> {
  return quantity(q.dimension, valueIn(q, symbol), symbol, decimals);
}

/** Digits after the point that `value` needs to be printed without loss, at most `most`. */
export function neededDecimals(value: number, most = 6): number {
  for (let d = 0; d < most; d++) {
    if (Math.abs(value - Number(value.toFixed(d))) < 1e-9 * Math.max(1, Math.abs(value))) return d;
  }
  return most;
}

/**
 * Rounds to a multiple of `step` without ever widening a limit: `down` for a maximum, `up` for a minimum,
 * `nearest` for a value that is no limit. A value within 1e-9 of a multiple is taken as that multiple.
 */
export function roundToStep(value: number, step: number, direction: 'down' | 'up' | 'nearest'): number {
  const n = value / step;
  const near = Math.round(n);
  const exact = Math.abs(n - near) < 1e-9 * Math.max(1, Math.abs(n));
  const k = exact ? near : direction === 'down' ? Math.floor(n) : direction === 'up' ? Math.ceil(n) : near;
  return Number((k * step).toFixed(neededDecimals(step, 9)));
}
