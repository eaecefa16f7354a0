/** The checks of the family SAF, in order. */

import type { Check } from '../check.ts';
import { actionInWarning } from './action-in-warning.ts';
import { closeOutOrder } from './close-out-order.ts';
import { energyNotProved } from './energy-not-proved.ts';
import { energyNotReleased } from './energy-not-released.ts';
import { guardsNotRefitted } from './guards-not-refitted.ts';
import { heatAboveLimit } from './heat-above-limit.ts';
import { heatWithoutGloves } from './heat-without-gloves.ts';
import { hiddenWarning } from './hidden-warning.ts';
import { liftAlone } from './lift-alone.ts';
import { liftNotStated } from './lift-not-stated.ts';
import { liftingGearOverloaded } from './lifting-gear-overloaded.ts';
import { locksNotRemoved } from './locks-not-removed.ts';
import { missingPpe } from './missing-ppe.ts';
import { noConsequence } from './no-consequence.ts';
import { notTurnedByHand } from './not-turned-by-hand.ts';
import { tooFewPeople } from './too-few-people.ts';
import { toolsNotCounted } from './tools-not-counted.ts';
import { unknownEnergy } from './unknown-energy.ts';
import { vagueAvoidance } from './vague-avoidance.ts';
import { workBeforeSafe } from './work-before-safe.ts';

export const SAF: readonly Check[] = [
  energyNotReleased,
  energyNotProved,
  workBeforeSafe,
  unknownEnergy,
  hiddenWarning,
  noConsequence,
  vagueAvoidance,
  missingPpe,
  liftAlone,
  liftNotStated,
  liftingGearOverloaded,
  heatAboveLimit,
  heatWithoutGloves,
  notTurnedByHand,
  toolsNotCounted,
  guardsNotRefitted,
  locksNotRemoved,
  closeOutOrder,
  actionInWarning,
  tooFewPeople,
];
