/** Change notices made by hand: one a cause at least, open and received, overdue and not yet due. */

import type { Notice } from '../../src/control/types.ts';
import { cards, LEDGER } from './audit-ledger.ts';

/** Undefined leaves a field out. */
type Optional = 'approver' | 'age' | 'receipt';
type Changed = Partial<Omit<Notice, Optional>> & { readonly [K in Optional]?: Notice[K] | undefined };

/** A notice for the first bench unless said otherwise. */
export function notice(more: Changed & Pick<Notice, 'number' | 'cause'>): Notice {
  const all: Omit<Notice, Optional> & Pick<Changed, Optional> = {
    doc: 'OF-104',
    title: 'Overhaul of the plate cooler',
    bench: 'heat',
    benchName: 'Heat exchange',
    place: 'Machine shop, north wall under the crane rail',
    copy: 1,
    copies: 2,
    class: 'major',
    due: '2026-03-02',
    limitDays: 3,
    takeOut: card('A', false),
    putIn: card('B', true),
    what: 'Torque of the end-cover joint 85 → 95 N·m',
    why: 'The joint wept at the sea trial',
    approver: 'maren',
    age: 18,
    overdue: true,
    ...more,
  };
  const { approver, age, receipt, ...rest } = all;
  return {
    ...rest,
    ...(approver === undefined ? {} : { approver }),
    ...(age === undefined ? {} : { age }),
    ...(receipt === undefined ? {} : { receipt }),
  };
}

/** Cards of a notice: both variants of one revision. */
export function card(rev: string, file: boolean, changes?: readonly string[]): Notice['putIn'] {
  return cards('OF-104', rev, '1'.charCodeAt(0) + rev.charCodeAt(0), ['Large', 'Small']).map((c) => ({
    doc: 'OF-104',
    rev,
    label: c.label,
    sides: c.sides,
    fingerprint: c.fingerprint,
    ...(file ? { file: `cards/OF-104-${c.variant.toUpperCase()}.pdf` } : {}),
    ...(changes === undefined ? {} : { with: changes }),
  }));
}

const second = { bench: 'pumps', benchName: 'Pumps and valves', place: 'Wet end beside the test tank', copy: 2 };
const receipt = LEDGER.entries.find((e) => e.kind === 'receipt');

/** One notice a cause at least, open and received, overdue and not yet due. */
export const NOTICES: readonly Notice[] = [
  notice({ number: 'CN-5', cause: 'issue', ...second }),
  notice({ number: 'CN-5', cause: 'issue', overdue: false, ...(receipt?.kind === 'receipt' ? { receipt } : {}) }),
  notice({
    number: 'CN-6',
    cause: 'suspend',
    doc: 'OF-340',
    title: 'Repack the stern gland',
    due: '2026-03-03',
    limitDays: 1,
    takeOut: card('A', false)
      .slice(0, 1)
      .map((c) => ({ ...c, doc: 'OF-340', label: '' })),
    putIn: [],
    what: 'Suspended: no copy may be used',
    why: 'The gland follower cracked on two boats',
    approver: undefined,
  }),
  notice({
    number: 'CN-7',
    cause: 'withdraw',
    doc: 'OF-450',
    title: 'Rig the slip cradle',
    putIn: [],
    what: 'Withdrawn: use OF-231',
    age: 1,
    overdue: false,
  }),
  notice({
    number: 'CN-8',
    cause: 'temporary',
    takeOut: card('B', false).slice(0, 1),
    putIn: card('B', true, ['TC-07']).slice(0, 1),
    age: 14,
  }),
  notice({
    number: 'CN-10',
    cause: 'temporary-end',
    takeOut: card('B', false, ['TC-08']),
    approver: undefined,
    age: 0,
    overdue: false,
  }),
  notice({ number: 'CN-8-END', cause: 'temporary-expiry', takeOut: card('B', false, ['TC-07']), approver: undefined }),
  notice({ number: 'CN-12', cause: 'reinstate', takeOut: [], limitDays: 0 }),
  notice({ number: 'CN-13', cause: 'issue', class: 'minor', due: '2026-12-01', age: undefined, overdue: false }),
  notice({ number: 'CN-1', cause: 'issue', takeOut: [], putIn: card('A', true) }),
];
