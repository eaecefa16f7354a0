/** What the notices, the lists and the audit pack are drawn up from in tests: a view of a short history, and an empty one. */

import { documentStates } from '../../src/control/state.ts';
import type { ControlView } from '../../src/control/types.ts';
import { LEDGER } from './audit-ledger.ts';
import { NOTICES } from './audit-notices.ts';

export { LEDGER } from './audit-ledger.ts';
export { card, NOTICES, notice } from './audit-notices.ts';
export { fixtureShop } from './audit-shop.ts';

export const AS_OF = '2026-03-20';

export const VIEW: ControlView = {
  asOf: AS_OF,
  ledger: { entries: LEDGER.entries.length, head: LEDGER.head, last: '2026-03-25' },
  documents: documentStates(LEDGER.entries, AS_OF),
  answers: [],
  open: NOTICES.filter((n) => n.receipt === undefined),
  received: NOTICES.filter((n) => n.receipt !== undefined),
  reviews: [
    review('OF-104', 'Overhaul of the plate cooler', '2028-01-05', 'in order'),
    review('OF-231', 'Renew the gasket of a raw-water flange', '2026-04-01', 'due soon'),
    review('OF-340', 'Repack the stern gland', '2026-02-01', 'overdue'),
  ],
  editions: [
    {
      id: 'cooler-manual',
      document: 'Brackwater Thermal, cooler handbook',
      kind: "maker's manual",
      edition: '5th edition',
      owner: 'maren',
      kept: 'quality office',
      rests: [
        {
          doc: 'OF-104',
          title: 'Overhaul of the plate cooler',
          edition: '4th edition',
          numbers: ['torque of the end-cover joint 95 N·m (page 31)', 'limit of the gap 0 to 0.10 mm, step 31'],
          confirmed: { by: 'maren', on: '2026-02-11', finding: 'The same numbers on page 33' },
        },
        { doc: 'OF-340', title: 'Repack the stern gland', edition: '4th edition', numbers: [] },
      ],
    },
  ],
  drafts: [],
  fingerprints: [],
  comparisons: [],
};

function review(
  doc: string,
  title: string,
  due: string,
  state: ControlView['reviews'][number]['state'],
): ControlView['reviews'][number] {
  return { doc, title, owner: 'petr', interval: '24 months', last: '2026-01-05', due, state };
}

/** A shop in which nothing has happened yet. */
export const EMPTY_VIEW: ControlView = {
  asOf: AS_OF,
  ledger: { entries: 0, head: '0'.repeat(64) },
  documents: [],
  answers: [],
  open: [],
  received: [],
  reviews: [],
  editions: [],
  drafts: [],
  fingerprints: [],
  comparisons: [],
};
