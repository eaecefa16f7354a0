/** The worksheet: every line can be followed by hand, agrees with the computed joint, and with values from outside. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bearingOf, METRIC_THREADS, strengthOf, type Thread, UNIFIED_THREADS } from '../../src/fasteners/index.ts';
import { figures, printSymbol } from '../../src/torque/formula/index.ts';
import {
  type Band,
  CONDITIONS,
  computeTorque,
  findCondition,
  type TorqueInput,
  type TorqueResult,
} from '../../src/torque/index.ts';
import { WORKING_SECTIONS, type WorkingLine } from '../../src/torque/working.ts';
import { grade, readData, thread, value } from '../published/read-data.ts';
import { printedNumber, workOut } from './pocket-calculator.ts';

function input(t: Thread, gradeText: string, condition: string, more: Partial<TorqueInput> = {}): TorqueInput {
  const found = findCondition(condition);
  if (found === undefined) throw new RangeError(condition);
  const strength = value(strengthOf(grade(gradeText), t));
  return { thread: t, strength, condition: found, bearing: bearingOf('hexagon', t), preloadShare: 0.75, ...more };
}

/** A grade that is made in the thread. */
const anyGrade = (t: Thread): string => (t.system === 'metric' && t.diameterMm <= 39 ? 'A2-70' : 'ASTM A193 B7');

const bySymbol = (lines: readonly WorkingLine[]) => new Map(lines.map((l) => [printSymbol(l.symbol), l]));
const even = (x: number): Band => ({ low: x, nominal: x, high: x });

const anyJoint = fc
  .record({
    t: fc.constantFrom(...['M6', 'M10x1', 'M16', 'M30', '5/8-11', '1 1/2-8', '1/4-28'].map(thread)),
    condition: fc.constantFrom(...CONDITIONS.map((c) => c.id)),
    statedNm: fc.option(fc.double({ min: 5, max: 900, noNaN: true }), { nil: undefined }),
    prevailingNm: fc.constantFrom(0, 3, 12),
    adapter: fc.option(
      fc.record({
        lengthMm: fc.integer({ min: 20, max: 120 }),
        angleDeg: fc.integer({ min: 0, max: 180 }),
        leverMm: fc.integer({ min: 200, max: 700 }),
      }),
      { nil: undefined },
    ),
    ownFriction: fc.boolean(),
  })
  .map(({ t, condition, statedNm, prevailingNm, adapter, ownFriction }) =>
    input(t, t.system === 'metric' ? '8.8' : 'ASTM A193 B7', condition, {
      prevailingNm,
      ...(statedNm === undefined ? {} : { statedNm }),
      ...(adapter === undefined ? {} : { adapter }),
      ...(ownFriction
        ? {
            friction: {
              thread: { low: 0.09, nominal: 0.11, high: 0.13 },
              bearing: { low: 0.1, nominal: 0.12, high: 0.15 },
            },
          }
        : {}),
    }),
  );

describe('every line of any joint', () => {
  test('gives its printed result on a pocket calculator, to one part in a thousand', () => {
    fc.assert(
      fc.property(anyJoint, (joint) => {
        for (const line of computeTorque(joint).working) {
          const printed = printedNumber(line.result);
          // A small difference of two large printed numbers keeps their rounding: there the size of the parts counts.
          const parts = / − /u.test(line.text.withNumbers) ? workOut(line.text.withNumbers.replaceAll('−', '+')) : 0;
          const off = Math.abs(workOut(line.text.withNumbers) - printed);
          expect(off, `${line.name}: ${line.text.withNumbers} = ${line.result}`).toBeLessThanOrEqual(
            0.001 * Math.max(Math.abs(printed), Math.abs(parts)),
          );
        }
      }),
      { numRuns: 150 },
    );
  });

  test('in letters takes its numbers from the inputs and from lines above it, and gives its value', () => {
    fc.assert(
      fc.property(anyJoint, (joint) => {
        const r = computeTorque(joint);
        const known = inputsOf(joint, r);
        for (const line of r.working) {
          const found = workOut(line.text.formula, known);
          expect(Math.abs(found / line.value - 1), `${line.name}: ${line.text.formula}`).toBeLessThan(1e-9);
          known.set(printSymbol(line.symbol), line.value);
        }
      }),
      { numRuns: 100 },
    );
  });

  test('agrees with what was computed without it', () => {
    fc.assert(
      fc.property(anyJoint, (joint) => {
        const r = computeTorque(joint);
        const lines = bySymbol(r.working);
        for (const [symbol, wanted] of computed(joint, r)) {
          const line = lines.get(symbol);
          expect(line, symbol).toBeDefined();
          expect(line?.value ?? Number.NaN, symbol).toBeCloseTo(
            wanted,
            6 - Math.ceil(Math.log10(Math.abs(wanted) + 1)),
          );
        }
      }),
      { numRuns: 100 },
    );
  });
});

/** Numbers that the worksheet takes as given, by the letters under which it prints them. */
function inputsOf(joint: TorqueInput, r: TorqueResult): Map<string, number> {
  const { thread: t, strength, bearing, adapter } = joint;
  const band = (name: string, b: Band): [string, number][] => [
    [name, b.nominal],
    [name.length > 1 ? `${name[0]}_${name.slice(1)},low` : `${name}_low`, b.low],
    [name.length > 1 ? `${name[0]}_${name.slice(1)},high` : `${name}_high`, b.high],
  ];
  return new Map<string, number>([
    ['d', t.diameterMm],
    ...(t.tpi === undefined ? [['P', t.pitchMm] as const] : [['n', t.tpi] as const]),
    ['Re', strength.yieldMPa],
    ...(strength.proofMPa === undefined ? [] : [['Sp', strength.proofMPa] as const]),
    ['s', joint.preloadShare],
    ['dw', bearing.faceMm],
    ['dh', bearing.holeMm],
    ['T', r.targetNm],
    ['T_run', joint.prevailingNm ?? 0],
    ['e', r.wrenchDeviation],
    ...(adapter === undefined
      ? []
      : ([
          ['L', adapter.leverMm],
          ['E', adapter.lengthMm],
          ['φ', adapter.angleDeg],
        ] as const)),
    ...band('K', r.nutFactor),
    ...band('µG', r.friction.thread),
    ...band('µK', r.friction.bearing),
  ]);
}

function computed(joint: TorqueInput, r: TorqueResult): [string, number][] {
  return [
    ['d2', joint.thread.pitchDiameterMm],
    ['As', joint.thread.stressAreaMm2],
    ['F0', r.basisLoadN / 1000],
    ['F', r.askedPreloadN / 1000],
    ['T_short', r.shortForm.nominal],
    ['T_short,low', r.shortForm.low],
    ['T_short,high', r.shortForm.high],
    ['T_long', r.longForm.nominal],
    ['T_long,low', r.longForm.low],
    ['T_long,high', r.longForm.high],
    ['K_long', r.effectiveNutFactor],
    ...(r.statedPlace === undefined ? [] : [['r', r.statedPlace.ratio] as [string, number]]),
    ...(r.statedPlace?.position === undefined ? [] : [['x', 100 * r.statedPlace.position] as [string, number]]),
    ['T_set', r.settingNm],
    ['FT', r.preloadN.nominal / 1000],
    ['F_T,low', r.preloadN.low / 1000],
    ['F_T,high', r.preloadN.high / 1000],
    ['F_long', r.longPreloadN.nominal / 1000],
    ['F_long,low', r.longPreloadN.low / 1000],
    ['F_long,high', r.longPreloadN.high / 1000],
    ['sT', 100 * r.preloadShare.nominal],
    ['s_T,high', 100 * r.preloadShare.high],
    ['σ', r.tensionMPa],
    ['τ', r.torsionMPa],
    ['σ_red', r.equivalentMPa],
    ['u', 100 * r.yieldUse.nominal],
    ['τe', r.torsionElasticMPa],
    ['ue', 100 * r.yieldUseElastic],
    ['u_high', 100 * r.yieldUse.high],
    ...(r.scatter.alphaA === undefined
      ? []
      : ([
          ['αA', r.scatter.alphaA],
          ['δ', 100 * r.scatter.plusMinus],
        ] as [string, number][])),
  ];
}

describe('against values from outside', () => {
  // ISO 724 value lists and ISO 898-1:2013 Table 4/5, as read (tests/published/data/thread-metric.csv).
  for (const row of readData('thread-metric')) {
    test(`${row.text('designation')}: pitch and root diameter, stress area`, () => {
      const t = thread(row.text('designation'));
      const lines = bySymbol(computeTorque(input(t, anyGrade(t), 'oiled')).working);
      if (row.has('d2_pitch_mm')) expect(lines.get('d2')?.value).toBeCloseTo(row.number('d2_pitch_mm'), 2);
      if (row.has('d3_minor_external_mm'))
        expect(lines.get('d3')?.value).toBeCloseTo(row.number('d3_minor_external_mm'), 2);
      const area = row.number('As_mm2');
      expect(Math.abs((lines.get('As')?.value ?? 0) / area - 1)).toBeLessThan(0.005);
    });
  }

  // Shigley Table 8-2 (ANSI B1.1-1974); ASTM A574 areas (tests/published/data/thread-unified.csv): square inches.
  for (const row of readData('thread-unified')) {
    test(`${row.text('designation')}: stress area by the inch route`, () => {
      const t = thread(row.text('designation'));
      const lines = bySymbol(
        computeTorque(input(t, 'ASTM A193 B7', 'oiled', { bearing: bearingOf('socket', t) })).working,
      );
      const inches = (lines.get('As')?.value ?? 0) / 25.4 ** 2;
      expect(Math.abs(inches / row.number('At_in2') - 1)).toBeLessThan(0.008);
      expect(lines.has('d3')).toBe(false);
    });
  }

  test('Shigley 9th ed. Example 8-3: 25 kip on 3/4-16 UNF, grade 5: 3750 lbf·in at K 0.20, stress 67.02 kpsi', () => {
    const t = thread('3/4-16 UNF');
    const force = 25 * 4.4482216;
    const share = force / ((85 * 6.894757 * t.stressAreaMm2) / 1000);
    const oiled = input(t, 'SAE 5', 'dry', { preloadShare: share, nutFactor: even(0.2) });
    const lines = bySymbol(computeTorque(oiled).working);
    expect((lines.get('T_short')?.value ?? 0) / 0.1129848).toBeCloseTo(3750, 0);
    expect((lines.get('σ')?.value ?? 0) / 6.894757).toBeCloseTo(67.02, 0);
    expect(100 - (lines.get('sT')?.value ?? 0)).toBeCloseTo(21, 0);
  });

  test('TM 1-1500-204-23-9 paragraph 8: 300 lbf·in with a 4 in adapter on a 10 in wrench is set to 214', () => {
    const unit = 0.1129848;
    const t = thread('3/8-24 UNF');
    const adapter = { lengthMm: 4 * 25.4, angleDeg: 0, leverMm: 254 };
    const lines = bySymbol(computeTorque(input(t, 'SAE 5', 'oiled', { statedNm: 300 * unit, adapter })).working);
    expect((lines.get('T_set')?.value ?? 0) / unit).toBeCloseTo(214, 0);
  });

  // VDI 2230 Part 1 Table A1 (tests/published/data/vdi-2230-coarse.csv): at the printed torque the combined stress is
  // 90 % of Rp0.2 and the preload is the printed one.
  const rows = readData('vdi-2230-coarse').filter((r) => r.has('FM_kN') && r.has('MA_Nm') && r.number('MA_Nm') > 20);
  test('the table has rows to compare', () => expect(rows.length).toBeGreaterThan(40));
  for (const row of rows) {
    const mu = row.number('mu');
    test(`VDI 2230 ${row.text('thread')} ${row.text('class')} at friction ${mu}`, () => {
      const friction = { thread: even(mu), bearing: even(mu) };
      const t = thread(row.text('thread'));
      const joint = input(t, row.text('class'), 'oiled', { friction, statedNm: row.number('MA_Nm') });
      const lines = bySymbol(computeTorque(joint).working);
      expect(Math.abs((lines.get('F_long')?.value ?? 0) / row.number('FM_kN') - 1)).toBeLessThan(0.02);
      expect(Math.abs((lines.get('u')?.value ?? 0) / 90 - 1)).toBeLessThan(0.025);
    });
  }
});

describe('what the worksheet says', () => {
  test('a grade without proof stress rests on yield, and the line says so', () => {
    const lines = computeTorque(input(thread('5/8-11'), 'ASTM A193 B7', 'anti-seize')).working;
    const load = lines.find((l) => printSymbol(l.symbol) === 'F0');
    expect(load?.name).toMatch(/no proof stress/);
    expect(load?.text.formula).toBe('Re × As / 1000');
  });

  test('a run-down torque above what the wrench surely gives leaves no preload, and no ratio is made of it', () => {
    const joint = input(thread('M6'), '8.8', 'oiled', { statedNm: 1, prevailingNm: 60 });
    const lines = bySymbol(computeTorque(joint).working);
    expect(lines.get('F_T,low')?.result).toBe('0\u00a0kN');
    expect(lines.has('αA')).toBe(false);
  });

  test('all threads can be worked out, sections in order', () => {
    for (const t of [...METRIC_THREADS, ...UNIFIED_THREADS].filter((each) => each.diameterMm >= 1.6)) {
      const { working } = computeTorque(input(t, anyGrade(t), 'wax', { bearing: bearingOf('set screw', t) }));
      const places = working.map((l) => WORKING_SECTIONS.indexOf(l.section));
      expect(places).toEqual([...places].sort((a, b) => a - b));
      for (const line of working) {
        expect(Number.isFinite(line.value), line.name).toBe(true);
        expect(line.result.startsWith(figures(line.value)), line.name).toBe(true);
      }
    }
  });
});
