/** Lines of an order list. */

import type { Amount, Time } from '../units/index.ts';
import type { CardNeeds } from './needs.ts';
import type { KitNeed } from './parts.ts';

/** How many jobs by which card. */
export interface Jobs {
  readonly card: CardNeeds;
  /** A whole number, 1 or more. */
  readonly count: number;
}

interface Line {
  /** Differs for each line of a list, and is the same in every list. */
  readonly key: string;
  readonly name: string;
  readonly number?: string;
  readonly lead?: Time;
  /** Cards that ask for it, with their jobs. */
  readonly for: readonly Jobs[];
}

export interface KitLine extends Line {
  readonly kind: 'kit';
  readonly machine: string;
  readonly order: number;
  /** Contents as the first card lists them. */
  readonly contents: KitNeed['contents'];
  /** Cards whose kit of this name holds other parts: the variant must stand in the order. */
  readonly differs: readonly CardNeeds[];
}

export interface PartLine extends Line {
  readonly kind: 'part';
  readonly machine: string;
  /** Id of the part; the first one when several share a number. */
  readonly part: string;
  readonly order: number;
  /** Pieces fitted new. */
  readonly fresh: number;
  /** Pieces inspected of parts with an expected share, and how many of them will not pass, not rounded. */
  readonly inspected: number;
  readonly expected: number;
  /** Of the expected ones, how many are covered by what the kits leave over. */
  readonly covered: number;
}

export interface ConsumableLine extends Line {
  readonly kind: 'consumable';
  readonly consumable: string;
  /** One sum a dimension; empty when no step states an amount. */
  readonly amounts: readonly Amount[];
  readonly pack?: Amount;
  /** Whole packs; absent without a pack, without an amount, or when the two do not measure the same. */
  readonly order?: number;
  /** Uses without an amount, over all jobs. */
  readonly asNeeded: number;
}

export type OrderLine = KitLine | PartLine | ConsumableLine;

export interface OrderList {
  readonly jobs: readonly Jobs[];
  /** To be bought: the longest delivery time first, unknown ones after them. */
  readonly lines: readonly OrderLine[];
  /** Used as needed, without any amount: look whether they are in stock. */
  readonly stock: readonly ConsumableLine[];
  /** Inspected, with no expected share stated: none is in `lines`. */
  readonly unrated: readonly PartLine[];
}
