/** Which columns of each list stand on paper, and how wide: landscape A4 has 273 mm, Letter 255 mm. */

import type { ApprovalKey, ChangeKey } from '../../control/audit-changes.ts';
import type { DistributionKey } from '../../control/audit-distribution.ts';
import type { CopyKey, PageKey, RegisterKey } from '../../control/audit-documents.ts';
import type { FeedbackKey, OutsideKey, ReviewKey, TemporaryKey } from '../../control/audit-upkeep.ts';
import type { PaperColumn } from './paper-table.ts';

interface Of<Key extends string> extends PaperColumn {
  readonly keys: readonly Key[];
}

const DOC = 17;
const DATE = 18;
const NAME = 28;
/** 32 digits of a checksum at 9 pt. */
const HASH = 54;

const register: readonly Of<RegisterKey>[] = [
  { head: 'Document', keys: ['doc'], mm: DOC, weight: 'bold' },
  { head: 'Title', keys: ['title'], share: 1.4 },
  { head: 'Rev', keys: ['rev'], mm: 8, weight: 'bold' },
  { head: 'Effective', keys: ['effective'], mm: DATE },
  { head: 'Standing', keys: ['standing', 'detail'], share: 1.2, weight: 'bold', list: true },
  { head: 'Approved by', keys: ['approver'], mm: 23 },
  { head: 'Owner', keys: ['owner'], mm: 23 },
  { head: 'Review due', keys: ['reviewDue', 'reviewState'], mm: DATE },
  { head: 'Fingerprints', keys: ['fingerprints'], mm: 19, list: true },
  { head: 'SHA-256 of the snapshot', keys: ['snapshot'], mm: HASH, every: 32 },
];

const pages: readonly Of<PageKey>[] = [
  { head: 'Document', keys: ['doc'], mm: DOC, weight: 'bold' },
  { head: 'Title', keys: ['title'], share: 2 },
  { head: 'Variant', keys: ['variant'], share: 1.1 },
  { head: 'Rev', keys: ['rev'], mm: 8, weight: 'bold' },
  { head: 'Effective', keys: ['effective'], mm: DATE },
  { head: 'Sides', keys: ['sides'], mm: 9 },
  { head: 'Fingerprint', keys: ['fingerprint'], mm: 19, weight: 'semibold' },
  { head: 'With temporary change', keys: ['temporary'], share: 0.9 },
  { head: 'Address on the site', keys: ['path'], mm: 48 },
];

const copies: readonly Of<CopyKey>[] = [
  { head: 'Copy', keys: ['copy'], mm: 9, align: 'right', weight: 'bold' },
  { head: 'Bench', keys: ['bench'], mm: 34, weight: 'semibold' },
  { head: 'Place', keys: ['place'], share: 1 },
  { head: 'Lead', keys: ['lead'], mm: NAME },
  { head: 'Documents in force in its binder', keys: ['holds'], share: 1 },
  { head: 'Not to hang there now', keys: ['notHung'], mm: 44, list: true },
];

const changes: readonly Of<ChangeKey>[] = [
  { head: 'Line', keys: ['seq'], mm: 8, align: 'right' },
  { head: 'Document', keys: ['doc'], mm: DOC, weight: 'bold' },
  { head: 'Rev', keys: ['rev'], mm: 8, weight: 'bold' },
  { head: 'Class', keys: ['class'], mm: 11 },
  { head: 'What', keys: ['what'], share: 1.25 },
  { head: 'Why', keys: ['why'], share: 1 },
  { head: 'Affected', keys: ['affects'], mm: DOC, list: true },
  { head: 'Author, approver', keys: ['author', 'approver'], mm: NAME },
  { head: 'Approved, effective', keys: ['approved', 'effective'], mm: 24 },
  { head: 'SHA-256 of the snapshot', keys: ['snapshot'], mm: HASH, every: 32 },
];

const approvals: readonly Of<ApprovalKey>[] = [
  { head: 'Line', keys: ['seq'], mm: 8, align: 'right' },
  { head: 'What was approved', keys: ['what'], share: 1, weight: 'semibold' },
  { head: 'Class', keys: ['class'], mm: 12 },
  { head: 'Asked for by', keys: ['author'], mm: 36 },
  { head: 'Approved by', keys: ['approver'], mm: 36 },
  { head: 'Approved on', keys: ['approved'], mm: 20 },
  { head: 'Signed', keys: ['signed'], mm: 12, weight: 'semibold' },
  { head: 'Key', keys: ['key'], mm: 30 },
  { head: 'Result', keys: ['result'], mm: 32 },
];

const distribution: readonly Of<DistributionKey>[] = [
  { head: 'Document', keys: ['doc'], mm: DOC, weight: 'bold' },
  { head: 'Copy', keys: ['copy'], mm: 9, align: 'right' },
  { head: 'Bench', keys: ['bench', 'place'], share: 1, weight: 'semibold' },
  { head: 'Notice', keys: ['notice'], mm: 15 },
  { head: 'Because of', keys: ['cause'], mm: 42 },
  { head: 'Class', keys: ['class'], mm: 12 },
  { head: 'Due', keys: ['due'], mm: DATE },
  { head: 'Days allowed', keys: ['limit'], mm: 18 },
  { head: 'State', keys: ['state', 'age'], mm: 22, weight: 'semibold' },
  { head: 'Receipt', keys: ['received', 'by'], mm: 32 },
];

const reviews: readonly Of<ReviewKey>[] = [
  { head: 'Document', keys: ['doc'], mm: DOC, weight: 'bold' },
  { head: 'Title', keys: ['title'], share: 1 },
  { head: 'Owner', keys: ['owner'], mm: NAME },
  { head: 'Interval', keys: ['interval'], mm: 20 },
  { head: 'Last', keys: ['last'], mm: DATE },
  { head: 'Due', keys: ['due'], mm: DATE },
  { head: 'State', keys: ['state'], mm: DATE, weight: 'semibold' },
  { head: 'Reviews entered', keys: ['done'], share: 1.4, list: true },
];

const outside: readonly Of<OutsideKey>[] = [
  { head: 'Document', keys: ['document', 'kind'], share: 1.1, weight: 'semibold' },
  { head: 'Edition held', keys: ['edition', 'received'], mm: 30 },
  { head: 'Owner', keys: ['owner', 'kept'], mm: 36 },
  { head: 'Procedure', keys: ['doc'], mm: DOC, weight: 'bold' },
  { head: 'Rests on edition', keys: ['rests'], mm: 32 },
  { head: 'Numbers that rest on it', keys: ['numbers'], share: 1.2, list: true },
  { head: 'Compared with the edition held', keys: ['confirmed'], share: 1 },
];

const temporary: readonly Of<TemporaryKey>[] = [
  { head: 'Number', keys: ['number'], mm: 15, weight: 'bold' },
  { head: 'Document', keys: ['doc'], mm: DOC, weight: 'semibold' },
  { head: 'Rev', keys: ['rev'], mm: 8, weight: 'semibold' },
  { head: 'Step', keys: ['step'], mm: 9 },
  { head: 'What is done otherwise', keys: ['text'], share: 1.4 },
  { head: 'Reason', keys: ['reason'], share: 1 },
  { head: 'Scope', keys: ['scope'], mm: 32, list: true },
  { head: 'Author, approver, approved', keys: ['author', 'approver', 'approved'], mm: 36 },
  { head: 'From, until', keys: ['from', 'until'], mm: DATE },
  { head: 'State', keys: ['state'], mm: 34, weight: 'semibold' },
];

const feedback: readonly Of<FeedbackKey>[] = [
  { head: 'Number', keys: ['number'], mm: 15, weight: 'bold' },
  { head: 'Document', keys: ['doc'], mm: DOC, weight: 'semibold' },
  { head: 'Rev', keys: ['rev'], mm: 8, weight: 'semibold' },
  { head: 'Step', keys: ['step'], mm: 9 },
  { head: 'From', keys: ['from', 'on'], mm: 36 },
  { head: 'What it says', keys: ['text'], share: 1.1 },
  { head: 'State', keys: ['state'], mm: 18, weight: 'semibold' },
  { head: 'Answer', keys: ['answer'], share: 1 },
];

/** By the name of the list; a list without an entry is too wide for paper and stands in its CSV file only. */
export const PAPER_COLUMNS: ReadonlyMap<string, readonly PaperColumn[]> = new Map<string, readonly PaperColumn[]>([
  ['register', register],
  ['effective-pages', pages],
  ['copies', copies],
  ['change-records', changes],
  ['approvals', approvals],
  ['distribution', distribution],
  ['open-receipts', distribution],
  ['reviews', reviews],
  ['outside-documents', outside],
  ['temporary-changes', temporary],
  ['feedback', feedback],
]);
