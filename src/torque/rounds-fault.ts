/** Do the rounds that an author wrote bring a joint up to its torque? */

import { formatQuantity, type Torque, valueIn } from '../units/index.ts';
import { halfDigitNm, unitPairAgrees } from './unit-pair.ts';

/**
 * What is wrong with `rounds`, a sentence without its full stop; nothing when they rise to the target. A number is a
 * share, a torque a value. A last value in another unit than the target may differ from it by the rounding of both.
 */
export function roundsFault(target: Torque, rounds: readonly (number | Torque)[]): string | undefined {
  if (rounds.length === 0) return 'no round is planned';
  for (const round of rounds) {
    const size = typeof round === 'number' ? round : round.value;
    if (!Number.isFinite(size) || size <= 0) return `the round \`${words(round)}\` is not above zero`;
    if (typeof round === 'number' && round > 1) return `the round \`${words(round)}\` is more than the whole torque`;
  }
  const shares = rounds.map((r) => shareOf(target, r));
  for (const [i, round] of rounds.entries()) {
    const before = rounds[i - 1];
    if (before !== undefined && (shares[i] ?? 0) <= (shares[i - 1] ?? 0))
      return `the round \`${words(round)}\` does not rise over \`${words(before)}\` before it`;
  }
  const last = rounds.at(-1);
  if (last === undefined || shares.at(-1) === 1) return undefined;
  return `the last round is \`${words(last)}\`, and the torque of the joint is \`${formatQuantity(target)}\``;
}

/** The share of the target that a round asks for; exactly 1 for the target itself, in whatever unit it is written. */
export function shareOf(target: Torque, round: number | Torque): number {
  if (typeof round === 'number') return Math.abs(round - 1) < 1e-9 ? 1 : round;
  const value = valueIn(round, 'N·m');
  const whole = valueIn(target, 'N·m');
  const same =
    round.unit === target.unit
      ? Math.abs(value / whole - 1) < 1e-9
      : unitPairAgrees(value, whole, halfDigitNm(round), halfDigitNm(target));
  return same ? 1 : value / whole;
}

function words(round: number | Torque): string {
  return typeof round === 'number' ? `${Number((round * 100).toFixed(1))} %` : formatQuantity(round);
}
