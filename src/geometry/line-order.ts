/** Tightening holes along an open line: from its middle outwards, changing sides. */

import type { SequenceParts } from './sequence.ts';

/**
 * Holes 1 to count along a line: the middle one (of an even count the lower of the two) first, then a place farther out on
 * each side in turn. Source: common practice for rows and covers, no published order.
 */
export function lineOrder(count: number): SequenceParts {
  const middle = Math.ceil(count / 2);
  const order = Array.from({ length: count }, (_, i) => middle + (i % 2 === 0 ? -i / 2 : (i + 1) / 2));
  return { order, rule: 'From the middle outwards, changing sides each time.' };
}
