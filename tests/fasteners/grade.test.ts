/** Grades: reading, refusing, and the strengths that change with size. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  GRADES,
  type Grade,
  METRIC_THREADS,
  parseGrade,
  parseThread,
  strengthOf,
  type Thread,
  UNIFIED_THREADS,
} from '../../src/fasteners/index.ts';

function thread(text: string): Thread {
  const parsed = parseThread(text);
  if (!parsed.ok) throw new RangeError(parsed.problem);
  return parsed.value;
}

function grade(text: string): Grade {
  const parsed = parseGrade(text);
  if (!parsed.ok) throw new RangeError(parsed.problem);
  return parsed.value;
}

describe('parseGrade', () => {
  test('reads back every printed name, with and without its standard', () => {
    for (const g of GRADES) {
      for (const text of [g.id, g.id.toLowerCase(), g.id.toUpperCase(), ` ${g.id} `])
        expect(grade(text), text).toEqual(g);
    }
  });

  test.each([
    ['class 8.8', '8.8'],
    ['8,8', '8.8'],
    ['ISO 898-1 10.9', '10.9'],
    ['property class 12.9', '12.9'],
    ['A4 80', 'A4-80'],
    ['a270', 'A2-70'],
    ['SAE J429 Grade 5', 'SAE 5'],
    ['SAE grade 8', 'SAE 8'],
    ['grade 5', 'SAE 5'],
    ['Gr. 8.2', 'SAE 8.2'],
    ['B7', 'ASTM A193 B7'],
    ['A193 Gr B7', 'ASTM A193 B7'],
    ['ASTM A193/A193M Grade B8M Class 2', 'ASTM A193 B8M class 2'],
    ['B8 Cl. 2', 'ASTM A193 B8 class 2'],
    ['L7', 'ASTM A320 L7'],
    ['A574', 'ASTM A574'],
    ['A449 type 1', 'ASTM A449'],
    ['F593C', 'ASTM F593 group 1 CW1'],
  ])('%s as %s', (text, id) => {
    expect(grade(text).id).toBe(id);
  });

  test.each([
    ['8.9', /`8\.8` or `9\.8`|`9\.8`|`8\.8`/],
    ['5', /did you mean `SAE 5`/],
    ['B8', /say which: .*class 1/],
    ['F593 CW1', /group 1 CW1` and .*group 2 CW1/],
    ['A2', /`A2-50`, `A2-70`/],
    ['ASTM A193 B9', /`ASTM A193 B7`|`ASTM A193 B5`|`ASTM A193 B6`/],
    ['chewing gum', /known: /],
    ['', /known: /],
  ])('refuses %s with a hint', (text, hint) => {
    const parsed = parseGrade(text);
    expect(parsed.ok ? 'read' : parsed.hint).toMatch(hint);
  });

  test('never throws', () => {
    fc.assert(fc.property(fc.string(), (text) => typeof parseGrade(text).ok === 'boolean'));
  });
});

describe('strengthOf', () => {
  const proof = (g: string, t: string) => {
    const s = strengthOf(grade(g), thread(t));
    return s.ok ? s.value.proofMPa : s.problem;
  };

  test('8.8 splits at 16 mm, 16 still with the smaller', () => {
    expect([proof('8.8', 'M16'), proof('8.8', 'M16×1.5'), proof('8.8', 'M17×1.5'), proof('8.8', 'M18')]).toEqual([
      580, 580, 600, 600,
    ]);
  });

  test.each([
    ['8.8', 'M42', /not made in/],
    ['9.8', 'M18', /not made in/],
    ['9.8', 'M1.4', /not made in/],
    ['F1-60', 'M27', /not made in/],
    ['A2-70', 'M42', /not made in/],
    ['ASTM A320 L7M', '2 3/4-4', /not made in/],
    ['ASTM A193 B8 class 2', '1 5/8-8', /not made in/],
    ['SAE 5.2', '1 1/8-7', /not made in/],
    ['SAE 5', '1 3/4-5', /not made in/],
    ['SAE 8', '#10-32', /not made in/],
    ['ASTM F593 group 1 CW1', '3/4-10', /not made in/],
    ['8.8', '5/8-11', /metric threads and `5\/8-11 UNC` is an inch/],
    ['SAE 5', 'M16', /inch threads and `M16` is a metric/],
  ])('refuses %s in %s', (g, t, problem) => {
    const s = strengthOf(grade(g), thread(t));
    expect(s.ok ? 'given' : s.problem).toMatch(problem);
    expect(s.ok ? '' : s.hint).not.toBe('');
  });

  test('12.9 carries the caution of its standard, and no other class does', () => {
    const cautions = GRADES.filter((g) => {
      const s = strengthOf(g, thread('M12'));
      return s.ok && s.value.caution !== undefined;
    });
    expect(cautions.map((g) => g.id)).toEqual(['12.9']);
  });

  test('limits are printed as the trade writes them', () => {
    const hint = (g: string, t: string) => {
      const s = strengthOf(grade(g), thread(t));
      return s.ok ? '' : s.hint;
    };
    expect(hint('SAE 8', '#10-32')).toMatch(/from 1\/4 in to 1 1\/2 in/);
    expect(hint('ASTM F593 group 1 CW1', '3/4-10')).toMatch(/from 1\/4 in to 5\/8 in/);
    expect(hint('8.8', 'M42')).toMatch(/from M1\.6 to M39/);
  });

  test('A449 goes on to 3 in where SAE 5 ends', () => {
    const s = strengthOf(grade('A449'), thread('2-4.5'));
    expect(s).toMatchObject({ ok: true, value: { source: 'ASTM A449 type 1' } });
  });

  test('every grade has sizes, and never more than one row for a size', () => {
    for (const g of GRADES) {
      const given = [...METRIC_THREADS, ...UNIFIED_THREADS].filter((t) => strengthOf(g, t).ok);
      expect(given.length, g.id).toBeGreaterThan(0);
    }
  });

  test('proof lies below yield, yield below tensile, in every grade and size', () => {
    for (const g of GRADES) {
      for (const t of [...METRIC_THREADS, ...UNIFIED_THREADS]) {
        const s = strengthOf(g, t);
        if (!s.ok) continue;
        expect(s.value.yieldMPa).toBeLessThan(s.value.tensileMPa);
        if (s.value.proofMPa !== undefined) expect(s.value.proofMPa).toBeLessThan(s.value.yieldMPa);
      }
    }
  });

  test('no proof stress where the standard has none', () => {
    for (const g of GRADES.filter((o) => ['ISO 3506-1', 'ASTM A193', 'ASTM A320', 'ASTM F593'].includes(o.standard))) {
      for (const t of [thread('M12'), thread('1/2-13')]) {
        const s = strengthOf(g, t);
        if (s.ok) expect(s.value).not.toHaveProperty('proofMPa');
      }
    }
  });
});
