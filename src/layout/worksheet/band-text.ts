/** A band in words. */

import type { Band } from '../../torque/index.ts';

/** `174 (142 to 218) N·m`: nominal first, three figures, unit joined; without unit when that is empty. */
export function bandText(band: Band, unit: string): string {
  const [low, nominal, high] = [band.low, band.nominal, band.high].map(threeFigures);
  const spread = low === high ? '' : ` (${low} to ${high})`;
  return `${nominal}${spread}${unit === '' ? '' : `\u00a0${unit}`}`;
}

/** Three significant figures, whole numbers above a hundred: `0.16`, `68.2`, `1235`. */
export function threeFigures(value: number): string {
  if (value === 0) return '0';
  const decimals = Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value))));
  return Number(value.toFixed(Math.min(6, decimals))).toString();
}
