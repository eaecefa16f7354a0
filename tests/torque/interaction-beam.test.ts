/** The closed beam on its foundation against the images one by one, a Fourier series, differences, statics and both limits. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dampingPerMm, type FoundedBeam, reachMm, ringSinkingMmPerN } from '../../src/torque/interaction-beam.ts';

const beams = fc.record({
  bendingNmm2: fc.double({ min: 1e6, max: 1e12, noNaN: true }),
  foundationMPa: fc.double({ min: 1, max: 1e5, noNaN: true }),
});
/** Length of the line in units of 1/beta, and a place on it. */
const turns = fc.double({ min: 0.2, max: 60, noNaN: true });
const shares = fc.double({ min: 0, max: 1, noNaN: true });

function endless(beam: FoundedBeam, x: number): number {
  const beta = dampingPerMm(beam);
  const b = beta * Math.abs(x);
  return (beta / (2 * beam.foundationMPa)) * Math.exp(-b) * (Math.cos(b) + Math.sin(b));
}

describe('sinking of the closed beam', () => {
  test('is the sum of the endless beam over all images', () => {
    fc.assert(
      fc.property(beams, turns, shares, (beam, turn, share) => {
        const length = turn / dampingPerMm(beam);
        const images = Math.ceil(40 / turn) + 2;
        let sum = 0;
        for (let n = -images; n <= images; n++) sum += endless(beam, share * length + n * length);
        const found = ringSinkingMmPerN(beam, share * length, length);
        expect(Math.abs(found - sum)).toBeLessThan(1e-11 * endless(beam, 0) * (1 + 1 / turn));
      }),
    );
  });

  test('is the Fourier series of EI w⁗ + k w = P with period L', () => {
    fc.assert(
      fc.property(beams, fc.double({ min: 0.2, max: 12, noNaN: true }), shares, (beam, turn, share) => {
        const length = turn / dampingPerMm(beam);
        let sum = 1 / beam.foundationMPa;
        for (let m = 1; m <= 4000; m++) {
          const q = (2 * Math.PI * m) / length;
          sum += (2 * Math.cos(q * share * length)) / (beam.bendingNmm2 * q ** 4 + beam.foundationMPa);
        }
        const found = ringSinkingMmPerN(beam, share * length, length);
        expect(Math.abs(found - sum / length)).toBeLessThan(1e-8 * ringSinkingMmPerN(beam, 0, length));
      }),
    );
  });

  test('between loads the fourth difference answers the foundation; at the load the shear jumps by the load', () => {
    const beam = { bendingNmm2: 6.5e9, foundationMPa: 12_000 };
    const [length, h] = [565, 1];
    const w = (x: number) => ringSinkingMmPerN(beam, Math.abs(x), length);
    for (const x of [20, 75, 140, 282.5, 400]) {
      const fourth = (w(x - 2 * h) - 4 * w(x - h) + 6 * w(x) - 4 * w(x + h) + w(x + 2 * h)) / h ** 4;
      const restoring = beam.foundationMPa * w(x);
      expect(Math.abs(beam.bendingNmm2 * fourth + restoring)).toBeLessThan(1e-3 * beam.foundationMPa * w(0));
    }
    // EI w''' just beside the load is half of it: three points on one side, the slope at the load being zero.
    const third = (w(3 * h) - 3 * w(2 * h) + 3 * w(h) - w(0)) / h ** 3;
    expect(beam.bendingNmm2 * third).toBeCloseTo(0.5, 1);
  });

  test('the foundation carries the whole load', () => {
    fc.assert(
      fc.property(beams, fc.double({ min: 0.2, max: 12, noNaN: true }), (beam, turn) => {
        const length = turn / dampingPerMm(beam);
        const steps = 2000;
        let sum = 0;
        for (let i = 0; i < steps; i++) sum += ringSinkingMmPerN(beam, ((i + 0.5) * length) / steps, length);
        expect((beam.foundationMPa * sum * length) / steps).toBeCloseTo(1, 4);
      }),
      { numRuns: 30 },
    );
  });

  test('a stiff beam sinks as a whole, 1/(k L), down to a bending stiffness without bound', () => {
    for (const bendingNmm2 of [1e18, 1e24, 1e30, 1e40]) {
      const beam = { bendingNmm2, foundationMPa: 300 };
      for (const x of [0, 100, 250]) expect(ringSinkingMmPerN(beam, x, 500) * 300 * 500).toBeCloseTo(1, 5);
    }
  });

  test('a soft beam feels nothing of a far load', () => {
    const beam = { bendingNmm2: 1e5, foundationMPa: 1e4 };
    expect(ringSinkingMmPerN(beam, 100, 500) / ringSinkingMmPerN(beam, 0, 500)).toBeLessThan(1e-9);
  });

  test('is the same both ways round and after whole turns', () => {
    fc.assert(
      fc.property(beams, turns, shares, (beam, turn, share) => {
        const length = turn / dampingPerMm(beam);
        const w = ringSinkingMmPerN(beam, share * length, length);
        const size = ringSinkingMmPerN(beam, 0, length);
        expect(Math.abs(ringSinkingMmPerN(beam, (1 - share) * length, length) - w)).toBeLessThan(1e-9 * size);
        expect(Math.abs(ringSinkingMmPerN(beam, (3 + share) * length, length) - w)).toBeLessThan(1e-9 * size);
      }),
    );
  });
});

test('the reach is where the endless beam first comes back to its height', () => {
  fc.assert(
    fc.property(beams, (beam) => {
      const reach = reachMm(beam);
      expect(endless(beam, 0.999 * reach)).toBeGreaterThan(0);
      expect(endless(beam, 1.001 * reach)).toBeLessThan(0);
    }),
  );
});

test.each([
  [{ bendingNmm2: 0, foundationMPa: 1 }, 1, 10],
  [{ bendingNmm2: 1, foundationMPa: -1 }, 1, 10],
  [{ bendingNmm2: 1, foundationMPa: Number.NaN }, 1, 10],
  [{ bendingNmm2: 1, foundationMPa: 1 }, -1, 10],
  [{ bendingNmm2: 1, foundationMPa: 1 }, Number.NaN, 10],
  [{ bendingNmm2: 1, foundationMPa: 1 }, 1, 0],
])('throws on beam %o, distance %d, length %d', (beam, distance, length) => {
  expect(() => ringSinkingMmPerN(beam, distance, length)).toThrow(RangeError);
});
