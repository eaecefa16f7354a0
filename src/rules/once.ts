/** What has been found out about texts of late, so that each check need not find it out again. */

import type { Prose } from '../resolve/index.ts';

/** More than the texts of one card; older ones are of cards that are done with. */
const MOST_AT_HAND = 4_000;

/** Reads each text once while its card is at hand. */
export function onceAText<T>(read: (prose: Prose) => T): (prose: Prose) => T {
  const found = new Map<Prose, T>();
  return (prose) => {
    const known = found.get(prose);
    if (known !== undefined) return known;
    if (found.size >= MOST_AT_HAND) found.clear();
    const made = read(prose);
    found.set(prose, made);
    return made;
  };
}

/** Whether the text refers to a thing of this kind. */
export function refersToKind(prose: Prose, kind: string): boolean {
  for (const { runs } of prose) for (const { ref } of runs) if (ref?.kind === kind) return true;
  return false;
}
