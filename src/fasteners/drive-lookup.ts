/** Finds the wrench size of a head or nut in its tables. */

import { type Length, type Parsed, parseQuantity } from '../units/index.ts';
import { named, nearestNumbers } from './nearest.ts';
import { MM_PER_INCH, type Thread } from './thread.ts';
import { METRIC_THREADS, UNIFIED_THREADS } from './threads.ts';
import type { WrenchTable } from './wrench-sizes.ts';

export interface Drive {
  readonly kind: 'across flats' | 'key';
  /** As the tool is marked: `24 mm`, `15/16 in`. */
  readonly size: Length;
  readonly standard: string;
  readonly source: string;
}

/** Width across flats or key in mm, exact. */
export function driveMm(drive: Drive): number {
  return drive.size.unit === 'in' ? drive.size.value * MM_PER_INCH : drive.size.si * 1000;
}

/**
 * The drive of the first table that lists the size of `thread`. `name` is what is looked for, in words: `hexagon head`.
 * Where no table lists it, it is refused with the nearest sizes that have one, or with `otherwise`.
 */
export function lookUpDrive(
  tables: readonly WrenchTable[],
  thread: Thread,
  name: string,
  otherwise: string,
): Parsed<Drive> {
  const table = tables.find((t) => t.sizes[thread.size] !== undefined);
  const text = table?.sizes[thread.size];
  if (table === undefined || text === undefined) return noDrive(tables, thread, name, otherwise);
  const size = parseQuantity(`${text} ${thread.system === 'metric' ? 'mm' : 'in'}`, 'length');
  if (!size.ok) throw new RangeError(`wrench table holds \`${text}\`: ${size.problem}`);
  return { ok: true, value: { kind: table.kind, size: size.value, standard: table.standard, source: table.source } };
}

function noDrive(tables: readonly WrenchTable[], thread: Thread, name: string, otherwise: string): Parsed<never> {
  const problem = `no standard lists a ${name} for \`${thread.designation}\``;
  const listed = new Set(tables.flatMap((t) => Object.keys(t.sizes)));
  if (listed.size === 0) return { ok: false, problem, hint: otherwise };
  const all = thread.system === 'metric' ? METRIC_THREADS : UNIFIED_THREADS;
  const known = new Map(all.filter((t) => listed.has(t.size)).map((t) => [t.diameterMm, t.size]));
  const near = nearestNumbers(thread.diameterMm, [...known.keys()]).map((d) => known.get(d) ?? '');
  return { ok: false, problem, hint: `nearest sizes that have one: ${named(near)}; or ${otherwise}` };
}
