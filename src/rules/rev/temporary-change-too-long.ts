/** A temporary change has an end within the shop's limit. */

import { addDays } from '../../control/dates.ts';
import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { daysOf, exampleChange, isDated } from './temporary.ts';

export const temporaryChangeTooLong: Check = {
  code: 'REV014',
  name: 'temporary-change-too-long',
  severity: 'error',
  title: 'A temporary change holds longer than the shop allows.',
  why: 'What was meant for a week becomes the way it is done, and has never been through the review that a new revision gets.',
  sources: [
    'common practice: a temporary change has an expiry date, and 30 to 90 days are the most',
    'the limit of the shop: `control: { temporary: { days: … } }` in shop.yaml, else 90',
  ],
  example: {
    bad: [{ file: 'temporary.yaml', to: exampleChange({ until: '«2026-06-30»' }) }],
    good: [{ file: 'temporary.yaml', to: exampleChange() }],
  },
  found: (shop, tell) => {
    const most = shop.info.control.temporaryDays;
    for (const t of shop.temporaryChanges) {
      if (!isDated(t) || daysOf(t) <= most) continue;
      tell(placeOf(t, 'until'), `${t.number} holds for ${daysOf(t)} days, and the shop allows ${most}`, {
        hint: `end it on ${addDays(t.from, most)} or earlier; what is to stay longer goes into the next revision of ${t.doc}`,
      });
    }
  },
};
