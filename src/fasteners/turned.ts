/** What the wrench turns, head or nut, and so which size it takes and on which face friction acts. */

import type { Parsed } from '../units/index.ts';
import { bearingOf } from './bearing.ts';
import type { Bearing } from './bearing-ring.ts';
import { driveOf } from './drive.ts';
import type { Drive } from './drive-lookup.ts';
import type { Grade } from './grade.ts';
import type { Head } from './head.ts';
import { nutBearingOf, nutDriveOf } from './nut.ts';
import type { Thread } from './thread.ts';

export interface TurnedInput {
  readonly head: Head;
  /** The head, unless the nut is said; of a stud it is always the nut. */
  readonly turned?: 'head' | 'nut' | undefined;
  readonly heavyNut?: boolean | undefined;
  readonly thread: Thread;
  readonly grade?: Grade | undefined;
}

export interface Turned {
  readonly turned: 'head' | 'nut';
  readonly drive: Parsed<Drive>;
  readonly bearing: Bearing;
}

/**
 * Wrench size and bearing face of what is turned. A stud without a word about its nut takes the nut that its
 * specification is used with; a head to the withdrawn DIN standards goes with a nut of theirs.
 */
export function turnedOf({ head, turned = 'head', heavyNut = false, thread, grade }: TurnedInput): Turned {
  const what = head === 'stud' ? 'nut' : turned;
  if (what === 'head' || (head === 'stud' && !heavyNut)) {
    return { turned: what, drive: driveOf(head, thread, grade), bearing: bearingOf(head, thread, grade) };
  }
  const kind = { heavy: heavyNut, din: head === 'hexagon DIN' };
  return { turned: what, drive: nutDriveOf(thread, kind), bearing: nutBearingOf(thread, kind) };
}
