/** The checks of the family CRD, in order. */

import type { Check } from '../check.ts';
import { longAddress } from './long-address.ts';
import { missingGlyph } from './missing-glyph.ts';
import { stepDoesNotFit } from './step-does-not-fit.ts';
import { wordTooWide } from './word-too-wide.ts';

export const CRD: readonly Check[] = [stepDoesNotFit, missingGlyph, wordTooWide, longAddress];
