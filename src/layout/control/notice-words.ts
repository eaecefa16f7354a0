/** What a change notice says: the name of its cause, the order to the bench, and what happens to the old copies. */

import type { Notice } from '../../control/types.ts';
import { listed } from '../../resolve/words.ts';

export interface NoticeWords {
  /** In a box beside the title. */
  readonly tag: string;
  /** The copy must not be worked from: the tag is filled. */
  readonly stop: boolean;
  /** What to do, in one or two sentences. */
  readonly order: string;
  /** What else to heed. */
  readonly more: string;
  /** When nothing is taken out, or nothing put in. */
  readonly noneOut: string;
  readonly noneIn: string;
}

const CHECK =
  'Check each new card against this sheet: revision, number of sides and fingerprint. If one differs, do not put it in: tell quality.';
const EVERY_COPY =
  'This holds for photocopies and loose sheets too. If a job is under way with it, stop and ask quality before you go on.';

/** A temporary change leaves a card its fingerprint: the foot tells the two apart. */
const footCheck = (foot: string): string =>
  `Check each new card against this sheet, and its foot: it must name ${foot}. If it does not, do not put it in: tell quality.`;

/** The change that was made, whether or not the card was there: `TC-07`, `TC-07 and TC-08`. */
function numbers(notice: Notice): string {
  const cards = notice.cause === 'temporary' ? notice.putIn : notice.takeOut;
  const found = [...new Set(cards.flatMap((c) => c.with ?? []))].sort();
  return found.length === 0 ? '' : ` ${listed(found)}`;
}

/** Words for each cause. `doc` is the number of the document. */
export function noticeWords(notice: Notice): NoticeWords {
  const { doc } = notice;
  const none = { noneOut: 'Nothing is taken out.', noneIn: 'Nothing is put in.' };
  switch (notice.cause) {
    case 'issue':
      return notice.takeOut.length === 0
        ? {
            ...none,
            tag: 'NEW IN THIS BINDER',
            stop: false,
            order: `Put the cards of ${doc} into the binder.`,
            more: CHECK,
            noneOut: 'Nothing is taken out: no earlier revision hangs here.',
          }
        : {
            ...none,
            tag: 'NEW REVISION',
            stop: false,
            order:
              notice.putIn.length === 0
                ? `Take the old cards of ${doc} out of the binder.`
                : `Take the old cards of ${doc} out of the binder and put the new ones in.`,
            more: notice.putIn.length === 0 ? EVERY_COPY : CHECK,
            noneIn: 'Nothing is put in: the new revision has no card for this bench.',
          };
    case 'suspend':
      return {
        ...none,
        tag: 'STOP: SUSPENDED',
        stop: true,
        order: `Take every copy of ${doc} out of the binder and hand it to quality. Do not use\u00a0it.`,
        more: EVERY_COPY,
        noneIn: 'Nothing is put in: a further notice comes when the document may be used again.',
      };
    case 'reinstate':
      return {
        ...none,
        tag: 'IN USE AGAIN',
        stop: false,
        order: `${doc} may be used again. Put the cards named below into the binder.`,
        more: CHECK,
        noneOut: 'Nothing is taken out: the copies were handed to quality when the document was suspended.',
      };
    case 'withdraw':
      return {
        ...none,
        tag: 'WITHDRAWN',
        stop: true,
        order: `${doc} is not used any more. Take every copy out of the binder and hand it to quality.`,
        more: EVERY_COPY,
        noneIn: 'Nothing is put in.',
      };
    case 'temporary':
      return {
        ...none,
        tag: 'TEMPORARY CHANGE',
        stop: false,
        order: `Exchange the cards of ${doc}: the new ones carry temporary change${numbers(notice)}.`,
        more: `${footCheck(`temporary change${numbers(notice)}`)} A further notice comes when it ends.`,
      };
    case 'temporary-end':
      return {
        ...none,
        tag: 'TEMPORARY CHANGE ENDED',
        stop: false,
        order: `Temporary change${numbers(notice)} has been ended: do not follow it any more. Exchange the cards of ${doc}.`,
        more: footCheck('no temporary change that has ended'),
      };
    case 'temporary-expiry':
      return {
        ...none,
        tag: 'TEMPORARY CHANGE EXPIRED',
        stop: false,
        order: `The last day of temporary change${numbers(notice)} is over: do not follow it any more. Exchange the cards of ${doc}.`,
        more: footCheck('no temporary change that has ended'),
      };
  }
}

/** What stands in place of an approver where none is asked for. */
export function unapproved(cause: Notice['cause']): string {
  if (cause === 'suspend') return 'nobody: a safety stop needs no approval';
  if (cause === 'temporary-end') return 'nobody: an end before the last day needs no approval';
  if (cause === 'temporary-expiry') return 'nobody: it was approved up to its last day and ends by itself';
  return 'not stated';
}

/** What becomes of the copies that were taken out. */
export function oldCopies(notice: Notice): string {
  if (notice.cause === 'suspend')
    return 'Every copy taken out goes to quality with this sheet. None stays at the bench, none is destroyed.';
  if (notice.cause === 'withdraw')
    return 'Every copy taken out goes to quality with this sheet. One that is kept for reference is marked WITHDRAWN on every side and leaves the bench.';
  return 'Return the copies taken out with this sheet, or destroy them here. One that is kept for reference is marked SUPERSEDED on every side and leaves the bench.';
}

/** `within 3 days`, `within 1 day`, `the same day` */
export function within(count: number): string {
  if (count <= 0) return 'the same day';
  return count === 1 ? 'within 1\u00a0day' : `within ${count}\u00a0days`;
}
