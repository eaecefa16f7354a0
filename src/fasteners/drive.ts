/** The wrench or key that a fastener takes. */

import type { Parsed } from '../units/index.ts';
import { type Drive, driveMm, lookUpDrive } from './drive-lookup.ts';
import type { Grade } from './grade.ts';
import { HEADS, type Head } from './head.ts';
import { nutDriveOf } from './nut.ts';
import type { Thread } from './thread.ts';
import { HEAVY_HEX_ASME_METRIC } from './wrench-nuts.ts';
import {
  BUTTON_INCH,
  BUTTON_METRIC,
  COUNTERSUNK_INCH,
  COUNTERSUNK_METRIC,
  FLANGE_HEAVY,
  FLANGE_INCH,
  FLANGE_SMALL,
  HEAVY_HEX_INCH,
  HEAVY_HEX_METRIC,
  HEX_DIN,
  HEX_INCH,
  HEX_ISO,
  SET_INCH,
  SET_METRIC,
  SOCKET_INCH,
  SOCKET_METRIC,
  type WrenchTable,
} from './wrench-sizes.ts';

type Tables = Readonly<Record<Exclude<Head, 'stud'>, readonly WrenchTable[]>>;

const METRIC: Tables = {
  hexagon: [HEX_ISO],
  'hexagon DIN': [HEX_DIN],
  'heavy hexagon': [HEAVY_HEX_METRIC, HEAVY_HEX_ASME_METRIC],
  'hexagon flange': [FLANGE_SMALL],
  'hexagon flange heavy': [FLANGE_HEAVY],
  socket: [SOCKET_METRIC],
  button: [BUTTON_METRIC],
  'countersunk socket': [COUNTERSUNK_METRIC],
  'set screw': [SET_METRIC],
};

const UNIFIED: Tables = {
  hexagon: [HEX_INCH],
  'hexagon DIN': [],
  'heavy hexagon': [HEAVY_HEX_INCH],
  'hexagon flange': [FLANGE_INCH],
  'hexagon flange heavy': [],
  socket: [SOCKET_INCH],
  button: [BUTTON_INCH],
  'countersunk socket': [COUNTERSUNK_INCH],
  'set screw': [SET_INCH],
};

/** Flange studs of ASTM A193 and A320 are used with heavy hexagon nuts (ASTM A194, ASME B16.5 practice). */
export function takesHeavyNut(grade: Grade | undefined): boolean {
  return grade?.standard === 'ASTM A193' || grade?.standard === 'ASTM A320';
}

/**
 * Wrench width across flats, or key size, of `head` in the size of `thread`. For `stud` it is that of the nut: hexagon,
 * or heavy hexagon when `grade` is of ASTM A193 or A320. A head that no table lists in that size is refused with the
 * nearest sizes that have one.
 */
export function driveOf(head: Head, thread: Thread, grade?: Grade): Parsed<Drive> {
  if (head === 'stud') return nutDriveOf(thread, { heavy: takesHeavyNut(grade) });
  const metric = thread.system === 'metric';
  const asmeHeavy = metric && head === 'heavy hexagon' && takesHeavyNut(grade);
  const tables = asmeHeavy ? [HEAVY_HEX_ASME_METRIC] : (metric ? METRIC : UNIFIED)[head];
  const name = HEADS.find((h) => h.id === head)?.name ?? head;
  const empty = tables.length === 0;
  return lookUpDrive(tables, thread, name, `choose another head${empty ? ', such as `hexagon`' : ''}`);
}

/** Common practice, no source: a socket needs a millimetre of air to be put on and taken off. */
export const SOCKET_AIR_MM = 1;

/**
 * Outside diameter, mm, to allow for the socket around a fastener: an estimate, common practice, no source. Across
 * flats s: 1.35 s + 2 mm, which is the width across corners (1.155 s) and a wall of a tenth of s and 1 mm, that of a
 * machine-driven or plain hand socket. Key: 1.75 s + 4 mm, the body that holds a bit of key size s. ISO 2725-1 and ASME
 * B107 limit the outside by size and drive square; their tables are not held here, so a socket that was measured goes
 * before this.
 */
export function socketOutsideMm(drive: Drive): number {
  const mm = driveMm(drive);
  return drive.kind === 'across flats' ? 1.35 * mm + 2 : 1.75 * mm + 4;
}
