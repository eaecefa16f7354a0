/** The audit pack on paper: a cover that says how things stand, then every list that fits a sheet. */

import { auditTables } from '../../control/audit-pack.ts';
import type { AuditTable } from '../../control/audit-table.ts';
import type { ControlView, Ledger } from '../../control/types.ts';
import type { ResolvedShop } from '../../resolve/types.ts';
import type { Chunk } from '../card/chunks.ts';
import { textWidthOf } from '../card/format.ts';
import { type Block, mm, overlay, shift, stack } from '../card/items.ts';
import { tableOf } from '../card/paginate.ts';
import { paragraph, type Setting, span } from '../card/setting.ts';
import { type Column, layTable, shareWidth, type TableRow } from '../card/table.ts';
import type { Faces } from '../type/index.ts';
import { type StandingRow, standingRows } from './audit-standing.ts';
import { controlFrame, lineCount } from './master-list.ts';
import { PAPER_COLUMNS } from './paper-columns.ts';
import { sectionChunks } from './paper-table.ts';
import { layoutSheets, NO_RANGE, type SheetsLayout, sheetFormat, sheetSetting } from './sheets.ts';

/** Lists without columns of their own stand in the CSV files of the pack only. */
export function layoutAuditPack(view: ControlView, shop: ResolvedShop, ledger: Ledger, faces: Faces): SheetsLayout {
  const setting = sheetSetting(faces, sheetFormat(shop.info, true));
  const frame = controlFrame('Audit pack', view, shop);
  const all = auditTables(view, shop, ledger);
  const tables = all.filter((t) => PAPER_COLUMNS.has(t.name));
  const lists = tables.flatMap((t, i) => sectionChunks(setting, t, PAPER_COLUMNS.get(t.name) ?? [], i + 1));
  const standing = standingRows(view, shop, tables);
  const withPages = (pageOf: (title: string) => string): SheetsLayout =>
    layoutSheets(setting, frame, [coverChunks(setting, view, shop, tables, standing, pageOf), lists]);
  // Laid out once without and once with the numbers of the pages: they change no height.
  const starts = new Map<string, string>();
  withPages(() => '0').pages.forEach((page, i) => {
    for (const b of page.body) if (b.bookmark !== undefined) starts.set(b.bookmark, String(i + 1));
  });
  return withPages((title) => starts.get(title) ?? '');
}

/** Title, then side by side how things stand and where each list begins, then how to check the pack. */
function coverChunks(
  setting: Setting,
  view: ControlView,
  shop: ResolvedShop,
  tables: readonly AuditTable[],
  standing: readonly StandingRow[],
  pageOf: (title: string) => string,
): Chunk[] {
  const { type } = setting.format;
  const width = textWidthOf(setting.format);
  const right = mm(86);
  const left = width - right - mm(12);
  const title = stack(
    [
      paragraph(setting, [span(shop.info.name, type.title, 'semibold')], width, { lead: mm(8) }),
      paragraph(setting, [span('Audit pack: document control', 26, 'bold')], width, { tag: 'H1', lead: mm(12) }),
      paragraph(
        setting,
        [span(`As of ${view.asOf}`, type.title, 'bold', 'accent'), span(` · ledger of ${lineCount(view)}`, 11.5)],
        width,
        { lead: mm(7) },
      ),
    ],
    mm(0.6),
  );
  const tablesBeside = overlay(
    standingBlock(setting, standing, left),
    shift(contentsBlock(setting, tables, pageOf, right), left + mm(12), 0),
  );
  const base = { keepWithNext: false, what: 'the cover', range: NO_RANGE };
  return [
    { ...base, block: title, gap: 0, bookmark: 'Cover' },
    { ...base, block: tablesBeside, gap: mm(6) },
    { ...base, block: checkBlock(setting, view, width), gap: mm(6) },
  ];
}

function standingBlock(setting: Setting, rows: readonly StandingRow[], width: number): Block {
  const { table: size } = setting.format.type;
  const cells = rows.map(([what, count, which]): TableRow => {
    const weight = count === 'none' ? 'regular' : 'bold';
    return { cells: [[span(count, size, weight)], [span(what, size, weight)], [span(which, size)]] };
  });
  return titledTable(setting, 'How things stand', width, cells, [
    { head: 'How many', mm: 16, align: 'right' },
    { head: 'What', share: 1 },
    { head: 'Which', share: 1.35 },
  ]);
}

function contentsBlock(
  setting: Setting,
  tables: readonly AuditTable[],
  pageOf: (title: string) => string,
  width: number,
): Block {
  const { table: size } = setting.format.type;
  const cells = tables.map(
    (t): TableRow => ({
      cells: [[span(t.title, size)], [span(String(t.rows.length), size)], [span(pageOf(t.title), size, 'semibold')]],
    }),
  );
  return titledTable(setting, 'What is in this pack', width, cells, [
    { head: 'List', share: 1 },
    { head: 'Rows', mm: 12, align: 'right' },
    { head: 'Page', mm: 12, align: 'right' },
  ]);
}

interface CoverColumn {
  readonly head: string;
  readonly mm?: number;
  readonly share?: number;
  readonly align?: 'right';
}

function titledTable(
  setting: Setting,
  title: string,
  width: number,
  rows: readonly TableRow[],
  columns: readonly CoverColumn[],
): Block {
  const { type } = setting.format;
  const widths = shareWidth(
    width,
    columns.map((c) => (c.mm === undefined ? { share: c.share ?? 1 } : { fixed: mm(c.mm) })),
  );
  const placed = columns.map(
    (c, i): Column => ({ head: c.head, width: widths[i] ?? 0, ...(c.align === undefined ? {} : { align: c.align }) }),
  );
  const laid = layTable(setting, placed, rows, { size: type.table, headSize: type.small, rowHeight: mm(6) });
  return stack([
    paragraph(setting, [span(title, type.title, 'bold')], width, { tag: 'H2', lead: mm(7) }),
    tableOf([laid.head, ...laid.rows]),
  ]);
}

function checkBlock(setting: Setting, view: ControlView, width: number): Block {
  const { table: size } = setting.format.type;
  return paragraph(
    setting,
    [
      span('To check it: ', size, 'bold'),
      span(
        'run npm run verify over the published folder; it names every file, line and signature that does not hold. The ledger head is the seal of its last line: ',
        size,
      ),
      span(view.ledger.head, size, 'semibold'),
      span('. The same lists stand in the CSV files of this pack, with the ledger line by line in ledger.csv.', size),
    ],
    width,
  );
}
