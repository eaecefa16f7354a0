/** Quantities, limits, sources and dates of the content: read, or reported at their place. */

import type { Range, Report } from '../diagnostics/index.ts';
import { type At, field, optional } from '../model/index.ts';
import { type Dimension, joinUnits, type Limit, parseLimit, parseQuantity, type Quantity } from '../units/index.ts';
import type { SourceNote } from './types.ts';

export function readQuantity<D extends Dimension>(
  report: Report,
  at: At<string> | undefined,
  dimension: D | readonly D[],
  allowed?: { readonly positive?: boolean },
): Quantity<D> | undefined {
  if (at === undefined) return undefined;
  const parsed = parseQuantity(at.value, dimension);
  if (!parsed.ok) {
    report('FLD005', at.node.range, parsed.problem, { hint: parsed.hint });
    return undefined;
  }
  if ((allowed?.positive ?? true) && parsed.value.value <= 0) {
    report('FLD005', at.node.range, `\`${at.value}\` is not more than zero`, { hint: 'give a positive value' });
    return undefined;
  }
  return parsed.value;
}

export function readLimit<D extends Dimension>(
  report: Report,
  at: At<string> | undefined,
  dimension: D | readonly D[],
): Limit<D> | undefined {
  if (at === undefined) return undefined;
  const parsed = parseLimit(at.value, dimension);
  if (!parsed.ok) report('FLD006', at.node.range, parsed.problem, { hint: parsed.hint });
  return parsed.ok ? parsed.value : undefined;
}

export function readSource(
  value:
    | { readonly document: string; readonly edition?: string | undefined; readonly place?: string | undefined }
    | undefined,
): SourceNote | undefined {
  return value === undefined ? undefined : sourceNote(value);
}

export function sourceNote(value: {
  readonly document: string;
  readonly edition?: string | undefined;
  readonly place?: string | undefined;
}): SourceNote {
  return {
    document: value.document,
    ...(value.edition === undefined ? {} : { edition: value.edition }),
    ...(value.place === undefined ? {} : { place: value.place }),
  };
}

/** A day of the calendar; `2026-02-30` fits the pattern and is none. */
export function checkDate(report: Report, at: At<string>): void {
  const [year = 0, month = 0, day = 0] = at.value.split('-').map(Number);
  const date = new Date(Date.UTC(year, month - 1, day));
  if (date.getUTCFullYear() !== year || date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) {
    report('FLD008', at.node.range, `\`${at.value}\` is not a day of the calendar`, {
      hint:
        month < 1 || month > 12
          ? 'look the date up where it was read: months run from 01 to 12, and stand before the day'
          : `look the date up where it was read: the days of that month run from 01 to ${lastDay(year, month)}`,
    });
  }
}

function lastDay(year: number, month: number): number {
  return new Date(Date.UTC(year, month, 0)).getUTCDate();
}

/** The place of a field within its owner, or the owner's. */
export function rangeOf<T extends object, K extends keyof T & string>(at: At<T>, key: K): Range {
  return (optional(at, key) ?? field(at, key)).node.range;
}

/** The object without the keys whose value is undefined: optional fields are absent, never undefined. */
export function defined<T extends Record<string, unknown>>(object: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  const out: Record<string, unknown> = {};
  for (const key of Object.keys(object)) if (object[key] !== undefined) out[key] = object[key];
  return out as { [K in keyof T]: Exclude<T[K], undefined> };
}

/** Plain text as printed: numbers joined to their units. */
export function plainText(text: string | undefined): string | undefined {
  return text === undefined ? undefined : joinUnits(text);
}
