/** Named flanges against EN 1092-1 and ASME B16.5, and the chord between neighbouring holes. */

import { describe, expect, test } from 'vitest';
import { type Flange, parseFlange, parseThread } from '../../src/fasteners/index.ts';
import { inches, printedSize, readData, thread, value } from './read-data.ts';

/** Chord by the law of cosines from two hole angles: another route than D sin(pi/n). */
function chordMm(flange: Flange, count: number): number {
  const r = flange.boltCircleMm / 2;
  return Math.sqrt(2 * r * r * (1 - Math.cos((2 * Math.PI) / count)));
}

describe('EN 1092-1', () => {
  for (const row of readData('flange-en-1092-1')) {
    const name = `DN ${row.text('dn')} PN ${row.text('pn')}`;
    test(`${name} (${row.text('source')})`, () => {
      const flange = value(parseFlange(`EN 1092-1 ${name}`));
      const counts = [flange.count, ...(flange.alternatives ?? []).map((a) => a.count)];
      expect(counts).toContain(row.number('bolts'));
      expect(flange.boltCircleMm).toBe(row.number('bolt_circle_mm'));
      expect(flange.outsideMm).toBe(row.number('outside_mm'));
      expect(flange.thread).toBe(thread(row.text('thread')).designation);
      expect(Math.abs(chordMm(flange, row.number('bolts')) - row.number('chord_mm_computed'))).toBeLessThanOrEqual(
        0.001,
      );
    });
  }

  for (const row of readData('flange-en-1092-1-read')) {
    const name = `DN ${row.text('dn')} PN ${row.text('pn')}`;
    test(`${name} with its bolt hole (${row.text('source')})`, () => {
      const flange = value(parseFlange(name));
      expect(flange.boltCircleMm).toBe(row.number('bolt_circle_mm'));
      expect([flange.count, flange.thread]).toEqual([row.number('bolts'), row.text('thread')]);
      if (row.has('outside_mm')) expect(flange.outsideMm).toBe(row.number('outside_mm'));
      if (row.has('hole_mm')) expect(flange.boltHoleMm).toBe(row.number('hole_mm'));
    });
  }

  test('DN 65 PN 16: 8 holes, 4 by agreement (EN 1092-1 note; ISO 7005-2 has 4)', () => {
    const flange = value(parseFlange('DN 65 PN 16'));
    expect(flange.count).toBe(8);
    expect(flange.alternatives).toMatchObject([{ count: 4, firstDeg: 45 }]);
    expect(value(parseFlange('DN 65 PN 40')).alternatives).toBeUndefined();
  });
});

describe('ASME B16.5', () => {
  for (const row of readData('flange-asme-b16-5')) {
    const name = `NPS ${printedSize(row.text('nps'))} class ${row.text('class')}`;
    test(`${name} (${row.text('source')})`, () => {
      const flange = value(parseFlange(`ASME B16.5 ${name}`));
      expect(flange.boltCircleIn).toBe(row.number('bolt_circle_in'));
      expect(flange.boltCircleMm).toBeCloseTo(row.number('bolt_circle_in') * 25.4, 9);
      if (row.has('bolt_circle_mm_printed')) {
        expect(flange.boltCircleMmPrinted).toBe(row.number('bolt_circle_mm_printed'));
      }
      expect(flange.count).toBe(row.number('bolts'));
      expect(value(parseThread(flange.thread)).size).toBe(printedSize(row.text('bolt_in')));
      expect(flange.boltHoleMm).toBeCloseTo(inches(row.text('hole_in')) * 25.4, 9);
      expect(Math.abs(chordMm(flange, flange.count) / 25.4 - row.number('chord_in_computed'))).toBeLessThanOrEqual(
        0.0001,
      );
    });
  }

  /** Inch decimals of these tables are rounded to two places: 0.63 is 5/8. */
  for (const row of readData('flange-asme-b16-5-high')) {
    const name = `NPS ${printedSize(row.text('nps'))} class ${row.text('class')}`;
    test(`${name}, decimal table (${row.text('source')})`, () => {
      const flange = value(parseFlange(name));
      expect([flange.boltCircleIn, flange.count]).toEqual([row.number('bolt_circle_in'), row.number('bolts')]);
      const boltIn = value(parseThread(flange.thread)).diameterMm / 25.4;
      if (row.has('bolt_in')) expect(Math.abs(boltIn - row.number('bolt_in'))).toBeLessThanOrEqual(0.0051);
      if (row.has('hole_in'))
        expect(Math.abs(flange.boltHoleMm / 25.4 - row.number('hole_in'))).toBeLessThanOrEqual(0.0051);
    });
  }
});
