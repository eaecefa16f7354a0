/** Threads: reading, printing, refusing, and areas by a second route. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { METRIC_THREADS, parseThread, threadsOf, UNIFIED_THREADS } from '../../src/fasteners/index.ts';

const ALL = [...METRIC_THREADS, ...UNIFIED_THREADS];

describe('parseThread', () => {
  test('reads back every designation and every way of typing it', () => {
    for (const t of ALL) {
      for (const text of [t.designation, t.designation.toLowerCase(), ` ${t.designation} `, ...t.searchTerms]) {
        const parsed = parseThread(text);
        expect(parsed.ok ? parsed.value.designation : parsed.problem, text).toBe(t.designation);
      }
    }
  });

  test.each([
    ['M16 × 1,5', 'M16×1.5'],
    ['m16X2.0', 'M16'],
    ['MF10x1.25', 'M10×1.25'],
    ['M16-6g', 'M16'],
    ['M12x1.25-6H', 'M12×1.25'],
    ['5/8-11', '5/8-11 UNC'],
    ['5/8 - 11 unc', '5/8-11 UNC'],
    ['5/8 UNC', '5/8-11 UNC'],
    ['5/8"-11', '5/8-11 UNC'],
    ['1/2-13 UNC-2A', '1/2-13 UNC'],
    ['1/4-20', '1/4-20 UNC'],
    ['10-32', '#10-32 UNF'],
    ['No. 10-32 UNF', '#10-32 UNF'],
    ['0.190-32', '#10-32 UNF'],
    ['1 1/8-8 UN', '1 1/8-8 8UN'],
    ['1-1/8-8', '1 1/8-8 8UN'],
    ['1½-6 UNC', '1 1/2-6 UNC'],
    ['2-4 1/2 UNC', '2-4.5 UNC'],
    ['1-8 8UN', '1-8 UNC'],
    ['1-14', '1-14 UNS'],
    ['1-8 UNRC', '1-8 UNC'],
    ['M 16 X 1.5 - 6g', 'M16×1.5'],
    ['M16x1.5-6H/6g', 'M16×1.5'],
    ['10-32 UNF', '#10-32 UNF'],
    ['1.125-8 UN', '1 1/8-8 8UN'],
    ['1⅛-8UN', '1 1/8-8 8UN'],
    ['5/8″-11', '5/8-11 UNC'],
    ['1/2 inch-13', '1/2-13 UNC'],
    ['UNC 5/8-11', '5/8-11 UNC'],
    ['UNC 5/8', '5/8-11 UNC'],
    ['12-28 UNF-2A', '#12-28 UNF'],
  ])('%s as %s', (text, designation) => {
    const parsed = parseThread(text);
    expect(parsed.ok ? parsed.value.designation : parsed.problem).toBe(designation);
  });

  test.each([
    ['M16x1.25', /not a standard pitch/, /: `M16×1\.5`, `M16×1` and `M16`/],
    ['M16x1.75', /not a standard pitch/, /: `M16`, `M16×1\.5`/],
    ['M16x3', /not a standard pitch/, /: `M16`, `M16×1\.5`/],
    ['M16xNaN', /not a metric thread/, /write it like/],
    ['M1e9', /not a metric thread/, /write it like/],
    ['M0.0001', /no standard diameter/, /`M1`/],
    ['#99-20', /no standard diameter/, /nearest/],
    ['5/8-1e3', /not a thread/, /write it like/],
    ['5/8-0', /not a standard thread/, /`5\/8-11 UNC`/],
    ['M16x60', /not a standard pitch/, /length does not belong/],
    ['M19', /no standard diameter/, /`M18` and `M20`/],
    ['M17', /no coarse thread/, /`M17×1\.5`/],
    ['M0', /no standard diameter/, /nearest/],
    ['M1600', /no standard diameter/, /`M100`/],
    ['MNaN', /not a metric thread/, /`M16x1\.5`/],
    ['M-16', /not a metric thread/, /write it like/],
    ['M16x0', /not a standard pitch/, /`M16`/],
    ['5/8-10', /not a standard thread/, /`5\/8-11 UNC`, `5\/8-18 UNF`/],
    ['5/8', /how many threads/, /`5\/8-11 UNC`/],
    ['1-14 UNF', /not a standard thread/, /`1-12 UNF`/],
    ['#10-30', /not a standard thread/, /: `#10-32 UNF` and `#10-24 UNC`/],
    ['99-4', /no standard diameter/, /`4`/],
    ['1/0-20', /no standard diameter/, /nearest/],
    ['0/8-20', /no standard diameter/, /nearest/],
    ['M16-LH', /left-hand/, /note/],
    ['', /not a thread/, /write it like/],
    ['Infinity', /not a thread/, /write it like/],
    ['16', /./, /./],
  ])('refuses %s', (text, problem, hint) => {
    const parsed = parseThread(text);
    if (parsed.ok) throw new RangeError(`${text} was read as ${parsed.value.designation}`);
    expect(parsed.problem).toMatch(problem);
    expect(parsed.hint).toMatch(hint);
  });

  /** A thread spelt at random: sign of multiplication, point or comma, blanks, dashes, capitals, tolerance class. */
  const spelling = fc
    .record({
      thread: fc.constantFrom(...ALL),
      times: fc.constantFrom('x', 'X', '×', ' x ', ' × ', ' X', '*'),
      comma: fc.boolean(),
      dash: fc.constantFrom('-', ' - ', '–', '—', '- ', '‑'),
      before: fc.constantFrom('', ' ', '  '),
      lower: fc.boolean(),
      tolerance: fc.boolean(),
      decimalSize: fc.boolean(),
    })
    .map(({ thread: t, times, comma, dash, before, lower, tolerance, decimalSize }) => {
      const point = (n: number) => (comma ? String(n).replace('.', ',') : String(n));
      const inch = (t.diameterMm / 25.4).toFixed(4);
      const metric = `${before}M${before}${point(t.diameterMm)}${times}${point(t.pitchMm)}${tolerance ? ' - 6g' : ''}`;
      const size = decimalSize ? inch : t.size;
      const gap = /^\d/.test(t.series) ? ' ' : before;
      const unified = `${before}${size}${dash}${t.tpi ?? 0}${gap}${t.series}${tolerance ? '-2A' : ''}`;
      const text = t.system === 'metric' ? metric : unified;
      return { text: lower ? text.toLowerCase() : text, thread: t };
    });

  test('a thread spelt at random is read back as itself, and printing what was read changes nothing', () => {
    fc.assert(
      fc.property(spelling, ({ text, thread }) => {
        const parsed = parseThread(text);
        if (!parsed.ok || parsed.value !== thread) return false;
        const again = parseThread(parsed.value.designation);
        return again.ok && again.value === thread;
      }),
      { numRuns: 2000 },
    );
  });

  test('a pitch that is not standard names the nearest standard one first', () => {
    const sizes = [...new Set(METRIC_THREADS.map((t) => t.diameterMm))];
    fc.assert(
      fc.property(fc.constantFrom(...sizes), fc.integer({ min: 1, max: 699 }), (diameter, hundredths) => {
        const pitch = hundredths / 100;
        const parsed = parseThread(`M${diameter}x${pitch}`);
        if (parsed.ok) return parsed.value.pitchMm === pitch;
        const first = parseThread(/`([^`]+)`/.exec(parsed.hint)?.[1] ?? '');
        const own = METRIC_THREADS.filter((t) => t.diameterMm === diameter);
        const least = Math.min(...own.map((t) => Math.abs(t.pitchMm - pitch)));
        return first.ok && Math.abs(first.value.pitchMm - pitch) <= least + 1e-9;
      }),
      { numRuns: 500 },
    );
  });

  test('never throws and never invents a thread', () => {
    const known = new Set(ALL.map((t) => t.designation));
    const typed = fc.string({ unit: fc.constantFrom(...'M#0123456789/-x×., UNCF"'.split('')), maxLength: 14 });
    fc.assert(
      fc.property(typed, (text) => {
        const parsed = parseThread(text);
        return !parsed.ok || known.has(parsed.value.designation);
      }),
      { numRuns: 3000 },
    );
  });
});

describe('threads as data', () => {
  test('designations are unique, and each lies in its own series', () => {
    expect(new Set(ALL.map((t) => t.designation)).size).toBe(ALL.length);
    for (const t of ALL) expect(threadsOf(t.series)).toContain(t);
  });

  test('diameters fall from nominal to root, and the areas with them', () => {
    for (const t of ALL) {
      expect(t.diameterMm).toBeGreaterThan(t.pitchDiameterMm);
      expect(t.pitchDiameterMm).toBeGreaterThan(t.internalMinorMm);
      expect(t.internalMinorMm).toBeGreaterThan(t.minorDiameterMm);
      expect(t.stressAreaMm2, t.designation).toBeGreaterThan(t.rootAreaMm2);
    }
  });

  test('the stress area lies between the root area and the area at the pitch diameter', () => {
    for (const t of ALL) {
      expect(t.stressAreaMm2, t.designation).toBeGreaterThan(t.rootAreaMm2);
      expect(t.stressAreaMm2, t.designation).toBeLessThan((Math.PI / 4) * t.pitchDiameterMm ** 2);
    }
  });

  test('the unified stress area by the route of ISO 898-1 is larger by at most 2.2 %: ASME B1.1 takes a deeper root', () => {
    for (const t of UNIFIED_THREADS) {
      const mean = (t.pitchDiameterMm + t.minorDiameterMm) / 2;
      const share = ((Math.PI / 4) * mean ** 2) / t.stressAreaMm2 - 1;
      expect(share, t.designation).toBeGreaterThan(0);
      expect(share, t.designation).toBeLessThan(0.022);
    }
  });

  test('the profile follows from the 60 degree triangle: H = P cos 30, d2 at 3/4 H, d3 at 17/12 H, D1 at 5/4 H', () => {
    for (const t of ALL) {
      const H = t.pitchMm * Math.cos(Math.PI / 6);
      expect(t.diameterMm - t.pitchDiameterMm).toBeCloseTo((3 / 4) * H, 4);
      expect(t.diameterMm - t.minorDiameterMm).toBeCloseTo((17 / 12) * H, 4);
      expect(t.diameterMm - t.internalMinorMm).toBeCloseTo((5 / 4) * H, 4);
    }
  });

  test('metric stress area by the short formula of ISO 898-1: pi/4 (d - 0.9382 P)²', () => {
    for (const t of METRIC_THREADS) {
      expect(t.stressAreaMm2 / ((Math.PI / 4) * (t.diameterMm - 0.9382 * t.pitchMm) ** 2)).toBeCloseTo(1, 4);
    }
  });

  test('a finer pitch of one diameter has the larger area', () => {
    for (const a of ALL) {
      for (const b of ALL.filter((o) => o.system === a.system && o.size === a.size && o.pitchMm < a.pitchMm)) {
        expect(b.stressAreaMm2).toBeGreaterThan(a.stressAreaMm2);
      }
    }
  });

  test('is plain data: JSON gives it back', () => {
    expect(JSON.parse(JSON.stringify(ALL))).toEqual(ALL);
  });
});
