/** Torque and preload of one joint by two routes, with the stress while tightening and a worksheet to follow by hand. */

import { mapBand, placeIn, positive, within } from './band.ts';
import { effectiveNutFactor, longFormParts, longFormTorque, shortFormTorque } from './formulas.ts';
import { frictionOf, jointBand, nutFactorOf } from './friction.ts';
import type { TorqueInput } from './input.ts';
import { preloadAt } from './preload.ts';
import type { TorqueResult } from './result.ts';
import { stressOf } from './stress.ts';
import { writeWorking } from './working.ts';
import { wrenchFor } from './wrench.ts';

export type { TorqueInput } from './input.ts';
export type { TorqueResult } from './result.ts';

/**
 * Computes a joint. Friction and nut factor stated by the maker of a lubricant go before those of the condition; where
 * only friction is stated the nut factor is worked out from it by the long form, because the condition's would speak of
 * another lubricant. Throws RangeError on numbers that the model should have refused (zero, negative, not a number, a
 * band out of order, an adapter that reaches past the grip). Sources: Shigley ch. 8 (short form), VDI 2230 Part 1 (long
 * form, combined stress), FAA AC 43.13-1B (run-down torque always added, adapter), ISO 6789 (wrench deviation).
 */
export function computeTorque(input: TorqueInput): TorqueResult {
  const { thread, strength, bearing, preloadShare } = input;
  positive('preload share', preloadShare);
  const basisMPa = positive('proof or yield stress', strength.proofMPa ?? strength.yieldMPa);
  const basisLoadN = basisMPa * positive('stress area', thread.stressAreaMm2);
  const askedPreloadN = preloadShare * basisLoadN;
  const friction = frictionOf(input);
  const nutFactor = nutFactorOf(input);

  const shortForm = mapBand(nutFactor.used, (K) => shortFormTorque(K, thread.diameterMm, askedPreloadN));
  const joints = jointBand(thread, bearing, friction.used);
  const longForm = {
    low: longFormTorque(joints.low, askedPreloadN),
    nominal: longFormTorque(joints.nominal, askedPreloadN),
    high: longFormTorque(joints.high, askedPreloadN),
  };
  const targetNm = input.statedNm === undefined ? shortForm.nominal : positive('stated torque', input.statedNm);
  const wrench = wrenchFor(input, targetNm);
  const preload = preloadAt(thread.diameterMm, nutFactor.used, joints, targetNm, wrench);

  const figures: Omit<TorqueResult, 'working'> = {
    preloadBasis: strength.proofMPa === undefined ? 'yield' : 'proof',
    basisLoadN,
    askedPreloadN,
    nutFactor: nutFactor.used,
    nutFactorFrom: nutFactor.from,
    friction: friction.used,
    frictionFrom: friction.from,
    ...preload,
    preloadShare: mapBand(preload.preloadN, (F) => F / basisLoadN),
    shortForm,
    longForm,
    longParts: longFormParts(joints.nominal, askedPreloadN),
    effectiveNutFactor: effectiveNutFactor(thread.diameterMm, askedPreloadN, longForm.nominal),
    routesAgree: within(shortForm, longForm.nominal),
    routesDiffer: (longForm.nominal - shortForm.nominal) / shortForm.nominal,
    targetNm,
    ...(input.statedNm === undefined ? {} : { statedPlace: placeIn(shortForm, targetNm) }),
    boltNm: wrench.boltNm,
    settingNm: wrench.settingNm,
    wrenchDeviation: wrench.deviation,
    ...stressOf(thread, strength, preload.preloadN, friction.used.thread, wrench.prevailingNm),
  };
  return { ...figures, working: writeWorking(input, figures) };
}
