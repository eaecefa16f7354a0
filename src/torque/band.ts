/** A value with the range in which it really lies. */

/** low <= nominal <= high, all in the unit that the field holding the band names. */
export interface Band {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

/** Where a value lies in a band. */
export interface BandPlace {
  /** 0 at the low end, 1 at the high end, below 0 or above 1 outside; absent when the band has no width. */
  readonly position?: number;
  /** Value over the nominal of the band. */
  readonly ratio: number;
  /** Ends included. */
  readonly inBand: boolean;
}

/** The band of f over a band; f must rise with its argument. */
export function mapBand(band: Band, f: (value: number) => number): Band {
  return { low: f(band.low), nominal: f(band.nominal), high: f(band.high) };
}

/** Is the value in the band, ends included? */
export function within(band: Band, value: number): boolean {
  return value >= band.low && value <= band.high;
}

/** Where `value` lies in `band`, both in one unit. */
export function placeIn(band: Band, value: number): BandPlace {
  const width = band.high - band.low;
  const place = { ratio: value / band.nominal, inBand: within(band, value) };
  return width > 0 ? { position: (value - band.low) / width, ...place } : place;
}

/** Throws RangeError unless `value` is finite and above zero: such a number should never have passed the model. */
export function positive(name: string, value: number): number {
  if (!Number.isFinite(value) || value <= 0) throw new RangeError(`${name} must be above zero, not ${value}`);
  return value;
}

/** Throws RangeError unless `value` is finite and zero or above. */
export function notNegative(name: string, value: number): number {
  if (!Number.isFinite(value) || value < 0) throw new RangeError(`${name} must not be below zero, not ${value}`);
  return value;
}

/** Throws RangeError unless the three are above zero and in order. */
export function positiveBand(name: string, band: Band): Band {
  positive(`low end of ${name}`, band.low);
  positive(`nominal ${name}`, band.nominal);
  positive(`high end of ${name}`, band.high);
  if (band.low > band.nominal || band.nominal > band.high)
    throw new RangeError(`${name} is out of order: ${band.low}, ${band.nominal}, ${band.high}`);
  return band;
}
