/** The short form against printed torque tables: SAE J429 charts, flange bolts, ASME PCC-1, military and aviation tables. */

import { describe, expect, test } from 'vitest';
import { strengthOf, type Thread, threadsOf } from '../../src/fasteners/index.ts';
import {
  compareStatedTable,
  effectiveNutFactor,
  findCondition,
  type JointCondition,
  type StatedCell,
  shortFormTorque,
  torqueTable,
  unitPairAgrees,
} from '../../src/torque/index.ts';
import { quantity, valueIn } from '../../src/units/index.ts';
import { grade, halfDigit, inches, type Row, readData, thread, value } from './read-data.ts';

const NEWTON_PER_LBF = 4.4482216152605;
const MPA_PER_KSI = 6.894757293168361;
const inUnit = (Nm: number, unit: string) => valueIn(quantity('torque', Nm, 'N·m'), unit);
const DRY = dry();
const UNIT: Readonly<Record<string, string>> = { 'lbf.in': 'lbf·in', 'lbf.ft': 'lbf·ft' };

function dry(): JointCondition {
  const condition = findCondition('dry');
  if (condition === undefined) throw new RangeError('no dry condition');
  return condition;
}

/** Coarse where the table speaks of fine and coarse alike. */
function militaryThread(row: Row): Thread {
  const size = row.text('size_in');
  if (row.has('tpi')) return thread(`${size}-${row.text('tpi')}`);
  const coarse = threadsOf('UNC').find((t) => Math.abs(t.diameterMm / 25.4 - inches(size)) < 1e-6);
  if (coarse === undefined) throw new RangeError(`no UNC thread of ${size}`);
  return coarse;
}

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

/** Table, off 75 % of proof load at K 0.20 from and to, as found when the tables were read. */
const MILITARY = [
  { table: 'TM 5-3895-367-14&P', from: -0.06, to: 0.06 },
  { table: 'TM 10-3510-220-24', from: -0.11, to: 0.01 },
  { table: 'TM 9-2320-362-14&P', from: -0.32, to: -0.13 },
] as const;

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
    const military = MILITARY.find((m) => row.text('source').startsWith(m.table));
    if (military === undefined) throw new RangeError(`no range for ${row.text('source')}`);
    const { from, to } = military;
    test(`${name}: off 75 % of proof at K 0.20 by ${from * 100} to ${to * 100} % (${row.text('source')})`, () => {
      const [line] = torqueTable([militaryThread(row)], grade(`SAE ${row.text('grade')}`), DRY, 0.75).rows;
      const off = row.number('torque_lbf_ft') / (line?.torqueLbfFt ?? 0) - 1;
      expect(off).toBeGreaterThan(from - 0.005);
      expect(off).toBeLessThan(to + 0.005);
    });
  }
});

/** Whole printed tables, typed as a shop would type them: printed by makers, so nothing in them may be called a slip. */
describe('printed tables compared cell by cell', () => {
  const military = (table: string) => readData('torque-military').filter((r) => r.text('source').startsWith(table));
  const cell = (row: Row): StatedCell => {
    const t = militaryThread(row);
    const g = grade(`SAE ${row.text('grade')}`);
    const stated = quantity('torque', row.number('torque_lbf_ft'), 'lbf·ft');
    const base = { thread: t, grade: g, strength: value(strengthOf(g, t)), stated };
    return row.has('torque_Nm_printed')
      ? { ...base, second: quantity('torque', row.number('torque_Nm_printed'), 'N·m') }
      : base;
  };
  const slips = (cells: readonly StatedCell[], condition = DRY) =>
    compareStatedTable({ condition, preloadShare: 0.75, cells }).cells.filter(
      (c) => c.verdict !== 'holds' && c.verdict !== 'outside the band',
    );

  test.each(MILITARY.map((m) => m.table))('%s raises no slip', (table) => {
    const cells = military(table).map(cell);
    expect(cells.length).toBeGreaterThan(7);
    expect(slips(cells).map((c) => c.problem)).toEqual([]);
  });

  test.each(['0.15', '0.18', '0.20'])('SAE J429 chart at K %s (IFI 7th ed. data) raises no slip', (K) => {
    const cells = readData('torque-sae-j429')
      .filter((r) => r.text('K') === K)
      .map((r) => {
        const [t, g] = [thread(`${r.text('size_in')}-${r.text('tpi')}`), grade(`SAE ${r.text('grade')}`)];
        const stated = quantity('torque', r.number('torque'), UNIT[r.text('unit')] ?? '');
        return { thread: t, grade: g, strength: value(strengthOf(g, t)), stated };
      });
    expect(cells.length).toBeGreaterThan(20);
    expect(slips(cells).map((c) => c.problem)).toEqual([]);
  });

  test.each(['0.08', '0.10', '0.12', '0.14', '0.16', '0.20'])(
    'VDI 2230 Table A1 at friction %s raises no slip',
    (mu) => {
      const cells = readData('vdi-2230-coarse')
        .filter((r) => r.text('mu') === mu)
        .map((r) => {
          const [t, g] = [thread(r.text('thread')), grade(r.text('class'))];
          const decimals = r.text('MA_Nm').split('.')[1]?.length ?? 0;
          const stated = quantity('torque', r.number('MA_Nm'), 'N·m', decimals);
          return { thread: t, grade: g, strength: value(strengthOf(g, t)), stated };
        });
      expect(cells.length).toBeGreaterThan(10);
      expect(slips(cells).map((c) => c.problem)).toEqual([]);
    },
  );

  test('TM 10-4320-346-12&P Table H-1 prints 1820 lbf·ft (2712 N·m) for 1-1/4-12 grade 8: found, and the right one named', () => {
    const [t, g] = [thread('1 1/4-12'), grade('SAE 8')];
    const printed = (lbfFt: number): StatedCell => ({
      thread: t,
      grade: g,
      strength: value(strengthOf(g, t)),
      stated: quantity('torque', lbfFt, 'lbf·ft'),
      second: quantity('torque', 2712, 'N·m'),
    });
    const others = military('TM 10-3510-220-24').map(cell);
    const found = slips([...others, printed(1820)]);
    expect(found.map((c) => [c.thread.designation, c.verdict])).toEqual([[t.designation, 'units differ']]);
    // TM 10-3510-220-24 Table D-1 prints 2000 (2712) in the same place.
    expect(found[0]?.hint).toMatch(/^2712\sN·m is the one in line/);
    expect(slips([...others, printed(2000)])).toEqual([]);
  });
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
