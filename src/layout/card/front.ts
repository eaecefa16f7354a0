/** The front of a card: what it is for, what can hurt, who and how long, and everything to fetch before step 1. */

import type { ConsumableTotal, Document, PartUse, ResolvedShop, ToolUse, Variant } from '../../resolve/types.ts';
import { capitalised, listed } from '../../resolve/words.ts';
import type { Span } from '../type/index.ts';
import { lineBlanks } from './blanks.ts';
import { changesBlock } from './changes-panel.ts';
import { type Chunk, tableChunks } from './chunks.ts';
import { controlBlock } from './control-block.ts';
import { isWide, textWidthOf } from './format.ts';
import { type Block, mm, node, overlay, shift, stack } from './items.ts';
import { setProse } from './prose.ts';
import { paragraph, type Setting, span } from './setting.ts';
import { sentence } from './source-text.ts';
import { type Column, layTable, shareWidth, type Table } from './table.ts';

const LEVELS: Readonly<Record<string, string>> = {
  continuous: 'continuous: card in hand, step by step',
  reference: 'reference: card at hand, looked at while working',
  information: 'information: read before the job',
};

export function frontChunks(setting: Setting, shop: ResolvedShop, document: Document, variant: Variant): Chunk[] {
  const width = textWidthOf(setting.format);
  const chunk = (block: Block, gap: number, keepWithNext = false): Chunk => ({
    block,
    gap,
    keepWithNext,
    what: 'the front of the card',
    range: document.range,
  });
  return [
    chunk(purposeBlock(setting, document, variant, shop, width), 0),
    ...(document.changes === undefined
      ? []
      : [chunk(changesBlock(setting, document.changes, document.revision.why, width), mm(3))]),
    chunk(factsStrip(setting, document, variant, width), mm(3)),
    chunk(safetyBlock(setting, shop, document, variant, width), mm(3)),
    chunk(jobBlock(setting, width), mm(1)),
    chunk(controlBlock(setting, shop, document), mm(3)),
    ...listChunks(setting, document, variant, width),
  ];
}

function purposeBlock(
  setting: Setting,
  document: Document,
  variant: Variant,
  shop: ResolvedShop,
  width: number,
): Block {
  const { type } = setting.format;
  const machine = shop.machines.find((m) => m.id === document.machine);
  const mark = machine?.mark === undefined ? '' : `, ${machine.mark}`;
  const serials = variant.serials.length === 0 ? '' : `, serial numbers ${listed(variant.serials)}`;
  const where = machine?.where === undefined ? '' : `. ${capitalised(machine.where)}`;
  return stack(
    [
      setProse(setting, document.purpose, type.step, width),
      paragraph(
        setting,
        [
          span('Machine ', type.small, 'semibold', 'soft'),
          span(`${capitalised(document.machineName)}${mark}`, type.table, 'semibold'),
          span(`${serials}${where}`, type.table),
        ],
        width,
      ),
    ],
    mm(1.5),
  );
}

/** People, times and level of use side by side. */
function factsStrip(setting: Setting, document: Document, variant: Variant, width: number): Block {
  const { type } = setting.format;
  const facts: [string, string, number][] = [
    ['People', String(document.people), 1],
    ['Working time', variant.workSeconds > 0 ? duration(variant.workSeconds) : 'not stated', 1.6],
    ['Waiting time', variant.waitSeconds > 0 ? duration(variant.waitSeconds) : 'none', 1.6],
    ['Steps', String(variant.stepCount), 1],
    ['Level of use', LEVELS[document.level] ?? document.level, 3.6],
  ];
  const total = facts.reduce((sum, [, , share]) => sum + share, 0);
  let x = 0;
  const blocks = facts.map(([label, value, share]) => {
    const w = (width * share) / total;
    const block = shift(
      stack([
        paragraph(setting, [span(label, type.small, 'semibold', 'soft')], w - mm(3)),
        paragraph(setting, [span(value, type.table, 'semibold')], w - mm(3)),
      ]),
      x,
      0,
    );
    x += w;
    return block;
  });
  return overlay(...blocks);
}

/** `2 h 30 min`, `45 min`, `3 d 4 h`. */
export function duration(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  if (minutes === 0) return `${Math.round(seconds)}\u00a0s`;
  const days = Math.floor(minutes / 1440);
  const hours = Math.floor((minutes % 1440) / 60);
  const rest = minutes % 60;
  return [days > 0 ? `${days}\u00a0d` : '', hours > 0 ? `${hours}\u00a0h` : '', rest > 0 ? `${rest}\u00a0min` : '']
    .filter((t) => t !== '')
    .join(' ');
}

/** Energy to isolate and what to wear, in a band of its own. */
function safetyBlock(setting: Setting, shop: ResolvedShop, document: Document, variant: Variant, width: number): Block {
  const { type } = setting.format;
  const inner = width - mm(6);
  const blocks: Block[] = [];
  if (document.energy.length > 0) {
    const spans = [span('Stored energy: ', type.table, 'bold'), span(listed(document.energy), type.table, 'semibold')];
    if (shop.info.storedEnergy !== undefined) spans.push(span(`. ${sentence(shop.info.storedEnergy)}`, type.table));
    blocks.push(paragraph(setting, spans, inner));
  }
  if (variant.ppe.length > 0) {
    blocks.push(
      paragraph(
        setting,
        [span('Wear: ', type.table, 'bold'), span(listed(variant.ppe), type.table, 'semibold')],
        inner,
      ),
    );
  }
  const text = stack(blocks, mm(0.8));
  if (text.height === 0) return text;
  const height = text.height + mm(3);
  const moved = shift(text, mm(4), mm(1.5));
  return {
    height,
    decoration: [
      { kind: 'rect', x: 0, y: 0, width, height, fill: 'tint' },
      { kind: 'rect', x: 0, y: 0, width: mm(1.5), height, fill: 'ink' },
    ],
    nodes: [node('Div', [], moved.nodes)],
  };
}

/** Parts, tools, consumables. */
function listChunks(setting: Setting, document: Document, variant: Variant, width: number): Chunk[] {
  const { range } = document;
  const lists: readonly (readonly [string, Table | undefined])[] = [
    ['Parts', variant.parts.length === 0 ? undefined : partsTable(setting, variant.parts, width)],
    ['Tools', variant.tools.length === 0 ? undefined : toolList(setting, variant.tools, width)],
    [
      'Consumables',
      variant.consumables.length === 0 ? undefined : consumablesTable(setting, variant.consumables, width),
    ],
  ];
  return lists.flatMap(([title, table], i): Chunk[] => {
    if (table === undefined) return [];
    const heading: Chunk = {
      block: listHeading(setting, title, width),
      gap: mm(4),
      keepWithNext: true,
      what: title,
      range,
    };
    const continued = listHeading(setting, `${title} (continued)`, width);
    return [heading, ...tableChunks(table, i + 1, 0, `the list of ${title.toLowerCase()}`, range, continued)];
  });
}

function listHeading(setting: Setting, title: string, width: number): Block {
  return paragraph(setting, [span(title, setting.format.type.stage, 'semibold')], width, { tag: 'H2', lead: mm(6) });
}

const FATE_WORDS = { discard: 'discard', inspect: 'inspect', reuse: 'reuse', new: 'new' } as const;

function partsTable(setting: Setting, parts: readonly PartUse[], width: number): Table {
  const { type } = setting.format;
  const wide = isWide(setting.format);
  const shares = wide
    ? [{ share: 3.2 }, { share: 1.8 }, { fixed: mm(10) }, { fixed: mm(16) }, { share: 2.4 }, { fixed: mm(20) }]
    : [{ share: 2.6 }, { share: 1.6 }, { fixed: mm(8) }, { fixed: mm(15) }, { fixed: mm(16) }];
  const widths = shareWidth(width, shares);
  const heads = wide ? ['Part', 'Number', 'Qty', 'Fate', 'Kit', 'Steps'] : ['Part', 'Number', 'Qty', 'Fate', 'Steps'];
  const columns = heads.map(
    (head, i): Column => ({ head, width: widths[i] ?? 0, ...(head === 'Qty' ? { align: 'right' } : {}) }),
  );
  return layTable(
    setting,
    columns,
    parts.map((p) => {
      const cells: Span[][] = [
        [span(capitalised(p.name), type.table, 'semibold')],
        [span(p.number ?? '', type.table)],
        [span(String(p.quantity), type.table, 'bold')],
        [span(FATE_WORDS[p.fate], type.table, p.fate === 'discard' || p.fate === 'new' ? 'bold' : 'regular')],
        ...(wide ? [[span(p.kit ?? '', type.table)]] : []),
        [span(stepList(p.steps), type.small)],
      ];
      return { cells };
    }),
    { size: type.table, headSize: type.small },
  );
}

/** As many tools a row as make the list lowest, among those that the paper is wide enough for. */
function toolList(setting: Setting, tools: readonly ToolUse[], width: number): Table {
  const choices = isWide(setting.format) && tools.length > 5 ? [3, 2] : [1];
  const tables = choices.map((perRow) => toolsTable(setting, tools, width, perRow));
  return tables.reduce((best, table) => (heightOf(table) < heightOf(best) ? table : best));
}

function heightOf(table: Table): number {
  return table.rows.reduce((sum, row) => sum + row.height, table.head.height);
}

/** Tools side by side: a long list takes a part of the height and may still run over to the next side. */
function toolsTable(setting: Setting, tools: readonly ToolUse[], width: number, perRow: number): Table {
  const { type } = setting.format;
  const one = perRow > 2 ? [{ share: 1 }, { fixed: mm(15) }] : [{ share: 2 }, { share: 1.3 }, { fixed: mm(19) }];
  const heads = perRow > 2 ? ['Tool', 'Steps'] : ['Tool', 'Size', 'Steps'];
  const columns = Array.from({ length: perRow }, () => one).flat();
  const widths = shareWidth(width, columns);
  const cellsOf = (tool: ToolUse | undefined): Span[][] => {
    if (tool === undefined) return heads.map(() => []);
    const name = span(capitalised(tool.name), type.table, 'semibold');
    const steps = [span(stepList(tool.steps), type.small)];
    if (perRow <= 2) return [[name], [span(tool.detail, type.table)], steps];
    // In the narrow column a size is left out that the name says already.
    const size = tool.detail === '' || tool.name.includes(tool.detail) ? [] : [span(` ${tool.detail}`, type.small)];
    return [[name, ...size], steps];
  };
  const rows = Array.from({ length: Math.ceil(tools.length / perRow) }, (_, row) => ({
    cells: Array.from({ length: perRow }, (_, i) => cellsOf(tools[row * perRow + i])).flat(),
  }));
  return layTable(
    setting,
    columns.map((_, i): Column => ({ head: heads[i % heads.length] ?? '', width: widths[i] ?? 0 })),
    rows,
    { size: type.table, headSize: type.small },
  );
}

function consumablesTable(setting: Setting, consumables: readonly ConsumableTotal[], width: number): Table {
  const { type } = setting.format;
  const widths = shareWidth(width, [{ share: 2.4 }, { share: 1 }, { fixed: mm(18) }]);
  const columns = ['Consumable', 'Amount', 'Steps'].map((head, i): Column => ({ head, width: widths[i] ?? 0 }));
  return layTable(
    setting,
    columns,
    consumables.map((c) => {
      const hazards = c.hazards.length === 0 ? '' : `. ${capitalised(listed(c.hazards))}`;
      return {
        cells: [
          [span(capitalised(c.name), type.table, 'semibold'), span(hazards, type.small)],
          [span(c.amount ?? '', type.table)],
          [span(stepList(c.steps), type.small)],
        ],
      };
    }),
    { size: type.table, headSize: type.small },
  );
}

/** `2, 5 to 8, 12` */
export function stepList(steps: readonly number[]): string {
  const parts: string[] = [];
  for (let i = 0; i < steps.length; ) {
    let k = i;
    while (k + 1 < steps.length && steps[k + 1] === (steps[k] ?? 0) + 1) k++;
    if (k - i >= 2) parts.push(`${steps[i]}\u00a0to\u00a0${steps[k]}`);
    else for (let n = i; n <= k; n++) parts.push(String(steps[n]));
    i = k + 1;
  }
  return parts.join(', ');
}

/** What ties a filled-in card to a job. */
function jobBlock(setting: Setting, width: number): Block {
  return lineBlanks(
    setting,
    [
      { label: 'Job', share: 1 },
      { label: 'Serial no.', share: 1.2 },
      { label: 'Date', share: 1 },
      { label: 'Fitter', share: 1.4 },
    ],
    width,
    mm(9),
  );
}
