/**
 * The beam under the interaction of bolts against published values of beams on elastic foundations. No published figures
 * of bolts measured in a joint are compared: none were at hand, so the prediction of the rounds stays an illustration.
 */

import { describe, expect, test } from 'vitest';
import { dampingPerMm, ringSinkingMmPerN } from '../../src/torque/interaction-beam.ts';

/** A line so long that a beam closed on it is endless. */
const ENDLESS_MM = 1e6;

describe('rail under wheels (Boresi and Schmidt, Advanced Mechanics of Materials, 6th ed., ch. 10, Example 10.1)', () => {
  // Inputs and results read in a public set of that chapter's solved examples; the number of the example from memory.
  const rail = { bendingNmm2: 200e3 * 36.9e6, foundationMPa: 14 };
  const wheelN = 170e3;
  const spacingMm = 1700;
  const sinking = (x: number) => wheelN * ringSinkingMmPerN(rail, Math.abs(x), ENDLESS_MM);

  test('one wheel: 5.04 mm', () => {
    expect(sinking(0)).toBeCloseTo(5.04, 2);
  });
  test('one wheel: bending moment P/(4 beta) = 51.21 kN·m', () => {
    expect(wheelN / (4 * dampingPerMm(rail)) / 1e6).toBeCloseTo(51.21, 2);
  });
  test('three wheels: 7.86 mm under the middle one, by superposition', () => {
    expect(sinking(0) + sinking(spacingMm) + sinking(-spacingMm)).toBeCloseTo(7.86, 2);
  });
});

describe('e^-x (cos x + sin x), four figures (Timoshenko, Strength of Materials, Part II, table of phi; memory)', () => {
  const beam = { bendingNmm2: 0.25, foundationMPa: 1 };
  test.each([
    [0.1, 0.9907],
    [0.2, 0.9651],
    [0.5, 0.8231],
    [1, 0.5083],
    [2, 0.0667],
    [3, -0.0423],
    [4, -0.0258],
  ])('at %d: %d', (x, phi) => {
    expect(dampingPerMm(beam)).toBe(1);
    expect(ringSinkingMmPerN(beam, x, ENDLESS_MM) / ringSinkingMmPerN(beam, 0, ENDLESS_MM)).toBeCloseTo(phi, 4);
  });
});
