/** The cover of a binder: whose it is, which copy, what it holds, and what everybody at the bench must know. */

import type { ResolvedShop } from '../../resolve/types.ts';
import { capitalised } from '../../resolve/words.ts';
import { type Chunk, tableChunks } from '../card/chunks.ts';
import { isWide, textWidthOf } from '../card/format.ts';
import type { PlacedBlock } from '../card/index.ts';
import { type Block, mm, stack } from '../card/items.ts';
import { paginate, tableOf } from '../card/paginate.ts';
import { paragraph, type Setting, span } from '../card/setting.ts';
import { sentence } from '../card/source-text.ts';
import { type Column, layTable, shareWidth, type Table, type TableRow } from '../card/table.ts';
import { NO_RANGE, SHEET_FOOT } from './sheets.ts';
import type { BinderFacts } from './types.ts';

/** Signal words as every binder explains them once (ANSI Z535.6 and ISO 3864-2 in our own words). */
const SIGNAL_WORDS: readonly (readonly [string, string])[] = [
  ['DANGER', 'kills or maims if it is not avoided'],
  ['WARNING', 'can kill or maim if it is not avoided'],
  ['CAUTION', 'can cause a minor injury if it is not avoided'],
  ['NOTICE', 'damages machine or work, injures nobody'],
];

/** Mostly one page; a long list of documents runs over. */
export function coverPages(setting: Setting, shop: ResolvedShop, facts: BinderFacts): (readonly PlacedBlock[])[] {
  const { format } = setting;
  const wide = isWide(format);
  const chunk = (block: Block, gap: number): Chunk => ({
    block,
    gap,
    keepWithNext: false,
    what: 'the cover',
    range: NO_RANGE,
  });
  const room = format.height - format.top - format.bottom - (facts.copy === undefined ? 0 : SHEET_FOOT);
  const gap = mm(wide ? 11.4 : 5);
  return paginate(
    [
      chunk(headBlock(setting, shop, facts), 0),
      ...tableChunks(documentTable(setting, facts), 1, gap, 'the cover', NO_RANGE),
      chunk(signalTable(setting), gap),
      chunk(rulesBlock(setting, shop), mm(wide ? 8.4 : 4)),
    ],
    room,
    () => undefined,
  );
}

/** Shop, bench, copy, place and lead. */
function headBlock(setting: Setting, shop: ResolvedShop, { bench, date, copy }: BinderFacts): Block {
  const { format } = setting;
  const { type } = format;
  const wide = isWide(format);
  const width = textWidthOf(format);
  const lead = shop.people.find((p) => p.id === bench.lead);
  const space = (height: number): Block => ({ height, decoration: [], nodes: [] });
  const rule: Block = {
    height: mm(1),
    decoration: [{ kind: 'rect', x: 0, y: 0, width, height: mm(1), fill: 'ink' }],
    nodes: [],
  };
  const said = (label: string, value: string): Block =>
    paragraph(setting, [span(`${label}: `, type.step, 'semibold', 'soft'), span(value, type.step)], width, {
      lead: mm(wide ? 6.5 : 5.5),
    });
  return stack(
    [
      paragraph(setting, [span(shop.info.name, type.title, 'semibold')], width, { lead: mm(8) }),
      rule,
      space(mm(wide ? 14 : 3)),
      paragraph(setting, [span('Binder', type.title, 'semibold', 'accent')], width),
      paragraph(setting, [span(bench.name, wide ? 36 : 26, 'bold')], width, { tag: 'H1', lead: mm(wide ? 16 : 11.5) }),
      ...(copy === undefined
        ? []
        : [paragraph(setting, [span(capitalised(copy), type.doc, 'bold')], width, { lead: mm(wide ? 10 : 9) })]),
      space(mm(wide ? 4 : 1)),
      said('Place', bench.place),
      ...(lead === undefined ? [] : [said('Lead', `${lead.name}, ${lead.role}`)]),
      said('List of effective pages', `as of ${date}, behind this cover`),
    ],
    mm(1.2),
  );
}

function documentTable(setting: Setting, facts: BinderFacts): Table {
  const { format } = setting;
  const size = isWide(format) ? format.type.step : format.type.table;
  const widths = shareWidth(textWidthOf(format), [{ fixed: mm(24) }, { share: 3 }, { share: 1.4 }]);
  const columns: Column[] = ['Document', 'Title', 'Machine'].map((head, i) => ({ head, width: widths[i] ?? 0 }));
  return layTable(setting, columns, documentRows(setting, facts, size), { size, headSize: format.type.small });
}

function signalTable(setting: Setting): Block {
  const { type } = setting.format;
  const width = textWidthOf(setting.format);
  const { head, rows } = layTable(
    setting,
    [
      { head: 'Signal word', width: mm(28) },
      { head: 'What stands behind it', width: width - mm(31) },
    ],
    SIGNAL_WORDS.map(([word, meaning]) => ({
      cells: [[span(word, type.table, 'bold')], [span(meaning, type.table)]],
    })),
    { size: type.table, headSize: type.small },
  );
  return tableOf([head, ...rows]);
}

/** What governs, stored energy, and whom to tell. */
function rulesBlock(setting: Setting, { info }: ResolvedShop): Block {
  const { table } = setting.format.type;
  const width = textWidthOf(setting.format);
  const blocks = [paragraph(setting, [span(info.safety, table)], width)];
  if (info.storedEnergy !== undefined)
    blocks.push(paragraph(setting, [span(sentence(info.storedEnergy), table, 'semibold')], width));
  if (info.report !== undefined) {
    const asked = span('Something wrong in this binder? ', table, 'semibold');
    blocks.push(paragraph(setting, [asked, span(sentence(info.report), table)], width));
  }
  return stack(blocks, mm(1.2));
}

/** Every document of the binder in its order; one that is not bound says in capitals how it stands. */
function documentRows(setting: Setting, { bench, bound, unbound }: BinderFacts, size: number): TableRow[] {
  const { table } = setting.format.type;
  return bench.binder.flatMap((doc): TableRow[] => {
    const card = bound.find((d) => d.doc === doc)?.cards[0];
    const state = unbound.find((s) => s.doc === doc);
    if (card === undefined && state === undefined) return [];
    return [
      {
        cells: [
          [span(doc, size, 'bold')],
          [span(card?.title ?? state?.title ?? '', size)],
          card === undefined
            ? [span(`${(state?.standing ?? '').toUpperCase()}: not in this binder`, table, 'bold')]
            : [span(capitalised(card.machineName), table)],
        ],
      },
    ];
  });
}
