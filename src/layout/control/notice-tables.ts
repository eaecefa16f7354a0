/** The two tables of a change notice: cards to take out and cards to put in, each row with a box to tick. */

import type { Notice, NoticeCard } from '../../control/types.ts';
import { type Chunk, tableChunks } from '../card/chunks.ts';
import { textWidthOf } from '../card/format.ts';
import { type Decoration, mm } from '../card/items.ts';
import { paragraph, type Setting, span } from '../card/setting.ts';
import { type Column, layTable, shareWidth, type TableRow } from '../card/table.ts';
import type { Span } from '../type/index.ts';
import type { NoticeWords } from './notice-words.ts';
import { columnsWidth, loosened, partRow } from './paper-table.ts';
import { NO_RANGE } from './sheets.ts';

const ROW = mm(8.4);
const BOX = mm(4.6);
/** Tick box, document, revision, sides, fingerprint and the last column, in mm; the variant takes the rest. */
const WIDTHS = [9, 21, 9, undefined, 11, 25, 46] as const;

export function noticeTables(setting: Setting, notice: Notice, words: NoticeWords): Chunk[] {
  return [
    ...oneTable(setting, 1, 'TAKE OUT', notice.takeOut, words.noneOut, 'Copies found', () => []),
    ...oneTable(setting, 2, 'PUT IN', notice.putIn, words.noneIn, 'Card file', (card, size) => [
      span(card.file ?? '', size),
    ]),
  ];
}

function oneTable(
  setting: Setting,
  id: number,
  title: string,
  cards: readonly NoticeCard[],
  none: string,
  lastHead: string,
  last: (card: NoticeCard, size: number) => readonly Span[],
): Chunk[] {
  const { type } = setting.format;
  const width = textWidthOf(setting.format);
  const heading = (text: string): Chunk['block'] =>
    paragraph(setting, [span(text, type.title, 'bold')], width, { tag: 'H2', lead: mm(7) });
  const base = { keepWithNext: false, what: title, range: NO_RANGE };
  const head: Chunk = { ...base, block: heading(title), gap: mm(5), keepWithNext: true };
  if (cards.length === 0)
    return [head, { ...base, block: paragraph(setting, [span(none, 11.5)], width), gap: mm(0.5) }];
  const widths = shareWidth(
    width,
    WIDTHS.map((w) => (w === undefined ? { share: 1 } : { fixed: mm(w) })),
  );
  const columns = ['Done', 'Document', 'Rev', 'Variant', 'Sides', 'Fingerprint', lastHead].map(
    (text, i): Column => ({ head: text, width: widths[i] ?? 0 }),
  );
  const blank = lastHead === 'Copies found' ? writingLine(widths) : [];
  const rows = cards.flatMap((card) => {
    const [first, ...more] = partRow(setting, cellsOf(card, last(card, type.small)), widths);
    return first === undefined ? [] : [{ ...first, decoration: [tickBox(), ...blank] }, ...more];
  });
  const laid = layTable(setting, columns, rows, { size: type.table, headSize: type.small, rowHeight: ROW });
  return [head, ...loosened(tableChunks(laid, id, mm(0.5), title, NO_RANGE, heading(`${title}, continued`)))];
}

function cellsOf(card: NoticeCard, last: readonly Span[]): TableRow['cells'] {
  const size = 10.5;
  const changes = card.with ?? [];
  const label = card.label === '' ? 'all' : card.label;
  const variant = changes.length === 0 ? label : `${label}, with ${changes.join(', ')}`;
  return [
    [],
    [span(card.doc, size, 'bold')],
    [span(card.rev, size, 'bold')],
    [span(variant, size)],
    [span(String(card.sides), size)],
    [span(card.fingerprint, size, 'semibold')],
    last,
  ];
}

function tickBox(): Decoration {
  return { kind: 'rect', x: mm(0.4), y: (ROW - BOX) / 2, width: BOX, height: BOX, stroke: 'ink', lineWidth: 0.8 };
}

/** Where the bench writes how many copies it found: photocopies are the usual surprise. */
function writingLine(widths: readonly number[]): Decoration[] {
  const x = columnsWidth(widths.slice(0, -1)) + mm(3);
  const y = ROW - mm(1.8);
  return [{ kind: 'line', x1: x, y1: y, x2: x + mm(20), y2: y, width: 0.5, ink: 'ink' }];
}
