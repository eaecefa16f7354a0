/** One document's history as answers, state and comparison: what the plain pages are tested with. */

import type {
  Answer,
  Comparison,
  ControlView,
  DocumentState,
  IssueEntry,
  SuspendEntry,
  WithdrawEntry,
} from '../../src/control/types.ts';
import { type ComparisonFacts, comparisonFacts, type SiteFacts } from '../../src/render/html/control/index.ts';

const NO_SEAL = '0'.repeat(64);

export const SITE: SiteFacts = {
  name: 'Orrin Sound Ferry Works',
  language: 'en',
  safety:
    "Written for fitters whom the works has trained and authorised. The maker's manual, the works' lockout procedure, local codes and licensed practice govern wherever they say otherwise.",
  report: "Shop lead's desk, or the red slip in the front pocket of the binder",
  asOf: '2026-11-25',
  freshDays: 30,
};

const CHANGES = {
  A: { what: 'First issue', why: 'New line' },
  B: { what: 'Tightening in three rounds', why: 'Weeping end cover after two rounds' },
  C: {
    what: 'End-cover torque 85 → 95 N·m, depth gauge in place of the rule',
    why: 'The maker published a new edition of the manual with harder gaskets',
  },
  D: { what: 'A second person holds the cover while it is drawn', why: 'Near miss at the north wall on 2026-08-30' },
} as const;

export const DATES = { A: '2026-03-02', B: '2026-05-04', C: '2026-07-13', D: '2026-09-14' } as const;
type Rev = keyof typeof CHANGES;

export function issue(rev: Rev, seq: number, labels: readonly string[] = ['Small', 'Large, left']): IssueEntry {
  const sha256 = 'ab'.repeat(32);
  return {
    kind: 'issue',
    seq,
    prev: NO_SEAL,
    seal: sha256,
    recorded: DATES[rev],
    distribution: [{ bench: 'heat-exchange', copy: 1 }],
    doc: 'OF-204',
    rev,
    title: 'Overhaul the plate cooler',
    change: { class: rev === 'D' ? 'minor' : 'major', ...CHANGES[rev] },
    affects: rev === 'C' ? ['OF-131', 'OF-240'] : [],
    author: 'shop-lead',
    approver: 'quality-lead',
    approved: DATES[rev],
    effective: DATES[rev],
    snapshot: { file: `of-204-${rev.toLowerCase()}.json`, sha256, format: 1, engine: '0.1.0' },
    cards: labels.map((label, i) => ({
      variant: label.toLowerCase().replace(', ', '-'),
      label,
      path: `C/OF-204/${rev}${label === '' ? '' : `/${label.toUpperCase().replace(', ', '-')}`}`,
      fingerprint: `7C1E04${rev}${i}`,
      digest: sha256,
      sides: 4,
    })),
  };
}

const later = (from: readonly Rev[], before: Rev) =>
  from.map((rev, i) => ({
    rev,
    effective: DATES[rev],
    ...CHANGES[rev],
    compare: `compare/of-204/${(from[i - 1] ?? before).toLowerCase()}-${rev.toLowerCase()}/`,
  }));

export const SUPERSEDED: Answer = {
  path: 'C/OF-204/B/LARGE-LEFT',
  doc: 'OF-204',
  slug: 'of-204',
  title: 'Overhaul the plate cooler',
  rev: 'B',
  label: 'Large, left',
  fingerprint: '7C1E04B1',
  standing: 'superseded',
  effective: DATES.B,
  use: { doc: 'OF-204', title: 'Overhaul the plate cooler', rev: 'D', path: 'C/OF-204/D/LARGE-LEFT' },
  later: later(['C', 'D'], 'B'),
};

/** With a revision to use and comparisons, which the page must not offer. */
export const SUSPENDED: Answer = {
  ...SUPERSEDED,
  standing: 'suspended',
  reason: 'The eye bolts of the lifting frame failed their test; the frame is quarantined until it is proved',
  since: '2026-11-12',
};

export const WITHDRAWN: Answer = {
  ...SUPERSEDED,
  standing: 'withdrawn',
  reason: 'The plate coolers were exchanged for tube coolers in October',
  since: '2026-11-01',
  use: { doc: 'OF-310', title: 'Overhaul the tube cooler', rev: 'A', path: 'procedures/of-310' },
  later: [],
};

const { label: _label, effective: _effective, ...WITHOUT_DAY } = SUPERSEDED;

export const COMING: Answer = {
  ...SUPERSEDED,
  path: 'C/OF-204/E/LARGE-LEFT',
  rev: 'E',
  fingerprint: '0B5563E1',
  standing: 'not yet effective',
  effective: '2026-12-01',
  later: [
    {
      rev: 'E',
      effective: '2026-12-01',
      what: 'Lifting frame with four eye bolts',
      why: 'The frame with two tilted',
      compare: 'compare/of-204/d-e/',
    },
  ],
};

export const DRAFT: Answer = {
  ...WITHOUT_DAY,
  label: 'Large, left',
  path: 'C/OF-204/DRAFT/LARGE-LEFT',
  rev: '',
  fingerprint: '91D2AA07',
  standing: 'draft',
  later: [],
};

export const ANSWERS = { SUPERSEDED, SUSPENDED, WITHDRAWN, COMING, DRAFT } as const;

const entry = {
  seq: 9,
  prev: NO_SEAL,
  seal: 'cd'.repeat(32),
  recorded: '2026-11-12',
  distribution: [],
  doc: 'OF-204',
  by: 'shop-lead',
};

export const SUSPENSION: SuspendEntry = { ...entry, kind: 'suspend', reason: SUSPENDED.reason ?? '' };

export const WITHDRAWAL: WithdrawEntry = {
  ...entry,
  kind: 'withdraw',
  reason: WITHDRAWN.reason ?? '',
  approver: 'quality-lead',
  effective: '2026-11-20',
  replacement: 'OF-310',
};

export const ISSUES = [issue('A', 1), issue('B', 2), issue('C', 3), issue('D', 4)] as const;

export const STATE: DocumentState = {
  doc: 'OF-204',
  title: 'Overhaul the plate cooler',
  standing: 'in force',
  issues: ISSUES,
  current: ISSUES[3],
  coming: [],
  temporaries: [],
  reviews: [],
};

/** What every card of the four issues answers while the document is suspended. */
export const SUSPENDED_ANSWERS: readonly Answer[] = ISSUES.flatMap((i) =>
  i.cards.map(({ path, label, fingerprint }) => ({ ...SUSPENDED, rev: i.rev, path, label, fingerprint })),
);

export const COMPARISON: Comparison = {
  format: 1,
  doc: 'OF-204',
  from: 'B',
  to: 'C',
  changes: [
    {
      kind: 'exchanged',
      of: 'tool',
      words: 'Depth measured with the depth gauge instead of the steel rule',
      before: 'Steel rule, 300 mm',
      after: 'Depth gauge, 0 to 150 mm',
      stepBefore: 9,
      stepAfter: 10,
      variants: [],
    },
    {
      kind: 'value',
      of: 'limit',
      words: 'Height of the plate pack: 412 to 416 mm → 410 to 414 mm',
      before: '412 to 416 mm',
      after: '410 to 414 mm',
      stepBefore: 17,
      stepAfter: 18,
      variants: ['Large, left', 'Large, right'],
    },
    {
      kind: 'value',
      of: 'torque',
      words: 'Torque of the end-cover joint: 85 → 95 N·m',
      before: '85 N·m',
      after: '95 N·m',
      stepBefore: 18,
      stepAfter: 19,
      variants: [],
    },
    {
      kind: 'added',
      of: 'warning',
      words: 'Warning added: the cover weighs more than one person may hold',
      after: 'WARNING. The cover weighs 38 kg and slides off its dowels. Two persons hold it until four nuts are on.',
      stepAfter: 5,
      variants: [],
    },
    {
      kind: 'reworded',
      of: 'step',
      words: 'Step 6 says it in other words',
      before: 'Draw the cover off straight, with both jacking screws turned evenly, until the dowels are free.',
      after:
        'Draw the cover off straight, with both jacking screws turned by half a turn each, until the dowels are free.',
      stepBefore: 5,
      stepAfter: 6,
      variants: [],
    },
    {
      kind: 'moved',
      of: 'step',
      words: 'Step moved: the drain is opened before the cover is loosened',
      stepBefore: 8,
      stepAfter: 4,
      variants: [],
    },
    {
      kind: 'removed',
      of: 'part',
      words: 'Spring washer M12 is not fitted any more',
      before: 'Spring washer M12, 16 pieces',
      stepBefore: 17,
      variants: ['Small'],
    },
    {
      kind: 'reworded',
      of: 'document',
      words: 'Purpose',
      before: 'Overhauls the cooler.',
      after: 'Cleans it.',
      variants: [],
    },
  ],
  marks: {},
};

export const VIEW: ControlView = {
  asOf: SITE.asOf,
  ledger: { entries: 4, head: NO_SEAL },
  documents: [STATE],
  answers: Object.values(ANSWERS),
  open: [],
  received: [],
  reviews: [],
  editions: [],
  drafts: [],
  fingerprints: [],
  comparisons: [
    { doc: 'OF-204', from: 'A', to: 'B', path: 'compare/of-204/a-b/' },
    { doc: 'OF-204', from: 'B', to: 'C', path: 'compare/of-204/b-c/' },
    { doc: 'OF-204', from: 'C', to: 'D', path: 'compare/of-204/c-d/' },
  ],
};

export const FACTS: ComparisonFacts = comparisonFacts(COMPARISON, VIEW, (id) =>
  id === 'shop-lead' ? 'Tomas Hallworth, shop lead' : 'Maren Osei, quality lead',
);
