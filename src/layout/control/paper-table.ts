/** Tables on control sheets: columns in mm, several keys in one cell where that saves width, rows parted when too tall. */

import type { AuditTable } from '../../control/audit-table.ts';
import { BETWEEN } from '../../control/audit-table.ts';
import { type Chunk, tableChunks } from '../card/chunks.ts';
import { leading, textWidthOf } from '../card/format.ts';
import { mm, stack } from '../card/items.ts';
import { paragraph, type Setting, span } from '../card/setting.ts';
import { type Column, layTable, shareWidth, type TableRow } from '../card/table.ts';
import { breakLines, type Span, type TextLine, type Weight } from '../type/index.ts';
import { NO_RANGE } from './sheets.ts';

export interface PaperColumn {
  readonly head: string;
  /** Keys of the list; several stand under each other. */
  readonly keys: readonly string[];
  /** Width in mm; a column without one shares what is left by `share`. */
  readonly mm?: number;
  readonly share?: number;
  readonly align?: 'right';
  /** Of the first key. */
  readonly weight?: Weight;
  /** A checksum is parted into lines of so many signs, so that two people can compare it. */
  readonly every?: number;
  /** Parts of a cell stand on lines of their own. */
  readonly list?: true;
}

/** A row with more lines than this is parted, so that no row is taller than a page. */
const MOST_LINES = 24;
/** A row up to this height stays with its neighbour, pt. */
const LOW_ROW = mm(34);
/** Space between columns, as `layTable` has it. */
const GAP = mm(3);

/** A heading, the sentence of the list, and its rows, or the words for none. `id` tells tables of one document apart. */
export function sectionChunks(
  setting: Setting,
  table: AuditTable,
  columns: readonly PaperColumn[],
  id: number,
): Chunk[] {
  const { type } = setting.format;
  const width = textWidthOf(setting.format);
  const head = stack(
    [
      paragraph(setting, [span(table.title, type.title, 'bold')], width, { tag: 'H2', lead: mm(7) }),
      paragraph(setting, [span(table.says, type.small, 'regular', 'soft')], width),
    ],
    mm(0.4),
  );
  const base = { keepWithNext: false, what: table.title, range: NO_RANGE };
  const heading: Chunk = { ...base, block: head, gap: mm(9), keepWithNext: true, bookmark: table.title };
  if (table.rows.length === 0) {
    const words = paragraph(setting, [span(table.empty, type.table, 'semibold')], width);
    return [heading, { ...base, block: words, gap: mm(2) }];
  }
  const further = paragraph(setting, [span(`${table.title}, continued`, type.table, 'semibold')], width, {
    tag: 'H2',
    lead: mm(6),
  });
  const size = type.small;
  const widths = shareWidth(
    width,
    columns.map((c) => (c.mm === undefined ? { share: c.share ?? 1 } : { fixed: mm(c.mm) })),
  );
  const placed = columns.map(
    (c, i): Column => ({ head: c.head, width: widths[i] ?? 0, ...(c.align === undefined ? {} : { align: c.align }) }),
  );
  const rows = table.rows.flatMap((row) =>
    partRow(
      setting,
      columns.map((c) => cellSpans(c, row, size)),
      widths,
    ),
  );
  const laid = layTable(setting, placed, rows, { size, headSize: type.least, rowHeight: mm(6.4) });
  return [heading, ...loosened(tableChunks(laid, id, mm(2), table.title, NO_RANGE, further))];
}

/** Rows stay together at the ends of a table as long as they are low: a page must hold three of them with the heading. */
export function loosened(chunks: readonly Chunk[]): Chunk[] {
  const low = (chunk: Chunk | undefined): boolean => chunk === undefined || chunk.block.height <= LOW_ROW;
  return chunks.map((c, i) => (low(c) && low(chunks[i + 1]) ? c : { ...c, keepWithNext: false }));
}

function cellSpans(column: PaperColumn, row: Readonly<Record<string, string>>, size: number): Span[] {
  const parts = column.keys
    .map((key) => row[key] ?? '')
    .map((text) => (column.list === true ? text.replaceAll(BETWEEN, '\n') : text))
    .map((text) => (column.every === undefined ? text : inLines(text, column.every)))
    .map((text, i) => ({ text, weight: i === 0 ? (column.weight ?? 'regular') : ('regular' as const) }))
    .filter((p) => p.text !== '');
  return parts.map(({ text, weight }, i) => span(i < parts.length - 1 ? `${text}\n` : text, size, weight));
}

function inLines(text: string, every: number): string {
  return text.replaceAll(new RegExp(`(.{${every}})(?=.)`, 'gu'), '$1\n');
}

/** A row whose longest cell has too many lines becomes several. */
export function partRow(
  setting: Setting,
  cells: readonly (readonly Span[])[],
  widths: readonly number[],
): readonly TableRow[] {
  const lines = cells.map((spans, i) => breakLines(setting.faces, spans, widths[i] ?? 0, setting.problems));
  const most = Math.max(0, ...lines.map((l) => l.length));
  if (most <= MOST_LINES) return [{ cells }];
  const rows: TableRow[] = [];
  for (let from = 0; from < most; from += MOST_LINES) {
    rows.push({ cells: lines.map((own, i) => again(own.slice(from, from + MOST_LINES), cells[i] ?? [])) });
  }
  return rows;
}

/** Lines as spans that break at the same places; a parted cell has the type of its first span. */
function again(lines: readonly TextLine[], spans: readonly Span[]): Span[] {
  const [first] = spans;
  if (first === undefined || lines.length === 0) return [];
  return [{ ...first, text: lines.map((l) => l.pieces.map((p) => p.text).join('')).join('\n') }];
}

/** A paragraph as chunks no taller than `room` pt; the first may follow a heading. */
export function proseChunks(
  setting: Setting,
  spans: readonly Span[],
  width: number,
  gap: number,
  what: string,
): Chunk[] {
  const size = Math.max(0, ...spans.map((s) => s.size));
  const lines = breakLines(setting.faces, spans, width, setting.problems);
  const most = Math.max(4, Math.floor(mm(90) / leading(size)));
  const base = { keepWithNext: false, what, range: NO_RANGE };
  if (lines.length <= most) return [{ ...base, block: paragraph(setting, spans, width), gap }];
  const chunks: Chunk[] = [];
  for (let from = 0; from < lines.length; from += most) {
    const part = again(lines.slice(from, from + most), spans.slice(-1));
    chunks.push({ ...base, block: paragraph(setting, part, width), gap: from === 0 ? gap : 0 });
  }
  return chunks;
}

/** Width of columns with the gaps between them, in pt. */
export function columnsWidth(widths: readonly number[]): number {
  return widths.reduce((sum, w) => sum + w, 0) + GAP * (widths.length - 1);
}
