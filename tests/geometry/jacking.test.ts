/** Jacking screws: even fractions of a turn, crosswise, what is refused. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type JackingInput, jackingFault, jackingPlan, parseTurn, turnInWords } from '../../src/geometry/index.ts';

describe('parseTurn', () => {
  test.each([
    ['1/4', 0.25],
    [' 1 / 8 turn', 0.125],
    ['1/3 of a turn', 1 / 3],
    ['¼', 0.25],
    ['0.5', 0.5],
    ['0,25', 0.25],
    ['1', 1],
    ['a full turn', 1],
  ])('%s', (text, turn) => {
    expect(parseTurn(text)).toEqual({ ok: true, value: turn });
  });
  test.each(['', 'quarter', '0', '0/4', '5/4', '1/0', '-1/4', '90 deg', '1/4/2', '1e-3', 'NaN'])(
    '`%s` is refused',
    (text) => {
      const parsed = parseTurn(text);
      expect(parsed.ok).toBe(false);
      if (!parsed.ok) expect(parsed.hint).toContain('1/4');
    },
  );
  test('reads what is printed', () => {
    const fractions = fc
      .tuple(fc.constantFrom(1, 2, 3, 4, 6, 8, 12, 16), fc.integer({ min: 1, max: 16 }))
      .filter(([bottom, top]) => top <= bottom)
      .map(([bottom, top]) => top / bottom);
    fc.assert(
      fc.property(fractions, (turn) => {
        const parsed = parseTurn(turnInWords(turn));
        return parsed.ok && Math.abs(parsed.value - turn) < 1e-12;
      }),
    );
    expect(turnInWords(0.25)).toBe('1/4 of a turn');
    expect(turnInWords(0.37)).toBe('0.37 of a turn');
  });
});

describe('jackingPlan', () => {
  test('M10 by a quarter of a turn advances 0.375 mm (pitch 1.5 mm, ISO 261), and tilts by that over the circle', () => {
    const plan = jackingPlan({ count: 3, turn: 1 / 4, pitchMm: 1.5, circleDiameterMm: 180 });
    expect(plan.advanceMm).toBeCloseTo(0.375, 12);
    expect(plan.tiltPerMove).toBeCloseTo(0.375 / 180, 12);
    expect(plan.order).toEqual([1, 2, 3]);
    expect(plan.rule).toContain('1/4 of a turn');
    expect(jackingPlan({ count: 3, turn: 1 / 4, pitchMm: 1.5 }).tiltPerMove).toBeUndefined();
  });
  test('crosswise from four up, each screw once', () => {
    expect(jackingPlan({ count: 4, turn: 0.5, pitchMm: 1.5 }).order).toEqual([1, 3, 2, 4]);
    expect(jackingPlan({ count: 6, turn: 0.5, pitchMm: 1.5 }).order.slice(0, 2)).toEqual([1, 4]);
    for (let count = 2; count <= 24; count++) {
      const { order } = jackingPlan({ count, turn: 0.5, pitchMm: 1.5 });
      expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, i) => i + 1));
    }
  });
  test('turns of a full turn add up to the pitch', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 16 }), fc.double({ min: 0.25, max: 6, noNaN: true }), (parts, pitchMm) => {
        const { advanceMm } = jackingPlan({ count: 3, turn: 1 / parts, pitchMm });
        return Math.abs(advanceMm * parts - pitchMm) < 1e-9;
      }),
    );
  });
  test.each<[string, Partial<JackingInput>, RegExp]>([
    ['one screw', { count: 1 }, /`1` is not a number/],
    ['no count', { count: Number.NaN }, /`NaN` is not a number/],
    ['too many', { count: 25 }, /`25`/],
    ['no turn', { turn: 0 }, /`0` of a turn/],
    ['more than a turn', { turn: 1.5 }, /`1\.5` of a turn/],
    ['no pitch', { pitchMm: -1 }, /pitch `-1 mm`/],
    ['no circle', { circleDiameterMm: Number.NaN }, /circle `NaN mm`/],
  ])('%s is refused', (_, more, problem) => {
    const input: JackingInput = { count: 3, turn: 1 / 4, pitchMm: 1.5, ...more };
    expect(jackingFault(input)?.problem).toMatch(problem);
    expect(() => jackingPlan(input)).toThrow(RangeError);
  });
});
