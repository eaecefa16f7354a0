/** The list of effective pages: a missing or old sheet is found by counting, and what is not in force is named as such. */

import { tableChunks } from '../card/chunks.ts';
import { isWide, textWidthOf } from '../card/format.ts';
import type { PlacedBlock } from '../card/index.ts';
import { type Block, mm, stack } from '../card/items.ts';
import { paginate, tableOf } from '../card/paginate.ts';
import { paragraph, type Setting, span } from '../card/setting.ts';
import { sentence } from '../card/source-text.ts';
import { type Column, layTable, shareWidth, type Table } from '../card/table.ts';
import { withTemporary } from '../card/temporary.ts';
import type { ListRow } from './list-rows.ts';
import { NO_RANGE, SHEET_FOOT } from './sheets.ts';
import type { BinderFacts } from './types.ts';

/** Pages of the list. Without control it names the cards only. */
export function effectivePages(
  setting: Setting,
  facts: BinderFacts,
  rows: readonly ListRow[],
): (readonly PlacedBlock[])[] {
  const { format } = setting;
  const { bench, copy, date, unbound } = facts;
  const width = textWidthOf(format);
  const table = copy === undefined ? cardTable(setting, rows, width) : pageTable(setting, rows, date, width);
  const whose = `Binder ${bench.name}${copy === undefined ? '' : `, ${copy}`}, as of ${date}.`;
  const head = stack(
    [
      paragraph(setting, [span('List of effective pages', format.type.doc, 'bold')], width, {
        tag: 'H1',
        lead: mm(10),
      }),
      paragraph(
        setting,
        [
          span(
            `${whose} A card that differs from this list in revision, sides or fingerprint is not to be used.`,
            format.type.table,
          ),
        ],
        width,
      ),
      ...(unbound.length === 0
        ? []
        : [{ height: mm(2), decoration: [], nodes: [] }, unboundBlock(setting, facts, width)]),
    ],
    mm(1),
  );
  const room = format.height - format.top - format.bottom - (copy === undefined ? 0 : SHEET_FOOT);
  return paginate(
    [
      { block: head, gap: 0, keepWithNext: true, what: 'the list', range: NO_RANGE },
      ...tableChunks(table, 1, mm(5), 'the list', NO_RANGE),
    ],
    room,
    () => undefined,
  );
}

function sizeOf({ format }: Setting): number {
  return isWide(format) ? format.type.table : format.type.small;
}

/** Cards with their revision, sides and fingerprint. */
function cardTable(setting: Setting, rows: readonly ListRow[], width: number): Table {
  const widths = shareWidth(width, [
    { fixed: mm(17) },
    { share: 2.9 },
    { share: 1 },
    { fixed: mm(8) },
    { fixed: mm(20) },
    { fixed: mm(9) },
    { fixed: mm(19) },
  ]);
  const heads = ['Document', 'Title', 'Variant', 'Rev', 'Effective', 'Sides', 'Fingerprint'];
  const size = sizeOf(setting);
  return layTable(
    setting,
    columnsOf(heads, widths),
    rows.flatMap(({ card }) => {
      if (card === undefined) return [];
      return {
        cells: [
          [span(card.doc, size, 'bold')],
          [span(card.title, size)],
          [span(card.variantLabel, size)],
          [span(card.rev, size, 'bold')],
          [span(card.effective, size)],
          [span(String(card.sides.length), size)],
          [span(card.fingerprint, size)],
        ],
      };
    }),
    { size, headSize: setting.format.type.small },
  );
}

/** Every page of the binder: cards with their revision, the binder's own sheets with the day as of which they were made. */
function pageTable(setting: Setting, rows: readonly ListRow[], date: string, width: number): Table {
  return isWide(setting.format)
    ? layPages(setting, rows, date, PAGE_COLUMNS, width)
    : layPages(setting, rows, date, NARROW_COLUMNS, width);
}

/** On small paper document, title and variant share a cell. */
type PageColumn = readonly [head: string, width: { readonly share: number } | { readonly fixed: number }];
const PAGE_COLUMNS: readonly PageColumn[] = [
  ['Pages', { fixed: mm(20) }],
  ['Document', { fixed: mm(17) }],
  ['Title', { share: 3.4 }],
  ['Variant', { share: 1 }],
  ['Rev', { fixed: mm(10) }],
  ['Effective', { fixed: mm(20) }],
  ['Sides', { fixed: mm(9) }],
  ['Fingerprint', { fixed: mm(19.5) }],
];
const NARROW_COLUMNS: readonly PageColumn[] = [
  ['Pages', { fixed: mm(17) }],
  ['Card', { share: 1 }],
  ['Rev', { fixed: mm(9) }],
  ['Effective', { fixed: mm(17.5) }],
  ['Sides', { fixed: mm(9) }],
  ['Fingerprint', { fixed: mm(19) }],
];

function layPages(
  setting: Setting,
  rows: readonly ListRow[],
  date: string,
  columns: readonly PageColumn[],
  width: number,
): Table {
  const { small } = setting.format.type;
  const size = sizeOf(setting);
  const widths = shareWidth(
    width,
    columns.map(([, wanted]) => wanted),
  );
  const apart = columns === PAGE_COLUMNS;
  return layTable(
    setting,
    columnsOf(
      columns.map(([head]) => head),
      widths,
    ),
    rows.map(({ pages, doc, title, blank, card, sides }) => {
      const number = [span(doc, size, card === undefined ? 'regular' : 'bold')];
      const temporary = withTemporary(card?.temporary ?? []);
      const notes = [
        ...(temporary === '' ? [] : [span(`,${temporary}`, small, 'semibold')]),
        ...(blank === '' ? [] : [span(`, ${blank}`, small)]),
      ];
      const label = card?.variantLabel ?? '';
      const which = apart
        ? [number, [span(title, size), ...notes], [span(label, size)]]
        : [
            [
              ...(doc === '' ? [] : [...number, span(' ', size)]),
              span(label === '' ? title : `${title}, ${label}`, size),
              ...notes,
            ],
          ];
      return {
        cells: [
          [span(pages, size)],
          ...which,
          card === undefined ? [span('as\u00a0of', small)] : [span(card.rev, size, 'bold')],
          [span(card?.effective ?? date, size)],
          [span(String(sides), size)],
          [span(card?.fingerprint ?? '', size)],
        ],
      };
    }),
    { size, headSize: small },
  );
}

function columnsOf(heads: readonly string[], widths: readonly number[]): Column[] {
  return heads.map((head, i) => ({ head, width: widths[i] ?? 0, ...(head === 'Sides' ? { align: 'right' } : {}) }));
}

/** Documents and revisions that are not bound: what stands in their way, in capitals, and why. */
function unboundBlock(setting: Setting, { unbound }: BinderFacts, width: number): Block {
  const { type } = setting.format;
  const size = sizeOf(setting);
  const widths = shareWidth(width, [
    { fixed: mm(17) },
    { share: 1.6 },
    { fixed: mm(9) },
    { fixed: mm(isWide(setting.format) ? 32 : 26) },
    { share: 2 },
  ]);
  const table = layTable(
    setting,
    columnsOf(['Document', 'Title', 'Rev', 'Standing', 'Reason'], widths),
    unbound.map(({ doc, title, rev, standing, effective, reason }) => {
      const from = standing === 'not yet effective' && effective !== undefined ? `, from ${effective}` : '';
      return {
        cells: [
          [span(doc, size, 'bold')],
          [span(title, size)],
          [span(rev ?? '', size, 'bold')],
          [span(standing.toUpperCase(), size, 'bold'), span(from, size)],
          [span(reason === undefined ? '' : sentence(reason), size)],
        ],
      };
    }),
    { size, headSize: type.small },
  );
  return stack(
    [
      paragraph(setting, [span('Not in this binder', type.stage, 'semibold')], width, { tag: 'H2', lead: mm(6) }),
      paragraph(setting, [span('None of these is to be worked from.', type.table, 'semibold')], width),
      tableOf([table.head, ...table.rows]),
    ],
    mm(0.8),
  );
}
