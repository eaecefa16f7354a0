/** The wrench or key that a fastener takes. */

import { type Length, type Parsed, parseQuantity } from '../units/index.ts';
import type { Grade } from './grade.ts';
import { HEADS, type Head } from './head.ts';
import { named, nearestNumbers } from './nearest.ts';
import { MM_PER_INCH, type Thread } from './thread.ts';
import { METRIC_THREADS, UNIFIED_THREADS } from './threads.ts';
import {
  BUTTON_INCH,
  BUTTON_METRIC,
  COUNTERSUNK_INCH,
  COUNTERSUNK_METRIC,
  FLANGE_HEAVY,
  FLANGE_INCH,
  FLANGE_SMALL,
  HEAVY_HEX_ASME_METRIC,
  HEAVY_HEX_INCH,
  HEAVY_HEX_METRIC,
  HEAVY_NUT_INCH,
  HEX_DIN,
  HEX_INCH,
  HEX_ISO,
  HEX_NUT_INCH,
  HEX_NUT_ISO,
  SET_INCH,
  SET_METRIC,
  SOCKET_INCH,
  SOCKET_METRIC,
  type WrenchTable,
} from './wrench-sizes.ts';

export interface Drive {
  readonly kind: 'across flats' | 'key';
  /** As the tool is marked: `24 mm`, `15/16 in`. */
  readonly size: Length;
  readonly standard: string;
  readonly source: string;
}

const METRIC: Readonly<Record<Head, readonly WrenchTable[]>> = {
  hexagon: [HEX_ISO],
  'hexagon DIN': [HEX_DIN],
  'heavy hexagon': [HEAVY_HEX_METRIC, HEAVY_HEX_ASME_METRIC],
  'hexagon flange': [FLANGE_SMALL],
  'hexagon flange heavy': [FLANGE_HEAVY],
  socket: [SOCKET_METRIC],
  button: [BUTTON_METRIC],
  'countersunk socket': [COUNTERSUNK_METRIC],
  'set screw': [SET_METRIC],
  stud: [HEX_NUT_ISO],
};

const UNIFIED: Readonly<Record<Head, readonly WrenchTable[]>> = {
  hexagon: [HEX_INCH],
  'hexagon DIN': [],
  'heavy hexagon': [HEAVY_HEX_INCH],
  'hexagon flange': [FLANGE_INCH],
  'hexagon flange heavy': [],
  socket: [SOCKET_INCH],
  button: [BUTTON_INCH],
  'countersunk socket': [COUNTERSUNK_INCH],
  'set screw': [SET_INCH],
  stud: [HEX_NUT_INCH],
};

/** Flange studs of ASTM A193 and A320 are used with heavy hexagon nuts (ASTM A194, ASME B16.5 practice). */
export function takesHeavyNut(grade: Grade | undefined): boolean {
  return grade?.standard === 'ASTM A193' || grade?.standard === 'ASTM A320';
}

function tablesFor(head: Head, thread: Thread, grade: Grade | undefined): readonly WrenchTable[] {
  const metric = thread.system === 'metric';
  if (takesHeavyNut(grade) && head === 'stud') return metric ? [HEAVY_HEX_ASME_METRIC] : [HEAVY_NUT_INCH];
  if (takesHeavyNut(grade) && head === 'heavy hexagon' && metric) return [HEAVY_HEX_ASME_METRIC];
  return (metric ? METRIC : UNIFIED)[head];
}

/**
 * Wrench width across flats, or key size, of `head` in the size of `thread`. For `stud` it is that of the nut: hexagon,
 * or heavy hexagon when `grade` is of ASTM A193 or A320. A head that no table lists in that size is refused with the
 * nearest sizes that have one.
 */
export function driveOf(head: Head, thread: Thread, grade?: Grade): Parsed<Drive> {
  const tables = tablesFor(head, thread, grade);
  const table = tables.find((t) => t.sizes[thread.size] !== undefined);
  const text = table?.sizes[thread.size];
  if (table === undefined || text === undefined) return noDrive(head, thread, tables);
  const size = parseQuantity(`${text} ${thread.system === 'metric' ? 'mm' : 'in'}`, 'length');
  if (!size.ok) throw new RangeError(`wrench table holds \`${text}\`: ${size.problem}`);
  return { ok: true, value: { kind: table.kind, size: size.value, standard: table.standard, source: table.source } };
}

function noDrive(head: Head, thread: Thread, tables: readonly WrenchTable[]): Parsed<never> {
  const name = HEADS.find((h) => h.id === head)?.name ?? head;
  const problem = `no standard lists a ${name} for \`${thread.designation}\``;
  const listed = new Set(tables.flatMap((t) => Object.keys(t.sizes)));
  if (listed.size === 0) return { ok: false, problem, hint: 'choose another head, such as `hexagon`' };
  const all = thread.system === 'metric' ? METRIC_THREADS : UNIFIED_THREADS;
  const known = new Map(all.filter((t) => listed.has(t.size)).map((t) => [t.diameterMm, t.size]));
  const near = nearestNumbers(thread.diameterMm, [...known.keys()]).map((d) => known.get(d) ?? '');
  return { ok: false, problem, hint: `nearest sizes that have one: ${named(near)}; or choose another head` };
}

/**
 * Outside diameter, mm, to allow for the socket around a fastener: an estimate from common practice, not a standard.
 * Across flats s: 1.35 s + 2 mm, the wall of a machine-driven or plain hand socket. Key: 1.75 s + 4 mm, the body that
 * holds a bit of key size s.
 */
export function socketOutsideMm(drive: Drive): number {
  const mm = drive.size.si * 1000;
  return drive.kind === 'across flats' ? 1.35 * mm + 2 : 1.75 * mm + 4;
}

/** Width across flats or key in mm, exact. */
export function driveMm(drive: Drive): number {
  return drive.size.unit === 'in' ? drive.size.value * MM_PER_INCH : drive.size.si * 1000;
}
