/** The checks of the family REV, in order. */

import type { Check } from '../check.ts';
import { approverNotAuthorised } from './approver-not-authorised.ts';
import { confusableRevision } from './confusable-revision.ts';
import { earlyEffectiveDate } from './early-effective-date.ts';
import { editionsDiffer } from './editions-differ.ts';
import { longReviewInterval } from './long-review-interval.ts';
import { numberWithoutSource } from './number-without-source.ts';
import { revisionOrder } from './revision-order.ts';
import { selfApproval } from './self-approval.ts';
import { sourceWithoutEdition } from './source-without-edition.ts';

export const REV: readonly Check[] = [
  revisionOrder,
  earlyEffectiveDate,
  selfApproval,
  approverNotAuthorised,
  longReviewInterval,
  numberWithoutSource,
  sourceWithoutEdition,
  editionsDiffer,
  confusableRevision,
];
