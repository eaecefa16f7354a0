/** What the elastic model says of a joint, in words that stand beside its picture. */

import { formatDecimal } from '../units/index.ts';
import type { Interaction } from './interaction.ts';
import type { RoundPrediction } from './interaction-rounds.ts';

/** Below this share a neighbour notices nothing that a wrench could show. Practice. */
const NOTICED = 0.01;

/**
 * Two or three sentences: what a bolt takes from its neighbours, and what one pass would leave beside what the rounds
 * leave. For joints of two bolts or more.
 */
export function interactionWords({ matrix, onePass, rounds }: Interaction): string {
  const taken = Math.max(0, ...matrix.flatMap((row, i) => row.map((share, j) => (i === j ? 0 : -share))));
  const neighbours =
    taken < NOTICED
      ? 'The faces are so stiff that a bolt takes less than 1\u00a0% from its neighbours: the rounds bring the faces together evenly, and there is little else to see.'
      : `Tightening a bolt takes up to ${formatDecimal(taken * 100, 0)}\u00a0% of its rise from another.`;
  const last = rounds.at(-1);
  if (last === undefined) return neighbours;
  return `${neighbours} In one pass the bolts would be left at ${range(onePass)} of the target; these rounds leave ${range(last)}.`;
}

function range({ least, most }: RoundPrediction): string {
  const [from, to] = [least, most].map((share) => formatDecimal(share * 100, 0));
  return from === to ? `${from}\u00a0%` : `${from} to ${to}\u00a0%`;
}
