/** The checks of the family WRT, in order. */

import type { Check } from '../check.ts';
import { actionInNote } from './action-in-note.ts';
import { ambiguousDate } from './ambiguous-date.ts';
import { conditionAfterAction } from './condition-after-action.ts';
import { longSentence } from './long-sentence.ts';
import { longStep } from './long-step.ts';
import { noTolerance } from './no-tolerance.ts';
import { noVerbFirst } from './no-verb-first.ts';
import { numberWithoutUnit } from './number-without-unit.ts';
import { passiveOrderCheck } from './passive-order.ts';
import { severalActions } from './several-actions.ts';
import { typedStepNumber } from './typed-step-number.ts';
import { vagueWords } from './vague-words.ts';

export const WRT: readonly Check[] = [
  severalActions,
  longStep,
  vagueWords,
  numberWithoutUnit,
  noTolerance,
  actionInNote,
  conditionAfterAction,
  passiveOrderCheck,
  noVerbFirst,
  longSentence,
  typedStepNumber,
  ambiguousDate,
];
