/** The checks of the family FLD, in order. */

import type { Check } from '../check.ts';
import { badDate } from './bad-date.ts';
import { badFlange } from './bad-flange.ts';
import { badGrade } from './bad-grade.ts';
import { badIdentifier } from './bad-identifier.ts';
import { badLimit } from './bad-limit.ts';
import { badQuantity } from './bad-quantity.ts';
import { badThread } from './bad-thread.ts';
import { markupInText } from './markup-in-text.ts';
import { missingKey } from './missing-key.ts';
import { unknownKey } from './unknown-key.ts';
import { wrongType } from './wrong-type.ts';
import { wrongValue } from './wrong-value.ts';

export const FLD: readonly Check[] = [
  unknownKey,
  missingKey,
  wrongType,
  wrongValue,
  badQuantity,
  badLimit,
  badIdentifier,
  badDate,
  badThread,
  badGrade,
  markupInText,
  badFlange,
];
