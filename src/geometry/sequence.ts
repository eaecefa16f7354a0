/** The order in which the fasteners of a pattern are tightened, and its reverse. */

import { circleOrder } from './circle-order.ts';
import { type Pattern, patternHoles } from './pattern.ts';
import { spiralOrder } from './spiral-order.ts';

export interface Sequence {
  /** Hole numbers in tightening order. */
  readonly order: readonly number[];
  /** `orderAt[hole - 1]` is the hole's place in the order, from 1. */
  readonly orderAt: readonly number[];
  /** A sentence for the card. */
  readonly rule: string;
  /** Source, where the order is that of a published table. */
  readonly published?: string;
  /** Groups of neighbours tightened left to right, in order; only for large rings. */
  readonly groups?: readonly (readonly number[])[];
}

export type SequenceParts = Omit<Sequence, 'orderAt'>;

/**
 * Order for any pattern, each hole once. Circle: the ASME PCC-1 legacy cross pattern for its published counts, else
 * opposite pairs, a star for odd counts, groups for large rings. Rectangle, row, listed points: from the centre outwards.
 */
export function tighteningSequence(p: Pattern): Sequence {
  return complete(p.kind === 'circle' ? circleOrder(p.count) : spiralOrder(patternHoles(p)));
}

/** The reverse order, for loosening: last tightened, first loosened. It is no published order. */
export function loosening(sequence: Sequence): Sequence {
  const order = [...sequence.order].reverse();
  const rule = 'In the reverse of the tightening order, a little at a time.';
  if (sequence.groups === undefined) return complete({ order, rule });
  return complete({ order, rule, groups: [...sequence.groups].reverse().map((group) => [...group].reverse()) });
}

function complete(parts: SequenceParts): Sequence {
  const orderAt = Array<number>(parts.order.length).fill(0);
  for (const [i, hole] of parts.order.entries()) orderAt[hole - 1] = i + 1;
  return { ...parts, orderAt };
}
