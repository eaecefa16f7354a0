/** Faults of the worksheet's fields: nothing is thrown, and what does not need the faulty field is still computed. */

import { type Dimension, type Parsed, parseQuantity, type Quantity } from '../../../units/index.ts';
import { FIELDS, type FieldKey, type Inputs } from './fields.ts';

export interface Fault {
  /** Absent for a fault of the address as a whole. */
  readonly field?: FieldKey;
  readonly problem: string;
  readonly hint: string;
}

/** Reads fields and keeps their faults. */
export interface Reader {
  readonly inputs: Inputs;
  readonly faults: Fault[];
}

export function fault(reader: Reader, field: FieldKey, problem: string, hint: string): undefined {
  reader.faults.push({ field, problem, hint });
  return undefined;
}

/** The value of a text that was read, or its fault at the field. */
export function take<T>(reader: Reader, field: FieldKey, parsed: Parsed<T>): T | undefined {
  return parsed.ok ? parsed.value : fault(reader, field, parsed.problem, parsed.hint);
}

/** Is there anything in the field? */
export function isFilled(reader: Reader, field: FieldKey): boolean {
  return reader.inputs[field].trim() !== '';
}

interface QuantityOptions {
  /** Unit of a number without one: the label says it. */
  readonly bare?: string;
  /** Zero and negative values are values too. */
  readonly any?: boolean;
  /** Zero is a value too. */
  readonly zero?: boolean;
}

const NUMBER_ALONE = /^[+\-−]?(?:\d+(?:[.,]\d+)?|[.,]\d+)$/u;

/** A quantity above zero, unless the options allow others. */
export function readQuantity<D extends Dimension>(
  reader: Reader,
  field: FieldKey,
  dimension: D | readonly D[],
  options: QuantityOptions = {},
): Quantity<D> | undefined {
  const text = reader.inputs[field].trim();
  if (text === '') return fault(reader, field, `\`${FIELDS[field].label}\` is empty`, 'give a value with its unit');
  return readText(reader, field, text, dimension, options);
}

/** The same of a piece of a field. */
export function readText<D extends Dimension>(
  reader: Reader,
  field: FieldKey,
  text: string,
  dimension: D | readonly D[],
  options: QuantityOptions = {},
): Quantity<D> | undefined {
  const whole = options.bare !== undefined && NUMBER_ALONE.test(text) ? `${text} ${options.bare}` : text;
  const read = take(reader, field, parseQuantity(whole, dimension));
  if (read === undefined || options.any === true) return read;
  if (read.value > 0 || (options.zero === true && read.value === 0)) return read;
  return fault(reader, field, `\`${text}\` is not more than zero`, 'give a positive value');
}

/** A length in mm; a number alone is mm. */
export function readMm(reader: Reader, field: FieldKey, options: QuantityOptions = {}): number | undefined {
  const read = readQuantity(reader, field, 'length', { bare: 'mm', ...options });
  return read === undefined ? undefined : read.si * 1000;
}

/** A whole number from `least` to `most`. */
export function readCount(reader: Reader, field: FieldKey, least: number, most: number): number | undefined {
  const text = reader.inputs[field].trim();
  const value = /^[+-]?\d{1,9}$/.test(text) ? Number(text) : undefined;
  if (value === undefined) {
    return fault(reader, field, `\`${text}\` is not a whole number`, `give a whole number from ${least} to ${most}`);
  }
  if (value >= least && value <= most) return value;
  const problem = value < least ? `\`${text}\` is fewer than ${least}` : `\`${text}\` is more than ${most}`;
  return fault(reader, field, problem, `give a whole number from ${least} to ${most}`);
}

/** The object without the keys whose value is undefined: optional fields are absent, never undefined. */
export function defined<T extends Record<string, unknown>>(object: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(object).filter(([, v]) => v !== undefined)) as {
    [K in keyof T]: Exclude<T[K], undefined>;
  };
}
