/** How numbers of a worksheet are rounded. */

/**
 * Four significant figures, five where the first is 1, so that rounding never moves a number by more than a quarter of a
 * thousandth; no exponent, trailing zeros of the decimals kept off, a true minus sign. Below 1e-12 prints `0`.
 */
export function figures(value: number): string {
  if (value === 0 || !Number.isFinite(value)) return Number.isFinite(value) ? '0' : String(value);
  const magnitude = Math.floor(Math.log10(Math.abs(value)));
  const leading = Math.abs(value) / 10 ** magnitude;
  const significant = leading < 2 ? 5 : 4;
  const decimals = Math.min(12, Math.max(0, significant - 1 - magnitude));
  return String(Number(value.toFixed(decimals))).replace('-', '−');
}

/** A number as it was given: up to six significant figures, no trailing zeros, no exponent. */
export function givenFigures(value: number): string {
  const magnitude = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  return String(Number(value.toFixed(Math.min(12, Math.max(0, 5 - magnitude))))).replace('-', '−');
}
