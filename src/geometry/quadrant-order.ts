/** Tightening a large ring quadrant by quadrant. */

import type { SequenceParts } from './sequence.ts';

/**
 * The ring is cut into four quadrants of neighbours, Q1 from bolt 1. One bolt in Q1, in Q3, in Q2, in Q4, then the next
 * bolt of each in the same order, so that every quadrant is worked from its first bolt to its last and each four is a
 * square. count: a multiple of 4. Source: memory of ASME PCC-1-2013 App. F (quadrant by quadrant); the order of the
 * quadrants and one bolt at a time are common practice, no source.
 */
export function quadrantOrder(count: number): SequenceParts {
  const quarter = count / 4;
  return {
    order: Array.from({ length: quarter }, (_, i) => [0, 2, 1, 3].map((q) => q * quarter + i + 1)).flat(),
    rule: 'By quadrants: one bolt in each, the quadrant opposite second; then the next bolt of each.',
  };
}
