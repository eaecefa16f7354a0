/** The time between two reviews of a document. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';

const MOST_MONTHS = 24;

export const longReviewInterval: Check = {
  code: 'REV005',
  name: 'long-review-interval',
  severity: 'warning',
  title: 'More than two years pass between the reviews of a document.',
  why: 'In three years the tool is replaced, the paste is renamed and the mechanic who knew has left; the card still says it the old way.',
  sources: ['DOE-STD-1051-93, 5.3.2: maintenance procedures are reviewed at an interval, normally two years'],
  example: {
    bad: [{ file: 'procedures/mw-1.yaml', from: 'review: 24 months\n', to: 'review: «36 months»\n' }],
  },
  found: (shop, tell) => {
    for (const d of shop.documents) {
      const months = inMonths(d.review);
      if (months <= MOST_MONTHS) continue;
      tell(placeOf(d, 'review'), `${d.doc} is reviewed every \`${d.review}\`, and ${MOST_MONTHS} months are the most`, {
        hint: `write \`review: ${MOST_MONTHS} months\` or less`,
      });
    }
  },
};

/** `24 months`, `2 years`: the shape lets nothing else through. */
function inMonths(review: string): number {
  const [count = '', unit = ''] = review.split(' ');
  return Number(count) * (unit === 'years' ? 12 : 1);
}
