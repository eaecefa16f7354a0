/** Checks of torque, preload and wrench. */

import { compareStated, wrenchFits, YIELD_CEILING } from '../../../torque/index.ts';
import { convert, formatDecimal, formatLimit, formatNumber, formatQuantity, quantity } from '../../../units/index.ts';
import { absent, type Check, type CheckedParts, NO_TORQUE, notChecked, percent, verdict } from './check.ts';

/** A stated torque against the band computed from thread, grade and condition; a slip of unit or point is named. */
export function statedTorque({ read: { tightening } }: CheckedParts): Check {
  const name = 'Stated torque in the computed band';
  if (tightening === undefined) return notChecked(name, NO_TORQUE);
  const { target, result, origin } = tightening;
  if (origin === 'computed') return notChecked(name, 'no torque is stated, so it was computed');
  const show = (nm: number) => convert(quantity('torque', nm, 'N·m'), target.unit, nm < 20 ? 1 : 0);
  const band = `${formatNumber(show(result.shortForm.low))} to ${formatQuantity(show(result.shortForm.high))}`;
  const found = compareStated(target.si, result);
  const likely = found.likely === undefined ? '' : `; it looks like ${found.likely}`;
  return {
    name,
    verdict: verdict(found.verdict === 'inside'),
    text:
      found.verdict === 'inside'
        ? `${formatQuantity(target)} lies in ${band}`
        : `${formatQuantity(target)} against ${band}: ${found.verdict}${likely}`,
  };
}

/** Short form against long form. */
export function routes({ read: { tightening } }: CheckedParts): Check {
  const name = 'Two routes to the torque agree';
  if (tightening === undefined) return notChecked(name, NO_TORQUE);
  const { routesAgree, shortForm, longForm } = tightening.result;
  const nm = (value: number) => formatDecimal(value, value < 20 ? 1 : 0);
  return {
    name,
    verdict: verdict(routesAgree),
    text: `nut factor ${nm(shortForm.nominal)} N·m (${nm(shortForm.low)} to ${nm(shortForm.high)}), friction ${nm(longForm.nominal)} N·m`,
  };
}

/** The highest preload against the whole load. */
export function highestPreload({ read: { tightening } }: CheckedParts): Check {
  const name = 'Highest preload below the whole load';
  if (tightening === undefined) return notChecked(name, NO_TORQUE);
  const { preloadShare, preloadBasis } = tightening.result;
  return {
    name,
    verdict: verdict(preloadShare.high <= 1),
    text: `${percent(preloadShare.high)} of the ${preloadBasis} load with low friction and the wrench on the high side`,
  };
}

/** Tension with torsion at the highest preload against yield. */
export function stress({ read: { tightening } }: CheckedParts): Check {
  const name = 'Stress while tightening below 90\u00a0% of yield';
  if (tightening === undefined) return notChecked(name, NO_TORQUE);
  const { nominal, high } = tightening.result.yieldUse;
  return {
    name,
    verdict: verdict(high <= YIELD_CEILING),
    text: `tension with torsion: ${percent(nominal)} of yield, at most ${percent(high)}`,
  };
}

/** The setting of every round against the range of the wrench. */
export function wrenchRange(parts: CheckedParts): Check {
  const { tightening, wrench } = parts.read;
  const name = 'Wrench reaches every round';
  if (wrench.range === undefined) return notChecked(name, absent(parts, 'wrench', 'no range of a wrench is given'));
  if (tightening === undefined) return notChecked(name, NO_TORQUE);
  const { range } = wrench;
  for (const round of tightening.rounds) {
    const fit = wrenchFits(round.setting.si, range);
    if (fit === 'fits') continue;
    const where = {
      'under marked range': 'below',
      'over marked range': 'above',
      'under 20 % of maximum': 'under 20 % of the maximum of',
    };
    return {
      name,
      verdict: 'does not hold',
      text: `round ${round.number}, ${formatQuantity(round.setting)}, is ${where[fit]} the range ${formatLimit(range)}`,
    };
  }
  return {
    name,
    verdict: 'holds',
    text: `every setting lies in ${formatLimit(range)} and from 20 % of its maximum up`,
  };
}
