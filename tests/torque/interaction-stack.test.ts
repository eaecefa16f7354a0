/** Springs of the clamped stack against hand calculation, and the illustrations against their own rules. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  boltStiffnessNPerMm,
  defaultStack,
  flangeBeam,
  STEEL_MPA,
  type Stack,
} from '../../src/torque/interaction-stack.ts';

const stack: Stack = {
  gripMm: 42,
  boltAreaMm2: 157,
  boltDiameterMm: 16,
  flange: { thicknessMm: 20, widthMm: 48, modulusMPa: 200_000 },
  gasket: { thicknessMm: 2, widthMm: 24, modulusMPa: 500 },
};

describe('springs, by pocket calculator', () => {
  test('bolt: 205 000 x 157/(42 + 12.8) = 587 318 N/mm', () => {
    expect(boltStiffnessNPerMm(stack)).toBeCloseTo(587_318, 0);
    expect(boltStiffnessNPerMm({ ...stack, boltModulusMPa: 102_500 })).toBeCloseTo(293_659, 0);
  });
  test('flange: 200 000 x 48 x 20³/12 = 6.4e9 N·mm², on twice 500 x 24/2 = 6 000 MPa', () => {
    expect(flangeBeam(stack).bendingNmm2).toBeCloseTo(6.4e9, 0);
    expect(flangeBeam(stack).foundationMPa).toBeCloseTo(12_000, 9);
  });
  test('metal to metal: the dip dies out within beta t = 6^(1/4), whatever the flange', () => {
    const { gasket: _, ...metal } = stack;
    const { bendingNmm2, foundationMPa } = flangeBeam(metal);
    expect((foundationMPa / (4 * bendingNmm2)) ** 0.25 * 20).toBeCloseTo(6 ** 0.25, 9);
  });
});

describe('defaultStack', () => {
  const bolts = fc.record({
    diameterMm: fc.double({ min: 4, max: 64, noNaN: true }),
    stressAreaMm2: fc.double({ min: 8, max: 3000, noNaN: true }),
  });
  const kinds = fc.constantFrom('metal to metal', 'sheet gasket', 'rubber gasket');
  test('the grip is both flanges and the gasket; the spacing rule holds; the gasket fits the flange', () => {
    fc.assert(
      fc.property(bolts, kinds, fc.double({ min: 2, max: 12, noNaN: true }), (bolt, kind, pitches) => {
        const { diameterMm: d } = bolt;
        const s = defaultStack(bolt, kind, pitches * d);
        expect(s.gripMm).toBeCloseTo(2 * s.flange.thicknessMm + (s.gasket?.thicknessMm ?? 0), 9);
        expect(s.flange.thicknessMm).toBeGreaterThanOrEqual(1.25 * d);
        expect(s.flange.modulusMPa).toBe(STEEL_MPA);
        expect(s.gasket?.widthMm ?? 0).toBeLessThanOrEqual(s.flange.widthMm);
        expect(s.gasket === undefined).toBe(kind === 'metal to metal');
        const m = kind === 'sheet gasket' ? 2.75 : 1;
        if (s.gasket) expect(pitches * d).toBeLessThanOrEqual(2 * d + (6 * s.flange.thicknessMm) / (m + 0.5) + 1e-9);
      }),
    );
  });
  test('a softer gasket makes a softer foundation', () => {
    const foundation = (kind: 'metal to metal' | 'sheet gasket' | 'rubber gasket') =>
      flangeBeam(defaultStack({ diameterMm: 16, stressAreaMm2: 157 }, kind, 70)).foundationMPa;
    expect(foundation('metal to metal')).toBeGreaterThan(foundation('sheet gasket'));
    expect(foundation('sheet gasket')).toBeGreaterThan(foundation('rubber gasket'));
  });
  test.each([
    [0, 157, 70],
    [16, -1, 70],
    [16, 157, Number.NaN],
  ])('throws on diameter %d, area %d, pitch %d', (diameterMm, stressAreaMm2, pitch) => {
    for (const kind of ['metal to metal', 'sheet gasket'] as const)
      expect(() => defaultStack({ diameterMm, stressAreaMm2 }, kind, pitch)).toThrow(RangeError);
  });
});

test.each([
  { ...stack, gripMm: 0 },
  { ...stack, boltAreaMm2: -1 },
  { ...stack, boltDiameterMm: Number.NaN },
  { ...stack, boltModulusMPa: 0 },
])('a bolt that is none throws', (wrong) => {
  expect(() => boltStiffnessNPerMm(wrong)).toThrow(RangeError);
});
test.each([
  { ...stack, flange: { ...stack.flange, thicknessMm: 0 } },
  { ...stack, flange: { ...stack.flange, widthMm: -2 } },
  { ...stack, flange: { ...stack.flange, modulusMPa: Number.POSITIVE_INFINITY } },
  { ...stack, gasket: { thicknessMm: 0, widthMm: 10, modulusMPa: 500 } },
  { ...stack, gasket: { thicknessMm: 2, widthMm: 0, modulusMPa: 500 } },
  { ...stack, gasket: { thicknessMm: 2, widthMm: 10, modulusMPa: -500 } },
])('a flange or gasket that is none throws', (wrong) => {
  expect(() => flangeBeam(wrong)).toThrow(RangeError);
});
