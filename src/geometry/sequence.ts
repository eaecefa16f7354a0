/** What a tightening sequence is: the order of the fasteners, its moves and the sentence for the card. */

export type Method = 'cross' | 'spiral' | 'quadrants' | 'in turn';
export type Tools = 1 | 2 | 4;

export interface SequenceOptions {
  /** Default: cross for circles, spiral for all other layouts. */
  readonly method?: Method;
  /** Fasteners tightened at the same moment; default 1. */
  readonly tools?: Tools;
}

export interface Sequence {
  /** Hole numbers in tightening order. */
  readonly order: readonly number[];
  /** `orderAt[hole - 1]` is the hole's place in the order, from 1. */
  readonly orderAt: readonly number[];
  /** Holes tightened at the same moment: one each, or as many as there are tools. `order` is these in a row. */
  readonly moves: readonly (readonly number[])[];
  /** `moveAt[hole - 1]` is the number of the hole's move, from 1; the same as `orderAt` with one tool. */
  readonly moveAt: readonly number[];
  readonly method: Method;
  readonly tools: Tools;
  /** A sentence for the card. */
  readonly rule: string;
  /** Source, where the order is that of a published table. */
  readonly published?: string;
  /** Groups of neighbours tightened left to right, in order; only for large rings. */
  readonly groups?: readonly (readonly number[])[];
}

/** An order with its rule, before its moves are set out. */
export interface SequenceParts {
  readonly order: readonly number[];
  readonly rule: string;
  readonly published?: string;
  readonly groups?: readonly (readonly number[])[];
}

/** Sets out moves of `tools` fasteners each and both inverses. The order's length is a multiple of `tools`. */
export function complete(parts: SequenceParts, method: Method, tools: Tools): Sequence {
  const moves = Array.from({ length: Math.ceil(parts.order.length / tools) }, (_, i) =>
    parts.order.slice(i * tools, (i + 1) * tools),
  );
  const orderAt = Array<number>(parts.order.length).fill(0);
  for (const [i, hole] of parts.order.entries()) orderAt[hole - 1] = i + 1;
  return { ...parts, orderAt, moves, moveAt: orderAt.map((place) => Math.ceil(place / tools)), method, tools };
}
