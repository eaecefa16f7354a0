/** What a card hands on: parts and joints that a step names together with another procedure, which sees to them. */

import type { Prose } from '../../resolve/index.ts';
import { refersToKind } from '../once.ts';
import { onceACard } from '../rule.ts';

export interface HandedOn {
  readonly parts: ReadonlySet<string>;
  readonly joints: ReadonlySet<string>;
}

const NOTHING: HandedOn = { parts: new Set(), joints: new Set() };

/** That procedure takes them off, or puts them back. */
export const handedOn = onceACard(({ steps }): HandedOn => {
  let found: { readonly parts: Set<string>; readonly joints: Set<string> } | undefined;
  const look = (prose: Prose): void => {
    if (!refersToKind(prose, 'procedure')) return;
    found ??= { parts: new Set(), joints: new Set() };
    for (const { runs } of prose) {
      for (const { ref } of runs) {
        if (ref?.kind === 'part') found.parts.add(ref.id);
        else if (ref?.kind === 'joint') found.joints.add(ref.id);
      }
    }
  };
  for (const { text, note } of steps) {
    look(text);
    if (note !== undefined) look(note);
  }
  return found ?? NOTHING;
});
