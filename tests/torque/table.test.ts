/** Torque tables: they hold when made, and a changed figure is noticed. */

import { describe, expect, test } from 'vitest';
import { GRADES, parseGrade, threadsOf } from '../../src/fasteners/index.ts';
import {
  CONDITIONS,
  checkAcrossClasses,
  checkTorqueTable,
  findCondition,
  type TorqueTable,
  torqueTable,
} from '../../src/torque/index.ts';
import { quantity } from '../../src/units/index.ts';

function table(series: string, gradeText: string, conditionId: string, share = 0.75): TorqueTable {
  const grade = parseGrade(gradeText);
  const condition = findCondition(conditionId);
  if (!grade.ok || condition === undefined) throw new RangeError(`${gradeText} ${conditionId}`);
  return torqueTable(threadsOf(series), grade.value, condition, share);
}

describe('torqueTable', () => {
  test('names itself, and says which threads the grade is not made in', () => {
    const t = table('coarse', '8.8', 'oiled');
    expect(t.id).toBe('8-8-coarse-oiled-75');
    expect(t.title).toBe('8.8, coarse, machine oil on thread and under head, 75 % of proof load');
    expect(t.rows[0]?.thread.designation).toBe('M1.6');
    expect(t.rows.at(-1)?.thread.designation).toBe('M39');
    expect(t.omitted.map((o) => o.designation)).toContain('M42');
  });
  test('says that it rests on yield where there is no proof stress', () => {
    expect(table('8UN', 'B7', 'anti-seize', 0.5).title).toMatch(/50 % of yield load$/);
  });
  test('every table of every grade holds, from M3 and 5/16 in up', () => {
    for (const grade of GRADES) {
      for (const condition of CONDITIONS) {
        for (const series of ['coarse', 'UNC', 'UNF', '8UN']) {
          const threads = threadsOf(series).filter((t) => t.diameterMm >= (series === 'coarse' ? 3 : 7.9));
          const made = torqueTable(threads, grade, condition, 0.7);
          expect(checkTorqueTable(made), made.id).toEqual([]);
        }
      }
    }
  });
  test('throws on a share that is not above zero', () => {
    expect(() => table('coarse', '8.8', 'oiled', 0)).toThrow(RangeError);
  });
});

describe('checkTorqueTable notices', () => {
  const good = table('coarse', '8.8', 'oiled');
  const index = good.rows.findIndex((r) => r.thread.designation === 'M16');
  const changed = (change: Partial<TorqueTable['rows'][number]>): readonly string[] =>
    checkTorqueTable({ ...good, rows: good.rows.map((row, i) => (i === index ? { ...row, ...change } : row)) });

  test.each([
    ['a slipped digit', { torqueNm: 1745 }, /does not follow/],
    ['a torque that does not rise', { torqueNm: 60 }, /does not rise/],
    ['a wrong preload', { preloadN: 50000 }, /preload is not/],
    ['a printed torque above the computed one', { printedNm: quantity('torque', 175, 'N·m') }, /above the computed/],
    ['a band of another condition', { bandNm: { low: 100, nominal: 174, high: 300 } }, /band does not follow/],
    [
      'a long form of other friction',
      { longFormNm: { low: 100, nominal: 300, high: 400 } },
      /long form does not follow/,
    ],
    ['a wrong second column', { printedLbfFt: quantity('torque', 182, 'lbf·ft') }, /unit columns differ/],
    ['a printed torque of another size', { printedNm: quantity('torque', 147, 'N·m') }, /printed torque/],
    ['lbf·ft that are not the N·m', { torqueLbfFt: 174 }, /not the same torque/],
  ] as const)('%s', (_, change, fault) => {
    expect(changed(change).join('; ')).toMatch(fault);
  });
});

describe('the printed columns', () => {
  test('three figures, cut off: M16 8.8 is 174.5 N·m and 128.7 lbf·ft, printed 174 and 128', () => {
    const row = table('coarse', '8.8', 'oiled').rows.find((r) => r.thread.designation === 'M16');
    expect([row?.printedNm.value, row?.printedLbfFt.value]).toEqual([174, 128]);
  });
  test('never above what is computed, and less than a hundredth below it', () => {
    for (const condition of CONDITIONS) {
      for (const row of table('coarse', '10.9', condition.id).rows) {
        const share = row.printedNm.value / row.torqueNm;
        expect(share).toBeLessThanOrEqual(1 + 1e-9);
        expect(share).toBeGreaterThan(0.99);
      }
    }
  });
});

describe('across classes', () => {
  const classes = ['8.8', '10.9', '12.9'].map((g) => table('coarse', g, 'oiled'));
  test('a stronger class asks for more, in every thread of every series, condition by condition', () => {
    for (const condition of CONDITIONS) {
      for (const series of ['coarse', 'fine', 'UNC', 'UNF', '8UN']) {
        const made = GRADES.map((g) => torqueTable(threadsOf(series), g, condition, 0.7));
        expect(checkAcrossClasses(made)).toEqual([]);
      }
    }
  });
  test('a cell that does not rise over the weaker class is named with both', () => {
    const low = quantity('torque', 200, 'N·m');
    const spoilt = classes.map((t) =>
      t.grade.id === '10.9'
        ? {
            ...t,
            rows: t.rows.map((r) => (r.thread.designation === 'M20' ? { ...r, torqueNm: 200, printedNm: low } : r)),
          }
        : t,
    );
    expect(checkAcrossClasses(classes)).toEqual([]);
    expect(checkAcrossClasses(spoilt)).toHaveLength(1);
    expect(checkAcrossClasses(spoilt)[0]).toMatch(/`M20`: 200\sN·m for `10.9` does not rise over .* for `8.8`/);
  });
  test('tables of other conditions, shares and bases are not compared', () => {
    const other = [table('coarse', '8.8', 'dry'), table('coarse', '10.9', 'moly'), table('coarse', 'A4-80', 'dry')];
    const [dry] = other;
    const less = table('coarse', '10.9', 'dry', 0.3);
    if (dry === undefined) throw new RangeError('no table');
    expect(checkAcrossClasses(other)).toEqual([]);
    expect(less.rows.some((r) => r.torqueNm < (dry.rows.find((d) => d.thread === r.thread)?.torqueNm ?? 0))).toBe(true);
    expect(checkAcrossClasses([dry, less])).toEqual([]);
  });
});
