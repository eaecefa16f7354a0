/** Strength of inch grades, ksi, by diameter in inches. */

import type { Sizes, StrengthRow } from './strength-row.ts';

/**
 * SAE J429, as in Shigley & Mischke 5th ed. p. 341; Grade 2 above Grade 1 for lengths to 6 in only, Grade 4 studs only.
 */
const J429 = 'SAE J429';
const A449 = 'ASTM A449 type 1';
const A574 = 'ASTM A574';
const A193 = 'ASTM A193 Table 2';
const A320 = 'ASTM A320 (L7, L43, B8C and B8T memory)';
const F593 = 'ASTM F593';

function row(
  grade: string,
  sizes: Sizes,
  proof: number | undefined,
  yieldKsi: number,
  tensile: number,
  source: string,
  yieldKind = '0.2 % offset',
): StrengthRow {
  const base = { grade, system: 'unified', ...sizes, yield: yieldKsi, tensile, yieldKind, source } as const;
  return proof === undefined ? base : { ...base, proof };
}

/** Strain-hardened austenitic steel loses strength with size: to 3/4, 1, 1 1/4, 1 1/2 in. Yield, tensile. */
const HARDENED_304 = [
  [100, 125],
  [80, 115],
  [65, 105],
  [50, 100],
] as const;
const HARDENED_316 = [
  [95, 110],
  [80, 100],
  [65, 95],
  [50, 90],
] as const;
const HARDENED_SIZES: readonly Sizes[] = [
  { to: 0.75 },
  { over: 0.75, to: 1 },
  { over: 1, to: 1.25 },
  { over: 1.25, to: 1.5 },
];

function class2(grade: string, rows: readonly (readonly [number, number])[], source: string): readonly StrengthRow[] {
  return rows.map(([y, t], i) => row(`${grade} class 2`, HARDENED_SIZES[i] ?? {}, undefined, y, t, source));
}

const QUARTER_TO_INCH: Sizes = { from: 0.25, to: 1 };
const QUARTER_TO_LARGEST: Sizes = { from: 0.25, to: 1.5 };
const OVER_INCH: Sizes = { over: 1, to: 1.5 };

export const INCH_STRENGTH: readonly StrengthRow[] = [
  row('SAE 1', QUARTER_TO_LARGEST, 33, 36, 60, J429),
  row('SAE 2', { from: 0.25, to: 0.75 }, 55, 57, 74, J429),
  row('SAE 2', { over: 0.75, to: 1.5 }, 33, 36, 60, J429),
  row('SAE 4', QUARTER_TO_LARGEST, 65, 100, 115, J429),
  row('SAE 5', QUARTER_TO_INCH, 85, 92, 120, J429),
  row('SAE 5', OVER_INCH, 74, 81, 105, J429),
  row('SAE 5.2', QUARTER_TO_INCH, 85, 92, 120, J429),
  row('SAE 7', QUARTER_TO_LARGEST, 105, 115, 133, J429),
  row('SAE 8', QUARTER_TO_LARGEST, 120, 130, 150, J429),
  row('SAE 8.1', QUARTER_TO_LARGEST, 120, 130, 150, `${J429} (memory)`),
  row('SAE 8.2', QUARTER_TO_INCH, 120, 130, 150, J429),
  row('ASTM A449', QUARTER_TO_INCH, 85, 92, 120, A449),
  row('ASTM A449', OVER_INCH, 74, 81, 105, A449),
  row('ASTM A449', { over: 1.5, to: 3 }, 55, 58, 90, A449),
  row('ASTM A574', { to: 0.5 }, 140, 153, 180, A574),
  row('ASTM A574', { over: 0.5, to: 4 }, 135, 153, 170, A574),
  row('ASTM A193 B5', { to: 4 }, undefined, 80, 100, A193),
  row('ASTM A193 B6', { to: 4 }, undefined, 85, 110, A193),
  row('ASTM A193 B7', { to: 2.5 }, undefined, 105, 125, A193),
  row('ASTM A193 B7', { over: 2.5, to: 4 }, undefined, 95, 115, A193),
  row('ASTM A193 B7M', { to: 4 }, undefined, 80, 100, A193),
  row('ASTM A193 B16', { to: 2.5 }, undefined, 105, 125, A193),
  row('ASTM A193 B16', { over: 2.5, to: 4 }, undefined, 95, 110, A193),
  ...['B8', 'B8C', 'B8M', 'B8T'].map((g) => row(`ASTM A193 ${g} class 1`, {}, undefined, 30, 75, A193)),
  ...['B8', 'B8C', 'B8T'].flatMap((g) => class2(`ASTM A193 ${g}`, HARDENED_304, A193)),
  ...class2('ASTM A193 B8M', HARDENED_316, A193),
  row('ASTM A320 L7', { to: 2.5 }, undefined, 105, 125, A320),
  row('ASTM A320 L7M', { to: 2.5 }, undefined, 80, 100, A320),
  row('ASTM A320 L43', { to: 4 }, undefined, 105, 125, A320),
  ...['B8', 'B8C', 'B8M', 'B8T'].map((g) => row(`ASTM A320 ${g} class 1`, {}, undefined, 30, 75, A320)),
  ...['B8', 'B8C', 'B8T'].flatMap((g) => class2(`ASTM A320 ${g}`, HARDENED_304, A320)),
  ...class2('ASTM A320 B8M', HARDENED_316, A320),
  ...['group 1', 'group 2'].flatMap((group) => [
    row(`ASTM F593 ${group} A`, QUARTER_TO_LARGEST, undefined, 30, 75, F593),
    row(`ASTM F593 ${group} CW1`, { from: 0.25, to: 0.625 }, undefined, 65, 100, F593),
    row(`ASTM F593 ${group} CW2`, { over: 0.625, to: 1.5 }, undefined, 45, 85, F593),
  ]),
];
