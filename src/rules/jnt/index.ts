/** The checks of the family JNT, in order. */

import type { Check } from '../check.ts';
import { fittedNotTightened } from './fitted-not-tightened.ts';
import { gasketNotFitted } from './gasket-not-fitted.ts';
import { lubricantNotApplied } from './lubricant-not-applied.ts';
import { lubricantWithoutCondition } from './lubricant-without-condition.ts';
import { lubricatedLate } from './lubricated-late.ts';
import { neverTightened } from './never-tightened.ts';
import { openedWithoutOrder } from './opened-without-order.ts';
import { stepLubricant } from './step-lubricant.ts';
import { threadlockerWithOil } from './threadlocker-with-oil.ts';
import { tightenedBeforeFitted } from './tightened-before-fitted.ts';
import { tightenedTwice } from './tightened-twice.ts';
import { torqueWithoutCondition } from './torque-without-condition.ts';
import { twoConditions } from './two-conditions.ts';
import { typedTorque } from './typed-torque.ts';

export const JNT: readonly Check[] = [
  neverTightened,
  tightenedTwice,
  tightenedBeforeFitted,
  fittedNotTightened,
  openedWithoutOrder,
  stepLubricant,
  twoConditions,
  lubricantNotApplied,
  threadlockerWithOil,
  lubricantWithoutCondition,
  gasketNotFitted,
  typedTorque,
  torqueWithoutCondition,
  lubricatedLate,
];
