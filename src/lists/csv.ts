/** An order list as a file for a spreadsheet: CSV after RFC 4180 in UTF-8. */

import { formatQuantity } from '../units/index.ts';
import type { OrderLine, OrderList } from './order-types.ts';
import { jobsText, kindText, leadText, needText, noteText, orderText } from './words.ts';

/** Name of the file: the same list gives the same file, so neither day nor hour stands in it. */
export const ORDER_FILE = 'order-list.csv';

const HEAD = ['Order', 'Unit', 'Number', 'Name', 'Kind', 'Needed', 'Delivery time', 'Machine', 'Asked for by', 'Note'];

/**
 * A spreadsheet takes a cell that begins with one of these for a formula, also inside quotes, and runs it; tab and return are
 * skipped by some before they look. (OWASP, CSV Injection.)
 */
const FORMULA = /^[=+\-@\t\r]/u;

/**
 * One cell. A leading apostrophe turns what looks like a formula into text: part numbers and names come from many hands, and
 * the reader of an order sees one odd sign at worst. Quotes, commas and line breaks are quoted after RFC 4180, 2.5 to 2.7.
 */
export function csvCell(text: string): string {
  const plain = text.replaceAll('\u00a0', ' ');
  const safe = FORMULA.test(plain) ? `'${plain}` : plain;
  return /[",\r\n]/u.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Rows as one text; every row ends in CR LF (RFC 4180, 2.1). No byte-order mark: UTF-8 has no order of bytes. */
export function csvText(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}

/** The list as CSV, the lines in its order, then what is only to be looked for in the stock. */
export function orderCsv(list: OrderList, machineName: (id: string) => string): string {
  const row = (line: OrderLine, order: string, unit: string, note: string): readonly string[] => [
    order,
    unit,
    line.number ?? '',
    line.name,
    kindText(line.kind),
    needText(line),
    leadText(line.lead),
    line.kind === 'consumable' ? '' : machineName(line.machine),
    line.for.map(jobsText).join('; '),
    note,
  ];
  return csvText([
    HEAD,
    ...list.lines.map((line) => {
      const { order, unit } = orderText(line);
      return row(line, order, unit, noteText(line));
    }),
    ...list.stock.map((line) => row(line, '', '', stockNote(line.pack === undefined ? '' : formatQuantity(line.pack)))),
    ...list.unrated.map((line) =>
      row(line, '', '', `${line.inspected} inspected, no usual share stated: look whether spares are in stock`),
    ),
  ]);
}

function stockNote(pack: string): string {
  return `no amount stated: look whether it is in stock${pack === '' ? '' : `, packs of ${pack}`}`;
}
