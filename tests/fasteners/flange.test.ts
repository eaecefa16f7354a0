/** Named flanges: reading, refusing, and what holds for every one of them. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FLANGES, parseFlange, parseThread, sameBoltCircle } from '../../src/fasteners/index.ts';

describe('parseFlange', () => {
  test('reads back every printed designation', () => {
    for (const f of FLANGES) {
      for (const text of [f.designation, f.designation.toLowerCase(), ` ${f.designation} flange`]) {
        expect(parseFlange(text), text).toEqual({ ok: true, value: f });
      }
    }
  });

  test.each([
    ['DN100 PN16', 'EN 1092-1 DN 100 PN 16'],
    ['PN 16 DN 100', 'EN 1092-1 DN 100 PN 16'],
    ['DN 100/PN 16', 'EN 1092-1 DN 100 PN 16'],
    ['NPS 4 CL150', 'ASME B16.5 NPS 4 class 150'],
    ['4 in 150#', 'ASME B16.5 NPS 4 class 150'],
    ['4" 150 lb', 'ASME B16.5 NPS 4 class 150'],
    ['class 150 NPS 4', 'ASME B16.5 NPS 4 class 150'],
    ['1½″ 300#', 'ASME B16.5 NPS 1 1/2 class 300'],
    ['1-1/2 in class 600', 'ASME B16.5 NPS 1 1/2 class 600'],
    ['ANSI B16.5 8 in 600#', 'ASME B16.5 NPS 8 class 600'],
    ['NPS 24 class 1500', 'ASME B16.5 NPS 24 class 1500'],
  ])('%s as %s', (text, designation) => {
    const parsed = parseFlange(text);
    expect(parsed.ok ? parsed.value.designation : parsed.problem).toBe(designation);
  });

  test.each([
    ['DN 90 PN 16', /not listed for PN 16/, /`DN 80` and `DN 100`/],
    ['DN 100 PN 20', /pressure rating/, /`PN 16` and `PN 25`/],
    ['DN 700 PN 40', /not listed for PN 40/, /`DN 600`/],
    ['DN 0 PN 16', /not listed/, /`DN 10`/],
    ['NPS 4.5 class 150', /not listed for class 150/, /`NPS 4` and `NPS 5`/],
    ['NPS 1/0 class 150', /not listed/, /nearest/],
    ['NPS 4 class 400', /class that is not listed/, /`class 300`/],
    ['NPS 2 class 900', /not listed for class 900/, /`NPS 3`/],
    ['EN 1092-2 DN 100 PN 16', /standard that is not known/, /EN 1092-1/],
    ['4 150', /not the designation/, /write it like/],
    ['DN NaN PN 16', /not the designation/, /write it like/],
    ['', /not the designation/, /write it like/],
  ])('refuses %s', (text, problem, hint) => {
    const parsed = parseFlange(text);
    if (parsed.ok) throw new RangeError(`${text} was read as ${parsed.value.designation}`);
    expect(parsed.problem).toMatch(problem);
    expect(parsed.hint).toMatch(hint);
  });

  test('never throws and never invents a flange', () => {
    const known = new Set(FLANGES.map((f) => f.designation));
    const typed = fc.string({ unit: fc.constantFrom(...'DNPSCLAS 0123456/-#"½.'.split('')), maxLength: 16 });
    fc.assert(
      fc.property(typed, (text) => {
        const parsed = parseFlange(text);
        return !parsed.ok || known.has(parsed.value.designation);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('flanges as data', () => {
  test('designations are unique and every bolt is a standard thread that passes its hole', () => {
    expect(new Set(FLANGES.map((f) => f.designation)).size).toBe(FLANGES.length);
    for (const f of FLANGES) {
      const bolt = parseThread(f.thread);
      if (!bolt.ok) throw new RangeError(bolt.problem);
      expect(bolt.value.designation).toBe(f.thread);
      expect(f.boltHoleMm - bolt.value.diameterMm, f.designation).toBeGreaterThanOrEqual(1);
      expect(f.boltHoleMm / bolt.value.diameterMm, f.designation).toBeLessThan(1.26);
    }
  });

  test('counts divide by four, holes straddle both centre lines and leave metal between them', () => {
    for (const f of FLANGES) {
      expect(f.count % 4, f.designation).toBe(0);
      expect(f.firstDeg).toBe(360 / f.count / 2);
      const chord = f.boltCircleMm * Math.sin(Math.PI / f.count);
      expect(chord / f.boltHoleMm, f.designation).toBeGreaterThan(1.7);
      if (f.outsideMm !== undefined) expect(f.outsideMm - f.boltCircleMm).toBeGreaterThan(f.boltHoleMm);
    }
  });

  /** Within one rating, and at one size over the ratings, a flange never shrinks: a slip of a digit would show. */
  test('circles grow with the size, and with the rating', () => {
    const read = FLANGES.map((f) => {
      const [, size = '', rating = ''] = /(?:DN|NPS) ([\d /]+) (?:PN|class) (\d+)/.exec(f.designation) ?? [];
      const inch = size.split(' ').reduce((sum, s) => {
        const [top = '', bottom = '1'] = s.split('/');
        return sum + Number(top) / Number(bottom);
      }, 0);
      return { f, size: inch, rating: Number(rating) };
    });
    for (const a of read) {
      for (const b of read.filter((o) => o.f.standard === a.f.standard)) {
        const where = `${a.f.designation} and ${b.f.designation}`;
        if (a.rating === b.rating && a.size < b.size) expect(b.f.boltCircleMm, where).toBeGreaterThan(a.f.boltCircleMm);
        if (a.size === b.size && a.rating < b.rating) {
          expect(b.f.boltCircleMm, where).toBeGreaterThanOrEqual(a.f.boltCircleMm);
          if (a.f.outsideMm !== undefined) expect(b.f.outsideMm, where).toBeGreaterThanOrEqual(a.f.outsideMm);
        }
      }
    }
  });

  test('a circle is the same in inches and in the millimetres of the metric table, and no other', () => {
    for (const f of FLANGES) {
      expect(sameBoltCircle(f, f.boltCircleMm)).toBe(true);
      if (f.boltCircleMmPrinted !== undefined) {
        expect(sameBoltCircle(f, f.boltCircleMmPrinted)).toBe(true);
        expect(Math.abs(f.boltCircleMmPrinted - f.boltCircleMm), f.designation).toBeLessThan(0.2);
      }
      expect(sameBoltCircle(f, f.boltCircleMm + 0.5)).toBe(false);
      expect(sameBoltCircle(f, Number.NaN)).toBe(false);
    }
  });
});
