/** Bearing face and clearance hole under a head: the ring on which the turning friction acts. */

import { type Bearing, type Figure, holeOf, ring } from './bearing-ring.ts';
import {
  FLANGE_HEAVY_FACE,
  FLANGE_SMALL_FACE,
  HEAVY_FACE,
  HEX_DIN_FACE,
  HEX_FACE,
  SOCKET_FACE,
} from './bearing-sizes.ts';
import { driveOf, takesHeavyNut } from './drive.ts';
import { driveMm } from './drive-lookup.ts';
import type { Grade } from './grade.ts';
import type { Head } from './head.ts';
import { nutBearingOf } from './nut.ts';
import type { Thread } from './thread.ts';

/**
 * Bearing face and hole of `head` on `thread`: published figures where there are any, else an estimate that says so.
 * For `stud` it is the face of the nut, which is the heavy one when `grade` is of ASTM A193 or A320. A countersunk head
 * is treated as a flat ring (the wedging of the cone comes on top); a set screw bears on its flat point, without a
 * hole.
 */
export function bearingOf(head: Head, thread: Thread, grade?: Grade): Bearing {
  if (head === 'set screw') {
    return { faceMm: 0.7 * thread.diameterMm, holeMm: 0, source: 'estimate: flat point 0.7 d, no hole' };
  }
  if (head === 'stud') return nutBearingOf(thread, { heavy: takesHeavyNut(grade) });
  return ring(faceOf(head, thread, grade), holeOf(thread), thread.diameterMm);
}

const METRIC_FACES: Partial<Readonly<Record<Head, readonly [Readonly<Record<string, number>>, string]>>> = {
  hexagon: [HEX_FACE, 'ISO 4014'],
  'hexagon DIN': [HEX_DIN_FACE, 'DIN 931 widths, ISO 4014'],
  'heavy hexagon': [HEAVY_FACE, 'EN 14399-4'],
  'hexagon flange': [FLANGE_SMALL_FACE, 'ISO 4162'],
  'hexagon flange heavy': [FLANGE_HEAVY_FACE, 'EN 1665'],
  socket: [SOCKET_FACE, 'ISO 4762'],
};

function faceOf(head: Exclude<Head, 'stud' | 'set screw'>, thread: Thread, grade: Grade | undefined): Figure {
  const asmeHeavy = takesHeavyNut(grade) && head === 'heavy hexagon';
  const listed = asmeHeavy ? undefined : METRIC_FACES[head];
  const published = listed?.[0][thread.size];
  if (listed !== undefined && published !== undefined) return { mm: published, source: `${listed[1]}, smallest` };
  const d = thread.diameterMm;
  switch (head) {
    case 'hexagon':
    case 'hexagon DIN':
    case 'heavy hexagon': {
      const drive = driveOf(head, thread, grade);
      if (!drive.ok) return { mm: 1.5 * d, source: 'estimate, 1.5 d' };
      return {
        mm: 0.95 * driveMm(drive.value),
        source: `estimate, 0.95 of the width across flats (${drive.value.standard})`,
      };
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
  }
}
