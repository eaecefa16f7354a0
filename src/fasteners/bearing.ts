/** Bearing face and clearance hole under head or nut: the ring on which the turning friction acts. */

import {
  FLANGE_HEAVY_FACE,
  FLANGE_SMALL_FACE,
  HEAVY_FACE,
  HEX_FACE,
  HOLE_INCH,
  HOLE_METRIC,
  SOCKET_FACE,
} from './bearing-sizes.ts';
import { driveMm, driveOf, takesHeavyNut } from './drive.ts';
import type { Grade } from './grade.ts';
import type { Head } from './head.ts';
import { MM_PER_INCH, type Thread } from './thread.ts';

/** Diameters in mm. faceMm: outside of the bearing face (dw). holeMm: clearance hole (dh), medium or normal series. */
export interface Bearing {
  readonly faceMm: number;
  readonly holeMm: number;
  /** Standards of both figures, or the estimate used, said in words. */
  readonly source: string;
}

interface Figure {
  readonly mm: number;
  readonly source: string;
}

/**
 * Bearing face and hole of `head` on `thread`: published figures where there are any, else an estimate that says so.
 * For `stud` it is the face of the nut, which is the heavy one when `grade` is of ASTM A193 or A320. A countersunk head
 * is treated as a flat ring (the wedging of the cone comes on top); a set screw bears on its flat point, without a hole.
 */
export function bearingOf(head: Head, thread: Thread, grade?: Grade): Bearing {
  if (head === 'set screw') {
    return { faceMm: 0.7 * thread.diameterMm, holeMm: 0, source: 'estimate: flat point 0.7 d, no hole' };
  }
  const face = faceOf(head, thread, grade);
  const hole = holeOf(thread);
  // Does the estimated face fall inside the hole? Then the pair is estimated together, 1.5 d over 1.1 d.
  if (face.mm <= hole.mm) {
    return {
      faceMm: 1.5 * thread.diameterMm,
      holeMm: 1.1 * thread.diameterMm,
      source: 'estimate: face 1.5 d, hole 1.1 d',
    };
  }
  return { faceMm: face.mm, holeMm: hole.mm, source: `face: ${face.source}; hole: ${hole.source}` };
}

const METRIC_FACES: Partial<Readonly<Record<Head, readonly [Readonly<Record<string, number>>, string]>>> = {
  hexagon: [HEX_FACE, 'ISO 4014'],
  stud: [HEX_FACE, 'ISO 4014, for the nut of ISO 4032 alike'],
  'heavy hexagon': [HEAVY_FACE, 'EN 14399-4'],
  'hexagon flange': [FLANGE_SMALL_FACE, 'ISO 4162'],
  'hexagon flange heavy': [FLANGE_HEAVY_FACE, 'EN 1665'],
  socket: [SOCKET_FACE, 'ISO 4762'],
};

function faceOf(head: Head, thread: Thread, grade: Grade | undefined): Figure {
  const asmeHeavy = takesHeavyNut(grade) && (head === 'stud' || head === 'heavy hexagon');
  const listed = asmeHeavy ? undefined : METRIC_FACES[head];
  const published = listed?.[0][thread.size];
  if (listed !== undefined && published !== undefined) return { mm: published, source: `${listed[1]}, smallest` };
  const d = thread.diameterMm;
  switch (head) {
    case 'hexagon':
    case 'hexagon DIN':
    case 'heavy hexagon':
    case 'stud': {
      const drive = driveOf(head, thread, grade);
      if (drive.ok) {
        return {
          mm: 0.95 * driveMm(drive.value),
          source: `estimate, 0.95 of the width across flats (${drive.value.standard})`,
        };
      }
      break;
    }
    case 'hexagon flange':
    case 'hexagon flange heavy':
      return { mm: 1.9 * d, source: 'estimate, 1.9 d' };
    case 'socket':
      return { mm: 1.44 * d, source: 'estimate, 0.96 of a head of 1.5 d' };
    case 'button':
      return { mm: 1.65 * d, source: 'estimate, 1.65 d' };
    case 'countersunk socket':
      return { mm: 1.8 * d, source: 'estimate, 1.8 d, taken as a flat ring' };
    case 'set screw':
      break;
  }
  return { mm: 1.5 * d, source: 'estimate, 1.5 d' };
}

function holeOf(thread: Thread): Figure {
  if (thread.system === 'metric') {
    const mm = HOLE_METRIC[thread.size];
    if (mm !== undefined) return { mm, source: 'ISO 273, medium' };
  } else {
    const inch = HOLE_INCH[thread.size];
    if (inch !== undefined) return { mm: inch * MM_PER_INCH, source: 'ASME B18.2.8, normal' };
  }
  return { mm: 1.1 * thread.diameterMm, source: 'estimate, 1.1 d' };
}
