/** Each bench has copies of its own number. */

import { isWritten, placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';

export const copyNumberTwice: Check = {
  code: 'REV019',
  name: 'copy-number-twice',
  severity: 'error',
  title: 'Two benches state the same copy number.',
  why: 'A receipt for copy 2 comes back, and nobody can say from which bench; the other one keeps its old card.',
  sources: [
    'DOE-STD-1073-2003, 6.3.3 and 6.3.8: a distribution list of copy holders, and a receipt from each',
    'common practice: controlled copy number n of N',
  ],
  example: {
    bad: [
      {
        file: 'benches.yaml',
        to: `pumps:
  name: Pumps
  place: Hall 1
  lead: ada
  binder: [MW-1]
  copy: 1
valves:
  name: Valves
  place: Hall 2
  binder: [MW-1]
  copy: «1»
`,
      },
    ],
    good: [
      {
        file: 'benches.yaml',
        to: `pumps:
  name: Pumps
  place: Hall 1
  lead: ada
  binder: [MW-1]
  copy: 1
valves:
  name: Valves
  place: Hall 2
  binder: [MW-1]
  copy: 2
`,
      },
    ],
  },
  found: (shop, tell) => {
    const taken = new Map<number, (typeof shop.benches)[number]>();
    // A number that the shop was given by itself is never one that is stated.
    for (const bench of shop.benches.filter((b) => isWritten(b, 'copy'))) {
      const first = taken.get(bench.copy);
      if (first === undefined) {
        taken.set(bench.copy, bench);
        continue;
      }
      tell(placeOf(bench, 'copy'), `\`${bench.id}\` holds copy ${bench.copy}, which is also that of \`${first.id}\``, {
        related: [{ range: placeOf(first, 'copy'), message: `\`${first.id}\` holds copy ${first.copy}` }],
        hint: `look at the covers of both binders; a number that is free: \`copy: ${free(shop.benches.map((b) => b.copy))}\``,
      });
    }
  },
};

function free(used: readonly number[]): number {
  let number = 1;
  while (used.includes(number)) number += 1;
  return number;
}
