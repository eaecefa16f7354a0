/** The rounds in which a joint is brought up to its torque. */

import { convert, neededDecimals, quantity, roundToStep, type Torque } from '../units/index.ts';
import { positive } from './band.ts';

export interface Round {
  /** Share of the target that was asked for: 0.3, 0.7, 1. */
  readonly share: number;
  /** In the unit of the target, on a graduation of the wrench. */
  readonly torque: Torque;
  /** `sequence`: in tightening order. `circular`: from neighbour to neighbour. */
  readonly pass: 'sequence' | 'circular';
}

/**
 * One round for each share, in tightening order, then `circularPasses` at full torque.
 * shares: rising, above 0 to 1. step: wrench graduation in the unit of `target`. Every torque is a multiple of `step`;
 * the last is rounded down and none goes past it, so rounding never exceeds the target. A target below one graduation is
 * left as it is. Throws RangeError on shares, passes or step that the model should have refused.
 * Source of the usual shares (0.3, 0.7, 1): ASME PCC-1-2019 Table 1.
 */
export function planRounds(
  target: Torque,
  shares: readonly number[],
  circularPasses: number,
  step: number,
): readonly Round[] {
  positive('wrench graduation', step);
  positive('target torque', target.value);
  if (shares.length === 0) throw new RangeError('no round is planned');
  for (const share of shares) {
    if (!(share > 0 && share <= 1)) throw new RangeError(`the share of a round is ${share}`);
  }
  if (!Number.isInteger(circularPasses) || circularPasses < 0)
    throw new RangeError(`circular passes: ${circularPasses}`);
  const floor = roundToStep(target.value, step, 'down');
  const full = floor > 0 ? floor : target.value;
  const round = (share: number, pass: Round['pass']): Round => ({ share, torque: at(share, target, full, step), pass });
  return [
    ...shares.map((share) => round(share, 'sequence')),
    ...Array.from({ length: circularPasses }, () => round(1, 'circular')),
  ];
}

function at(share: number, target: Torque, full: number, step: number): Torque {
  if (share === 1 && full === target.value) return target;
  const rounded = Math.min(full, Math.max(Math.min(step, full), roundToStep(target.value * share, step, 'nearest')));
  const value = share === 1 ? full : rounded;
  return quantity('torque', value, target.unit, neededDecimals(value));
}

/** The same torque in another unit for the brackets: nearest tenth below 10, nearest whole above. */
export function inOtherUnit(torque: Torque, unit: string): Torque {
  const exact = convert(torque, unit, 6).value;
  const decimals = exact < 20 ? 1 : 0;
  return quantity('torque', Number(exact.toFixed(decimals)), unit, decimals);
}
