/** The whole computation of a joint, its worksheet included. */

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
import {
  CONDITIONS,
  compareStated,
  computeTorque,
  findCondition,
  type TorqueInput,
  type TorqueResult,
} from '../../src/torque/index.ts';

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
    expect(r.working[0]?.name).toMatch(/no proof stress/);
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
    { wrenchDeviation: 1 },
  ])('throws on %o, which the model should have refused', (bad) => {
    expect(() => computeTorque(input('M16', '8.8', 'oiled', bad))).toThrow(RangeError);
  });

  test('bands are in order and the stresses finite, for every grade, size and condition', () => {
    for (const g of GRADES) {
      for (const t of [...METRIC_THREADS, ...UNIFIED_THREADS]) {
        const strength = strengthOf(g, t);
        if (!strength.ok) continue;
        for (const condition of CONDITIONS) {
          const r = computeTorque({
            thread: t,
            strength: strength.value,
            condition,
            bearing: bearingOf('hexagon', t),
            preloadShare: 0.7,
          });
          for (const band of [r.preloadN, r.preloadShare, r.shortForm, r.longForm]) {
            expect(band.low).toBeLessThanOrEqual(band.nominal);
            expect(band.nominal).toBeLessThanOrEqual(band.high);
          }
          expect(r.equivalentMPa).toBeGreaterThan(r.tensionMPa);
          expect(r.yieldUse.high).toBeGreaterThan(r.yieldUse.nominal);
        }
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

  test('is plain data: JSON gives it back', () => {
    const r = computeTorque(input('M16', '8.8', 'oiled'));
    expect(JSON.parse(JSON.stringify(r))).toEqual(r);
  });
});

describe('the worksheet', () => {
  /** Evaluates a printed line as a pocket calculator would. */
  function reckon(text: string): number {
    const js = text.replaceAll('×', '*').replaceAll('−', '-').replaceAll('√', 'Math.sqrt');
    if (/[^\d.+\-*/() Mathsqr]/.test(js)) throw new RangeError(`not a sum: ${text}`);
    return Number(new Function(`return ${js}`)());
  }

  test('every line works out to its printed result, to the rounding of four figures', () => {
    const stated = fc.option(fc.double({ min: 5, max: 900, noNaN: true }), { nil: undefined });
    fc.assert(
      fc.property(
        fc.constantFrom('M6', 'M10x1', 'M16', 'M30', '5/8-11', '1 1/2-8'),
        fc.constantFrom(...CONDITIONS),
        stated,
        fc.constantFrom(0, 3),
        (t, c, statedNm, prevailingNm) => {
          const base = input(t, t.startsWith('M') ? '8.8' : 'ASTM A193 B7', c.id, { prevailingNm });
          const r = computeTorque(statedNm === undefined ? base : { ...base, statedNm });
          for (const line of r.working) {
            const printed = Number.parseFloat(line.result);
            expect(
              Math.abs(reckon(line.withNumbers) - printed),
              `${line.name}: ${line.withNumbers} = ${line.result}`,
            ).toBeLessThanOrEqual(0.004 * printed + 0.001);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('compareStated', () => {
  const r: TorqueResult = computeTorque(input('M16', '8.8', 'oiled'));
  const T = r.shortForm.nominal;
  test.each([
    [1, 'inside', undefined],
    [1.2, 'inside', undefined],
    [12, 'unit slip', /lbf·in written as lbf·ft/],
    [1 / 12, 'unit slip', /lbf·ft written as lbf·in/],
    [8.85, 'unit slip', /lbf·in written as N·m/],
    [0.113, 'unit slip', /N·m written as lbf·in/],
    [1.4, 'unit slip', /N·m written as lbf·ft/],
    [0.7376, 'unit slip', /lbf·ft written as N·m/],
    [9.80665, 'unit slip', /N·m written as kgf·m/],
    [0.10197, 'unit slip', /kgf·m written as N·m/],
    [10.3, 'unit slip', /kgf·cm written as N·m/],
    [100, 'unit slip', /kgf·cm written as kgf·m/],
    [10, 'digit slip', /decimal point/],
    [0.1, 'digit slip', /decimal point/],
    [3, 'far off', undefined],
    [0.4, 'far off', undefined],
    [1.8, 'outside the band', undefined],
    [0.55, 'outside the band', undefined],
  ] as const)('%d times the computed torque is %s', (ratio, verdict, likely) => {
    const check = compareStated(ratio * T, r);
    expect(check.ratio).toBeCloseTo(ratio, 9);
    expect(check.verdict).toBe(verdict);
    if (likely === undefined) expect(check.likely).toBeUndefined();
    else expect(check.likely).toMatch(likely);
    if (check.correctedNm !== undefined) expect(Math.abs(check.correctedNm / T - 1)).toBeLessThanOrEqual(0.15);
  });
  test("a torque that is not above zero is a programmer's mistake", () => {
    expect(() => compareStated(0, r)).toThrow(RangeError);
  });
});
