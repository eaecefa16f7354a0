/** Forces and gaps against a slower method, the conditions of balance, and the energy of every other state. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balanced, dot, inverse, type Matrix, sweep, unswept } from '../../src/torque/interaction-solve.ts';

const numbers = (n: number, min: number, max: number) =>
  fc.array(fc.double({ min, max, noNaN: true }), { minLength: n, maxLength: n });

/** M Mᵀ + I/2: symmetric, positive definite, of any signs. */
const matrices = fc
  .integer({ min: 1, max: 9 })
  .chain((n) =>
    fc
      .array(numbers(n, -1, 1), { minLength: n, maxLength: n })
      .map((m): Matrix => m.map((a, i) => m.map((b, j) => dot(a, b) + (i === j ? 0.5 : 0)))),
  );
const problems = matrices.chain((compliance) => {
  const n = compliance.length;
  const start = fc.array(fc.boolean(), { minLength: n, maxLength: n });
  return fc.record({ compliance: fc.constant(compliance), advance: numbers(n, -2, 2), floor: numbers(n, 0, 1), start });
});

/** Each force in turn set to what its own row asks, or its floor: the plainest method, slow and sure. */
function oneByOne(compliance: Matrix, advance: readonly number[], floor: readonly number[]): number[] {
  const force = [...floor];
  for (let pass = 0; pass < 4000; pass++) {
    for (const [i, row] of compliance.entries()) {
      const own = row[i] ?? 0;
      const rest = dot(row, force) - own * (force[i] ?? 0);
      force[i] = Math.max(floor[i] ?? 0, ((advance[i] ?? 0) - rest) / own);
    }
  }
  return force;
}

function energy(compliance: Matrix, advance: readonly number[], force: readonly number[]): number {
  return compliance.reduce((sum, row, i) => sum + (force[i] ?? 0) * (dot(row, force) / 2 - (advance[i] ?? 0)), 0);
}

function solve({
  compliance,
  advance,
  floor,
  start,
}: {
  compliance: Matrix;
  advance: number[];
  floor: number[];
  start: boolean[];
}) {
  const swept = unswept(compliance);
  for (const [i, free] of start.entries()) if (free) sweep(swept, i);
  return balanced(compliance, swept, advance, floor);
}

describe('balanced', () => {
  test('agrees with relaxation one by one, wherever it starts', () => {
    fc.assert(
      fc.property(problems, (problem) => {
        const slow = oneByOne(problem.compliance, problem.advance, problem.floor);
        for (const [i, force] of solve(problem).force.entries()) expect(force).toBeCloseTo(slow[i] ?? Number.NaN, 6);
      }),
      { numRuns: 60 },
    );
  });

  test('no force below its floor, no gap below zero, and never both above', () => {
    fc.assert(
      fc.property(problems, (problem) => {
        const { force, gap } = solve(problem);
        for (const [i, floor] of problem.floor.entries()) {
          const [above, open] = [(force[i] ?? Number.NaN) - floor, gap[i] ?? Number.NaN];
          expect(above).toBeGreaterThanOrEqual(0);
          expect(open).toBeGreaterThanOrEqual(0);
          expect(Math.min(above, open)).toBeLessThan(1e-9);
          const sunk = dot(problem.compliance[i] ?? [], force) - (problem.advance[i] ?? 0);
          expect(Math.abs(sunk - open)).toBeLessThan(1e-9);
        }
      }),
    );
  });

  test('every other state that respects the floors holds more energy', () => {
    fc.assert(
      fc.property(problems, numbers(9, 0, 1), (problem, lift) => {
        const { force } = solve(problem);
        const other = problem.floor.map((floor, i) => floor + (lift[i] ?? 0) * 2);
        const least = energy(problem.compliance, problem.advance, force);
        expect(energy(problem.compliance, problem.advance, other)).toBeGreaterThanOrEqual(least - 1e-9);
      }),
    );
  });
});

describe('sweeping', () => {
  test('the inverse times the matrix is one', () => {
    fc.assert(
      fc.property(matrices, (m) => {
        for (const [i, row] of inverse(m).entries()) {
          for (const [j, column] of m.entries()) expect(dot(row, column)).toBeCloseTo(i === j ? 1 : 0, 8);
        }
      }),
    );
  });
  test('in and out again leaves the matrix', () => {
    fc.assert(
      fc.property(matrices, fc.array(fc.nat(8), { maxLength: 12 }), (m, steps) => {
        const swept = unswept(m);
        const path = steps.map((k) => k % m.length);
        for (const k of [...path, ...path.toReversed()]) sweep(swept, k);
        for (const [i, row] of swept.rows.entries()) {
          for (const [j, value] of row.entries()) expect(value).toBeCloseTo(m[i]?.[j] ?? Number.NaN, 8);
        }
      }),
    );
  });
  test.each([
    [[[0]]],
    [[[-1]]],
    [[[Number.NaN]]],
    [
      [
        [1, 2],
        [2, 1],
      ],
    ],
  ])('throws on %j', (m: Matrix) => {
    expect(() => inverse(m)).toThrow(RangeError);
  });
});
