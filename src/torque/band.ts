/** A value with the range in which it really lies. */

/** low <= nominal <= high, all in the unit that the field holding the band names. */
export interface Band {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

export function mapBand(band: Band, f: (value: number) => number): Band {
  return { low: f(band.low), nominal: f(band.nominal), high: f(band.high) };
}

/** Throws RangeError unless `value` is finite and above zero: such a number should never have passed the model. */
export function positive(name: string, value: number): number {
  if (!Number.isFinite(value) || value <= 0) throw new RangeError(`${name} must be above zero, not ${value}`);
  return value;
}
