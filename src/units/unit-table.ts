/** Every unit that content may use: its printed symbol, the spellings accepted, and its exact SI factor. */

import type { Dimension } from './quantity.ts';

export interface Unit {
  /** The one way in which the unit is printed. */
  readonly symbol: string;
  readonly dimension: Dimension;
  /** si = value * factor + offset */
  readonly factor: number;
  readonly offset: number;
  /** Further spellings accepted from authors, compared exactly. */
  readonly spellings: readonly string[];
}

/** Exact by definition: international inch (1959), pound (1959), standard gravity (CGPM 1901). NIST SP 811 App. B. */
const INCH = 0.0254;
const POUND = 0.45359237;
const GRAVITY = 9.80665;
const POUND_FORCE = POUND * GRAVITY;

function unit(
  dimension: Dimension,
  symbol: string,
  factor: number,
  spellings: readonly string[] = [],
  offset = 0,
): Unit {
  return { symbol, dimension, factor, offset, spellings };
}

/** The signs by which the trade joins two units. The printed form of a unit is no spelling besides. */
function spelled(a: string, b: string): readonly string[] {
  const printed = ['lbf·ft', 'lbf·in', 'ozf·in', 'kgf·m', 'kgf·cm'];
  return ['·', '.', '-', ' ', '⋅', '*'].map((sign) => `${a}${sign}${b}`).filter((text) => !printed.includes(text));
}

export const UNITS: readonly Unit[] = [
  unit('length', 'mm', 0.001),
  unit('length', 'µm', 1e-6, ['um', 'micron', 'μm']),
  unit('length', 'cm', 0.01),
  unit('length', 'm', 1),
  unit('length', 'in', INCH, ['inch', '"', '″']),
  unit('length', 'ft', 12 * INCH),
  unit('area', 'mm²', 1e-6, ['mm2']),
  unit('area', 'm²', 1, ['m2']),
  unit('area', 'cm²', 1e-4, ['cm2']),
  unit('area', 'in²', INCH ** 2, ['in2']),
  unit('angle', '°', Math.PI / 180, ['deg', 'degree', 'degrees']),
  unit('angle', 'turn', 2 * Math.PI, ['turns']),
  unit('torque', 'N·m', 1, ['N.m', 'Nm', 'N m', 'N⋅m', 'N*m']),
  unit('torque', 'kN·m', 1000, ['kN.m', 'kNm', 'kN⋅m']),
  unit('torque', 'dN·m', 0.1, ['dN.m', 'dNm']),
  unit('torque', 'lbf·ft', POUND_FORCE * 12 * INCH, [
    ...spelled('lbf', 'ft'),
    ...spelled('lb', 'ft'),
    ...spelled('ft', 'lbf'),
    ...spelled('ft', 'lb'),
  ]),
  unit('torque', 'lbf·in', POUND_FORCE * INCH, [
    ...spelled('lbf', 'in'),
    ...spelled('lb', 'in'),
    ...spelled('in', 'lbf'),
    ...spelled('in', 'lb'),
  ]),
  unit('torque', 'ozf·in', (POUND_FORCE * INCH) / 16, [...spelled('ozf', 'in'), ...spelled('in', 'ozf')]),
  unit('torque', 'kgf·m', GRAVITY, [...spelled('kgf', 'm'), ...spelled('kp', 'm')]),
  unit('torque', 'kgf·cm', GRAVITY / 100, [...spelled('kgf', 'cm'), ...spelled('kp', 'cm')]),
  unit('force', 'N', 1),
  unit('force', 'kN', 1000),
  unit('force', 'lbf', POUND_FORCE),
  unit('force', 'kgf', GRAVITY),
  unit('stress', 'MPa', 1e6, ['N/mm2', 'N/mm²']),
  unit('stress', 'GPa', 1e9),
  unit('stress', 'kPa', 1000),
  unit('stress', 'Pa', 1),
  unit('stress', 'bar', 1e5),
  unit('stress', 'psi', POUND_FORCE / INCH ** 2, ['lbf/in2']),
  unit('stress', 'ksi', (1000 * POUND_FORCE) / INCH ** 2),
  unit('stress', 'kgf/cm²', GRAVITY * 1e4, ['kgf/cm2']),
  unit('time', 's', 1, ['sec', 'second', 'seconds']),
  unit('time', 'min', 60, ['minute', 'minutes']),
  unit('time', 'h', 3600, ['hour', 'hours']),
  unit('time', 'd', 86400, ['day', 'days']),
  unit('time', 'weeks', 604800, ['week', 'wk']),
  unit('temperature', '°C', 1, ['degC', '℃', 'C'], 273.15),
  unit('temperature', '°F', 5 / 9, ['degF', '℉', 'F'], 459.67 * (5 / 9)),
  unit('temperature', 'K', 1),
  unit('mass', 'kg', 1),
  unit('mass', 'g', 0.001),
  unit('mass', 't', 1000),
  unit('mass', 'lb', POUND),
  unit('volume', 'ml', 1e-6, ['mL', 'cm3', 'cm³']),
  unit('volume', 'l', 0.001, ['L', 'litre', 'litres']),
  unit('speed', 'mm/s', 0.001),
  unit('speed', 'm/s', 1),
  unit('ratio', '%', 0.01, ['percent', 'per cent']),
];

const BY_SPELLING: ReadonlyMap<string, readonly Unit[]> = (() => {
  const map = new Map<string, Unit[]>();
  for (const u of UNITS) {
    for (const s of [u.symbol, ...u.spellings]) map.set(s, [...(map.get(s) ?? []), u]);
  }
  return map;
})();

/** The unit written as `text` in this dimension; undefined where there is none. */
export function findUnit(text: string, dimension?: Dimension): Unit | undefined {
  return (BY_SPELLING.get(text) ?? []).find((u) => dimension === undefined || u.dimension === dimension);
}

/** Symbols accepted for a dimension, in the order of the table. */
export function unitSymbols(dimension: Dimension): string[] {
  return UNITS.filter((u) => u.dimension === dimension).map((u) => u.symbol);
}
