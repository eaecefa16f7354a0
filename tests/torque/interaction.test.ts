/** The interaction matrix against its analytic cases: one and two bolts, a rigid flange, far bolts, and reciprocity. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  INTERACTION_LIMITS,
  interactionMatrix,
  jointCompliance,
  predictInteraction,
} from '../../src/torque/interaction.ts';
import { reachMm } from '../../src/torque/interaction-beam.ts';
import { inverse, type Matrix } from '../../src/torque/interaction-solve.ts';
import { boltStiffnessNPerMm, defaultStack, flangeBeam, type Stack } from '../../src/torque/interaction-stack.ts';
import { evenPositions } from './even-positions.ts';

const M16 = { diameterMm: 16, stressAreaMm2: 157 };
const sheet = defaultStack(M16, 'sheet gasket', 70);
const RIGID = 1e18;
const rigid: Stack = { ...sheet, flange: { ...sheet.flange, modulusMPa: RIGID } };

const stacks = fc.record({
  gripMm: fc.double({ min: 10, max: 300, noNaN: true }),
  boltAreaMm2: fc.double({ min: 20, max: 2000, noNaN: true }),
  boltDiameterMm: fc.double({ min: 6, max: 56, noNaN: true }),
  flange: fc.record({
    thicknessMm: fc.double({ min: 8, max: 100, noNaN: true }),
    widthMm: fc.double({ min: 20, max: 150, noNaN: true }),
    modulusMPa: fc.double({ min: 7e4, max: 2.1e5, noNaN: true }),
  }),
  gasket: fc.record({
    thicknessMm: fc.double({ min: 0.5, max: 6, noNaN: true }),
    widthMm: fc.double({ min: 10, max: 100, noNaN: true }),
    modulusMPa: fc.double({ min: 20, max: 5e3, noNaN: true }),
  }),
});
const counts = fc.integer({ min: 2, max: 24 });
const lengths = fc.double({ min: 200, max: 6000, noNaN: true });
/** Bolts anywhere on the line, even two in one place. */
const anywhere = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 2, maxLength: 12 });

function entry(m: Matrix, i: number, j: number): number {
  return m[i]?.[j] ?? Number.NaN;
}

describe('analytic cases', () => {
  test('one bolt has nobody to take from it', () => {
    expect(interactionMatrix([0], 500, sheet)).toEqual([[1]]);
  });

  test('two bolts: A = -(joint between them)/(bolt and joint at one of them)', () => {
    // Endless beam by hand: the line is so long that the other way round and the images add nothing.
    const beam = flangeBeam(sheet);
    const beta = (beam.foundationMPa / (4 * beam.bendingNmm2)) ** 0.25;
    const b = beta * 50;
    const own = beta / beam.foundationMPa;
    const shared = own * Math.exp(-b) * (Math.cos(b) + Math.sin(b));
    const expected = -shared / (1 / boltStiffnessNPerMm(sheet) + own);
    expect(entry(interactionMatrix([0, 50], 1e5, sheet), 0, 1)).toBeCloseTo(expected, 10);
  });

  test('rigid flange: n bolts on one gasket, A = -kb/(Kg + (n - 1) kb), near and far alike', () => {
    fc.assert(
      fc.property(counts, lengths, (n, length) => {
        const kb = boltStiffnessNPerMm(rigid);
        const { thicknessMm, widthMm, modulusMPa } = rigid.gasket ?? rigid.flange;
        const Kg = (modulusMPa * widthMm * length) / thicknessMm;
        const expected = -kb / (Kg + (n - 1) * kb);
        const m = interactionMatrix(evenPositions(n, length), length, rigid);
        for (const [i, row] of m.entries()) {
          for (const [j, value] of row.entries()) if (i !== j) expect(value / expected).toBeCloseTo(1, 3);
        }
      }),
    );
  });

  test('far bolts are on their own: beyond five reaches less than one part in ten thousand', () => {
    fc.assert(
      fc.property(stacks, counts, (stack, n) => {
        const length = n * 5 * reachMm(flangeBeam(stack));
        for (const [i, row] of interactionMatrix(evenPositions(n, length), length, stack).entries()) {
          for (const [j, value] of row.entries()) if (i !== j) expect(Math.abs(value)).toBeLessThan(1e-4);
        }
      }),
    );
  });

  test('a stiff gasket leaves each bolt its preload, a soft one takes it', () => {
    const loss = (modulusMPa: number) => {
      const stack = { ...sheet, gasket: { thicknessMm: 2, widthMm: 24, modulusMPa } };
      return -entry(interactionMatrix(evenPositions(8, 560), 560, stack), 0, 1);
    };
    const losses = [1e5, 1e3, 5e2, 2e2, 1e2, 5e1].map(loss);
    for (const [i, value] of losses.entries()) expect(value).toBeGreaterThan(losses[i - 1] ?? -0.01);
    expect(losses[0]).toBeLessThan(0.01);
    expect(losses.at(-1)).toBeGreaterThan(0.2);
  });
});

describe('what holds for every joint', () => {
  test('reciprocity (Maxwell and Betti): the compliance and its inverse are symmetric, A too once each row has its stiffness', () => {
    fc.assert(
      fc.property(stacks, anywhere, lengths, (stack, places, length) => {
        const positions = places.map((p) => p * length);
        const compliance = jointCompliance(positions, length, stack);
        const stiffness = inverse(compliance);
        const a = interactionMatrix(positions, length, stack);
        const size = boltStiffnessNPerMm(stack);
        for (const i of positions.keys()) {
          for (const j of positions.keys()) {
            expect(entry(compliance, i, j)).toBe(entry(compliance, j, i));
            const [ij, ji] = [entry(a, i, j) * entry(stiffness, i, i), entry(a, j, i) * entry(stiffness, j, j)];
            expect(Math.abs(ij - ji)).toBeLessThan(1e-7 * size);
          }
        }
      }),
    );
  });

  test('a force does positive work on the joint (energy)', () => {
    fc.assert(
      fc.property(
        stacks,
        anywhere,
        lengths,
        fc.infiniteStream(fc.double({ min: -1, max: 1, noNaN: true })),
        (stack, places, length, forces) => {
          const positions = places.map((p) => p * length);
          const f = positions.map(() => forces.next().value);
          fc.pre(f.some((value) => Math.abs(value) > 1e-3));
          const compliance = jointCompliance(positions, length, stack);
          const work = compliance.reduce(
            (s, row, i) => s + row.reduce((t, c, j) => t + c * (f[i] ?? 0) * (f[j] ?? 0), 0),
            0,
          );
          const inBolts = f.reduce((s, value) => s + value ** 2, 0) / boltStiffnessNPerMm(stack);
          expect(work).toBeGreaterThan(0.999 * inBolts);
        },
      ),
    );
  });

  test('like bolts at like distances: symmetric, each row the one before moved on by a hole, neighbours lose', () => {
    fc.assert(
      fc.property(stacks, counts, lengths, (stack, n, length) => {
        const a = interactionMatrix(evenPositions(n, length), length, stack);
        const [first = []] = a;
        for (const [i, row] of a.entries()) {
          for (const [j, value] of row.entries()) {
            expect(value).toBeCloseTo(first[(j - i + n) % n] ?? Number.NaN, 7);
            expect(value).toBeCloseTo(entry(a, j, i), 7);
          }
          expect(row[i]).toBe(1);
        }
        // Beyond the reach of an endless beam a neighbour gains; the other bolts of the ring shorten that reach.
        if (length / n < 0.5 * reachMm(flangeBeam(stack))) expect(first[1]).toBeLessThan(0);
      }),
    );
  });

  test('superposition: turning a nut by S⁻¹ brings A, by solving the springs directly', () => {
    // Nuts 2 and 3 stand still and nut 1 turns: the joint comes together where they are as far as their bolts shrink.
    const positions = [0, 60, 130];
    const c = jointCompliance(positions, 700, sheet);
    const [c11, c12, c13] = [entry(c, 1, 1), entry(c, 1, 2), entry(c, 2, 2)];
    const det = c11 * c13 - c12 * c12;
    const a12 = (-entry(c, 0, 1) * c13 + entry(c, 0, 2) * c12) / det;
    const a13 = (-entry(c, 0, 2) * c11 + entry(c, 0, 1) * c12) / det;
    const a = interactionMatrix(positions, 700, sheet);
    expect(entry(a, 0, 1)).toBeCloseTo(a12, 10);
    expect(entry(a, 0, 2)).toBeCloseTo(a13, 10);
  });

  test('where the line starts does not matter', () => {
    fc.assert(
      fc.property(
        stacks,
        anywhere,
        lengths,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (stack, places, length, start) => {
          const a = interactionMatrix(
            places.map((p) => p * length),
            length,
            stack,
          );
          const b = interactionMatrix(
            places.map((p) => ((p + start) % 1) * length),
            length,
            stack,
          );
          for (const [i, row] of a.entries())
            for (const [j, v] of row.entries()) expect(v).toBeCloseTo(entry(b, i, j), 6);
        },
      ),
    );
  });
});

test('predictInteraction shows the numbers that the rounds were reckoned with', () => {
  const order = [1, 5, 3, 7, 2, 6, 4, 8];
  const shown = predictInteraction(evenPositions(8, 560), 560, sheet, [
    { share: 0.5, order },
    { share: 1, order },
  ]);
  expect(shown.stack).toBe(sheet);
  expect(shown.boltStiffnessNPerMm).toBe(boltStiffnessNPerMm(sheet));
  expect(shown.foundationMPa).toBe(flangeBeam(sheet).foundationMPa);
  expect(shown.reachMm).toBe(reachMm(flangeBeam(sheet)));
  expect(shown.matrix).toEqual(interactionMatrix(evenPositions(8, 560), 560, sheet));
  expect(shown.rounds).toHaveLength(2);
  expect(INTERACTION_LIMITS.every((line) => line.endsWith('.'))).toBe(true);
});

test.each([
  [[], 500],
  [[0, Number.NaN], 500],
  [[0, 10], 0],
  [[0, 10], Number.POSITIVE_INFINITY],
])('throws on places %j along %d', (positions, length) => {
  expect(() => jointCompliance(positions, length, sheet)).toThrow(RangeError);
});
