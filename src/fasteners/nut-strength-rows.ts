/** Stresses under proof load of nuts, by class, pitch series and size. */

import { FULL_NUT_CLASSES, STAINLESS_NUTS } from './nut-grade.ts';
import type { Sizes } from './strength-row.ts';
import type { Thread } from './thread.ts';

/** One row: a nut, the sizes, pitch series and form for which it holds, and its stress under proof load. */
export interface NutRow extends Sizes {
  readonly nut: string;
  readonly system: Thread['system'];
  /** Absent: both. Coarse is also UNC and 8UN, fine UNF, UNEF and 12UN and finer. */
  readonly series?: 'coarse' | 'fine';
  /** Absent: both hexagon and heavy hexagon. */
  readonly heavy?: boolean;
  /** MPa or ksi by `system`. */
  readonly proof: number;
  readonly source: string;
}

const ISO = 'ISO 898-2, as reprinted from DIN EN 20898-2';
const ISO_MEMORY = 'ISO 898-2:2012 (memory)';
/** The 2012 edition begins at M5; M3 to M4 stand in the edition before. */
const ISO_SMALL = 'ISO 898-2:1992, as reprinted from DIN EN 20898-2';

/** Sizes of the coarse rows: M3 to M4, to M7, M10, M16, M39. */
const COARSE_SIZES: readonly Sizes[] = [
  { from: 3, to: 4 },
  { over: 4, to: 7 },
  { over: 7, to: 10 },
  { over: 10, to: 16 },
  { over: 16, to: 39 },
];

/**
 * MPa by those sizes. Classes 5, 6, 8 and 10 are style 1; 9 and 12 are style 2, and style 1 of class 12 has up to 2 %
 * less. Class 8 above M16 is the hardened style 1 (the unhardened style 2 has 890). 9 memory; thin nuts take 380 and
 * 500 in every size.
 */
const COARSE: Readonly<Record<string, readonly number[]>> = {
  '04': [380, 380, 380, 380, 380],
  '05': [500, 500, 500, 500, 500],
  5: [520, 580, 590, 610, 630],
  6: [600, 670, 680, 700, 720],
  8: [800, 855, 870, 880, 920],
  9: [900, 915, 940, 950, 920],
  10: [1040, 1040, 1040, 1050, 1060],
  12: [1150, 1150, 1160, 1190, 1200],
};

/** Fine pitches, M8×1 and up (over 0 stands for from M8), style 1 (12: style 2): memory. No class 9. */
const FINE: Readonly<Record<string, readonly (readonly [over: number, to: number, proof: number])[]>> = {
  '04': [[0, 39, 380]],
  '05': [[0, 39, 500]],
  5: [
    [0, 16, 690],
    [16, 39, 720],
  ],
  6: [
    [0, 10, 770],
    [10, 16, 780],
    [16, 33, 870],
    [33, 39, 930],
  ],
  8: [
    [0, 16, 955],
    [16, 33, 1030],
    [33, 39, 1090],
  ],
  10: [
    [0, 10, 1100],
    [10, 16, 1110],
    [16, 39, 1080],
  ],
  12: [[0, 16, 1200]],
};

const metricIso: readonly NutRow[] = ['04', '05', ...FULL_NUT_CLASSES].flatMap((nut) => [
  ...(COARSE[nut] ?? []).map((proof, i): NutRow => {
    const source = i === 0 ? ISO_SMALL : ['04', '05', '9'].includes(nut) ? ISO_MEMORY : ISO;
    return { nut, system: 'metric', series: 'coarse', ...COARSE_SIZES[i], proof, source };
  }),
  ...(FINE[nut] ?? []).map(([over, to, proof]): NutRow => {
    const sizes = over === 0 ? { from: 8, to } : { over, to };
    return { nut, system: 'metric', series: 'fine', ...sizes, proof, source: ISO_MEMORY };
  }),
]);

/**
 * ISO 3506-2: the class is a tenth of the stress, also of thin nuts (`040` is 400 MPa). Ferritic nuts to M24 (memory).
 */
const metricStainless: readonly NutRow[] = STAINLESS_NUTS.map((nut) => ({
  nut,
  system: 'metric',
  from: 1.6,
  to: nut.startsWith('F') ? 24 : 39,
  proof: Number(nut.split('-')[1]) * 10,
  source: 'ISO 3506-2, class × 10',
}));

const J995 = 'SAE J995 Table 2';
const INCH: Sizes = { from: 0.25, to: 1.5 };
const TO_INCH: Sizes = { from: 0.25, to: 1 };
const OVER_INCH: Sizes = { over: 1, to: 1.5 };

function inch(
  nut: string,
  sizes: Sizes,
  proof: number,
  source: string,
  rest: Pick<NutRow, 'series' | 'heavy'> = {},
): NutRow {
  return { nut, system: 'unified', ...sizes, ...rest, proof, source };
}

const J995_ROWS: readonly NutRow[] = [
  inch('SAE 2', INCH, 90, J995, { series: 'coarse' }),
  inch('SAE 5', TO_INCH, 120, J995, { series: 'coarse' }),
  inch('SAE 5', TO_INCH, 109, J995, { series: 'fine' }),
  inch('SAE 5', OVER_INCH, 105, J995, { series: 'coarse' }),
  inch('SAE 5', OVER_INCH, 94, J995, { series: 'fine' }),
  inch('SAE 8', INCH, 150, J995),
];

/**
 * ASTM A194/A194M: stress by heavy hexagon and hexagon, ksi and MPa. 2H, 4 and 7 as printed for grade 7; the rest
 * memory.
 */
const A194: Readonly<Record<string, 'strong' | 'middle' | 'austenitic'>> = {
  '2H': 'strong',
  3: 'strong',
  4: 'strong',
  7: 'strong',
  '2HM': 'middle',
  '7M': 'middle',
  6: 'middle',
  8: 'austenitic',
  '8C': 'austenitic',
  '8M': 'austenitic',
  '8T': 'austenitic',
};
const A194_STRESS = {
  strong: { ksi: [175, 150], mpa: [1205, 1035] },
  middle: { ksi: [150, 135], mpa: [1035, 930] },
  austenitic: { ksi: [80, 75], mpa: [550, 515] },
} as const;

const A194_ROWS: readonly NutRow[] = Object.entries(A194).flatMap(([grade, kind]) => {
  const { ksi, mpa } = A194_STRESS[kind];
  const nut = `ASTM A194 ${grade}`;
  const source = grade === '7' ? 'ASTM A194 Table 3' : 'ASTM A194 Table 3 (memory)';
  return [true, false].flatMap((heavy): readonly NutRow[] => [
    inch(nut, { from: 0.25, to: 4 }, ksi[heavy ? 0 : 1], source, { heavy }),
    {
      nut,
      system: 'metric',
      from: 6,
      to: 100,
      heavy,
      proof: mpa[heavy ? 0 : 1],
      source: 'ASTM A194M Table 4 (memory)',
    },
  ]);
});

const A563 = 'ASTM A563 Table 3, plain finish';
const A563_MEMORY = 'ASTM A563 Table 4, plain finish (memory)';
const HEAVY_INCH: Sizes = { from: 0.25, to: 4 };

const A563_ROWS: readonly NutRow[] = [
  inch('ASTM A563 A', INCH, 90, A563, { series: 'coarse', heavy: false }),
  inch('ASTM A563 A', HEAVY_INCH, 100, A563, { series: 'coarse', heavy: true }),
  inch('ASTM A563 A', INCH, 80, A563_MEMORY, { series: 'fine', heavy: false }),
  inch('ASTM A563 A', HEAVY_INCH, 90, A563_MEMORY, { series: 'fine', heavy: true }),
  ...['C', 'C3'].flatMap((g) => [
    inch(`ASTM A563 ${g}`, INCH, 144, `${A563} (memory)`, { series: 'coarse', heavy: false }),
    inch(`ASTM A563 ${g}`, HEAVY_INCH, 144, A563, { series: 'coarse', heavy: true }),
  ]),
  ...['DH', 'DH3'].flatMap((g) => [
    inch(`ASTM A563 ${g}`, INCH, 150, `${A563} (memory)`, { series: 'coarse', heavy: false }),
    inch(`ASTM A563 ${g}`, HEAVY_INCH, 175, A563, { series: 'coarse', heavy: true }),
    inch(`ASTM A563 ${g}`, INCH, 150, A563_MEMORY, { series: 'fine', heavy: false }),
    inch(`ASTM A563 ${g}`, HEAVY_INCH, 175, A563_MEMORY, { series: 'fine', heavy: true }),
  ]),
];

/** ASTM F594, alloy groups 1 and 2: hexagon, heavy hexagon. */
const F594: readonly (readonly [condition: string, sizes: Sizes, hex: number, heavy: number])[] = [
  ['AF', INCH, 70, 76],
  ['A', INCH, 75, 81],
  ['CW1', { from: 0.25, to: 0.625 }, 100, 108],
  ['CW2', { from: 0.75, to: 1.5 }, 85, 92],
];

const F594_ROWS: readonly NutRow[] = ['group 1', 'group 2'].flatMap((group) =>
  F594.flatMap(([condition, sizes, hex, heavyHex]) => [
    inch(`ASTM F594 ${group} ${condition}`, sizes, hex, 'ASTM F594 mechanical table', { heavy: false }),
    inch(`ASTM F594 ${group} ${condition}`, sizes, heavyHex, 'ASTM F594 mechanical table', { heavy: true }),
  ]),
);

/** Every row, in no order that matters: one nut, size, series and form fits at most one. */
export const NUT_ROWS: readonly NutRow[] = [
  ...metricIso,
  ...metricStainless,
  ...J995_ROWS,
  ...A194_ROWS,
  ...A563_ROWS,
  ...F594_ROWS,
];
