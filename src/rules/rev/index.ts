/** The checks of the family REV, in order. */

import type { Check } from '../check.ts';
import { approverNotAuthorised } from './approver-not-authorised.ts';
import { confirmationWithoutSource } from './confirmation-without-source.ts';
import { confusableRevision } from './confusable-revision.ts';
import { copyNumberTwice } from './copy-number-twice.ts';
import { earlyEffectiveDate } from './early-effective-date.ts';
import { editionsDiffer } from './editions-differ.ts';
import { longReviewInterval } from './long-review-interval.ts';
import { numberWithoutSource } from './number-without-source.ts';
import { outsideDocumentUnlisted } from './outside-document-unlisted.ts';
import { outsideEditionSuperseded } from './outside-edition-superseded.ts';
import { revisionOffScheme } from './revision-off-scheme.ts';
import { revisionOrder } from './revision-order.ts';
import { selfApproval } from './self-approval.ts';
import { sourceWithoutEdition } from './source-without-edition.ts';
import { temporaryApprovalVoid } from './temporary-approval-void.ts';
import { temporaryChangeTooLong } from './temporary-change-too-long.ts';
import { temporaryDatesOutOfOrder } from './temporary-dates-out-of-order.ts';
import { temporaryTargetMissing } from './temporary-target-missing.ts';
import { tooManyTemporaryChanges } from './too-many-temporary-changes.ts';

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
  revisionOffScheme,
  outsideEditionSuperseded,
  outsideDocumentUnlisted,
  confirmationWithoutSource,
  temporaryChangeTooLong,
  temporaryDatesOutOfOrder,
  temporaryApprovalVoid,
  tooManyTemporaryChanges,
  temporaryTargetMissing,
  copyNumberTwice,
];
