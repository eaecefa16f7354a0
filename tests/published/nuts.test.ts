/** Proof loads, proof stresses, wrench sizes and bearing faces of nuts against ISO, SAE and ASTM tables. */

import { describe, expect, test } from 'vitest';
import { nutBearingOf, nutDriveOf, nutMatches, nutStrengthOf, parseNut } from '../../src/fasteners/index.ts';
import { grade, printedSize, readData, thread, value } from './read-data.ts';

const NEWTON_PER_LBF = 4.4482216152605;
const MPA_PER_KSI = 6.894757293168361;

/** Proof load, N, of a nut read from words, in a thread. */
function loadN(nut: string, threadText: string, heavy = false): number {
  return value(nutStrengthOf(value(parseNut(nut)), thread(threadText), { heavy })).proofLoadN;
}

/** The standard rounds the area to 3 figures, and the load to 50 N below 10 kN and to 100 N above. */
const SHARE = 0.007;
const ROUNDING_N = 30;

for (const [file, classes] of [
  ['nut-loads-coarse', ['04', '05', '5', '6', '8', '9', '10', '12']],
  ['nut-loads-fine', ['6', '8', '10']],
] as const) {
  describe(`ISO 898-2, ${file}`, () => {
    for (const row of readData(file)) {
      for (const nutClass of classes.filter((c) => row.has(c))) {
        test(`${row.text('thread')} class ${nutClass} (${row.text('source')})`, () => {
          const printed = row.number(nutClass);
          const apart = Math.abs(loadN(`class ${nutClass}`, row.text('thread')) - printed);
          expect(apart).toBeLessThanOrEqual(Math.max(SHARE * printed, ROUNDING_N));
        });
      }
    }
  });
}

describe('ASTM A194 grade 7, heavy hexagon and hexagon', () => {
  for (const row of readData('nut-loads-a194')) {
    test(`${row.text('thread')} (${row.text('source')})`, () => {
      for (const [column, heavy] of [
        ['heavy_lbf', true],
        ['hex_lbf', false],
      ] as const) {
        const lbf = loadN('ASTM A194 7', row.text('thread'), heavy) / NEWTON_PER_LBF;
        expect(Math.abs(lbf / row.number(column) - 1), column).toBeLessThanOrEqual(0.003);
      }
    });
  }
});

describe('SAE J995, ASTM A563 and F594: stress under proof load', () => {
  for (const row of readData('nut-stress-inch')) {
    test(`${row.text('nut')} ${row.text('thread')} (${row.text('source')})`, () => {
      for (const [column, heavy] of [
        ['hex_ksi', false],
        ['heavy_ksi', true],
      ] as const) {
        if (!row.has(column)) continue;
        const strength = value(nutStrengthOf(value(parseNut(row.text('nut'))), thread(row.text('thread')), { heavy }));
        expect(strength.proofMPa / MPA_PER_KSI).toBeCloseTo(row.number(column), 9);
      }
    });
  }
});

/** ISO 3506-2:2020 clause 5.2.3 and 5.2.4, worked examples of the designation: A2-70, C1-110, A4-040. */
test.each([
  ['A2-70', 700],
  ['C1-110', 1100],
  ['A4-040', 400],
])('ISO 3506-2: %s has %d MPa under proof load', (nut, proofMPa) => {
  expect(value(nutStrengthOf(value(parseNut(nut)), thread('M12'))).proofMPa).toBe(proofMPa);
});

/** Mating bolts by nut class, table of an ISO 898-2 data sheet. */
test.each([
  ['4.6', '5'],
  ['4.8', '5'],
  ['5.6', '5'],
  ['5.8', '5'],
  ['6.8', '6'],
  ['8.8', '8'],
  ['9.8', '9'],
  ['10.9', '10'],
  ['12.9', '12'],
])('ISO 898-2: the least nut for a bolt %s is %s, and the class below is weaker', (bolt, least) => {
  expect(nutMatches(value(parseNut(least)), grade(bolt))).toMatchObject({ weaker: false, least });
  const classes = ['05', '5', '6', '8', '9', '10', '12'];
  const below = classes[classes.indexOf(least) - 1] ?? '';
  expect(nutMatches(value(parseNut(below)), grade(bolt))).toMatchObject({ weaker: true, least });
});

describe('ISO 4032: width across flats and smallest bearing face', () => {
  for (const row of readData('nut-faces')) {
    test(`${row.text('size')} (${row.text('source')})`, () => {
      const t = thread(row.text('size'));
      expect(value(nutDriveOf(t)).size.value).toBe(row.number('s_max_mm'));
      expect(nutBearingOf(t).faceMm).toBe(row.number('dw_min_mm'));
    });
  }
});

/** ISO 4033 reprint, faces by width across flats: 17 mm 15.6, 19 mm 17.4, 22 mm 20.4; DIN 934 has these widths. */
test.each([
  ['M10', 17, 15.6],
  ['M12', 19, 17.4],
  ['M14', 22, 20.4],
])('DIN 934 %s: %d mm across flats, face %d mm', (size, width, face) => {
  expect(value(nutDriveOf(thread(size), { din: true })).size.value).toBe(width);
  expect(nutBearingOf(thread(size), { din: true }).faceMm).toBe(face);
});

const NUT_PRODUCTS = {
  hex_nut_iso: {},
  hex_nut_din: { din: true },
  hex_nut: {},
  heavy_hex_nut: { heavy: true },
} as const;

function isNut(product: string): product is keyof typeof NUT_PRODUCTS {
  return product in NUT_PRODUCTS;
}

describe('widths across flats of nuts, apart from heads', () => {
  for (const [file, size, width] of [
    ['across-flats-metric', 'size', 's_nom_mm'],
    ['across-flats-inch', 'size_in', 'F_basic_in'],
  ] as const) {
    for (const row of readData(file)) {
      const product = row.text('product');
      if (!isNut(product)) continue;
      test(`${row.text(size)} ${product} (${row.text('source')})`, () => {
        const text = printedSize(row.text(size));
        const t = thread(text.startsWith('M') ? text : `${text} UNC`);
        expect(value(nutDriveOf(t, NUT_PRODUCTS[product])).size.value).toBe(row.number(width));
      });
    }
  }
});
