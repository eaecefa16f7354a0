/** What the wrench is set to: run-down torque, adapter, and faults of an adapter. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bearingOf, parseThread } from '../../src/fasteners/index.ts';
import {
  type Adapter,
  adapterFault,
  computeTorque,
  findCondition,
  isoWrenchDeviation,
  torqueAtSetting,
  withRunDown,
  wrenchFits,
  wrenchSetting,
} from '../../src/torque/index.ts';

const adapters = fc.record({
  lengthMm: fc.double({ min: 1, max: 300, noNaN: true }),
  angleDeg: fc.double({ min: 0, max: 180, noNaN: true }),
  leverMm: fc.double({ min: 301, max: 1200, noNaN: true }),
});
const torques = fc.double({ min: 0.5, max: 3000, noNaN: true });
const runDowns = fc.double({ min: 0, max: 100, noNaN: true });

describe('wrenchSetting', () => {
  test('is the torque itself without run-down torque and adapter, which is how a straight extension counts', () => {
    expect(wrenchSetting({ torqueNm: 85 })).toBe(85);
  });
  test('adds the run-down torque before it corrects for the adapter: (85 + 12) × 480 / (480 + 60)', () => {
    const adapter = { lengthMm: 60, angleDeg: 0, leverMm: 480 };
    expect(wrenchSetting({ torqueNm: 85, runDownNm: 12, adapter })).toBeCloseTo((97 * 480) / 540, 9);
  });
  test('torqueAtSetting is its inverse', () => {
    fc.assert(
      fc.property(torques, runDowns, adapters, (torqueNm, runDownNm, adapter) => {
        const setting = wrenchSetting({ torqueNm, runDownNm, adapter });
        expect(torqueAtSetting(setting, { runDownNm, adapter })).toBeCloseTo(torqueNm, 6);
      }),
    );
  });
  test('rises with the torque and with the run-down torque', () => {
    fc.assert(
      fc.property(torques, runDowns, adapters, (torqueNm, runDownNm, adapter) => {
        const setting = wrenchSetting({ torqueNm, runDownNm, adapter });
        expect(wrenchSetting({ torqueNm: torqueNm * 1.01, runDownNm, adapter })).toBeGreaterThan(setting);
        expect(wrenchSetting({ torqueNm, runDownNm: runDownNm + 1, adapter })).toBeGreaterThan(setting);
      }),
    );
  });
  test('falls as the adapter turns to point away from the grip, cos(a) growing', () => {
    const at = (angleDeg: number) =>
      wrenchSetting({ torqueNm: 100, adapter: { lengthMm: 60, angleDeg, leverMm: 400 } });
    for (let a = 0; a < 180; a += 15) expect(at(a)).toBeLessThan(at(a + 15));
  });
});

test('a joint with run-down torque and adapter: bolt 52 N·m, wrench 52 × 400 / 450, preload from 40 N·m alone', () => {
  const thread = parseThread('M10');
  const condition = findCondition('oiled');
  if (!thread.ok || condition === undefined) throw new RangeError('no joint');
  const r = computeTorque({
    thread: thread.value,
    condition,
    strength: { yieldMPa: 640, proofMPa: 580, yieldKind: 'Rp0.2', tensileMPa: 800, source: 'test' },
    bearing: bearingOf('hexagon', thread.value),
    preloadShare: 0.7,
    statedNm: 40,
    prevailingNm: 12,
    adapter: { lengthMm: 50, angleDeg: 0, leverMm: 400 },
  });
  expect(r.boltNm).toBe(52);
  expect(r.settingNm).toBeCloseTo((52 * 400) / 450, 9);
  expect(r.preloadN.nominal).toBeCloseTo((40 * 1000) / (0.16 * 10), 6);
  // The wrench is 4 % off its setting, so the bolt is 4 % off 52 N·m.
  expect(r.preloadN.high).toBeCloseTo(((52 * 1.04 - 12) * 1000) / (0.13 * 10), 6);
});

describe('adapterFault', () => {
  test.each<[Adapter, RegExp]>([
    [{ lengthMm: 0, angleDeg: 0, leverMm: 400 }, /adapter has no length/],
    [{ lengthMm: Number.NaN, angleDeg: 0, leverMm: 400 }, /adapter has no length/],
    [{ lengthMm: 60, angleDeg: 0, leverMm: 0 }, /lever of the wrench has no length/],
    [{ lengthMm: 60, angleDeg: -1, leverMm: 400 }, /cannot stand at -1°/],
    [{ lengthMm: 60, angleDeg: 181, leverMm: 400 }, /cannot stand at 181°/],
    [{ lengthMm: 60, angleDeg: Number.NaN, leverMm: 400 }, /cannot stand at NaN°/],
    [{ lengthMm: 400, angleDeg: 180, leverMm: 400 }, /past the grip/],
  ])('%o', (adapter, problem) => {
    expect(adapterFault(adapter)?.problem).toMatch(problem);
  });
  test('where it finds none, the setting can be computed', () => {
    const tenths = (min: number, max: number) => fc.integer({ min, max }).map((n) => n / 10);
    fc.assert(
      fc.property(tenths(-50, 4000), tenths(-50, 1850), tenths(-50, 4000), (lengthMm, angleDeg, leverMm) => {
        const adapter = { lengthMm, angleDeg, leverMm };
        fc.pre(adapterFault(adapter) === undefined);
        expect(wrenchSetting({ torqueNm: 50, adapter })).toBeGreaterThan(0);
      }),
    );
  });
});

test.each([
  () => wrenchSetting({ torqueNm: 0 }),
  () => wrenchSetting({ torqueNm: 10, runDownNm: -1 }),
  () => torqueAtSetting(Number.NaN, {}),
  () => withRunDown(10, Number.POSITIVE_INFINITY),
  () => wrenchFits(Number.NaN, {}),
  () => isoWrenchDeviation(0),
])("nonsense is refused as a programmer's mistake (%#)", (call) => {
  expect(call).toThrow(RangeError);
});
