/** Lists of the audit pack that say what was decided: change records, approvals, and the ledger line by line. */

import { type AuditTable, BETWEEN, type Names } from './audit-table.ts';
import type { Entry, Ledger } from './types.ts';

export type ChangeKey =
  | 'seq'
  | 'doc'
  | 'rev'
  | 'title'
  | 'class'
  | 'what'
  | 'why'
  | 'affects'
  | 'author'
  | 'approver'
  | 'approved'
  | 'effective'
  | 'snapshot'
  | 'comparison';

/** One row an issue, in the order of the ledger. */
export function changeRecordsTable({ entries }: Ledger, names: Names): AuditTable<ChangeKey> {
  return {
    name: 'change-records',
    title: 'Change records',
    says: 'Every issue in the order of the ledger: what changed and why, who wrote and who approved it.',
    empty: 'Nothing has been issued.',
    columns: [
      ['seq', 'Line'],
      ['doc', 'Document'],
      ['rev', 'Revision'],
      ['title', 'Title'],
      ['class', 'Class'],
      ['what', 'What'],
      ['why', 'Why'],
      ['affects', 'Affected documents'],
      ['author', 'Author'],
      ['approver', 'Approver'],
      ['approved', 'Approved'],
      ['effective', 'Effective'],
      ['snapshot', 'SHA-256 of the snapshot'],
      ['comparison', 'SHA-256 of the comparison'],
    ],
    rows: entries.flatMap((e) =>
      e.kind !== 'issue'
        ? []
        : [
            {
              seq: String(e.seq),
              doc: e.doc,
              rev: e.rev,
              title: e.title,
              class: e.change.class,
              what: e.change.what,
              why: e.change.why,
              affects: e.affects.join(BETWEEN),
              author: names.person(e.author),
              approver: names.person(e.approver),
              approved: e.approved,
              effective: e.effective,
              snapshot: e.snapshot.sha256,
              comparison: e.comparison?.sha256 ?? '',
            },
          ],
    ),
  };
}

export type ApprovalKey = 'seq' | 'what' | 'class' | 'author' | 'approver' | 'approved' | 'signed' | 'key' | 'result';

/** What needs an approver, in the order of the ledger. A safety stop needs none. */
export function approvalsTable({ entries }: Ledger, names: Names): AuditTable<ApprovalKey> {
  return {
    name: 'approvals',
    title: 'Approvals',
    says: 'Every act that needs an approver: issues, withdrawals, temporary changes, ends of suspensions. A safety stop needs none.',
    empty: 'Nothing has been approved.',
    columns: [
      ['seq', 'Line'],
      ['what', 'What was approved'],
      ['class', 'Class'],
      ['author', 'Asked for by'],
      ['approver', 'Approved by'],
      ['approved', 'Approved on'],
      ['signed', 'Signed'],
      ['key', 'Key'],
      ['result', 'Result'],
    ],
    rows: entries.flatMap((e) => {
      const act = approvalOf(e);
      if (act === undefined) return [];
      const { signature } = e;
      return [
        {
          seq: String(e.seq),
          what: act.what,
          class: act.class,
          author: names.person(act.author),
          approver: names.person(act.approver),
          approved: act.approved,
          signed: signature === undefined ? 'no' : 'yes',
          key: signature?.key ?? '',
          // The ledger was verified before this was drawn up: a signature that does not hold stops the build.
          result: signature === undefined ? 'name in the ledger' : 'signature holds',
        },
      ];
    }),
  };
}

interface Approval {
  readonly what: string;
  readonly class: string;
  readonly author: string;
  readonly approver: string;
  readonly approved: string;
}

function approvalOf(e: Entry): Approval | undefined {
  switch (e.kind) {
    case 'issue':
      return { ...e, what: `issue of ${e.doc} Rev ${e.rev}`, class: e.change.class };
    case 'temporary':
      return { ...e, what: `temporary change ${e.number} to ${e.doc} Rev ${e.rev}`, class: 'major' };
    case 'withdraw':
      return { ...e, what: `withdrawal of ${e.doc}`, class: 'major', author: e.by, approved: e.recorded };
    case 'reinstate':
      return {
        ...e,
        what: `end of the suspension of ${e.doc}`,
        class: 'major',
        author: e.by,
        approved: e.recorded,
      };
    default:
      return undefined;
  }
}

export type LedgerKey = 'seq' | 'recorded' | 'kind' | 'of' | 'by' | 'says' | 'key' | 'prev' | 'seal';

/** The ledger line by line, with the seal of each line and of the one before it. */
export function ledgerTable({ entries }: Ledger, names: Names): AuditTable<LedgerKey> {
  return {
    name: 'ledger',
    title: 'Ledger',
    says: 'Every line of the ledger in its order. Each line bears the seal of the one before it, so that no line can be altered, taken out or moved unseen.',
    empty: 'The ledger has no line.',
    columns: [
      ['seq', 'Line'],
      ['recorded', 'Written on'],
      ['kind', 'Act'],
      ['of', 'Of'],
      ['by', 'By'],
      ['says', 'What it says'],
      ['key', 'Signed with key'],
      ['prev', 'Seal of the line before'],
      ['seal', 'Seal of this line'],
    ],
    rows: entries.map((e) => ({
      seq: String(e.seq),
      recorded: e.recorded,
      kind: e.kind,
      ...lineOf(e, names),
      key: e.signature?.key ?? '',
      prev: e.prev,
      seal: e.seal,
    })),
  };
}

function lineOf(e: Entry, names: Names): Pick<Record<LedgerKey, string>, 'of' | 'by' | 'says'> {
  switch (e.kind) {
    case 'issue':
      return {
        of: `${e.doc} Rev ${e.rev}`,
        by: names.person(e.approver),
        says: `${e.change.class}, effective ${e.effective}: ${e.change.what}`,
      };
    case 'suspend':
    case 'reinstate':
      return { of: e.doc, by: names.person(e.by), says: e.reason };
    case 'withdraw':
      return { of: e.doc, by: names.person(e.by), says: `effective ${e.effective}: ${e.reason}` };
    case 'temporary':
      return {
        of: `${e.number}, ${e.doc} Rev ${e.rev}`,
        by: names.person(e.approver),
        says: `${e.from} to ${e.until}, before step ${e.step}: ${e.text}`,
      };
    case 'temporary-end':
      return { of: e.number, by: names.person(e.by), says: e.reason };
    case 'receipt':
      return {
        of: `${e.notice}, ${names.bench(e.bench)}, copy ${e.copy}`,
        by: names.person(e.by),
        says: `confirmed on ${e.on}`,
      };
    case 'review':
      return { of: `${e.doc} Rev ${e.rev}`, by: names.person(e.by), says: `reviewed on ${e.on}: ${e.finding}` };
  }
}
