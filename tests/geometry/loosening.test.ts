/** Loosening: the reverse of any sequence, in rounds. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  loosening,
  looseningRounds,
  patternCount,
  type SequenceOptions,
  sequenceFault,
  tighteningSequence,
} from '../../src/geometry/index.ts';
import { anyPattern, circle, isComplete } from './patterns.ts';

const COUNTS = Array.from({ length: 199 }, (_, i) => i + 2);

describe('order', () => {
  test('is the reverse, and twice the reverse is the order again', () => {
    for (const n of COUNTS) {
      const tighten = tighteningSequence(circle(n));
      const loosen = loosening(tighten);
      expect(loosen.order).toEqual([...tighten.order].reverse());
      expect(loosening(loosen).order).toEqual(tighten.order);
      expect(loosening(loosen).groups).toEqual(tighten.groups);
      expect(isComplete(loosen, n)).toBe(true);
      expect(loosen.published).toBeUndefined();
      expect(loosen.groups?.flat()).toEqual(loosen.groups && loosen.order);
    }
  });
  test('with several tools the moves are reversed, those of one move stay together', () => {
    const options = fc.constantFrom<SequenceOptions>({ tools: 2 }, { tools: 4 }, { method: 'quadrants', tools: 2 });
    fc.assert(
      fc.property(anyPattern, options, (p, o) => {
        if (sequenceFault(p, o) !== undefined) return true;
        const tighten = tighteningSequence(p, o);
        const loosen = loosening(tighten);
        const sets = (moves: readonly (readonly number[])[]) => moves.map((m) => [...m].sort((a, b) => a - b).join());
        return (
          isComplete(loosen, patternCount(p)) &&
          sets(loosen.moves).join(' ') === sets(tighten.moves).reverse().join(' ') &&
          loosening(loosen).moves.join(' ') === tighten.moves.join(' ')
        );
      }),
      { numRuns: 300 },
    );
  });
});

describe('rounds', () => {
  test('three or more: an eighth of a turn, then quarters, then out; numbered from 1', () => {
    for (const n of [3, 8, 200]) {
      const rounds = looseningRounds(n);
      expect(rounds.map((r) => r.number)).toEqual([1, 2, 3]);
      expect(rounds.map((r) => r.turn)).toEqual([1 / 8, 1 / 4, undefined]);
      expect(rounds.at(-1)?.words).toContain('Take none out while another is still tight');
    }
  });
  test('one or two: a single round', () => {
    expect(looseningRounds(1).length).toBe(1);
    expect(looseningRounds(2).length).toBe(1);
    expect(looseningRounds(2)[0]?.words).toContain('Take none out');
  });
  test.each([0, -1, 2.5, Number.NaN])("%d fasteners are a programmer's mistake", (count) => {
    expect(() => looseningRounds(count)).toThrow(RangeError);
  });
});
