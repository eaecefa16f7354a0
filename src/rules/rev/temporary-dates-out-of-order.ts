/** A temporary change is approved, then begins, then ends. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { exampleChange, isDated } from './temporary.ts';

export const temporaryDatesOutOfOrder: Check = {
  code: 'REV015',
  name: 'temporary-dates-out-of-order',
  severity: 'error',
  title: 'A temporary change begins before it is approved, or ends before it begins.',
  why: 'The slip hangs at the bench before anybody has approved it, or is taken down on the day on which it is put up.',
  sources: ['common practice: a temporary change states its approval, its start and its expiry'],
  example: {
    bad: [{ file: 'temporary.yaml', to: exampleChange({ from: '«2026-01-30»' }) }],
    good: [{ file: 'temporary.yaml', to: exampleChange({ from: '2026-02-02' }) }],
  },
  found: (shop, tell) => {
    for (const t of shop.temporaryChanges) {
      if (!isDated(t)) continue;
      if (t.from < t.approved) {
        tell(placeOf(t, 'from'), `${t.number} begins on ${t.from}, and is approved on ${t.approved}`, {
          hint: 'look both days up and correct the one that was mistyped; it begins on the day of its approval or later',
        });
      }
      if (t.until < t.from) {
        tell(placeOf(t, 'until'), `${t.number} ends on ${t.until}, and begins on ${t.from}`, {
          hint: 'look both days up and correct the one that was mistyped; `until` is the last day on which it holds',
        });
      }
    }
  },
};
