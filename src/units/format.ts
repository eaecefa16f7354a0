/** The one way in which quantities become text: unit joined to number so that no line can part them. */

import type { Limit, Quantity } from './quantity.ts';

/** U+00A0: keeps a number and its unit on one line, in browsers and in the PDF line breaker. */
export const NO_BREAK_SPACE = '\u00a0';

/** `85 N·m`, `22.5°`, `30 %`, `1 1/8 in`; number and unit joined by a no-break space (none before the degree of angle). */
export function formatQuantity(q: Quantity): string {
  return `${formatNumber(q)}${q.unit === '°' ? '' : NO_BREAK_SPACE}${q.unit}`;
}

/** The number alone, with the decimals as written: for table columns whose head holds the unit. */
export function formatNumber(q: Quantity): string {
  if (q.fraction !== undefined) return q.fraction.replace(' ', NO_BREAK_SPACE).replace('-', '\u2212');
  return formatDecimal(q.value, q.decimals);
}

/** A bare number with a true minus sign and never a negative zero. */
export function formatDecimal(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '\u2212');
}

/** `0 to 0.10 mm`, `at most 0.05 mm`, `at least 3 mm`. */
export function formatLimit(limit: Limit): string {
  const { min, max } = limit;
  if (min !== undefined && max !== undefined) return `${formatNumber(min)} to ${formatQuantity(max)}`;
  if (max !== undefined) return `at most ${formatQuantity(max)}`;
  if (min !== undefined) return `at least ${formatQuantity(min)}`;
  return '';
}
