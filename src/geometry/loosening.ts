/** Taking a joint apart: the reverse order, in rounds. */

import { complete, type Sequence } from './sequence.ts';

/** The reverse order, for loosening: last tightened, first loosened, with as many tools. It is no published order. */
export function loosening(sequence: Sequence): Sequence {
  const { method, tools, groups } = sequence;
  const order = [...sequence.order].reverse();
  const rule = 'In the reverse of the tightening order, a little at a time.';
  if (groups === undefined) return complete({ order, rule }, method, tools);
  return complete({ order, rule, groups: groups.map((group) => [...group].reverse()).reverse() }, method, tools);
}

export interface LooseningRound {
  /** From 1. */
  readonly number: number;
  /** For the card. */
  readonly words: string;
  /** Turn of each fastener, as a share of a full turn; absent for the last round. */
  readonly turn?: number;
}

const KEEP = 'Take none out while another is still tight.';

/**
 * Rounds of loosening: each eased a little, then more, then taken out, so that no fastener is left to carry the joint or to
 * jam it. Two fasteners or fewer are eased in one round. Throws RangeError on a count below 1. Source: common practice, no
 * source.
 */
export function looseningRounds(count: number): readonly LooseningRound[] {
  if (!Number.isInteger(count) || count < 1) throw new RangeError(`no loosening of ${count} fasteners`);
  if (count === 1) return [{ number: 1, words: 'Loosen it a little at a time, then take it out.' }];
  if (count === 2) return [{ number: 1, words: `Loosen both in turn, a little at a time. ${KEEP}` }];
  return [
    { number: 1, turn: 1 / 8, words: 'Ease each by about 1/8 of a turn, in the reverse of the tightening order.' },
    {
      number: 2,
      turn: 1 / 4,
      words: 'Ease each by another 1/4 of a turn in the same order; repeat until all are free.',
    },
    { number: 3, words: `Take them out. ${KEEP}` },
  ];
}
