/** Few temporary changes are open on one document at a time. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { byIssue, exampleChange } from './temporary.ts';

const FIRST = exampleChange();
const SECOND = exampleChange({ step: '13', from: '2026-02-20' }, 'TC-2');

export const tooManyTemporaryChanges: Check = {
  code: 'REV017',
  name: 'too-many-temporary-changes',
  severity: 'error',
  title: 'More temporary changes are open on one document than the shop allows.',
  why: 'With three slips before its steps nobody reads the card as one thing any more, and two of them contradict each other.',
  sources: [
    'DOE-STD-1073-2003, 6.3.7 and DOE-STD-1073-93, part I, chapter 2: changes not yet taken into a document are capped, for drawings at 2 to 5',
    'the limit of the shop: `control: { temporary: { most: … } }` in shop.yaml, else 2',
  ],
  example: {
    bad: [
      {
        file: 'temporary.yaml',
        to: `${FIRST}${SECOND}${exampleChange({ step: '6', from: '2026-03-02' }, '«TC-3»')}`,
      },
    ],
    good: [
      {
        file: 'temporary.yaml',
        to: `${FIRST}${SECOND}${exampleChange({ step: '6', from: '2026-05-01', until: '2026-06-30' }, 'TC-3')}`,
      },
    ],
  },
  found: (shop, tell) => {
    const most = shop.info.control.temporaryMost;
    for (const changes of byIssue(shop)) {
      for (const [i, t] of changes.entries()) {
        const open = changes.slice(0, i).filter((o) => o.until >= t.from && t.until >= t.from);
        if (open.length < most) continue;
        tell(
          t.keyRange,
          `${t.number} is the ${ordinal(open.length + 1)} temporary change that is open on ${t.doc} on ${t.from}, and the shop allows ${most}`,
          {
            related: open.map((o) => ({
              range: placeOf(o, 'until'),
              message: `${o.number} holds until ${o.until}`,
            })),
            hint: `take what is to stay into the next revision of ${t.doc}, or let one end before this one begins`,
          },
        );
      }
    }
  },
};

function ordinal(n: number): string {
  return `${n}${n === 2 ? 'nd' : n === 3 ? 'rd' : 'th'}`;
}
