/** The sheets of a bench's binder around its cards: cover, list of effective pages, dividers, blank backs. */

import type { Bench, ResolvedShop } from '../../resolve/types.ts';
import { capitalised } from '../../resolve/words.ts';
import { tableChunks } from '../card/chunks.ts';
import { type Format, formatOf, isWide, textWidthOf } from '../card/format.ts';
import { type Block, type Decoration, mm, shift, stack } from '../card/items.ts';
import type { CardLayout } from '../card/layout-cards.ts';
import { type PlacedBlock, paginate, tableOf } from '../card/paginate.ts';
import { paragraph, type Setting, span } from '../card/setting.ts';
import { sentence } from '../card/source-text.ts';
import { type Column, layTable, shareWidth } from '../card/table.ts';
import type { Faces } from '../type/index.ts';

export interface BinderPage {
  readonly kind: 'sheet';
  /** Title in the list of bookmarks; empty for a sheet that has none. */
  readonly title: string;
  readonly blocks: readonly PlacedBlock[];
}

/** Pages in the order in which they are bound. */
export type BinderEntry = BinderPage | { readonly kind: 'card'; readonly card: CardLayout };

export interface BinderLayout {
  readonly width: number;
  readonly height: number;
  readonly entries: readonly BinderEntry[];
  /** Latest effective date among its cards: the date of the binder's list. */
  readonly date: string;
}

const NO_RANGE = { file: '', start: 0, end: 0 };

/** Signal words as every binder explains them once (ANSI Z535.6 and ISO 3864-2 in our own words). */
const SIGNAL_WORDS: readonly (readonly [string, string])[] = [
  ['DANGER', 'kills or maims if it is not avoided'],
  ['WARNING', 'can kill or maim if it is not avoided'],
  ['CAUTION', 'can cause a minor injury if it is not avoided'],
  ['NOTICE', 'damages machine or work, injures nobody'],
];

/** Lays out a binder. Every card and divider begins on the front of a leaf; backs without content say so. */
export function layoutBinder(
  shop: ResolvedShop,
  bench: Bench,
  cards: readonly CardLayout[],
  faces: Faces,
): BinderLayout {
  const format = formatOf(shop.info.cardFormat);
  // Names on these sheets have been on cards and in registers before, where their problems were reported.
  const setting: Setting = { faces, format, problems: { missing: () => undefined, tooWide: () => undefined } };
  const own = bench.binder.flatMap((doc) => {
    const found = cards.filter((c) => c.doc === doc);
    return found.length === 0 ? [] : [{ doc, cards: found }];
  });
  const dates = own.flatMap((d) => d.cards.map((c) => c.effective)).sort();
  const date = dates.at(-1) ?? '1970-01-01';
  const entries: BinderEntry[] = [];
  const sides = (): number => entries.reduce((n, e) => n + (e.kind === 'card' ? e.card.sides.length : 1), 0);
  const toFront = (): void => {
    if (sides() % 2 === 1) entries.push(backPage(setting, sides() + 1));
  };
  entries.push({
    kind: 'sheet',
    title: `Binder: ${bench.name}`,
    blocks: [at(format, 1, coverBlock(setting, shop, bench, own, date))],
  });
  for (const [i, blocks] of effectivePages(setting, own, bench, date, format).entries()) {
    entries.push({
      kind: 'sheet',
      title: i === 0 ? 'List of effective pages' : '',
      blocks: blocks.map((b) => ({ ...b, x: left(format, sides() + 1), y: format.top + b.y })),
    });
  }
  own.forEach((document, i) => {
    toFront();
    entries.push({
      kind: 'sheet',
      title: `${document.doc} ${document.cards[0]?.title ?? ''}`.trim(),
      blocks: [divider(setting, format, document.cards, i, own.length)],
    });
    for (const card of document.cards) {
      toFront();
      entries.push({ kind: 'card', card });
    }
  });
  return { width: format.width, height: format.height, entries, date };
}

function left(format: Format, side: number): number {
  return side % 2 === 1 ? format.binding : format.outer;
}

function at(format: Format, side: number, block: Block): PlacedBlock {
  return { x: left(format, side), y: format.top, block };
}

function coverBlock(
  setting: Setting,
  shop: ResolvedShop,
  bench: Bench,
  own: readonly { readonly doc: string; readonly cards: readonly CardLayout[] }[],
  date: string,
): Block {
  const { format } = setting;
  const width = textWidthOf(format);
  const lead = shop.people.find((p) => p.id === bench.lead);
  const rule: Block = {
    height: mm(1),
    decoration: [{ kind: 'rect', x: 0, y: 0, width, height: mm(1), fill: 'ink' }],
    nodes: [],
  };
  const widths = shareWidth(width, [{ fixed: mm(24) }, { share: 3 }, { share: 1.4 }]);
  const columns: Column[] = ['Document', 'Title', 'Machine'].map((head, i) => ({ head, width: widths[i] ?? 0 }));
  const table = layTable(
    setting,
    columns,
    own.map(({ doc, cards }) => ({
      cells: [
        [span(doc, 11.5, 'bold')],
        [span(cards[0]?.title ?? '', 11.5)],
        [span(capitalised(cards[0]?.machineName ?? ''), format.type.table)],
      ],
    })),
    { size: 11.5, headSize: format.type.small },
  );
  const signal = layTable(
    setting,
    [
      { head: 'Signal word', width: mm(28) },
      { head: 'What stands behind it', width: width - mm(31) },
    ],
    SIGNAL_WORDS.map(([word, meaning]) => ({
      cells: [[span(word, format.type.table, 'bold')], [span(meaning, format.type.table)]],
    })),
    { size: format.type.table, headSize: format.type.small },
  );
  const facts: [string, string][] = [
    ['Place', bench.place],
    ...(lead === undefined ? [] : ([['Lead', `${lead.name}, ${lead.role}`]] as [string, string][])),
    ['List of effective pages', `as of ${date}, overleaf`],
  ];
  return stack(
    [
      paragraph(setting, [span(shop.info.name, format.type.title, 'semibold')], width, { lead: mm(8) }),
      rule,
      { height: mm(14), decoration: [], nodes: [] },
      paragraph(setting, [span('Binder', format.type.title, 'semibold', 'accent')], width),
      paragraph(setting, [span(bench.name, 36, 'bold')], width, { tag: 'H1', lead: mm(16) }),
      { height: mm(4), decoration: [], nodes: [] },
      ...facts.map(([label, value]) =>
        paragraph(setting, [span(`${label}: `, 11.5, 'semibold', 'soft'), span(value, 11.5)], width, { lead: mm(6.5) }),
      ),
      { height: mm(9), decoration: [], nodes: [] },
      tableOf([table.head, ...table.rows]),
      { height: mm(9), decoration: [], nodes: [] },
      tableOf([signal.head, ...signal.rows]),
      { height: mm(6), decoration: [], nodes: [] },
      paragraph(setting, [span(shop.info.safety, format.type.table)], width),
      ...(shop.info.storedEnergy === undefined
        ? []
        : [paragraph(setting, [span(sentence(shop.info.storedEnergy), format.type.table, 'semibold')], width)]),
      ...(shop.info.report === undefined
        ? []
        : [
            paragraph(
              setting,
              [
                span('Something wrong in this binder? ', format.type.table, 'semibold'),
                span(sentence(shop.info.report), format.type.table),
              ],
              width,
            ),
          ]),
    ],
    mm(1.2),
  );
}

/** Every card with its revision and number of sides: a missing or old sheet is found by counting. */
function effectivePages(
  setting: Setting,
  own: readonly { readonly doc: string; readonly cards: readonly CardLayout[] }[],
  bench: Bench,
  date: string,
  format: Format,
): (readonly PlacedBlock[])[] {
  const width = textWidthOf(format);
  const wide = isWide(format);
  const { type } = format;
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
  const size = wide ? type.table : type.small;
  const table = layTable(
    setting,
    heads.map((head, i): Column => ({ head, width: widths[i] ?? 0, ...(head === 'Sides' ? { align: 'right' } : {}) })),
    own.flatMap(({ cards }) =>
      cards.map((card) => ({
        cells: [
          [span(card.doc, size, 'bold')],
          [span(card.title, size)],
          [span(card.variantLabel, size)],
          [span(card.rev, size, 'bold')],
          [span(card.effective, size)],
          [span(String(card.sides.length), size)],
          [span(card.fingerprint, size)],
        ],
      })),
    ),
    { size, headSize: type.small },
  );
  const head = stack(
    [
      paragraph(setting, [span('List of effective pages', type.doc, 'bold')], width, { tag: 'H1', lead: mm(10) }),
      paragraph(
        setting,
        [
          span(
            `Binder ${bench.name}, as of ${date}. A card that differs from this list in revision, sides or fingerprint is not to be used.`,
            type.table,
          ),
        ],
        width,
      ),
    ],
    mm(1),
  );
  const room = format.height - format.top - format.bottom;
  return paginate(
    [
      { block: head, gap: 0, keepWithNext: true, what: 'the list', range: NO_RANGE },
      ...tableChunks(table, 1, mm(5), 'the list', NO_RANGE),
    ],
    room,
    () => undefined,
  );
}

/** A sheet with the document's number large, and a tab at the outer edge that steps down from document to document. */
function divider(
  setting: Setting,
  format: Format,
  cards: readonly CardLayout[],
  index: number,
  count: number,
): PlacedBlock {
  const width = textWidthOf(format);
  const [card] = cards;
  const variants = cards.map((c) => c.variantLabel).filter((l) => l !== '');
  const words = stack(
    [
      paragraph(setting, [span(card?.doc ?? '', 44, 'bold')], width - mm(24), { tag: 'H1', lead: mm(20) }),
      paragraph(setting, [span(card?.title ?? '', 20, 'semibold')], width - mm(24), { lead: mm(9) }),
      paragraph(setting, [span(capitalised(card?.machineName ?? ''), format.type.title)], width - mm(24), {
        lead: mm(7),
      }),
      ...(variants.length === 0
        ? []
        : [
            paragraph(setting, [span(variants.join(' · '), format.type.title, 'semibold', 'accent')], width - mm(24), {
              lead: mm(7),
            }),
          ]),
    ],
    mm(2),
  );
  // The tab ends at the same distance from the paper's edge as all other marks, so that any printer reaches it.
  const step = (format.height - mm(60)) / Math.max(count, 6);
  const tabHeight = Math.min(mm(26), step - mm(3));
  const tabY = mm(20) + index * step;
  const tab: Decoration = { kind: 'rect', x: width - mm(6), y: tabY, width: mm(6), height: tabHeight, fill: 'accent' };
  const placed = shift(words, 0, Math.max(mm(20), Math.min(tabY, format.height * 0.6)));
  return {
    x: format.binding,
    y: format.top,
    block: { height: placed.height, decoration: [...placed.decoration, tab], nodes: placed.nodes },
  };
}

function backPage(setting: Setting, side: number): BinderPage {
  const { format } = setting;
  const width = textWidthOf(format);
  const words = paragraph(setting, [span('This side is left blank.', format.type.small, 'regular', 'soft')], width, {
    align: 'center',
  });
  return { kind: 'sheet', title: '', blocks: [{ x: left(format, side), y: format.height / 2, block: words }] };
}
