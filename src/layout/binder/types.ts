/** What a binder is made of, and what its bench's copies are. */

import type { Bench } from '../../resolve/types.ts';
import type { CardLayout, PlacedBlock } from '../card/index.ts';

export interface BinderPage {
  readonly kind: 'sheet';
  /** Title in the list of bookmarks; empty for a sheet that has none. */
  readonly title: string;
  readonly blocks: readonly PlacedBlock[];
}

/** Pages in the order in which they are bound. */
export type BinderEntry = BinderPage | { readonly kind: 'card'; readonly card: CardLayout };

export interface BinderLayout {
  readonly width: number;
  readonly height: number;
  readonly entries: readonly BinderEntry[];
  /** Day as of which it was made; without control the latest effective date among its cards. */
  readonly date: string;
}

/** A document of the binder, or a revision of it whose day has not come, that is not bound because it is not in force. */
export interface BinderState {
  readonly doc: string;
  readonly title: string;
  /** `suspended`, `withdrawn`, `not yet effective`: listed with this word. */
  readonly standing: string;
  readonly rev?: string;
  /** First day of that revision. */
  readonly effective?: string;
  readonly reason?: string;
}

export interface BinderControl {
  /** Day as of which the binder is made: `2026-03-02`. */
  readonly asOf: string;
  /** How many controlled copies there are; the bench's own number is `bench.copy`. */
  readonly copies: number;
  /** Documents of the binder that are not in force. */
  readonly states: readonly BinderState[];
}

/** A document with the cards that are bound. */
export interface BoundDocument {
  readonly doc: string;
  readonly cards: readonly CardLayout[];
}

/** What the sheets of one binder have to say. */
export interface BinderFacts {
  readonly bench: Bench;
  /** In binder order. */
  readonly bound: readonly BoundDocument[];
  readonly unbound: readonly BinderState[];
  readonly date: string;
  /** `copy 3 of 7`; absent without control. */
  readonly copy?: string;
}
