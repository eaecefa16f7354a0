/** Scatter of the preload: friction and wrench apart, and both together. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bearingOf, METRIC_THREADS, UNIFIED_THREADS } from '../../src/fasteners/index.ts';
import { alphaFromScatter, CONDITIONS, computeTorque, scatterFromAlpha } from '../../src/torque/index.ts';

const STRENGTH = { yieldMPa: 640, proofMPa: 580, yieldKind: 'Rp0.2', tensileMPa: 800, source: 'test' };

const joints = fc.record({
  thread: fc.constantFrom(...METRIC_THREADS, ...UNIFIED_THREADS),
  condition: fc.constantFrom(...CONDITIONS),
  preloadShare: fc.double({ min: 0.3, max: 0.9, noNaN: true }),
  wrenchDeviation: fc.double({ min: 0, max: 0.2, noNaN: true }),
});

describe('scatter', () => {
  test('friction alone is the band of K, the wrench alone its deviation, and together they multiply', () => {
    fc.assert(
      fc.property(joints, (joint) => {
        const r = computeTorque({ ...joint, strength: STRENGTH, bearing: bearingOf('hexagon', joint.thread) });
        const { friction, wrench, total } = r.scatter;
        const K = joint.condition.nutFactor;
        expect(friction.low).toBeCloseTo(K.nominal / K.high, 12);
        expect(friction.high).toBeCloseTo(K.nominal / K.low, 12);
        expect(wrench.low).toBeCloseTo(1 - joint.wrenchDeviation, 9);
        expect(wrench.high).toBeCloseTo(1 + joint.wrenchDeviation, 9);
        expect(total.low).toBeCloseTo(friction.low * wrench.low, 9);
        expect(total.high).toBeCloseTo(friction.high * wrench.high, 9);
      }),
      { numRuns: 60 },
    );
  });

  test('alpha_A and plus/minus say the same, and are those of the preload itself', () => {
    fc.assert(
      fc.property(joints, (joint) => {
        const r = computeTorque({ ...joint, strength: STRENGTH, bearing: bearingOf('hexagon', joint.thread) });
        const alpha = r.scatter.alphaA ?? Number.NaN;
        expect(alpha).toBeCloseTo(r.preloadN.high / r.preloadN.low, 9);
        expect(r.scatter.plusMinus).toBeCloseTo(scatterFromAlpha(alpha), 9);
        expect(alphaFromScatter(r.scatter.plusMinus)).toBeCloseTo(alpha, 9);
      }),
      { numRuns: 60 },
    );
  });

  test('a run-down torque that swallows the deviation of the wrench leaves no sure preload, and no alpha_A', () => {
    const thread = METRIC_THREADS.find((t) => t.designation === 'M10');
    const condition = CONDITIONS[0];
    if (thread === undefined || condition === undefined) throw new RangeError('no M10');
    const bearing = bearingOf('hexagon', thread);
    const r = computeTorque({
      thread,
      condition,
      bearing,
      strength: STRENGTH,
      preloadShare: 0.5,
      statedNm: 1,
      prevailingNm: 50,
    });
    expect(r.preloadN.low).toBe(0);
    expect(r.scatter.alphaA).toBeUndefined();
    expect(r.scatter.plusMinus).toBe(1);
  });
});
