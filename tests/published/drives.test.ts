/** Wrench and key sizes, bearing faces and clearance holes against the head and nut standards. */

import { describe, expect, test } from 'vitest';
import {
  type Bearing,
  bearingOf,
  driveOf,
  type Grade,
  type Head,
  METRIC_THREADS,
  UNIFIED_THREADS,
} from '../../src/fasteners/index.ts';
import { grade, printedSize, readData, value } from './read-data.ts';

/** Product of the tables to head, with the grade that decides the nut. */
const HEAD_OF: Readonly<Record<string, readonly [Head, string?]>> = {
  hex_bolt_iso: ['hexagon'],
  hex_bolt_din: ['hexagon DIN'],
  hex_nut_iso: ['stud'],
  hex_nut_din: ['hexagon DIN'],
  hv_structural_bolt: ['heavy hexagon'],
  hex_flange_bolt_small: ['hexagon flange'],
  hex_flange_bolt_heavy: ['hexagon flange heavy'],
  hex_cap_screw: ['hexagon'],
  heavy_hex_bolt: ['heavy hexagon'],
  hex_nut: ['stud'],
  heavy_hex_nut: ['stud', 'ASTM A193 B7'],
  socket_head_cap: ['socket'],
  button_head: ['button'],
  countersunk_socket: ['countersunk socket'],
  set_screw: ['set screw'],
};

function ofSize(size: string) {
  const found = [...METRIC_THREADS, ...UNIFIED_THREADS].find((t) => t.size === printedSize(size));
  if (found === undefined) throw new RangeError(`no thread of size ${size}`);
  return found;
}

function headOf(product: string): { head: Head; nutGrade: Grade | undefined } {
  const [head, name] = HEAD_OF[product] ?? ['hexagon'];
  return { head, nutGrade: name === undefined ? undefined : grade(name) };
}

describe('across flats, metric', () => {
  for (const row of readData('across-flats-metric')) {
    test(`${row.text('size')} ${row.text('product')} (${row.text('source')})`, () => {
      const t = ofSize(row.text('size'));
      const { head, nutGrade } = headOf(row.text('product'));
      const drive = value(driveOf(head, t, nutGrade));
      expect(drive.kind).toBe('across flats');
      expect([drive.size.value, drive.size.unit]).toEqual([row.number('s_nom_mm'), 'mm']);
      if (row.has('dw_min_mm')) {
        const bearing: Bearing = bearingOf(head, t);
        expect(bearing.faceMm).toBe(row.number('dw_min_mm'));
      }
    });
  }
});

describe('across flats, inch', () => {
  for (const row of readData('across-flats-inch')) {
    test(`${row.text('size_in')} ${row.text('product')} (${row.text('source')})`, () => {
      const { head, nutGrade } = headOf(row.text('product'));
      const drive = value(driveOf(head, ofSize(row.text('size_in')), nutGrade));
      expect(drive.size.value).toBe(row.number('F_basic_in'));
      expect(drive.size.fraction ?? String(drive.size.value)).toBe(printedSize(row.text('F_basic_frac')));
    });
  }
});

describe('keys', () => {
  for (const row of readData('keys-metric')) {
    test(`${row.text('size')} ${row.text('product')} (${row.text('source')})`, () => {
      const t = ofSize(row.text('size'));
      const { head } = headOf(row.text('product'));
      const drive = value(driveOf(head, t));
      expect([drive.kind, drive.size.value]).toEqual(['key', row.number('key_mm')]);
      if (row.has('dw_min_mm')) expect(bearingOf(head, t).faceMm).toBe(row.number('dw_min_mm'));
    });
  }
  for (const row of readData('keys-inch')) {
    test(`${row.text('size')} ${row.text('product')} (${row.text('source')})`, () => {
      const drive = value(driveOf(headOf(row.text('product')).head, ofSize(row.text('size'))));
      expect(drive.kind).toBe('key');
      expect(Math.abs(drive.size.value - row.number('key_in'))).toBeLessThanOrEqual(0.00006);
    });
  }
});

/** VDI 2230 Part 1: washer faces of ISO 4014 and medium holes of ISO 273 with which Table A1 was computed. */
const VDI_FACES = [
  5.88, 6.88, 8.88, 11.63, 14.63, 16.63, 19.64, 22.49, 25.34, 28.19, 31.71, 33.61, 38, 42.75, 46.55, 51.11, 55.86,
];
const VDI_HOLES = [4.5, 5.5, 6.6, 9, 11, 13.5, 15.5, 17.5, 20, 22, 24, 26, 30, 33, 36, 39, 42];
const VDI_SIZES = [4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39];

test.each(VDI_SIZES.map((d, i) => [d, VDI_FACES[i], VDI_HOLES[i]]))(
  'M%d: dw %d (ISO 4014), dh %d (ISO 273 medium)',
  (d, face, hole) => {
    const bearing = bearingOf('hexagon', ofSize(`M${d}`));
    expect([bearing.faceMm, bearing.holeMm]).toEqual([face, hole]);
  },
);
