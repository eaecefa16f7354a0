/** The wrench and the bearing face of a nut, apart from those of the head of its bolt. */

import type { Parsed } from '../units/index.ts';
import { type Bearing, type Figure, holeOf, ring } from './bearing-ring.ts';
import { NUT_DIN_FACE, NUT_FACE } from './bearing-sizes.ts';
import { type Drive, driveMm, lookUpDrive } from './drive-lookup.ts';
import type { Thread } from './thread.ts';
import {
  HEAVY_HEX_ASME_METRIC,
  HEAVY_NUT_INCH,
  HEX_NUT_DIN,
  HEX_NUT_INCH,
  HEX_NUT_ISO,
  MACHINE_NUT_INCH,
} from './wrench-nuts.ts';
import type { WrenchTable } from './wrench-sizes.ts';

/** heavy: heavy hexagon (ASME B18.2.2, B18.2.4.6M). din: the withdrawn DIN 934, metric only. heavy goes before din. */
export interface NutKind {
  readonly heavy?: boolean;
  readonly din?: boolean;
}

function tablesFor(thread: Thread, { heavy = false, din = false }: NutKind): readonly WrenchTable[] {
  if (thread.system === 'unified') return heavy ? [HEAVY_NUT_INCH] : din ? [] : [HEX_NUT_INCH, MACHINE_NUT_INCH];
  if (heavy) return [HEAVY_HEX_ASME_METRIC];
  return [din ? HEX_NUT_DIN : HEX_NUT_ISO];
}

function nameOf({ heavy = false, din = false }: NutKind): string {
  if (heavy) return 'heavy hexagon nut';
  return din ? 'hexagon nut to the withdrawn DIN 934' : 'hexagon nut';
}

/**
 * Width across flats of the nut for `thread`: ISO 4032 or DIN 934, ASME B18.2.2 regular or heavy, ASME B18.2.4.6M heavy
 * metric, ASME B18.6.3 below 1/4 in. A size that the standard does not list is refused with the nearest that it does.
 */
export function nutDriveOf(thread: Thread, kind: NutKind = {}): Parsed<Drive> {
  return lookUpDrive(tablesFor(thread, kind), thread, nameOf(kind), 'choose another nut');
}

/**
 * Bearing face of the nut on `thread` with the clearance hole under it, mm: the smallest face of ISO 4032 or of the DIN
 * 934 widths, else 0.95 of the width across flats, which is the smallest washer face that ASME B18.2.2 allows, else 1.5
 * d.
 */
export function nutBearingOf(thread: Thread, kind: NutKind = {}): Bearing {
  return ring(faceOf(thread, kind), holeOf(thread), thread.diameterMm);
}

function faceOf(thread: Thread, kind: NutKind): Figure {
  if (thread.system === 'metric' && kind.heavy !== true) {
    const mm = (kind.din === true ? NUT_DIN_FACE : NUT_FACE)[thread.size];
    if (mm !== undefined)
      return { mm, source: `${kind.din === true ? 'DIN 934 widths, ISO 4032' : 'ISO 4032'}, smallest` };
  }
  const drive = nutDriveOf(thread, kind);
  if (!drive.ok) return { mm: 1.5 * thread.diameterMm, source: 'estimate, 1.5 d' };
  return {
    mm: 0.95 * driveMm(drive.value),
    source: `estimate, 0.95 of the width across flats (${drive.value.standard})`,
  };
}
