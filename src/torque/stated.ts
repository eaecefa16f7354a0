/** Compares a torque copied from a document with the computed one and recognises slips of unit and digit. */

import { quantity, type Torque, valueIn } from '../units/index.ts';
import { positive, within } from './band.ts';
import { DIGIT_FIT, digitSlip } from './digits.ts';
import type { TorqueResult } from './result.ts';
import { factorSlip } from './slips.ts';

export interface StatedCheck {
  /** Stated over computed (short form, nominal). */
  readonly ratio: number;
  readonly verdict: 'inside' | 'outside the band' | 'unit slip' | 'digit slip' | 'far off';
  /** What probably happened, with `or` where several fit: `lbf·ft written as N·m`. */
  readonly likely?: string;
  /** The stated torque with the likeliest slip undone, N·m. */
  readonly correctedNm?: number;
}

/** How near the corrected value must come to the computed one: the scatter of a joint, at most 15 %. Practice. */
const FIT = 0.15;
/** Beyond this ratio, or below its inverse, a stated torque is no longer a matter of friction. Practice. */
const FAR = 2;

/**
 * stated: as written, or a bare number of N·m. `inside`: within the short-form band of the asked preload, whatever else
 * would fit. A slip of unit or decimal point is reported when undoing it brings the value within 15 % of the computed
 * torque; the nearest slip gives verdict and corrected value, `likely` names every slip that fits about as well.
 * `far off`: above twice or below half. Two digits exchanged, or one mistyped, are named in `likely` where mending them
 * brings the value within 3 % of the computed torque and no factor comes as near; without a fitting factor they also give
 * the corrected value. They need the digits as written and are left out for a bare number. Throws RangeError on a torque not above zero.
 */
export function compareStated(stated: Torque | number, result: TorqueResult): StatedCheck {
  const computed = result.shortForm.nominal;
  const statedNm = positive('stated torque', typeof stated === 'number' ? stated : valueIn(stated, 'N·m'));
  const ratio = statedNm / computed;
  if (within(result.shortForm, statedNm)) return { ratio, verdict: 'inside' };
  const digits = typeof stated === 'number' ? undefined : digitSlip(stated, inUnitOf(stated, computed));
  const slip = factorSlip(ratio, FIT);
  if (slip !== undefined) {
    const both = digits !== undefined && Math.abs(ratio / slip.factor - 1) > DIGIT_FIT;
    const likely = both ? `${slip.likely}, or ${digits.likely}` : slip.likely;
    return { ratio, verdict: slip.verdict, likely, correctedNm: statedNm / slip.factor };
  }
  const verdict = ratio > FAR || ratio < 1 / FAR ? 'far off' : 'outside the band';
  if (typeof stated === 'number' || digits === undefined) return { ratio, verdict };
  const correctedNm = valueIn(quantity('torque', digits.meant, stated.unit), 'N·m');
  return { ratio, verdict, likely: digits.likely, correctedNm };
}

function inUnitOf(torque: Torque, Nm: number): number {
  return valueIn(quantity('torque', Nm, 'N·m'), torque.unit);
}
