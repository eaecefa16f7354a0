/** The checks of the family BLT, in order. */

import type { Check } from '../check.ts';
import { closeSpacing } from './close-spacing.ts';
import { featureOverlap } from './feature-overlap.ts';
import { flangeMismatch } from './flange-mismatch.ts';
import { flangeTwoForms } from './flange-two-forms.ts';
import { impossiblePattern } from './impossible-pattern.ts';
import { impossibleSequence } from './impossible-sequence.ts';
import { noCrossSequence } from './no-cross-sequence.ts';
import { socketClearance } from './socket-clearance.ts';
import { wallClearance } from './wall-clearance.ts';

export const BLT: readonly Check[] = [
  impossiblePattern,
  socketClearance,
  wallClearance,
  impossibleSequence,
  featureOverlap,
  flangeMismatch,
  closeSpacing,
  noCrossSequence,
  flangeTwoForms,
];
