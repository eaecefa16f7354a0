/** Nuts: reading, refusing, loads, and the comparison with the bolt. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  driveOf,
  GRADES,
  METRIC_THREADS,
  NUT_GRADES,
  nutBearingOf,
  nutDriveOf,
  nutMatches,
  nutStrengthOf,
  nutWeaker,
  parseGrade,
  parseNut,
  parseThread,
  strengthOf,
  UNIFIED_THREADS,
} from '../../src/fasteners/index.ts';
import type { Parsed } from '../../src/units/index.ts';

function value<T>(parsed: Parsed<T>): T {
  if (!parsed.ok) throw new RangeError(`${parsed.problem}; ${parsed.hint}`);
  return parsed.value;
}

const thread = (text: string) => value(parseThread(text));
const ALL = [...METRIC_THREADS, ...UNIFIED_THREADS];

describe('parseNut', () => {
  test('reads back every printed name, with its standard where that is not part of it', () => {
    for (const n of NUT_GRADES) {
      const withStandard = n.id.startsWith('ASTM') || n.id.startsWith('SAE') ? n.id : `${n.standard} ${n.id}`;
      for (const text of [n.id, n.id.toLowerCase(), ` ${n.id} nut`, withStandard]) {
        expect(parseNut(text), text).toEqual({ ok: true, value: n });
      }
    }
  });

  test.each([
    ['class 10', '10'],
    ['property class 8', '8'],
    ['ISO 898-2 class 05', '05'],
    ['a4 80', 'A4-80'],
    ['grade 5', 'SAE 5'],
    ['SAE J995 Grade 8', 'SAE 8'],
    ['2H', 'ASTM A194 2H'],
    ['ASTM A194/A194M Gr. 2H heavy hex nut', 'ASTM A194 2H'],
    ['A194 8', 'ASTM A194 8'],
    ['8M', 'ASTM A194 8M'],
    ['DH', 'ASTM A563 DH'],
    ['F594C', 'ASTM F594 group 1 CW1'],
  ])('%s as %s', (text, id) => {
    expect(value(parseNut(text)).id).toBe(id);
  });

  test.each([
    ['10.9', /class of a bolt/, /`10` or above/],
    ['8,8', /class of a bolt/, /`8` or above/],
    ['4', /not a nut class/, /`04`/],
    ['7', /not a nut class/, /`ASTM A194 7`/],
    ['2', /not a nut class/, /`SAE 2`/],
    ['A2', /not a nut class/, /`A2-50`, `A2-70`/],
    ['F594 CW1', /not a nut class/, /group 1 CW1` and .*group 2 CW1/],
    ['11', /not a nut class/, /`10` or `12`/],
    ['', /not a nut class/, /known: ISO 898-2/],
    ['NaN', /not a nut class/, /./],
  ])('refuses %s', (text, problem, hint) => {
    const parsed = parseNut(text);
    if (parsed.ok) throw new RangeError(`${text} was read as ${parsed.value.id}`);
    expect(parsed.problem).toMatch(problem);
    expect(parsed.hint).toMatch(hint);
  });

  test('never throws', () => {
    fc.assert(fc.property(fc.string(), (text) => typeof parseNut(text).ok === 'boolean'));
  });
});

describe('nutStrengthOf', () => {
  test('the load is the stress on the stress area, and grows with the size within a class and pitch series', () => {
    for (const n of NUT_GRADES.filter((o) => o.standard === 'ISO 898-2')) {
      for (const series of ['coarse', 'fine']) {
        let last = 0;
        for (const t of METRIC_THREADS.filter((o) => o.series === series && o.pitchMm >= 0.5)) {
          const s = nutStrengthOf(n, t);
          if (!s.ok) continue;
          expect(s.value.proofLoadN).toBeCloseTo(s.value.proofMPa * t.stressAreaMm2, 6);
          if (series === 'coarse') expect(s.value.proofLoadN, `${n.id} ${t.designation}`).toBeGreaterThan(last);
          last = s.value.proofLoadN;
        }
      }
    }
  });

  test('every nut has sizes, a source and a heavy form that is no weaker', () => {
    for (const n of NUT_GRADES) {
      let given = 0;
      for (const t of ALL) {
        const [hex, heavy] = [nutStrengthOf(n, t, { heavy: false }), nutStrengthOf(n, t, { heavy: true })];
        if (hex.ok || heavy.ok) given++;
        if (hex.ok) expect(hex.value.source).not.toBe('');
        if (hex.ok && heavy.ok) expect(heavy.value.proofMPa).toBeGreaterThanOrEqual(hex.value.proofMPa);
      }
      expect(given, n.id).toBeGreaterThan(0);
    }
  });

  test('full classes rise in strength in every coarse size', () => {
    for (const t of METRIC_THREADS.filter((o) => o.series === 'coarse' && o.diameterMm >= 5 && o.diameterMm <= 39)) {
      const loads = ['04', '05', '5', '6', '8', '9', '10', '12'].map((c) => {
        return value(nutStrengthOf(value(parseNut(c)), t)).proofLoadN;
      });
      expect(loads, t.designation).toEqual(loads.toSorted((a, b) => a - b));
    }
  });

  test('without a word about its form, only the nut of ASTM A194 is heavy', () => {
    const mpa = (nut: string, heavy?: boolean) =>
      value(nutStrengthOf(value(parseNut(nut)), thread('3/4-10'), heavy === undefined ? {} : { heavy })).proofMPa;
    expect(mpa('2H')).toBe(mpa('2H', true));
    expect(mpa('2H')).toBeGreaterThan(mpa('2H', false));
    expect(mpa('DH')).toBe(mpa('DH', false));
  });

  test.each([
    ['8', 'M42', /not made in `M42`/, /M3 to M39/],
    ['8', 'M2', /not made/, /M3 to M39/],
    ['9', 'M10x1', /not made/, /coarse pitch/],
    ['12', 'M20x1.5', /not made/, /M8 to M16 with fine pitch/],
    ['SAE 2', '1/2-20', /not made/, /coarse pitch/],
    ['F594D', '1/2-13', /not made/, /3\/4 in to 1 1\/2 in/],
    ['A2-70', 'M42', /not made/, /to M39/],
    ['8', '1/2-13', /metric threads and `1\/2-13 UNC` is an inch/, /SAE 5/],
    ['SAE 5', 'M12', /inch threads and `M12` is a metric/, /`8`, `10`/],
  ])('refuses %s in %s with a hint', (nut, text, problem, hint) => {
    const s = nutStrengthOf(value(parseNut(nut)), thread(text));
    expect(s.ok ? 'given' : s.problem).toMatch(problem);
    expect(s.ok ? '' : s.hint).toMatch(hint);
  });
});

function compare(nutText: string, gradeText: string, threadText: string) {
  const nut = value(parseNut(nutText));
  const grade = value(parseGrade(gradeText));
  const t = thread(threadText);
  const nutStrength = value(nutStrengthOf(nut, t));
  return nutWeaker({ nut, nutStrength, grade, strength: value(strengthOf(grade, t)), thread: t });
}

describe('nut against bolt', () => {
  test.each([
    ['8', '8.8', 'M12', false, '8'],
    ['8', '10.9', 'M12', true, '10'],
    ['10', '12.9', 'M20', true, '12'],
    ['05', '4.6', 'M12', true, '5'],
    ['A2-70', 'A4-80', 'M12', true, 'A4-80'],
    ['A4-80', 'A2-70', 'M12', false, 'A2-70'],
    ['A2-035', 'A2-70', 'M12', true, 'A2-70'],
    ['SAE 5', 'SAE 8', '1/2-13', true, 'SAE 8'],
    ['SAE 8', 'SAE 5', '1/2-13', false, 'SAE 5'],
    ['DH3', 'SAE 8', '1/2-13', false, 'ASTM A563 DH'],
    ['A563 A', 'A449', '1/2-13', true, 'ASTM A563 C'],
    ['2H', 'B7', '3/4-10', false, 'ASTM A194 2H'],
    ['8M', 'B7', '3/4-10', true, 'ASTM A194 2H'],
    ['2HM', 'B7', '3/4-10', true, 'ASTM A194 2H'],
    ['2HM', 'B7M', '3/4-10', false, 'ASTM A194 2HM'],
    ['7', 'L7', '3/4-10', undefined, ''],
    ['8M', 'B8M class 1', '3/4-10', false, 'ASTM A194 8M'],
    ['F594D', 'F593H', '1-8', false, 'ASTM F594 group 2 CW2'],
    ['F594B', 'F593H', '1-8', true, 'ASTM F594 group 2 CW2'],
  ] as const)('%s on %s in %s', (nut, bolt, t, weaker, least) => {
    if (weaker === undefined) {
      expect(compare(`A194 ${nut}`, bolt, t)).toMatchObject({ weaker: false, least: 'ASTM A194 7' });
      return;
    }
    const found = compare(nut, bolt, t);
    expect({ weaker: found.weaker, least: found.least }).toEqual({ weaker, least });
    expect(found.sentence).toMatch(weaker ? /may strip/ : /suits/);
  });

  test('the loads flag an annealed nut on a strain-hardened stud, which the rule by grade lets pass', () => {
    const found = compare('8M', 'B8M class 2', '3/4-10');
    expect(nutMatches(value(parseNut('8M')), value(parseGrade('B8M class 2'))).weaker).toBe(false);
    expect(found).toMatchObject({ weaker: true, boltLoad: 'yield' });
    // 80 ksi under proof load against 95 ksi yield (ASTM A194 Table 3, ASTM A193 Table 2).
    expect(found.nutN / found.boltN).toBeCloseTo(80 / 95, 9);
    expect(found.sentence).toMatch(/carries less/);
  });

  test('the least nut of every rule is a known nut that the rule itself accepts', () => {
    let ruled = 0;
    for (const grade of GRADES) {
      for (const nut of NUT_GRADES) {
        const { least } = nutMatches(nut, grade);
        if (least === '') continue;
        ruled++;
        expect(nutMatches(value(parseNut(least)), grade), `${nut.id} on ${grade.id}`).toMatchObject({
          weaker: false,
          least,
        });
      }
    }
    expect(ruled).toBeGreaterThan(1000);
  });

  test('where no rule pairs the two standards, only the loads are compared, and the sentence says so', () => {
    expect(compare('8', 'A2-70', 'M12')).toMatchObject({ weaker: false, least: '' });
    expect(compare('8', 'A2-70', 'M12').sentence).toMatch(/no rule known here/);
    expect(compare('A194 8', 'A574', '1/2-13').weaker).toBe(true);
  });

  test('a nut that suits by rule carries the proof or yield load, in every size of ISO 898 and SAE', () => {
    const grades = ['4.6', '5.8', '6.8', '8.8', '9.8', '10.9', '12.9', 'SAE 2', 'SAE 5', 'SAE 8'];
    for (const grade of grades.map((g) => value(parseGrade(g)))) {
      for (const t of ALL) {
        const strength = strengthOf(grade, t);
        for (const nut of NUT_GRADES.filter((n) => ['ISO 898-2', 'SAE J995'].includes(n.standard))) {
          const nutStrength = nutStrengthOf(nut, t);
          if (!strength.ok || !nutStrength.ok || nutMatches(nut, grade).least === '') continue;
          const found = nutWeaker({ nut, nutStrength: nutStrength.value, grade, strength: strength.value, thread: t });
          expect(found.weaker, `${nut.id} on ${grade.id} in ${t.designation}`).toBe(nutMatches(nut, grade).weaker);
        }
      }
    }
  });
});

describe('wrench and face of the nut', () => {
  test('nut and head apart: 7/16 and 9/16 take different wrenches', () => {
    for (const [text, head, nut] of [
      ['7/16-14', 5 / 8, 11 / 16],
      ['9/16-12', 13 / 16, 7 / 8],
      ['5/8-11', 15 / 16, 15 / 16],
    ] as const) {
      expect(value(driveOf('hexagon', thread(text))).size.value).toBe(head);
      expect(value(nutDriveOf(thread(text))).size.value).toBe(nut);
    }
  });

  test('a heavy inch nut is 1/8 in larger than a regular one from 1/2 in, and heavy goes before DIN', () => {
    for (const t of UNIFIED_THREADS.filter((o) => o.series === 'UNC' && o.diameterMm >= 12.7 && o.diameterMm <= 38.1)) {
      const apart = value(nutDriveOf(t, { heavy: true })).size.value - value(nutDriveOf(t)).size.value;
      // ASME B18.2.2: 9/16 in has 15/16 against 7/8, the one size that differs by 1/16.
      expect(apart, t.designation).toBe(t.size === '9/16' ? 1 / 16 : 1 / 8);
    }
    expect(nutDriveOf(thread('M16'), { heavy: true, din: true })).toEqual(nutDriveOf(thread('M16'), { heavy: true }));
  });

  test('a stud has the wrench and the face of its nut', () => {
    const b7 = value(parseGrade('B7'));
    for (const text of ['M20', '3/4-10']) {
      const t = thread(text);
      expect(driveOf('stud', t)).toEqual(nutDriveOf(t));
      expect(driveOf('stud', t, b7)).toEqual(nutDriveOf(t, { heavy: true }));
    }
  });

  test('refuses a DIN nut on an inch thread and a size without a nut', () => {
    expect(nutDriveOf(thread('1/2-13'), { din: true })).toMatchObject({ ok: false, hint: 'choose another nut' });
    expect(nutDriveOf(thread('M100×6'))).toMatchObject({ ok: false });
  });

  test('every ring has an outside above its hole, for every thread and kind', () => {
    for (const t of ALL) {
      for (const kind of [{}, { din: true }, { heavy: true }]) {
        const b = nutBearingOf(t, kind);
        expect(b.faceMm, `${t.designation} ${JSON.stringify(kind)}`).toBeGreaterThan(b.holeMm);
        const drive = nutDriveOf(t, kind);
        if (drive.ok) expect(b.faceMm).toBeLessThan(drive.value.size.si * 1000 * 1.001);
      }
    }
  });
});
