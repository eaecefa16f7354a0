/** The checks of the family CSM, in order. */

import type { Check } from '../check.ts';
import { cureNotWaited } from './cure-not-waited.ts';
import { elastomerConflict } from './elastomer-conflict.ts';
import { noSafetyData } from './no-safety-data.ts';
import { noShelfLife } from './no-shelf-life.ts';
import { noWaste } from './no-waste.ts';
import { unlistedConsumable } from './unlisted-consumable.ts';

export const CSM: readonly Check[] = [
  noSafetyData,
  noShelfLife,
  elastomerConflict,
  cureNotWaited,
  unlistedConsumable,
  noWaste,
];
