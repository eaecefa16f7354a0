/** A procedure hangs in no binder. */

import type { Check } from '../check.ts';
import { lookUp } from '../rule.ts';

const READING = `doc: MW-2
title: Read the cover gap
machine: pump
purpose: Shows whether the <part:gasket> has set.
owner: ben
review: 24 months
ppe: [gloves, eye protection]
revisions:
  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }
stages:
  - use: isolate
  - title: Read
    steps:
      - do: Measure the gap.
        measure:
          what: Cover gap
          at: [12, 3, 6, 9]
          limit: 0.05 to 0.30 mm
          with: feeler
          if out: Renew the gasket by <procedure:MW-1>.
          record: as found
          source: { document: Pump manual, edition: "3", place: page 14 }
  - use: close-out
`;

export const unpostedProcedure: Check = {
  code: 'REF022',
  name: 'unposted-procedure',
  severity: 'warning',
  title: 'A procedure hangs in the binder of no bench.',
  why: 'Its card is printed and lies in an office; at the bench the job is done from memory, or from the old sheet.',
  sources: [
    'ISO 9001:2015, 7.5.3.1: documents are available where they are needed (read second-hand)',
    '21 CFR 820.40(a), 2015 text: at every place of use',
  ],
  example: {
    bad: [{ file: 'procedures/mw-2.yaml', to: READING.replace('doc: MW-2', 'doc: «MW-2»') }],
    good: [
      { file: 'procedures/mw-2.yaml', to: READING },
      { file: 'benches.yaml', from: '  binder: [MW-1]\n', to: '  binder: [MW-1, MW-2]\n' },
    ],
  },
  found: (shop, tell) => {
    if (shop.incomplete) return;
    for (const { doc, benches, machine, range } of shop.documents) {
      if (benches.length > 0) continue;
      const bench = lookUp(shop).machine(machine)?.bench;
      tell(range, `\`${doc}\` hangs in the binder of no bench`, {
        hint: `add \`${doc}\` to \`binder\` in benches.yaml${bench === undefined ? '' : `: \`${machine}\` belongs to bench \`${bench}\``}`,
      });
    }
  },
};
