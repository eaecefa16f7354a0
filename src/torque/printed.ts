/** Torques as they are printed, and what is lost by that. */

import { quantity, roundToStep, type Torque, valueIn } from '../units/index.ts';

/** Places after the point for three figures: `0.147`, `1.09`, `45.3`, `174`; above 1000 whole tens. */
function stepOf(value: number): number {
  return 10 ** Math.min(1, Math.max(-3, Math.floor(Math.log10(value)) - 2));
}

/**
 * `value` (above zero, in `unit`) to three figures, at most three decimals. `down` cuts the rest off, for a torque that
 * must not be exceeded; by that it loses less than a hundredth from 0.1 up.
 */
export function toPrint(value: number, unit: string, direction: 'down' | 'nearest'): Torque {
  const step = stepOf(value);
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 0.5));
  return quantity('torque', Number(roundToStep(value, step, direction).toFixed(decimals)), unit, decimals);
}

/** A unit of the last printed figure of `toPrint`, N·m. */
export function lastFigureNm(torque: Torque): number {
  const figure = torque.value >= 1000 ? 10 : 10 ** -torque.decimals;
  return valueIn(quantity('torque', figure, torque.unit), 'N·m');
}

/**
 * How coarsely a printed number may have been rounded, as a share of itself: half a unit of its last digit that is not 0,
 * but no coarser than its second figure. 174 gives 0.0029, 170 gives 0.029, 100 gives 0.05, 1.2 gives 0.042.
 */
export function roundingShare({ value, decimals }: Torque): number {
  const digits = value.toFixed(decimals);
  const zeros = decimals === 0 ? (/0*$/.exec(digits)?.[0].length ?? 0) : 0;
  const second = 10 ** (Math.floor(Math.log10(value)) - 1);
  const unit = Math.max(10 ** -decimals, Math.min(10 ** (zeros - decimals), second));
  return unit / 2 / value;
}
