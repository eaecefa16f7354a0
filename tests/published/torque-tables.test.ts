/** The short form against printed torque tables: SAE J429 charts, flange bolts, ASME PCC-1, military and aviation tables. */

import { describe, expect, test } from 'vitest';
import { strengthOf } from '../../src/fasteners/index.ts';
import {
  effectiveNutFactor,
  findCondition,
  shortFormTorque,
  torqueTable,
  unitPairAgrees,
} from '../../src/torque/index.ts';
import { quantity, valueIn } from '../../src/units/index.ts';
import { grade, halfDigit, inches, readData, thread, value } from './read-data.ts';

const NEWTON_PER_LBF = 4.4482216152605;
const MPA_PER_KSI = 6.894757293168361;
const inUnit = (Nm: number, unit: string) => valueIn(quantity('torque', Nm, 'N·m'), unit);
const UNIT: Readonly<Record<string, string>> = { 'lbf.in': 'lbf·in', 'lbf.ft': 'lbf·ft' };

describe('SAE J429 chart: clamp at 75 % of proof load, K 0.15, 0.18 and 0.20', () => {
  for (const row of readData('torque-sae-j429')) {
    test(`${row.text('size_in')}-${row.text('tpi')} grade ${row.text('grade')}, K ${row.text('K')} (${row.text('source')})`, () => {
      const t = thread(`${row.text('size_in')}-${row.text('tpi')}`);
      const s = value(strengthOf(grade(`SAE ${row.text('grade')}`), t));
      const clamp = 0.75 * (s.proofMPa ?? 0) * t.stressAreaMm2;
      expect(Math.abs(clamp / NEWTON_PER_LBF / row.number('clamp_lbf') - 1)).toBeLessThanOrEqual(0.0015);
      const T = inUnit(shortFormTorque(row.number('K'), t.diameterMm, clamp), UNIT[row.text('unit')] ?? '');
      expect(Math.abs(T - row.number('torque'))).toBeLessThanOrEqual(2 * halfDigit(row.text('torque')));
    });
  }
});

describe('flange bolts at 25.2 ksi on the tensile area, K 0.15', () => {
  for (const row of readData('torque-flange-bolts')) {
    test(`${row.text('d_in')}-${row.text('tpi')} (${row.text('source')})`, () => {
      const t = thread(`${row.text('d_in')}-${row.text('tpi')}`);
      expect(Math.abs(t.stressAreaMm2 / 645.16 / row.number('At_in2') - 1)).toBeLessThanOrEqual(0.003);
      const F = row.number('prestress_ksi') * MPA_PER_KSI * t.stressAreaMm2;
      expect(Math.abs(F / NEWTON_PER_LBF / row.number('preload_lbf') - 1)).toBeLessThanOrEqual(0.003);
      const T = inUnit(shortFormTorque(row.number('K'), t.diameterMm, F), 'lbf·ft');
      expect(Math.abs(T / row.number('torque_lbf_ft') - 1)).toBeLessThanOrEqual(0.003);
    });
  }
});

describe('ASME PCC-1 App. O: torque for each ksi on the root area', () => {
  for (const row of readData('torque-pcc-1-index')) {
    test(`${row.text('size_in')}-${row.text('tpi')}, K ${row.text('K')} (${row.text('source')})`, () => {
      const t = thread(`${row.text('size_in')}-${row.text('tpi')}`);
      const T = inUnit(shortFormTorque(row.number('K'), t.diameterMm, MPA_PER_KSI * t.rootAreaMm2), 'lbf·ft');
      const printed = row.text('index_lbf_ft_per_ksi');
      const slack = Math.max(0.006 * Number(printed), 2 * halfDigit(printed));
      expect(Math.abs(T - Number(printed))).toBeLessThanOrEqual(slack);
    });
  }
});

describe('military dry tables', () => {
  for (const row of readData('torque-military')) {
    const name = `grade ${row.text('grade')} ${row.text('size_in')}`;
    if (row.has('torque_Nm_printed')) {
      test(`${name}: the printed pair agrees (${row.text('source')})`, () => {
        const a = valueIn(quantity('torque', row.number('torque_lbf_ft'), 'lbf·ft'), 'N·m');
        const half = valueIn(quantity('torque', 0.5, 'lbf·ft'), 'N·m');
        expect(unitPairAgrees(a, row.number('torque_Nm_printed'), half, 0.5)).toBe(true);
      });
    }
    if (row.has('tpi')) {
      test(`${name}: near 75 % of proof at K 0.20, from -12 to +6 % (${row.text('source')})`, () => {
        const t = thread(`${row.text('size_in')}-${row.text('tpi')}`);
        const dry = findCondition('dry');
        if (dry === undefined) throw new RangeError('no dry condition');
        const [line] = torqueTable([t], grade(`SAE ${row.text('grade')}`), dry, 0.75).rows;
        const off = row.number('torque_lbf_ft') / (line?.torqueLbfFt ?? 0) - 1;
        expect(off).toBeGreaterThan(-0.12);
        expect(off).toBeLessThan(0.06);
      });
    }
  }
});

describe('FAA AC 43.13-1B Table 7-1: oil-free cadmium plate, implied nut factor at 40 ksi from 0.10 to 0.25', () => {
  for (const row of readData('torque-ac-43-13')) {
    test(`${row.text('thread')} (${row.text('source')})`, () => {
      const t = thread(row.text('thread'));
      const middle = (row.number('tension_nut_min_lbf_in') + row.number('tension_nut_max_lbf_in')) / 2;
      const Nm = valueIn(quantity('torque', middle, 'lbf·in'), 'N·m');
      const K = effectiveNutFactor(t.diameterMm, 40 * MPA_PER_KSI * t.stressAreaMm2, Nm);
      expect(K).toBeGreaterThan(0.1);
      expect(K).toBeLessThan(0.25);
    });
  }
});

test('a size in inches reads as its thread: 1-1/8 in is 28.575 mm', () => {
  expect(inches('1-1/8') * 25.4).toBeCloseTo(28.575, 9);
});
