/** The checks of the family PRT, in order. */

import type { Check } from '../check.ts';
import { alreadyIn } from './already-in.ts';
import { alwaysReplaceReused } from './always-replace-reused.ts';
import { discardedRefitted } from './discarded-refitted.ts';
import { fastenerCount } from './fastener-count.ts';
import { fastenerDiffers } from './fastener-differs.ts';
import { kitItemUnused } from './kit-item-unused.ts';
import { neverRefitted } from './never-refitted.ts';
import { neverSupplied } from './never-supplied.ts';
import { notReplaced } from './not-replaced.ts';
import { pastYieldReused } from './past-yield-reused.ts';
import { removedTwice } from './removed-twice.ts';
import { removedWithoutFate } from './removed-without-fate.ts';
import { unlistedMove } from './unlisted-move.ts';
import { usedBeforeBuilt } from './used-before-built.ts';
import { wrongQuantity } from './wrong-quantity.ts';

export const PRT: readonly Check[] = [
  fastenerCount,
  fastenerDiffers,
  neverRefitted,
  discardedRefitted,
  notReplaced,
  neverSupplied,
  alreadyIn,
  removedTwice,
  wrongQuantity,
  kitItemUnused,
  alwaysReplaceReused,
  pastYieldReused,
  usedBeforeBuilt,
  removedWithoutFate,
  unlistedMove,
];
