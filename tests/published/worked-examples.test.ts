/** Printed worked examples, each with its source in the title. */

import { describe, expect, test } from 'vitest';
import { strengthOf } from '../../src/fasteners/index.ts';
import {
  adapterSetting,
  alphaFromScatter,
  combinedStress,
  effectiveNutFactor,
  findCondition,
  isoWrenchDeviation,
  planRounds,
  scatterFromAlpha,
  shortFormPreload,
  shortFormTorque,
  threadLeverMm,
  unitPairAgrees,
  withRunDown,
  wrenchFits,
  wrenchSetting,
} from '../../src/torque/index.ts';
import { parseLimit, quantity, valueIn } from '../../src/units/index.ts';
import { grade, thread, value } from './read-data.ts';

const NEWTON_PER_LBF = 4.4482216152605;
const MPA_PER_KSI = 6.894757293168361;
const nm = (v: number, unit: string) => valueIn(quantity('torque', v, unit), 'N·m');

describe('nut factor', () => {
  test('Shigley 9th ed. Example 8-3: 3/4-16 UNF, 25 kip, K 0.2 gives 3750 lbf·in (torque memory)', () => {
    const T = shortFormTorque(0.2, thread('3/4-16 UNF').diameterMm, 25000 * NEWTON_PER_LBF);
    expect(T).toBeCloseTo(nm(3750, 'lbf·in'), 9);
  });
  test('Shigley 9th ed. Example 8-3 (a): stress 67.02 kpsi, 21 % below proof', () => {
    const stress = 25 / 0.373;
    const proof = (value(strengthOf(grade('SAE 5'), thread('3/4-16 UNF'))).proofMPa ?? 0) / MPA_PER_KSI;
    expect(stress).toBeCloseTo(67.02, 2);
    expect(Math.round((1 - stress / proof) * 100)).toBe(21);
    const computed = (25000 * NEWTON_PER_LBF) / thread('3/4-16 UNF').stressAreaMm2 / MPA_PER_KSI;
    expect(Math.abs(computed / 67.02 - 1)).toBeLessThan(0.002);
  });
  test('aircraft bolt table: 3/8-24, 5788 lbf, 28.9 lbf·ft gives K 0.16 (Shigley Table 8-15)', () => {
    const K = effectiveNutFactor(thread('3/8-24').diameterMm, 5788 * NEWTON_PER_LBF, nm(28.9, 'lbf·ft'));
    expect(Math.abs(K / 0.16 - 1)).toBeLessThan(0.01);
  });
  test('the same torque with K 0.11 for 0.16 clamps 1.452 times as hard', () => {
    const d = thread('3/8-24').diameterMm;
    const ratio = shortFormPreload(0.11, d, nm(28.9, 'lbf·ft')) / shortFormPreload(0.16, d, nm(28.9, 'lbf·ft'));
    expect(Math.abs(ratio / 1.452 - 1)).toBeLessThan(0.005);
  });
  test('ASME PCC-1 App. O: 5/8-11 at 50 ksi on the root area, K 0.15, gives 79 lbf·ft', () => {
    const t = thread('5/8-11');
    const T = shortFormTorque(0.15, t.diameterMm, 50 * MPA_PER_KSI * t.rootAreaMm2);
    expect(Math.abs(T / nm(79, 'lbf·ft') - 1)).toBeLessThan(0.01);
  });
});

describe('scatter', () => {
  test.each([
    [1.6, 23.1],
    [4, 60],
  ])('VDI 2230:1986 guide values: alpha_A %d is ±%d %%', (alpha, percent) => {
    expect(Math.abs(scatterFromAlpha(alpha) * 100 - percent)).toBeLessThan(0.6);
  });
  test('M12 8.8 at 0.14: 41.9 kN with alpha_A 1.8 leaves 23.3 kN (VDI 2230 based guide)', () => {
    expect(Math.abs(41.9 / alphaFromScatter(scatterFromAlpha(1.8)) / 23.3 - 1)).toBeLessThan(0.005);
  });
  test('NASA table of preload uncertainty: ±25 % on 20 kN is 15 to 25 kN, alpha_A 1.667', () => {
    expect(alphaFromScatter(0.25)).toBeCloseTo(1.667, 3);
    expect(25000 / alphaFromScatter(0.25)).toBeCloseTo(15000, 6);
  });
});

describe('adapter setting', () => {
  test.each([
    [300, 10, 4, 0, 214, 0.5, 'TM 1-1500-204-23-9 para 8'],
    [135, 10, 1.5, 180, 158.82, 0.005, 'FAA AC 43.13-1B figure, adapter pointing back'],
    [100, 12, 6, 0, 66.7, 0.05, 'NAVEDTRA 14315 figs 3-44 and 3-45, computed'],
    [50, 12, 3, 90, 50, 1e-9, 'vehicle manuals: no correction at a right angle'],
  ])('%d with lever %d, adapter %d at %d° is %d (±%d; %s)', (torque, lever, adapter, angle, setting, slack) => {
    expect(Math.abs(adapterSetting(torque, lever, adapter, angle) - setting)).toBeLessThanOrEqual(slack);
  });
});

describe('combined stress while tightening, VDI 2230 Table A1', () => {
  test.each([
    ['M12', 0.14, 41.9, 640, 497.2, 166.6, 48.5, 0.98],
    ['M20', 0.1, 134, 660, 547.4, 135.7, 195.5, 0.96],
  ])('%s 8.8 at %d and %d kN uses 0.9 of %d MPa', (name, mu, kN, yieldMPa, tension, torsion, threadNm, elastic) => {
    const t = thread(name);
    const MG = (kN * 1000 * threadLeverMm(t, mu)) / 1000;
    const s = combinedStress(t, kN * 1000, MG);
    // 0.16 and 0.58 are the rounded 1/(2 pi) and 1.155/2 of the standard: half a percent.
    expect(Math.abs(MG / threadNm - 1)).toBeLessThan(0.005);
    expect(Math.abs(s.tensionMPa / tension - 1)).toBeLessThan(0.001);
    expect(Math.abs(s.torsionMPa / torsion - 1)).toBeLessThan(0.005);
    expect(Math.abs(s.equivalentMPa / yieldMPa - 0.9)).toBeLessThan(0.01);
    // On the elastic modulus of the editions before 2001 the same joint reads higher.
    expect(Math.abs(s.equivalentElasticMPa / yieldMPa - elastic)).toBeLessThan(0.01);
  });
});

describe('wrench and rounds', () => {
  test('TB 43-0218 section IV 7c: 50 to 70 lbf·in with 30 run-down is 80 to 100', () => {
    expect([withRunDown(50, 30), withRunDown(70, 30)]).toEqual([80, 100]);
    expect([nm(80, 'lbf·in'), nm(100, 'lbf·in')].map(Math.round)).toEqual([9, 11]);
  });
  test('ASME PCC-1-2010 percentages: 100 N·m in rounds of 30, 70, 100, 100', () => {
    const rounds = planRounds(quantity('torque', 100, 'N·m'), [0.3, 0.7, 1], 1, 1);
    expect(rounds.map((r) => r.torque.value)).toEqual([30, 70, 100, 100]);
    expect(rounds.map((r) => r.pass)).toEqual(['sequence', 'sequence', 'sequence', 'circular']);
  });
  test('ISO 6789:2003: a 10 to 100 N·m wrench is used from 20; marked from 10 (2017 edition)', () => {
    const range = value(parseLimit('10 to 100 N·m', 'torque'));
    expect([9.9, 10, 19.9, 20, 100, 100.1].map((T) => wrenchFits(T, range))).toEqual([
      'under marked range',
      'under 20 % of maximum',
      'under 20 % of maximum',
      'fits',
      'fits',
      'over marked range',
    ]);
  });
  test('ISO 6789: 4 % above 10 N·m, so ±6 N·m at 150; 6 % to 10 N·m', () => {
    expect(150 * isoWrenchDeviation(200)).toBeCloseTo(6, 9);
    expect(isoWrenchDeviation(10)).toBe(0.06);
  });
});

describe('printed pairs that do not convert', () => {
  test('TM 10-4320-346-12&P Table H-1: 1820 lbf·ft is not 2712 N·m', () => {
    expect(unitPairAgrees(nm(1820, 'lbf·ft'), 2712, nm(0.5, 'lbf·ft'), 0.5)).toBe(false);
    expect(nm(1820, 'lbf·ft')).toBeCloseTo(2467.6, 1);
    expect(valueIn(quantity('torque', 2712, 'N·m'), 'lbf·ft')).toBeCloseTo(2000.3, 1);
  });
  test('TM 10-3510-220-24 Table D-1: 2000 lbf·ft is 2712 N·m', () => {
    expect(unitPairAgrees(nm(2000, 'lbf·ft'), 2712, nm(0.5, 'lbf·ft'), 0.5)).toBe(true);
  });
  test('TM 9-6115-604-34 Table 1-3: 5.0 lbf·in is not 0.46 N·m', () => {
    expect(unitPairAgrees(nm(5, 'lbf·in'), 0.46, nm(0.05, 'lbf·in'), 0.005)).toBe(false);
    expect(nm(5, 'lbf·in')).toBeCloseTo(0.565, 3);
  });
});

test('TM 5-3895-367-14&P Table H-1: 150 lbf·ft dry for 5/8-11 grade 5, 10 % less with engine oil: both in the band of K', () => {
  const t = thread('5/8-11');
  const F = 0.75 * (value(strengthOf(grade('SAE 5'), t)).proofMPa ?? 0) * t.stressAreaMm2;
  const bands = ['dry', 'oiled'].map((id) => findCondition(id)?.nutFactor);
  for (const [i, lbfFt] of [150, 150 * 0.9].entries()) {
    const K = effectiveNutFactor(t.diameterMm, F, nm(lbfFt, 'lbf·ft'));
    expect(K).toBeGreaterThan(bands[i]?.low ?? Number.NaN);
    expect(K).toBeLessThan(bands[i]?.high ?? Number.NaN);
  }
});

test('TM 5-3805-248-23-1: above 30 lbf·ft in two passes, 70 and 100 %', () => {
  const rounds = planRounds(quantity('torque', 50, 'lbf·ft'), [0.7, 1], 0, 1);
  expect(rounds.map((r) => r.torque.value)).toEqual([35, 50]);
});

test('AC 43.13-1B adds the run-down torque always; TB 43-0218 only from a third of the stated torque up', () => {
  // 10 of 50 lbf·in is under a third: the stricter of the two is followed, and the bolt gets what is stated.
  expect(withRunDown(50, 10)).toBe(60);
  expect(wrenchSetting({ torqueNm: nm(50, 'lbf·in'), runDownNm: nm(10, 'lbf·in') })).toBeCloseTo(nm(60, 'lbf·in'), 9);
});
