/** The words beside the picture of the rounds agree with its figures. */

import { expect, test } from 'vitest';
import { defaultStack, interactionWords, predictInteraction } from '../../src/torque/index.ts';
import { thread } from '../published/read-data.ts';
import { evenPositions } from './even-positions.ts';

const LINE = 560;
const ORDER = [1, 5, 3, 7, 2, 6, 4, 8];
const ROUNDS = [
  ...[0.3, 0.7, 1].map((share) => ({ share, order: ORDER })),
  { share: 1, order: [1, 2, 3, 4, 5, 6, 7, 8] },
];

const at = (kind: 'metal to metal' | 'sheet gasket') =>
  predictInteraction(evenPositions(8, LINE), LINE, defaultStack(thread('M16'), kind, LINE / 8), ROUNDS);

test('a gasket: what a bolt takes, and one pass beside the rounds', () => {
  const found = at('sheet gasket');
  const words = interactionWords(found);
  const taken = -Math.min(...found.matrix.flatMap((row, i) => row.filter((_, j) => i !== j)));
  expect(words).toContain(`takes up to ${(taken * 100).toFixed(0)}\u00a0%`);
  const pass = `${(found.onePass.least * 100).toFixed(0)} to ${(found.onePass.most * 100).toFixed(0)}`;
  expect(words).toContain(`In one pass the bolts would be left at ${pass}\u00a0%`);
  // One pass is the first round at full torque, and leaves the bolts further apart than the rounds do.
  const spread = (r: { least: number; most: number }) => r.most - r.least;
  expect(spread(found.onePass)).toBeGreaterThan(3 * spread(found.rounds.at(-1) ?? { least: 0, most: 1 }));
});

test('metal to metal: says that there is little to see', () => {
  expect(interactionWords(at('metal to metal'))).toContain('less than 1\u00a0%');
});

test('a joint without rounds is a mistake of the program', () => {
  expect(() => predictInteraction([0, 280], LINE, defaultStack(thread('M16'), 'sheet gasket', 280), [])).toThrow(
    RangeError,
  );
});
