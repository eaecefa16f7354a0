/** Chords, flange drillings and hole coordinates against handbook factors, ASME B16.5, EN 1092-1 and TEMA. */

import { describe, expect, test } from 'vitest';
import {
  acrossMm,
  checkPattern,
  chordMm,
  minimumSpacing,
  neighbourChordMm,
  type Pattern,
  patternHoles,
} from '../../src/geometry/index.ts';
import { inches, readData, thread } from './read-data.ts';

const circle = (diameterMm: number, count: number, firstDeg = 180 / count): Pattern => ({
  kind: 'circle',
  diameterMm,
  count,
  firstDeg,
});

describe('handbook chords of a circle of diameter 1', () => {
  for (const row of readData('chord-factors')) {
    const n = row.number('n');
    test(`${n} holes (${row.text('source')})`, () => {
      expect(Math.abs(chordMm(1, n) - row.number('chord_over_diameter'))).toBeLessThanOrEqual(1e-7);
      const [a, b] = patternHoles(circle(1, n));
      const dot = 4 * ((a?.xMm ?? 0) * (b?.xMm ?? 0) + (a?.yMm ?? 0) * (b?.yMm ?? 0));
      expect((Math.acos(dot) * 180) / Math.PI).toBeCloseTo(row.number('pitch_deg'), 5);
    });
  }
});

describe('ASME B16.5 flanges', () => {
  for (const row of readData('flange-asme-b16-5')) {
    test(`Class ${row.text('class')} NPS ${row.text('nps')} (${row.text('source')})`, () => {
      const D = row.number('bolt_circle_in');
      const n = row.number('bolts');
      expect(n % 4).toBe(0);
      expect(Math.abs(neighbourChordMm(circle(D, n)) - row.number('chord_in_computed'))).toBeLessThanOrEqual(0.0001);
      const hole = inches(row.text('hole_in')) * 25.4;
      expect(checkPattern(circle(D * 25.4, n), hole)).toEqual([]);
      expect(hole).toBeGreaterThan(inches(row.text('bolt_in')) * 25.4);
    });
  }
});

describe('EN 1092-1 flanges', () => {
  for (const row of readData('flange-en-1092-1')) {
    test(`PN ${row.text('pn')} DN ${row.text('dn')} (${row.text('source')})`, () => {
      const p = circle(row.number('bolt_circle_mm'), row.number('bolts'));
      expect(Math.abs(neighbourChordMm(p) - row.number('chord_mm_computed'))).toBeLessThanOrEqual(0.001);
      expect(checkPattern(p, 1.1 * thread(row.text('thread')).diameterMm)).toEqual([]);
      expect(row.number('bolt_circle_mm')).toBeLessThan(row.number('outside_mm'));
      // Even counts have an opposite hole: across is the bolt circle itself.
      expect(acrossMm(p)).toBeCloseTo(row.number('bolt_circle_mm'), 9);
    });
  }
});

describe("hole coordinates, clockwise from 12 o'clock, x right, y up", () => {
  test.each([
    ['EN 1092-1 DN 150 PN 16', 8, 240, 22.5, [45.922, 110.866], [110.866, 45.922], [-45.922, 110.866], 91.844],
    ['ASME B16.5 NPS 6 Class 300, inches', 12, 10.62, 15, [1.374, 5.129], [3.755, 3.755], [-1.374, 5.129], 2.749],
    ['five on 100, computed', 5, 100, 0, [0, 50], [47.553, 15.451], [-47.553, 15.451], 58.779],
  ])('%s', (_, n, D, firstDeg, first, second, last, chord) => {
    const p = circle(D, n, firstDeg);
    const holes = patternHoles(p);
    const expected = [
      [0, first],
      [1, second],
      [n - 1, last],
    ] as const;
    for (const [i, [x = 0, y = 0]] of expected) {
      expect(Math.abs((holes[i]?.xMm ?? 99) - x)).toBeLessThanOrEqual(0.001);
      expect(Math.abs((holes[i]?.yMm ?? 99) - y)).toBeLessThanOrEqual(0.001);
    }
    expect(Math.abs(neighbourChordMm(p) - chord)).toBeLessThanOrEqual(0.001);
    expect(holes.reduce((s, h) => s + h.xMm, 0)).toBeCloseTo(0, 9);
    expect(holes.reduce((s, h) => s + h.yMm, 0)).toBeCloseTo(0, 9);
  });
});

describe('TEMA Table D-5: smallest spacing, to the hub, to the edge', () => {
  for (const row of readData('bolt-spacing')) {
    test(`${row.text('bolt_in')} in (${row.text('source')})`, () => {
      const found = minimumSpacing(inches(row.text('bolt_in')));
      expect(found?.boltIn).toBe(row.text('bolt_in'));
      expect(found?.spacingIn).toBe(row.number('min_spacing_in'));
      expect(found?.radialIn).toBe(row.number('min_radial_to_hub_in'));
      expect(found?.edgeIn).toBe(row.number('min_edge_in'));
    });
  }
  for (const row of readData('flange-asme-b16-5')) {
    test(`Class ${row.text('class')} NPS ${row.text('nps')} is no closer: ASME B16.5 against TEMA`, () => {
      const least = minimumSpacing(inches(row.text('bolt_in')))?.spacingIn ?? Number.NaN;
      expect(neighbourChordMm(circle(row.number('bolt_circle_in'), row.number('bolts')))).toBeGreaterThanOrEqual(least);
    });
  }
  test('NPS 2 Class 300: chord 1.9134 in, 1.5 in asked for', () => {
    expect(neighbourChordMm(circle(5, 8))).toBeCloseTo(1.9134, 3);
    expect(minimumSpacing(0.625)?.spacingIn).toBe(1.5);
  });
  test('every column rises with the size, and leaves room for the heavy nut (ASME B18.2.2: 1 1/2 d + 1/8 in across flats)', () => {
    const sizes = [
      0.5, 0.625, 0.75, 0.875, 1, 1.125, 1.25, 1.375, 1.5, 1.625, 1.75, 1.875, 2, 2.25, 2.5, 2.75, 3, 3.25, 3.5, 3.75,
      4,
    ];
    const rows = sizes.map((d) => minimumSpacing(d));
    for (const [i, row] of rows.entries()) {
      const [d = 0, before] = [sizes[i], rows[i - 1]];
      const flats = 1.5 * d + 0.125;
      expect(inches(row?.boltIn ?? '')).toBe(d);
      expect(row?.spacingIn).toBeGreaterThan(flats);
      expect(row?.edgeIn).toBeGreaterThan(flats / 2);
      if (before === undefined) continue;
      expect(row?.spacingIn).toBeGreaterThan(before.spacingIn);
      expect(row?.radialIn).toBeGreaterThan(before.radialIn);
      expect(row?.edgeIn).toBeGreaterThan(before.edgeIn);
    }
  });
  test('a metric bolt takes the next larger inch bolt; beyond the table there is no row', () => {
    expect(minimumSpacing(16 / 25.4)?.boltIn).toBe('3/4');
    expect(minimumSpacing(24 / 25.4)?.boltIn).toBe('1');
    expect(minimumSpacing(15.875 / 25.4)?.boltIn).toBe('5/8');
    for (const none of [0.25, 0, -1, 4.5, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(minimumSpacing(none)).toBeUndefined();
    }
  });
});
