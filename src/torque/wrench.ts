/** Wrench practice: adapters, marked range, run-down torque. */

import { type Limit, valueIn } from '../units/index.ts';
import { notNegative, positive } from './band.ts';
import type { Adapter, TorqueInput } from './input.ts';
import { isoWrenchDeviation } from './scatter.ts';

/**
 * Setting for a wrench with an adapter (crowfoot), in the unit of `torqueNm`: T L/(L + E cos a).
 * leverMm: drive square to mid grip. adapterMm: drive square to bolt, both in one unit. angleDeg: between adapter and
 * handle line, 0 pointing on beyond the wrench, 90 square to it (no correction), 180 back over the handle.
 * Throws RangeError when a length is not usable or the adapter reaches back to the grip. Source: FAA AC 43.13-1B.
 */
export function adapterSetting(torqueNm: number, leverMm: number, adapterMm: number, angleDeg: number): number {
  positive('torque', torqueNm);
  positive('lever', leverMm);
  notNegative('adapter length', adapterMm);
  if (!Number.isFinite(angleDeg)) throw new RangeError(`adapter angle is ${angleDeg}`);
  const reach = leverMm + adapterMm * Math.cos((angleDeg * Math.PI) / 180);
  if (reach <= 0) throw new RangeError(`adapter of ${adapterMm} at ${angleDeg}° reaches back past the grip`);
  return (torqueNm * leverMm) / reach;
}

export type WrenchFit = 'fits' | 'under marked range' | 'over marked range' | 'under 20 % of maximum';

/** ISO 6789:2003 calibrates from 20 % of the maximum; the 2017 edition from the lowest marked value. */
const LEAST_SHARE = 0.2;

/** Does a setting in N·m lie in the marked range of a wrench? An absent end is not checked. Throws RangeError unless above zero. */
export function wrenchFits(torqueNm: number, range: Limit<'torque'>): WrenchFit {
  const slack = 1e-9 * positive('setting', torqueNm);
  const max = range.max === undefined ? Number.POSITIVE_INFINITY : valueIn(range.max, 'N·m');
  if (torqueNm > max + slack) return 'over marked range';
  if (range.min !== undefined && torqueNm < valueIn(range.min, 'N·m') - slack) return 'under marked range';
  return Number.isFinite(max) && torqueNm < LEAST_SHARE * max - slack ? 'under 20 % of maximum' : 'fits';
}

/**
 * Torque at the bolt for a locking nut, in the unit of both torques: stated plus run-down torque.
 * Source: FAA AC 43.13-1B 7-40 (always added; TB 43-0218 adds it only from a third of the stated torque up).
 */
export function withRunDown(torque: number, runDown: number): number {
  return positive('torque', torque) + notNegative('run-down torque', runDown);
}

/** What a wrench is to do: torques in one unit, lengths of the adapter in mm. */
export interface WrenchTask {
  /** Wanted at the bolt, without run-down torque. */
  readonly torqueNm: number;
  readonly runDownNm?: number;
  readonly adapter?: Adapter;
}

/**
 * What the wrench is set to: torque plus run-down torque, corrected for an adapter. A straight extension between drive
 * square and socket, in line with the bolt, changes nothing and is no adapter. Throws RangeError as `adapterSetting`.
 */
export function wrenchSetting({ torqueNm, runDownNm = 0, adapter }: WrenchTask): number {
  const boltNm = withRunDown(torqueNm, runDownNm);
  return adapter === undefined ? boltNm : adapterSetting(boltNm, adapter.leverMm, adapter.lengthMm, adapter.angleDeg);
}

/** The torque without run-down torque that a setting brings to the bolt: inverse of `wrenchSetting`. */
export function torqueAtSetting(settingNm: number, task: Omit<WrenchTask, 'torqueNm'>): number {
  const perNm = wrenchSetting({ torqueNm: 1, ...task, runDownNm: 0 });
  return positive('setting', settingNm) / perNm - notNegative('run-down torque', task.runDownNm ?? 0);
}

/** A lever or adapter shorter than this is a slip. Practice. */
const LEAST_MM = 1;

/** What is wrong with an adapter as an author wrote it, and what would be accepted; nothing when it can be used. */
export function adapterFault({
  lengthMm,
  angleDeg,
  leverMm,
}: Adapter): { readonly problem: string; readonly hint: string } | undefined {
  if (!(Number.isFinite(leverMm) && leverMm >= LEAST_MM)) {
    return {
      problem: 'the lever of the wrench has no length',
      hint: 'measure from the square to the middle of the grip',
    };
  }
  if (!(Number.isFinite(lengthMm) && lengthMm >= LEAST_MM)) {
    return {
      problem: 'the adapter has no length',
      hint: 'measure from the square to the bolt; a straight extension in line with the bolt is no adapter',
    };
  }
  if (!(angleDeg >= 0 && angleDeg <= 180)) {
    return {
      problem: `an adapter cannot stand at ${angleDeg}°`,
      hint: '0° points on beyond the wrench, 90° is square to it, 180° points back over the handle',
    };
  }
  const back = -lengthMm * Math.cos((angleDeg * Math.PI) / 180);
  if (back < leverMm) return undefined;
  return {
    problem: `the adapter reaches back ${Math.round(back)} mm, past the grip at ${Math.round(leverMm)} mm`,
    hint: 'check length and angle; 180° points back over the handle',
  };
}

/** A wrench at work on a joint: torques in N·m; deviation as a ± share of the setting. */
export interface WrenchAtWork {
  readonly boltNm: number;
  readonly settingNm: number;
  readonly deviation: number;
  readonly prevailingNm: number;
}

/** Setting and deviation for a joint; the deviation is that of ISO 6789 unless the joint gives its own. */
export function wrenchFor(input: TorqueInput, targetNm: number): WrenchAtWork {
  const prevailingNm = input.prevailingNm ?? 0;
  const boltNm = withRunDown(targetNm, prevailingNm);
  const settingNm = wrenchSetting({
    torqueNm: targetNm,
    runDownNm: prevailingNm,
    ...(input.adapter === undefined ? {} : { adapter: input.adapter }),
  });
  const deviation = input.wrenchDeviation ?? isoWrenchDeviation(settingNm);
  if (!(deviation >= 0 && deviation < 1)) throw new RangeError(`wrench deviation is ${deviation}`);
  return { boltNm, settingNm, deviation, prevailingNm };
}
