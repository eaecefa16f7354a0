/** The bolt formulas: inverses, monotony, and a second route for the assembly preload. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bearingOf, METRIC_THREADS, UNIFIED_THREADS } from '../../src/fasteners/index.ts';
import {
  adapterSetting,
  alphaFromScatter,
  combinedStress,
  effectiveNutFactor,
  longFormParts,
  longFormPreload,
  longFormTorque,
  scatterFromAlpha,
  shortFormPreload,
  shortFormTorque,
  threadLeverMm,
  vdiAssemblyPreload,
  wrenchFits,
} from '../../src/torque/index.ts';
import { parseLimit } from '../../src/units/index.ts';

const threads = fc.constantFrom(...METRIC_THREADS, ...UNIFIED_THREADS);
const K = fc.double({ min: 0.05, max: 0.5, noNaN: true });
const mu = fc.double({ min: 0.03, max: 0.4, noNaN: true });
const force = fc.double({ min: 10, max: 2e6, noNaN: true });
const close = (a: number, b: number) => Math.abs(a / b - 1) < 1e-12;

describe('torque and preload are inverse', () => {
  test('short form', () => {
    fc.assert(
      fc.property(threads, K, force, (t, k, F) => {
        const T = shortFormTorque(k, t.diameterMm, F);
        return close(shortFormPreload(k, t.diameterMm, T), F) && close(effectiveNutFactor(t.diameterMm, F, T), k);
      }),
    );
  });
  test('long form', () => {
    fc.assert(
      fc.property(threads, mu, mu, force, (thread, frictionThread, frictionBearing, F) => {
        const joint = { thread, frictionThread, frictionBearing, bearing: bearingOf('hexagon', thread) };
        return close(longFormPreload(joint, longFormTorque(joint, F)), F);
      }),
    );
  });
});

describe('torque rises', () => {
  test('with preload, K and diameter', () => {
    fc.assert(
      fc.property(
        K,
        force,
        fc.double({ min: 1, max: 100, noNaN: true }),
        fc.double({ min: 1.001, max: 3, noNaN: true }),
        (k, F, d, more) => {
          const T = shortFormTorque(k, d, F);
          return (
            shortFormTorque(k * more, d, F) > T &&
            shortFormTorque(k, d * more, F) > T &&
            shortFormTorque(k, d, F * more) > T
          );
        },
      ),
    );
  });
  test('with either friction and with preload in the long form', () => {
    fc.assert(
      fc.property(threads, mu, force, fc.double({ min: 1.001, max: 3, noNaN: true }), (thread, m, F, more) => {
        const T = (muG: number, muK: number, f: number) =>
          longFormTorque(
            { thread, frictionThread: muG, frictionBearing: muK, bearing: bearingOf('hexagon', thread) },
            f,
          );
        return T(m * more, m, F) > T(m, m, F) && T(m, m * more, F) > T(m, m, F) && T(m, m, F * more) > T(m, m, F);
      }),
    );
  });
});

test('the long form rises with the pitch, the face and the hole, the thread otherwise alike', () => {
  const more = fc.double({ min: 1.001, max: 1.2, noNaN: true });
  fc.assert(
    fc.property(threads, mu, force, more, (thread, m, F, by) => {
      const bearing = bearingOf('hexagon', thread);
      const T = (t: typeof thread, b: typeof bearing) =>
        longFormTorque({ thread: t, frictionThread: m, frictionBearing: m, bearing: b }, F);
      const base = T(thread, bearing);
      return (
        T({ ...thread, pitchMm: thread.pitchMm * by }, bearing) > base &&
        T({ ...thread, pitchDiameterMm: thread.pitchDiameterMm * by }, bearing) > base &&
        T(thread, { ...bearing, faceMm: bearing.faceMm * by }) > base &&
        T(thread, { ...bearing, holeMm: bearing.holeMm + 0.9 * (by - 1) * (bearing.faceMm - bearing.holeMm) }) > base
      );
    }),
  );
});

test('the parts of the long form add up to it', () => {
  fc.assert(
    fc.property(threads, mu, mu, force, (thread, frictionThread, frictionBearing, F) => {
      const joint = { thread, frictionThread, frictionBearing, bearing: bearingOf('hexagon', thread) };
      const parts = longFormParts(joint, F);
      return close(parts.pitchNm + parts.threadFrictionNm + parts.bearingFrictionNm, longFormTorque(joint, F));
    }),
  );
});

test('the elastic modulus reads a third more torsion', () => {
  fc.assert(
    fc.property(threads, force, fc.double({ min: 0.1, max: 5000, noNaN: true }), (thread, F, Nm) => {
      const s = combinedStress(thread, F, Nm);
      return close(s.torsionElasticMPa, (s.torsionMPa * 4) / 3) && s.equivalentElasticMPa > s.equivalentMPa;
    }),
  );
});

test('at the assembly preload the combined stress is nu of yield, by the stresses themselves', () => {
  fc.assert(
    fc.property(threads, mu, fc.double({ min: 0.3, max: 1, noNaN: true }), (t, m, nu) => {
      const F = vdiAssemblyPreload(t, 640, m, nu);
      const s = combinedStress(t, F, (F * threadLeverMm(t, m)) / 1000);
      // 0.16 and 0.58 against 1/(2 pi) and 1.155/2: a third of a percent of torsion at most.
      return Math.abs(s.equivalentMPa / (nu * 640) - 1) < 0.004;
    }),
  );
});

test('the assembly preload falls as friction rises', () => {
  fc.assert(fc.property(threads, mu, (t, m) => vdiAssemblyPreload(t, 640, m * 1.1) < vdiAssemblyPreload(t, 640, m)));
});

describe("nonsense is refused as a programmer's mistake", () => {
  const thread = METRIC_THREADS[20];
  if (thread === undefined) throw new RangeError('no thread');
  const bearing = bearingOf('hexagon', thread);
  const joint = { thread, frictionThread: 0.1, frictionBearing: 0.1, bearing };
  const calls: Readonly<Record<string, (bad: number) => number>> = {
    'K of the torque': (x) => shortFormTorque(x, 16, 1000),
    'diameter of the torque': (x) => shortFormTorque(0.2, x, 1000),
    'K of the preload': (x) => shortFormPreload(x, 16, 100),
    'diameter of the preload': (x) => shortFormPreload(0.2, x, 100),
    'diameter of the nut factor': (x) => effectiveNutFactor(x, 1000, 100),
    'preload of the nut factor': (x) => effectiveNutFactor(16, x, 100),
    'face of the head': (x) => longFormTorque({ ...joint, bearing: { ...bearing, faceMm: x } }, 1000),
    'stress area': (x) => combinedStress({ ...thread, stressAreaMm2: x }, 1000, 10).tensionMPa,
    'yield of the assembly preload': (x) => vdiAssemblyPreload(thread, x, 0.1),
    'nu of the assembly preload': (x) => vdiAssemblyPreload(thread, 640, 0.1, x),
  };
  const mayBeNought: Readonly<Record<string, (bad: number) => number>> = {
    'preload of the torque': (x) => shortFormTorque(0.2, 16, x),
    'torque of the preload': (x) => shortFormPreload(0.2, 16, x),
    'preload of the long form': (x) => longFormTorque(joint, x),
    'torque of the long form': (x) => longFormPreload(joint, x),
    'thread friction': (x) => longFormTorque({ ...joint, frictionThread: x }, 1000),
    'bearing friction': (x) => longFormTorque({ ...joint, frictionBearing: x }, 1000),
    'torque that twists': (x) => combinedStress(thread, 1000, x).torsionMPa,
    'friction of the assembly preload': (x) => vdiAssemblyPreload(thread, 640, x),
  };
  const never = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -1];
  test.each(Object.entries({ ...calls, ...mayBeNought }))('%s', (_, call) => {
    for (const bad of never) expect(() => call(bad), String(bad)).toThrow(RangeError);
  });
  test.each(Object.entries(calls))('%s of zero', (_, call) => {
    expect(() => call(0)).toThrow(RangeError);
  });
  test.each(Object.entries(mayBeNought))('%s may be zero', (_, call) => {
    expect(Number.isFinite(call(0))).toBe(true);
  });
});

test('alpha_A and symmetric scatter are inverse', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 10, noNaN: true }), (a) => close(alphaFromScatter(scatterFromAlpha(a)), a)),
  );
  expect(() => alphaFromScatter(1)).toThrow(RangeError);
  expect(() => scatterFromAlpha(0.99)).toThrow(RangeError);
  expect(() => scatterFromAlpha(Number.NaN)).toThrow(RangeError);
});

describe('adapterSetting', () => {
  test('by moments: the force at the grip times the whole arm is the torque', () => {
    const lengths = fc.double({ min: 50, max: 1000, noNaN: true });
    fc.assert(
      fc.property(
        lengths,
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 180, noNaN: true }),
        (L, E, a) => {
          const setting = adapterSetting(100, L, E, a);
          const forceAtGrip = setting / L;
          return Math.abs(forceAtGrip * (L + E * Math.cos((a * Math.PI) / 180)) - 100) < 1e-9;
        },
      ),
    );
  });
  test('lower straight on, the same square, higher back over the handle', () => {
    const at = (angle: number) => adapterSetting(100, 400, 60, angle);
    expect(at(0)).toBeLessThan(100);
    expect(at(90)).toBeCloseTo(100, 9);
    expect(at(180)).toBeGreaterThan(100);
  });
  test.each([
    [0, 400, 60, 0],
    [100, 0, 60, 0],
    [100, 400, -1, 0],
    [100, 400, 500, 180],
    [100, 400, 60, Number.NaN],
  ])('refuses %d, %d, %d, %d', (T, L, E, a) => {
    expect(() => adapterSetting(T, L, E, a)).toThrow(RangeError);
  });
});

test('wrenchFits reads the range in its own unit', () => {
  const range = parseLimit('10 to 150 lbf.ft', 'torque');
  if (!range.ok) throw new RangeError(range.problem);
  expect(wrenchFits(203, range.value)).toBe('fits');
  expect(wrenchFits(204, range.value)).toBe('over marked range');
  expect(wrenchFits(13, range.value)).toBe('under marked range');
  expect(wrenchFits(30, range.value)).toBe('under 20 % of maximum');
  expect(wrenchFits(30, {})).toBe('fits');
});
