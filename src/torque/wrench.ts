/** Wrench practice: adapters, marked range, run-down torque. */

import { type Limit, valueIn } from '../units/index.ts';
import { positive } from './band.ts';

/**
 * Setting for a wrench with an adapter (crowfoot), in the unit of `torqueNm`: T L/(L + E cos a).
 * leverMm: drive square to mid grip. adapterMm: drive square to bolt, both in one unit. angleDeg: between adapter and
 * handle line, 0 pointing on beyond the wrench, 90 square to it (no correction), 180 back over the handle.
 * Throws RangeError when a length is not usable or the adapter reaches back to the grip. Source: FAA AC 43.13-1B.
 */
export function adapterSetting(torqueNm: number, leverMm: number, adapterMm: number, angleDeg: number): number {
  positive('torque', torqueNm);
  positive('lever', leverMm);
  if (!Number.isFinite(adapterMm) || adapterMm < 0) throw new RangeError(`adapter length is ${adapterMm}`);
  if (!Number.isFinite(angleDeg)) throw new RangeError(`adapter angle is ${angleDeg}`);
  const reach = leverMm + adapterMm * Math.cos((angleDeg * Math.PI) / 180);
  if (reach <= 0) throw new RangeError(`adapter of ${adapterMm} at ${angleDeg}° reaches back past the grip`);
  return (torqueNm * leverMm) / reach;
}

export type WrenchFit = 'fits' | 'under marked range' | 'over marked range' | 'under 20 % of maximum';

/** ISO 6789:2003 calibrates from 20 % of the maximum; the 2017 edition from the lowest marked value. */
const LEAST_SHARE = 0.2;

/** Does a setting in N·m lie in the marked range of a wrench? An absent end is not checked. */
export function wrenchFits(torqueNm: number, range: Limit<'torque'>): WrenchFit {
  const slack = 1e-9 * Math.abs(torqueNm);
  const max = range.max === undefined ? Number.POSITIVE_INFINITY : valueIn(range.max, 'N·m');
  if (torqueNm > max + slack) return 'over marked range';
  if (range.min !== undefined && torqueNm < valueIn(range.min, 'N·m') - slack) return 'under marked range';
  return Number.isFinite(max) && torqueNm < LEAST_SHARE * max - slack ? 'under 20 % of maximum' : 'fits';
}

/**
 * Setting for a locking nut, in the unit of both torques: stated plus run-down torque. Source: FAA AC 43.13-1B 7-40
 * (always added; TB 43-0218 adds it only from a third of the stated torque up).
 */
export function withRunDown(torque: number, runDown: number): number {
  positive('torque', torque);
  if (!Number.isFinite(runDown) || runDown < 0) throw new RangeError(`run-down torque is ${runDown}`);
  return torque + runDown;
}
