/**
 * A number with its unit, kept as the author wrote it beside its SI value.
 * Plain data (no class), so that a checked shop can be stored and compared as JSON.
 */

export type Dimension =
  | 'length'
  | 'area'
  | 'angle'
  | 'torque'
  | 'force'
  | 'stress'
  | 'time'
  | 'temperature'
  | 'mass'
  | 'volume'
  | 'speed'
  | 'ratio';

/** What a measuring tool may read. */
export const MEASURED: readonly Dimension[] = [
  'length',
  'angle',
  'torque',
  'stress',
  'temperature',
  'mass',
  'force',
  'time',
  'volume',
  'speed',
  'ratio',
];

/**
 * value: in `unit`, as written. decimals: digits after the point as written (fractions count as exact, decimals 0).
 * si: the same amount in the SI unit of its dimension: m, m2, rad, N·m, N, Pa, s, K, kg, m3, m/s, 1.
 */
export interface Quantity<D extends Dimension = Dimension> {
  readonly dimension: D;
  readonly value: number;
  readonly unit: string;
  readonly decimals: number;
  readonly si: number;
  /** The number as the author wrote it when it was a fraction such as `1 1/8`; absent for decimal numbers. */
  readonly fraction?: string;
}

export type Length = Quantity<'length'>;
export type Area = Quantity<'area'>;
export type Angle = Quantity<'angle'>;
export type Torque = Quantity<'torque'>;
export type Force = Quantity<'force'>;
export type Stress = Quantity<'stress'>;
export type Time = Quantity<'time'>;
export type Temperature = Quantity<'temperature'>;
export type Mass = Quantity<'mass'>;
export type Volume = Quantity<'volume'>;
export type Ratio = Quantity<'ratio'>;

/** An acceptance limit: at least one end is given; both ends share one unit. */
export interface Limit<D extends Dimension = Dimension> {
  readonly min?: Quantity<D>;
  readonly max?: Quantity<D>;
}

/** The outcome of reading an author's text: a value, or what is wrong and what would be accepted. */
export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: string; readonly hint: string };
