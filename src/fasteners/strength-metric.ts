/** Strength of metric property classes and grades, MPa, by diameter in mm. */

import type { Sizes, StrengthRow } from './strength-row.ts';

const ISO_898 = 'ISO 898-1:2013 Table 3';
const ISO_3506 = 'ISO 3506-1:2020';
const TO_M39: Sizes = { from: 1.6, to: 39 };
/** ISO 3506-1 limits the ferritic classes to 24 mm (memory). */
const TO_M24: Sizes = { from: 1.6, to: 24 };

function iso(
  grade: string,
  sizes: Sizes,
  proof: number,
  yieldKind: string,
  yieldMPa: number,
  tensile: number,
): StrengthRow {
  return { grade, system: 'metric', ...sizes, proof, yield: yieldMPa, tensile, yieldKind, source: ISO_898 };
}

/** No proof stress in the standard: left out on purpose. */
function plain(
  grade: string,
  sizes: Sizes,
  yieldMPa: number,
  tensile: number,
  source: string,
  yieldKind = '0.2 % offset',
): StrengthRow {
  return { grade, system: 'metric', ...sizes, yield: yieldMPa, tensile, yieldKind, source };
}

/** ISO 3506-1: austenitic classes read second-hand (50, 70, 100); 80 and the other steels from memory. */
const STAINLESS: Readonly<Record<string, readonly [yieldMPa: number, tensile: number]>> = {
  50: [210, 500],
  70: [450, 700],
  80: [600, 800],
  100: [800, 1000],
};

/** ISO 3506-1, martensitic and ferritic steels: memory. */
const MARTENSITIC: Readonly<Record<string, readonly [yieldMPa: number, tensile: number]>> = {
  'C1-50': [250, 500],
  'C1-70': [410, 700],
  'C1-110': [820, 1100],
  'C3-80': [640, 800],
  'C4-50': [250, 500],
  'C4-70': [410, 700],
  'F1-45': [250, 450],
  'F1-60': [410, 600],
};

const STEELS = ['A1', 'A2', 'A3', 'A4', 'A5', 'D2', 'D4', 'D6', 'D8'];

/** ASTM A193M: B7M and two rows of B8 class 2 read second-hand, the others memory. Limits are separate from the inch ones. */
const A193M = 'ASTM A193/A193M Table 3 (SI), part memory';
const A320M = 'ASTM A320/A320M (SI), memory';

function class2(
  standard: string,
  source: string,
  grade: string,
  rows: readonly (readonly [number, number])[],
): readonly StrengthRow[] {
  const limits: readonly Sizes[] = [{ to: 20 }, { over: 20, to: 24 }, { over: 24, to: 30 }, { over: 30, to: 36 }];
  return rows.map(([yieldMPa, tensile], i) =>
    plain(`${standard} ${grade} class 2`, limits[i] ?? {}, yieldMPa, tensile, source),
  );
}

/** Yield and tensile up to M20, M24, M30, M36: strain-hardened austenitic steel loses strength with size. */
const HARDENED_304 = [
  [690, 860],
  [550, 795],
  [450, 725],
  [345, 690],
] as const;
const HARDENED_316 = [
  [655, 760],
  [550, 690],
  [450, 655],
  [345, 620],
] as const;

export const METRIC_STRENGTH: readonly StrengthRow[] = [
  iso('4.6', TO_M39, 225, 'ReL', 240, 400),
  iso('4.8', TO_M39, 310, 'Rpf', 340, 420),
  iso('5.6', TO_M39, 280, 'ReL', 300, 500),
  iso('5.8', TO_M39, 380, 'Rpf', 420, 520),
  iso('6.8', TO_M39, 440, 'Rpf', 480, 600),
  iso('8.8', { from: 1.6, to: 16 }, 580, 'Rp0.2', 640, 800),
  iso('8.8', { over: 16, to: 39 }, 600, 'Rp0.2', 660, 830),
  iso('9.8', { from: 1.6, to: 16 }, 650, 'Rp0.2', 720, 900),
  iso('10.9', TO_M39, 830, 'Rp0.2', 940, 1040),
  iso('12.9', TO_M39, 970, 'Rp0.2', 1100, 1220),
  ...STEELS.flatMap((steel) =>
    Object.entries(STAINLESS).map(([c, [y, t]]) => plain(`${steel}-${c}`, TO_M39, y, t, ISO_3506, 'Rp0.2')),
  ),
  ...Object.entries(MARTENSITIC).map(([id, [y, t]]) =>
    plain(id, id.startsWith('F') ? TO_M24 : TO_M39, y, t, `${ISO_3506} (memory)`, 'Rp0.2'),
  ),
  plain('ASTM A193 B5', { to: 100 }, 550, 690, A193M),
  plain('ASTM A193 B6', { to: 100 }, 585, 760, A193M),
  plain('ASTM A193 B7', { to: 64 }, 720, 860, A193M),
  plain('ASTM A193 B7', { over: 64, to: 100 }, 655, 795, A193M),
  plain('ASTM A193 B7', { over: 100, to: 180 }, 515, 690, A193M),
  plain('ASTM A193 B7M', { to: 100 }, 550, 690, A193M),
  plain('ASTM A193 B16', { to: 64 }, 725, 860, A193M),
  plain('ASTM A193 B16', { over: 64, to: 100 }, 655, 760, A193M),
  ...['B8', 'B8C', 'B8M', 'B8T'].map((g) => plain(`ASTM A193 ${g} class 1`, {}, 205, 515, A193M)),
  ...['B8', 'B8C', 'B8T'].flatMap((g) => class2('ASTM A193', A193M, g, HARDENED_304)),
  ...class2('ASTM A193', A193M, 'B8M', HARDENED_316),
  plain('ASTM A320 L7', { to: 64 }, 725, 860, A320M),
  plain('ASTM A320 L7M', { to: 64 }, 550, 690, A320M),
  plain('ASTM A320 L43', { to: 100 }, 725, 860, A320M),
  ...['B8', 'B8C', 'B8M', 'B8T'].map((g) => plain(`ASTM A320 ${g} class 1`, {}, 205, 515, A320M)),
  ...['B8', 'B8C', 'B8T'].flatMap((g) => class2('ASTM A320', A320M, g, HARDENED_304)),
  ...class2('ASTM A320', A320M, 'B8M', HARDENED_316),
];
