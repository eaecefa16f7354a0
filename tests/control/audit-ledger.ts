/** A short history of control made by hand: several acts of each kind. */

import type { Entry, IssuedCard, IssueEntry, Ledger } from '../../src/control/types.ts';

const hex = (seed: number, length = 64): string =>
  Array.from({ length }, (_, i) => ((seed * 7 + i * (seed + 3)) % 16).toString(16)).join('');

export function cards(doc: string, rev: string, seed: number, labels: readonly string[]): readonly IssuedCard[] {
  return labels.map((label, i) => ({
    variant: label.toLowerCase(),
    label,
    path: ['C', doc, rev, label.toUpperCase()].filter((t) => t !== '').join('/'),
    fingerprint: hex(seed + i, 8).toUpperCase(),
    digest: hex(seed + i),
    sides: 2 + i,
  }));
}

/** What an entry says, without what every line has. */
type Said<E> = E extends Entry ? Omit<E, 'seq' | 'prev' | 'seal' | 'recorded'> : never;

const everywhere = [
  { bench: 'heat', copy: 1 },
  { bench: 'pumps', copy: 2 },
];

function issue(
  doc: string,
  rev: string,
  title: string,
  effective: string,
  labels: readonly string[],
  more: Partial<Pick<IssueEntry, 'change' | 'affects' | 'signature'>> = {},
): Said<IssueEntry> {
  const seed = doc.charCodeAt(4) + rev.charCodeAt(0);
  return {
    kind: 'issue',
    distribution: everywhere,
    doc,
    rev,
    title,
    change: { class: 'major', what: 'First issue', why: 'New procedure' },
    affects: [],
    author: 'petr',
    approver: 'maren',
    approved: '2026-01-05',
    effective,
    snapshot: { file: `${doc}-${rev}.json`, sha256: hex(seed + 5), format: 1, engine: '0.1.0' },
    cards: cards(doc, rev, seed, labels),
    ...more,
  };
}

const signature = { by: 'maren', key: '00aa11bb22cc33dd', value: 'c2lnbmVk' };

const ACTS: readonly (readonly [string, Said<Entry>])[] = [
  ['2026-01-06', issue('OF-104', 'A', 'Overhaul of the plate cooler', '2026-01-10', ['Large', 'Small'])],
  ['2026-01-06', issue('OF-231', 'A', 'Renew the gasket of a raw-water flange', '2026-01-10', [''])],
  ['2026-01-07', issue('OF-340', 'A', 'Repack the stern gland', '2026-01-12', [''])],
  ['2026-01-08', issue('OF-450', 'A', 'Rig the slip cradle', '2026-01-12', [''])],
  [
    '2026-03-01',
    issue('OF-104', 'B', 'Overhaul of the plate cooler', '2026-03-02', ['Large', 'Small'], {
      change: {
        class: 'major',
        what: 'Torque of the end-cover joint 85 → 95 N·m, and the "tell-tale" is looked at,\nthen wiped',
        why: '=SUM(1,2) stood in a report, and the joint wept',
      },
      affects: ['OF-231', 'OF-340'],
      signature,
    }),
  ],
  [
    '2026-03-03',
    {
      kind: 'suspend',
      distribution: everywhere,
      doc: 'OF-340',
      reason: 'The gland follower cracked on two boats',
      by: 'tomas',
    },
  ],
  [
    '2026-03-04',
    {
      kind: 'withdraw',
      distribution: everywhere,
      doc: 'OF-450',
      reason: 'The cradle was scrapped',
      by: 'petr',
      approver: 'maren',
      effective: '2026-03-05',
      replacement: 'OF-231',
    },
  ],
  [
    '2026-03-05',
    {
      kind: 'temporary',
      distribution: everywhere,
      number: 'TC-07',
      doc: 'OF-104',
      rev: 'B',
      step: 12,
      text: 'Use the long socket: the short one fouls the rib.',
      reason: 'The casting was changed',
      scope: { benches: ['heat'], variants: ['large'], serials: { from: 1001, to: 1040 } },
      author: 'petr',
      approver: 'maren',
      approved: '2026-03-05',
      from: '2026-03-06',
      until: '2026-04-02',
      signature,
    },
  ],
  [
    '2026-03-06',
    {
      kind: 'temporary',
      distribution: everywhere,
      number: 'TC-08',
      doc: 'OF-231',
      rev: 'A',
      step: 3,
      text: 'Measure the gap twice.',
      reason: 'A gauge was away',
      scope: {},
      author: 'petr',
      approver: 'maren',
      approved: '2026-03-06',
      from: '2026-03-06',
      until: '2026-03-30',
    },
  ],
  [
    '2026-03-09',
    { kind: 'temporary-end', distribution: everywhere, number: 'TC-08', reason: 'The gauge is back', by: 'tomas' },
  ],
  ['2026-03-09', { kind: 'receipt', notice: 'CN-5', bench: 'heat', copy: 1, by: 'petr', on: '2026-03-04' }],
  [
    '2026-03-10',
    { kind: 'review', doc: 'OF-231', rev: 'A', by: 'maren', on: '2026-03-10', finding: 'Still as the work is done' },
  ],
  [
    '2026-03-12',
    issue('OF-231', 'B', 'Renew the gasket of a raw-water flange', '2026-12-01', [''], {
      change: { class: 'minor', what: 'Spelling of two tools', why: 'Reported by the bench' },
    }),
  ],
  [
    '2026-03-25',
    { kind: 'suspend', distribution: everywhere, doc: 'OF-231', reason: 'Written after the day', by: 'tomas' },
  ],
];

/** The ledger; seals are numbers that only look like ones. */
export const LEDGER: Ledger = (() => {
  const entries = ACTS.map(
    ([recorded, said], i): Entry => ({
      ...said,
      seq: i + 1,
      recorded,
      prev: i === 0 ? '0'.repeat(64) : hex(i),
      seal: hex(i + 1),
    }),
  );
  return { entries, head: entries.at(-1)?.seal ?? '' };
})();
