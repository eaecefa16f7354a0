/** The folder that an auditor gets: every list of document control as CSV, and a text that says what each file is. */

import type { ResolvedShop } from '../resolve/types.ts';
import { approvalsTable, changeRecordsTable, ledgerTable } from './audit-changes.ts';
import { distributionTable, openReceiptsTable } from './audit-distribution.ts';
import { copiesTable, effectivePagesTable, registerTable } from './audit-documents.ts';
import { type AuditTable, namesOf, tableCsv } from './audit-table.ts';
import { feedbackTable, outsideTable, reviewsTable, temporaryTable } from './audit-upkeep.ts';
import { sha256 } from './canonical.ts';
import type { ControlView, Ledger } from './types.ts';

export interface PackFile {
  readonly name: string;
  readonly text: string;
}

/** Name of the list of checksums within the pack; it covers all files but itself. */
export const CHECKSUMS = 'checksums.txt';

/** The lists of the pack in its order. ledger: verified. What was written after the view's day stands in the list of its lines alone. */
export function auditTables(view: ControlView, shop: ResolvedShop, ledger: Ledger): readonly AuditTable[] {
  const names = namesOf(shop);
  const seen: Ledger = { ...ledger, entries: ledger.entries.filter((e) => e.recorded <= view.asOf) };
  return [
    registerTable(view, shop, names),
    effectivePagesTable(view, names),
    copiesTable(view, shop, names),
    changeRecordsTable(seen, names),
    approvalsTable(seen, names),
    distributionTable(view, shop, names),
    openReceiptsTable(view, names),
    reviewsTable(view, names),
    outsideTable(view, shop, names),
    temporaryTable(view, seen, names),
    feedbackTable(shop, names),
    ledgerTable(ledger, names),
  ];
}

/**
 * Files of the pack, sorted by name. `others`: further files that are put beside them (the PDF, a copy of the ledger), with one
 * sentence each for the README; their bytes go into the checksums only.
 */
export function auditPack(
  view: ControlView,
  shop: ResolvedShop,
  ledger: Ledger,
  others: readonly { readonly name: string; readonly bytes: Uint8Array; readonly says: string }[] = [],
): readonly PackFile[] {
  const tables = auditTables(view, shop, ledger);
  const files: PackFile[] = tables.map((t) => ({ name: `${t.name}.csv`, text: tableCsv(t) }));
  files.push({ name: 'README.txt', text: readme(view, shop, tables, others) });
  const sums = [...files.map((f) => ({ name: f.name, bytes: Buffer.from(f.text, 'utf8') })), ...others]
    .map(({ name, bytes }) => ({ name, sum: sha256(bytes) }))
    .sort(byName);
  files.push({ name: CHECKSUMS, text: sums.map(({ name, sum }) => `${sum}  ${name}\n`).join('') });
  return files.sort(byName);
}

function byName(a: { readonly name: string }, b: { readonly name: string }): number {
  return a.name < b.name ? -1 : a.name > b.name ? 1 : 0;
}

function readme(
  view: ControlView,
  shop: ResolvedShop,
  tables: readonly AuditTable[],
  others: readonly { readonly name: string; readonly says: string }[],
): string {
  const files = [
    ...tables.map((t) => ({
      name: `${t.name}.csv`,
      says: `${t.says} ${t.rows.length === 0 ? t.empty : rowCount(t.rows.length)}`,
    })),
    ...others,
    { name: CHECKSUMS, says: 'SHA-256 of every other file of this folder.' },
  ];
  const paragraphs = [
    `Audit pack of document control: ${shop.info.name}`,
    [
      `As of        ${view.asOf}`,
      `Ledger       ${view.ledger.entries} lines, the last one written on ${view.ledger.last ?? 'no day yet'}`,
      `Ledger head  ${view.ledger.head}`,
    ].join('\n'),
    'The files',
    files.map((f) => `${f.name}\n${wrapped(f.says, '    ')}`).join('\n'),
    'How to read the CSV files',
    wrapped(
      'UTF-8, parts between commas, one head row (RFC 4180). Take every column in as text: a spreadsheet otherwise turns a fingerprint such as 12345E67 into a number. A cell that a spreadsheet would take for a formula has an apostrophe before it. Several things in one cell stand between semicolons. Dates are year-month-day.',
    ),
    'How to check that nothing was altered',
    wrapped(`1. This folder: "sha256sum -c ${CHECKSUMS}" compares every file with its checksum.`),
    wrapped(
      '2. The published folder: "npm run verify -- DIST" (DIST is the published folder) compares every file with the manifest, goes through the ledger line by line, checks every snapshot against its SHA-256 and every signature against the public key of its approver, and names each file that differs.',
    ),
    wrapped(
      '3. The ledger: the head above is the seal of its last line, a SHA-256 over the line and with it over all lines before. Look up a head that you noted at an earlier audit: it must still stand in ledger.csv as the seal of a line.',
    ),
    wrapped(
      '4. A card at a bench: its fingerprint stands at its foot and in effective-pages.csv. A fingerprint that is not in that file is on a card that must not be used.',
    ),
    wrapped(
      'What this cannot show: whether a copy truly left the bench, and whether somebody works from a card that nobody entered. Look at the benches.',
    ),
  ];
  return `${paragraphs.join('\n\n')}\n`;
}

function rowCount(count: number): string {
  return count === 1 ? '1 row.' : `${count} rows.`;
}

/** Lines of at most 78 signs. */
function wrapped(text: string, indent = ''): string {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(' ')) {
    if (line !== indent && line.length + 1 + word.length > 78) {
      lines.push(line);
      line = indent;
    }
    line += line === indent ? word : ` ${word}`;
  }
  return [...lines, line].join('\n');
}
