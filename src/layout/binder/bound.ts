/** Which cards of a bench are bound, and which of its documents are only named. */

import type { Bench } from '../../resolve/types.ts';
import { type CardLayout, stampCopy } from '../card/index.ts';
import type { Faces } from '../type/index.ts';
import type { BinderControl, BinderState, BoundDocument } from './types.ts';

export interface Bound {
  /** In binder order. */
  readonly bound: readonly BoundDocument[];
  readonly unbound: readonly BinderState[];
}

/** It comes after what is in force, and takes nothing away from it. */
const COMING = 'not yet effective';

/**
 * Without control every card is bound as it is. With it the cards bear the bench's copy number, and what is not in force stays out:
 * documents among the states, and cards that say themselves that they are not to be worked from. A revision whose day has not come
 * is named beside the one in force.
 */
export function boundCards(
  bench: Bench,
  cards: readonly CardLayout[],
  control: BinderControl | undefined,
  faces: Faces,
): Bound {
  const bound: BoundDocument[] = [];
  const unbound: BinderState[] = [];
  for (const doc of bench.binder) {
    const own = cards.filter((c) => c.doc === doc);
    if (control === undefined) {
      if (own.length > 0) bound.push({ doc, cards: own });
      continue;
    }
    const states = control.states.filter((s) => s.doc === doc);
    const stopped = states.some((s) => s.standing !== COMING);
    const inForce = stopped ? [] : own.filter((c) => c.standing === undefined);
    if (inForce.length > 0) {
      const copy = { copy: bench.copy, copies: control.copies, bench: bench.name };
      bound.push({ doc, cards: inForce.map((card) => stampCopy(card, copy, faces)) });
      unbound.push(...states);
    } else unbound.push(...(states.length > 0 ? states : [standingOf(doc, own)]));
  }
  return { bound, unbound };
}

/** Of a document without a card in force. */
function standingOf(doc: string, [card]: readonly CardLayout[]): BinderState {
  if (card?.standing === undefined) return { doc, title: card?.title ?? '', standing: 'not issued' };
  const { title, rev, effective, standing } = card;
  return { doc, title, standing, rev, ...(standing === COMING ? { effective } : {}) };
}
