/** The whole computation of a joint. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bearingOf,
  GRADES,
  METRIC_THREADS,
  parseGrade,
  parseThread,
  strengthOf,
  UNIFIED_THREADS,
} from '../../src/fasteners/index.ts';
import { CONDITIONS, computeTorque, findCondition, type TorqueInput } from '../../src/torque/index.ts';

const BAND = { low: 0.1, nominal: 0.12, high: 0.14 };

function input(threadText: string, gradeText: string, condition: string, more: Partial<TorqueInput> = {}): TorqueInput {
  const thread = parseThread(threadText);
  const grade = parseGrade(gradeText);
  const found = findCondition(condition);
  if (!thread.ok || !grade.ok || found === undefined) throw new RangeError(`${threadText} ${gradeText} ${condition}`);
  const strength = strengthOf(grade.value, thread.value);
  if (!strength.ok) throw new RangeError(strength.problem);
  return {
    thread: thread.value,
    strength: strength.value,
    condition: found,
    bearing: bearingOf('hexagon', thread.value),
    preloadShare: 0.75,
    ...more,
  };
}

describe('M16 8.8 oiled at 75 % of proof load, reckoned by hand', () => {
  const r = computeTorque(input('M16', '8.8', 'oiled'));
  test('proof load 580 × 156.7 = 90.9 kN, preload 68.1 kN, torque 0.16 × 16 × 68.1 = 174 N·m', () => {
    expect(r.preloadBasis).toBe('proof');
    expect(r.basisLoadN / 1000).toBeCloseTo(90.88, 1);
    expect(r.askedPreloadN / 1000).toBeCloseTo(68.16, 1);
    expect(r.shortForm.nominal).toBeCloseTo(174.5, 0);
    expect(r.targetNm).toBe(r.shortForm.nominal);
    expect(r.settingNm).toBe(r.targetNm);
  });
  test('the long form agrees and gives its nut factor', () => {
    expect(r.routesAgree).toBe(true);
    expect(r.effectiveNutFactor).toBeCloseTo(0.159, 2);
    expect(Math.abs(r.routesDiffer)).toBeLessThan(0.02);
  });
  test('preload at the target is what was asked for, with a band around it', () => {
    expect(r.preloadShare.nominal).toBeCloseTo(0.75, 12);
    expect(r.preloadShare.low).toBeCloseTo((0.75 * 0.16 * 0.96) / 0.2, 9);
    expect(r.preloadShare.high).toBeCloseTo((0.75 * 0.16 * 1.04) / 0.13, 9);
  });
});

describe('computeTorque', () => {
  test('rests on yield, and says so, where there is no proof stress', () => {
    const r = computeTorque(input('M12', 'A4-70', 'anti-seize', { preloadShare: 0.6 }));
    expect(r.preloadBasis).toBe('yield');
    expect(r.basisLoadN).toBeCloseTo(450 * 84.27, -1);
    expect(r.working.some((line) => line.name.includes('no proof stress'))).toBe(true);
  });

  test('a stated torque sets the preload, the asked share stays for comparison', () => {
    const r = computeTorque(input('M16', '8.8', 'oiled', { statedNm: 100 }));
    expect(r.targetNm).toBe(100);
    expect(r.preloadN.nominal).toBeCloseTo((100 * 1000) / (0.16 * 16), 6);
    expect(r.shortForm.nominal).toBeCloseTo(174.5, 0);
  });

  test('run-down torque is added to the setting, makes no preload and twists the shank', () => {
    const without = computeTorque(input('M10', '8.8', 'oiled', { statedNm: 40 }));
    const with10 = computeTorque(input('M10', '8.8', 'oiled', { statedNm: 40, prevailingNm: 10 }));
    expect(with10.settingNm).toBe(50);
    expect(with10.preloadN.nominal).toBe(without.preloadN.nominal);
    expect(with10.torsionMPa).toBeGreaterThan(without.torsionMPa);
    expect(with10.preloadN.low).toBeLessThan(without.preloadN.low);
    expect(with10.preloadN.high).toBeGreaterThan(without.preloadN.high);
  });

  test('wrench deviation defaults to ISO 6789: 6 % to 10 N·m, 4 % above', () => {
    expect(computeTorque(input('M6', '8.8', 'oiled', { statedNm: 9 })).wrenchDeviation).toBe(0.06);
    expect(computeTorque(input('M6', '8.8', 'oiled', { statedNm: 11 })).wrenchDeviation).toBe(0.04);
    expect(computeTorque(input('M6', '8.8', 'oiled', { wrenchDeviation: 0.02 })).wrenchDeviation).toBe(0.02);
  });

  test.each<Partial<TorqueInput>>([
    { preloadShare: 0 },
    { preloadShare: -0.5 },
    { preloadShare: Number.NaN },
    { statedNm: 0 },
    { statedNm: Number.POSITIVE_INFINITY },
    { prevailingNm: -1 },
    { prevailingNm: Number.NaN },
    { wrenchDeviation: 1 },
    { wrenchDeviation: -0.01 },
    { adapter: { lengthMm: 500, angleDeg: 180, leverMm: 480 } },
    { adapter: { lengthMm: 60, angleDeg: 0, leverMm: 0 } },
    { nutFactor: { low: 0.2, nominal: 0.1, high: 0.3 } },
    { nutFactor: { low: 0, nominal: 0.1, high: 0.3 } },
    { friction: { thread: BAND, bearing: { low: 0.1, nominal: 0.12, high: Number.NaN } } },
    { bearing: { faceMm: 16, holeMm: 17.5, source: 'test' } },
  ])('throws on %o, which the model should have refused', (bad) => {
    expect(() => computeTorque(input('M16', '8.8', 'oiled', bad))).toThrow(RangeError);
  });

  test('bands are in order and the stresses finite, over every grade, size and condition', () => {
    for (const [i, g] of GRADES.entries()) {
      for (const [k, t] of [...METRIC_THREADS, ...UNIFIED_THREADS].entries()) {
        const strength = strengthOf(g, t);
        // Each pair meets one condition, so that the run stays short; a size meets others with the next grades.
        const condition = CONDITIONS[(3 * i + k) % CONDITIONS.length];
        if (!strength.ok || condition === undefined) continue;
        const bearing = bearingOf('hexagon', t);
        const r = computeTorque({ thread: t, strength: strength.value, condition, bearing, preloadShare: 0.7 });
        const bands = [r.preloadN, r.preloadShare, r.longPreloadN, r.shortForm, r.longForm, r.yieldUse, r.nutFactor];
        const ordered = bands.every((b) => b.low <= b.nominal && b.nominal <= b.high);
        expect(ordered, `${t.designation} ${g.id} ${condition.id}`).toBe(true);
        expect(r.equivalentMPa > r.tensionMPa && r.equivalentElasticMPa > r.equivalentMPa).toBe(true);
        expect(r.yieldUse.high > r.yieldUse.nominal && Number.isFinite(r.yieldUseElastic)).toBe(true);
      }
    }
  });

  test('the two routes agree for coarse threads from M3 in every condition, and for UNC from 1/4 in', () => {
    const threads = [...METRIC_THREADS, ...UNIFIED_THREADS].filter(
      (t) => (t.series === 'coarse' && t.diameterMm >= 3) || (t.series === 'UNC' && t.diameterMm > 6),
    );
    for (const thread of threads) {
      for (const condition of CONDITIONS) {
        const strength = { yieldMPa: 640, proofMPa: 580, yieldKind: 'Rp0.2', tensileMPa: 800, source: 'test' };
        const r = computeTorque({
          thread,
          strength,
          condition,
          bearing: bearingOf('hexagon', thread),
          preloadShare: 0.75,
        });
        expect(r.routesAgree, `${thread.designation} ${condition.id} K ${r.effectiveNutFactor}`).toBe(true);
      }
    }
  });

  test('the parts of the long form add up to it; an eighth of the torque stretches an oiled M16', () => {
    const r = computeTorque(input('M16', '8.8', 'oiled'));
    const { pitchNm, threadFrictionNm, bearingFrictionNm } = r.longParts;
    expect(pitchNm + threadFrictionNm + bearingFrictionNm).toBeCloseTo(r.longForm.nominal, 9);
    // By hand: 0.16 × 2 / (0.16 × 2 + 0.58 × 14.701 × 0.12 + 20 / 2 × 0.12) = 0.126.
    expect(pitchNm / r.longForm.nominal).toBeCloseTo(0.126, 2);
  });

  test('torque, setting, preload and stress rise with the share, setting and stress also with the run-down torque', () => {
    const shares = fc.double({ min: 0.1, max: 0.9, noNaN: true });
    const more = fc.double({ min: 1.001, max: 2, noNaN: true });
    fc.assert(
      fc.property(shares, more, fc.constantFrom(...CONDITIONS), (preloadShare, by, c) => {
        const at = (share: number, prevailingNm: number) =>
          computeTorque(input('M16', '8.8', c.id, { preloadShare: share, prevailingNm }));
        const [base, tighter, locked] = [at(preloadShare, 5), at(preloadShare * by, 5), at(preloadShare, 5 * by)];
        for (const of of ['targetNm', 'settingNm', 'tensionMPa', 'torsionMPa', 'equivalentMPa'] as const) {
          expect(tighter[of]).toBeGreaterThan(base[of]);
        }
        expect(tighter.preloadN.low).toBeGreaterThan(base.preloadN.low);
        for (const of of ['settingNm', 'torsionMPa'] as const) expect(locked[of]).toBeGreaterThan(base[of]);
        expect(locked.tensionMPa).toBe(base.tensionMPa);
      }),
      { numRuns: 40 },
    );
  });

  test('the place of a stated torque: 0 at the low end of the band, 1 at the high end, outside beyond', () => {
    const at = (statedNm: number) => computeTorque(input('M16', '8.8', 'oiled', { statedNm })).statedPlace;
    const { shortForm } = computeTorque(input('M16', '8.8', 'oiled'));
    expect(at(shortForm.low)).toMatchObject({ position: 0, inBand: true });
    expect(at(shortForm.high)).toMatchObject({ position: 1, inBand: true });
    expect(at(shortForm.nominal)?.ratio).toBe(1);
    expect(at(shortForm.high + shortForm.high - shortForm.low)).toMatchObject({ inBand: false });
    expect(at(shortForm.high + shortForm.high - shortForm.low)?.position).toBeCloseTo(2, 9);
    expect(computeTorque(input('M16', '8.8', 'oiled')).statedPlace).toBeUndefined();
  });

  test('is plain data: JSON gives it back', () => {
    const r = computeTorque(input('M16', '8.8', 'oiled'));
    expect(JSON.parse(JSON.stringify(r))).toEqual(r);
  });
});

describe("figures of the lubricant's maker go before those of the condition", () => {
  const exact = { low: 0.12, nominal: 0.12, high: 0.12 };
  test('a stated nut factor sets torque and band; a band without width has no place in it', () => {
    const r = computeTorque(input('M16', '8.8', 'oiled', { nutFactor: exact, statedNm: 100 }));
    expect(r.nutFactorFrom).toBe('stated');
    expect(r.frictionFrom).toBe('condition');
    expect(r.shortForm.low).toBe(r.shortForm.high);
    expect(r.statedPlace?.position).toBeUndefined();
    expect(r.statedPlace?.inBand).toBe(false);
  });
  test('stated friction gives the nut factor by the long form, thread and face apart', () => {
    const friction = { thread: BAND, bearing: { low: 0.05, nominal: 0.06, high: 0.08 } };
    const r = computeTorque(input('M16', '8.8', 'dry', { friction }));
    expect([r.nutFactorFrom, r.frictionFrom]).toEqual(['long form', 'stated']);
    expect(r.shortForm.nominal).toBeCloseTo(r.longForm.nominal, 9);
    expect(r.shortForm.low).toBeCloseTo(r.longForm.low, 9);
    // By hand: d2 14.701, DKm (22.49 + 17.5)/2 = 19.995: 0.32 + 0.58 × 14.701 × 0.12 + 9.9975 × 0.06 = 1.943 mm.
    expect(r.nutFactor.nominal).toBeCloseTo(1.943 / 16, 4);
  });
  test('both together are used as they stand, and the two routes are a check again', () => {
    const friction = { thread: BAND, bearing: BAND };
    const agrees = computeTorque(
      input('M16', '8.8', 'dry', { friction, nutFactor: { low: 0.15, nominal: 0.16, high: 0.18 } }),
    );
    const differs = computeTorque(input('M16', '8.8', 'dry', { friction, nutFactor: exact }));
    expect([agrees.routesAgree, differs.routesAgree]).toEqual([true, false]);
  });
});
