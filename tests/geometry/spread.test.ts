/** The filling rule behind the cross patterns. */

import { expect, test } from 'vitest';
import { spreadOrder } from '../../src/geometry/spread.ts';

/** First bolts of the fours in the ASME PCC-1 legacy table, by quarter of the count (4 to 28; 16 and 24 second-hand; 28 memory). */
test.each([
  [1, '1'],
  [2, '1 2'],
  [3, '1 2 3'],
  [4, '1 3 2 4'],
  [5, '1 3 5 2 4'],
  [6, '1 4 2 5 3 6'],
  [7, '1 4 6 2 5 7 3'],
])('a ring of %d is filled as %s', (count, order) => {
  expect(
    spreadOrder(count)
      .map((i) => i + 1)
      .join(' '),
  ).toBe(order);
});

test('each place once, for any count', () => {
  for (let n = 0; n <= 120; n++) expect(new Set(spreadOrder(n)).size).toBe(n);
});
