/** How tight, in which rounds, and what the wrench is set to: from values that have been read. */

import { neededDecimals, quantity, type Torque, valueIn } from '../units/index.ts';
import { computeTorque } from './compute.ts';
import type { TorqueInput } from './input.ts';
import type { TorqueResult } from './result.ts';
import { inOtherUnit, planRounds, type Round } from './rounds.ts';
import { roundsFault } from './rounds-fault.ts';
import { wrenchSetting } from './wrench.ts';

/** The scale of the wrench: its unit, and its graduation in that unit. */
export interface Scale {
  readonly unit: string;
  readonly step: number;
}

export interface PlannedRound extends Round {
  /** Counted from 1 over sequence rounds and circular passes alike. */
  readonly number: number;
  /** The torque at the bolt in the other unit. */
  readonly second: Torque;
  /** The setting in the other unit. */
  readonly settingSecond: Torque;
}

export interface Tightening {
  /** Torque at the bolt above the run-down torque, in the unit of the scale. */
  readonly target: Torque;
  /** The same in the other unit, for the brackets. */
  readonly targetSecond: Torque;
  readonly origin: 'stated' | 'computed';
  readonly result: TorqueResult;
  readonly rounds: readonly PlannedRound[];
  /** What the wrench is set to in the last round; the target where there is neither run-down torque nor adapter. */
  readonly setting: Torque;
  readonly settingSecond: Torque;
}

export interface TighteningValues {
  readonly input: TorqueInput;
  readonly scale: Scale;
  readonly stated?: Torque;
  /** A number is a share of the target. */
  readonly rounds: readonly (number | Torque)[];
  readonly circularPasses: number;
}

/** The unit in brackets beside a torque; whatever else is read gets N·m. */
const SECOND_UNIT: Readonly<Record<string, string>> = {
  N·m: 'lbf·ft',
  kN·m: 'lbf·ft',
  dN·m: 'lbf·in',
};

/**
 * Torque, rounds and preload. A stated torque keeps its own number where the scale has its unit; a computed one is set
 * down to a mark of the scale, never above the share asked for. A sentence when the rounds do not rise to the torque.
 */
export function tighten(values: TighteningValues): Tightening | string {
  const { input, scale, stated } = values;
  const target = stated === undefined ? computedTarget(computeTorque(input).targetNm, scale) : settable(stated, scale);
  const wrong = roundsFault(target, values.rounds);
  if (wrong !== undefined) return wrong;
  const secondUnit = SECOND_UNIT[scale.unit] ?? 'N·m';
  const toSetting = (torqueNm: number): number =>
    wrenchSetting({
      torqueNm,
      ...(input.prevailingNm === undefined ? {} : { runDownNm: input.prevailingNm }),
      ...(input.adapter === undefined ? {} : { adapter: input.adapter }),
    });
  const corrected = input.prevailingNm !== undefined || input.adapter !== undefined;
  const planned = planRounds(
    target,
    values.rounds,
    values.circularPasses,
    scale.step,
    corrected ? toSetting : undefined,
  );
  const rounds = planned.map((r, i) => ({
    ...r,
    number: i + 1,
    second: inOtherUnit(r.torque, secondUnit),
    settingSecond: inOtherUnit(r.setting, secondUnit),
  }));
  const setting = rounds.at(-1)?.setting ?? target;
  return {
    target,
    targetSecond: inOtherUnit(target, secondUnit),
    origin: stated === undefined ? 'computed' : 'stated',
    result: computeTorque({ ...input, statedNm: target.si }),
    rounds,
    setting,
    settingSecond: inOtherUnit(setting, secondUnit),
  };
}

/** The last digit that a wrench with a scale up to `most` can show, in its unit. Practice. */
export function usualGraduation(most: number): number {
  return most <= 25 ? 0.1 : most <= 100 ? 0.5 : 1;
}

/** A stated torque keeps its own number when the wrench reads in its unit; else it is turned into the wrench's unit. */
function settable(stated: Torque, { unit }: Scale): Torque {
  return stated.unit === unit ? stated : inOtherUnit(stated, unit);
}

/** On a mark of the scale, and never above the share asked for: a preload share is an upper aim. */
function computedTarget(targetNm: number, { unit, step }: Scale): Torque {
  const value = valueIn(quantity('torque', targetNm, 'N·m'), unit);
  const set = Math.max(step, Math.floor(value / step + 1e-9) * step);
  return quantity('torque', Number(set.toFixed(neededDecimals(step))), unit, neededDecimals(step));
}
