/** Lists of the audit pack that say who was told: copy holders with their notices, and the receipts that are missing. */

import type { ResolvedShop } from '../resolve/types.ts';
import { type AuditTable, days, type Names } from './audit-table.ts';
import type { ControlView, Notice } from './types.ts';

export type DistributionKey =
  | 'doc'
  | 'bench'
  | 'place'
  | 'copy'
  | 'notice'
  | 'cause'
  | 'class'
  | 'due'
  | 'limit'
  | 'received'
  | 'by'
  | 'age'
  | 'state';

/** What the causes of a notice are called. */
export const CAUSES: Readonly<Record<Notice['cause'], string>> = {
  issue: 'new issue',
  suspend: 'suspended',
  reinstate: 'in use again',
  withdraw: 'withdrawn',
  temporary: 'temporary change',
  'temporary-end': 'temporary change ended',
  'temporary-expiry': 'temporary change expired',
};

/** `overdue`, `waiting`, `not due yet`, `received` */
export function receiptState(notice: Notice): string {
  if (notice.receipt !== undefined) return 'received';
  if (notice.overdue) return 'overdue';
  return notice.age === undefined ? 'not due yet' : 'waiting';
}

/** Every copy holder of every document with its notices; a holder that never had one stands there without. */
export function distributionTable(view: ControlView, shop: ResolvedShop, names: Names): AuditTable<DistributionKey> {
  const notices = Map.groupBy([...view.open, ...view.received], (n) => n.doc);
  const rows = view.documents.flatMap(({ doc }) => {
    const own = (notices.get(doc) ?? []).sort(byBenchAndNumber);
    const told = new Set(own.map((n) => n.bench));
    const silent = shop.benches.filter((b) => b.binder.includes(doc) && !told.has(b.id));
    return [
      ...own.map((n) => noticeRow(n, names)),
      ...silent.map((b) => ({
        ...NO_NOTICE,
        doc,
        bench: b.name,
        place: b.place,
        copy: String(b.copy),
        state: 'no notice',
      })),
    ];
  });
  return {
    name: 'distribution',
    title: 'Distribution and receipts',
    says: 'By document and copy: who holds it, which change notices went there, and whether the holder has confirmed them. A notice that a newer one replaced is not listed.',
    empty: 'No document is distributed.',
    columns: COLUMNS,
    rows,
  };
}

/** Notices without a receipt, in the order of the view: oldest first. */
export function openReceiptsTable(view: ControlView, names: Names): AuditTable<DistributionKey> {
  return {
    name: 'open-receipts',
    title: 'Open receipts',
    says: 'Change notices that no holder has confirmed yet, oldest first, with the days since they were due.',
    empty: 'No receipt is open.',
    columns: COLUMNS,
    rows: view.open.map((n) => noticeRow(n, names)),
  };
}

const COLUMNS: AuditTable<DistributionKey>['columns'] = [
  ['doc', 'Document'],
  ['copy', 'Copy number'],
  ['bench', 'Bench'],
  ['place', 'Place'],
  ['notice', 'Notice'],
  ['cause', 'Because of'],
  ['class', 'Class'],
  ['due', 'Due'],
  ['limit', 'Days allowed'],
  ['state', 'State'],
  ['age', 'Age'],
  ['received', 'Receipt'],
  ['by', 'Signed by'],
];

const NO_NOTICE = { notice: '', cause: '', class: '', due: '', limit: '', received: '', by: '', age: '' };

function noticeRow(n: Notice, names: Names): Record<DistributionKey, string> {
  return {
    doc: n.doc,
    bench: n.benchName,
    place: n.place,
    copy: String(n.copy),
    notice: n.number,
    cause: CAUSES[n.cause],
    class: n.class,
    due: n.due,
    limit: String(n.limitDays),
    received: n.receipt?.on ?? '',
    by: names.person(n.receipt?.by),
    age: n.receipt !== undefined || n.age === undefined ? '' : days(n.age),
    state: receiptState(n),
  };
}

function byBenchAndNumber(a: Notice, b: Notice): number {
  return a.copy - b.copy || numberOf(a) - numberOf(b) || (a.number < b.number ? -1 : 1);
}

/** Notices are numbered after lines of the ledger: `CN-9` stands before `CN-10`. */
function numberOf(notice: Notice): number {
  return Number(/\d+/u.exec(notice.number)?.[0] ?? 0);
}
