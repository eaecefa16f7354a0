/** The rounds in which a joint is brought up to its torque. */

import { convert, neededDecimals, quantity, roundToStep, type Torque, valueIn } from '../units/index.ts';
import { positive } from './band.ts';
import { roundsFault, shareOf } from './rounds-fault.ts';

export interface Round {
  /** Share of the target that was asked for: 0.3, 0.7, 1. */
  readonly share: number;
  /** Asked for at the bolt, above its run-down torque, in the unit of the target. */
  readonly torque: Torque;
  /** What the wrench is set to, in the unit of the target, on a graduation of the wrench. */
  readonly setting: Torque;
  /** `sequence`: in tightening order. `circular`: from neighbour to neighbour. */
  readonly pass: 'sequence' | 'circular';
}

/**
 * One round for each entry of `rounds`, in tightening order, then `circularPasses` at full torque.
 *
 * rounds: a number is a share of the target, a torque is a value in any unit; rising, the last one the target.
 * step: wrench graduation in the unit of `target`. setting: torque at the bolt without run-down torque to wrench setting,
 * both N·m, rising (`wrenchSetting` of the joint); without it the wrench is set to the torque.
 *
 * The setting at full torque is rounded down to a graduation and no other goes past it, so rounding never exceeds the
 * target; the others go to the nearest graduation, and to one graduation at least. A target below one graduation is left
 * as it is. Without `setting` the torque of a round is its setting; with it the torque is the one asked for, to the
 * nearest graduation and at most the target. Throws RangeError on rounds that `roundsFault` names, and on a target, number
 * of passes or step that the model should have refused. Source of the usual shares (0.3, 0.7, 1): ASME PCC-1-2019
 * Table 1.
 */
export function planRounds(
  target: Torque,
  rounds: readonly (number | Torque)[],
  circularPasses: number,
  step: number,
  setting?: (boltNm: number) => number,
): readonly Round[] {
  positive('wrench graduation', step);
  positive('target torque', target.value);
  const fault = roundsFault(target, rounds);
  if (fault !== undefined) throw new RangeError(fault);
  if (!Number.isInteger(circularPasses) || circularPasses < 0)
    throw new RangeError(`circular passes: ${circularPasses}`);
  const exact = (share: number): Torque => (share === 1 ? target : scaled(target, share));
  const needed = (share: number): Torque => (setting === undefined ? exact(share) : settingFor(exact(share), setting));
  const fullSetting = onScale(needed(1), needed(1), step, 'down');
  const round = (share: number, pass: Round['pass']): Round => {
    const set = share === 1 ? fullSetting : onScale(needed(share), fullSetting, step, 'nearest');
    const torque = setting === undefined ? set : share === 1 ? target : onScale(exact(share), target, step, 'nearest');
    return { share, torque, setting: set, pass };
  };
  return [
    ...rounds.map((r) => round(shareOf(target, r), 'sequence')),
    ...Array.from({ length: circularPasses }, () => round(1, 'circular')),
  ];
}

function scaled(target: Torque, share: number): Torque {
  return quantity('torque', target.value * share, target.unit);
}

/** Cut to a thousandth, which no wrench shows, so that a setting that falls on a graduation is exactly that. */
function settingFor(torque: Torque, setting: (boltNm: number) => number): Torque {
  const Nm = positive('wrench setting', setting(valueIn(torque, 'N·m')));
  const value = valueIn(quantity('torque', Nm, 'N·m'), torque.unit);
  return value < 0.001
    ? quantity('torque', value, torque.unit)
    : quantity('torque', roundToStep(value, 0.001, 'down'), torque.unit);
}

/** `wanted` on a graduation: one graduation at least, `most` at most; as it is when already there or below the first. */
function onScale(wanted: Torque, most: Torque, step: number, direction: 'down' | 'nearest'): Torque {
  const rounded = roundToStep(wanted.value, step, direction);
  const value = Math.min(most.value, Math.max(Math.min(step, most.value), rounded));
  if (value === wanted.value) return wanted;
  return quantity('torque', value, wanted.unit, neededDecimals(value));
}

/** The same torque in another unit for the brackets: nearest tenth below 20, nearest whole above. */
export function inOtherUnit(torque: Torque, unit: string): Torque {
  const exact = convert(torque, unit, 6).value;
  const decimals = exact < 20 ? 1 : 0;
  return quantity('torque', Number(exact.toFixed(decimals)), unit, decimals);
}
