/** Torque tables as wall posters: one table a sheet, type as large as the sheet allows within reason. */

import type { ResolvedShop } from '../../resolve/types.ts';
import type { TorqueTable } from '../../torque/index.ts';
import { formatNumber } from '../../units/index.ts';
import { formatOf } from '../card/format.ts';
import { type Block, mm } from '../card/items.ts';
import { type PlacedBlock, tableOf } from '../card/paginate.ts';
import { paragraph, type Setting, span } from '../card/setting.ts';
import { type Column, layTable, shareWidth } from '../card/table.ts';
import type { Faces } from '../type/index.ts';
import { MARGIN, MOST_ROWS, type PosterPage, placeSheet, sheetFoot, sheetHead } from './poster-page.ts';
import { statedPosterPages } from './stated-posters.ts';

export interface PosterLayout {
  readonly width: number;
  readonly height: number;
  readonly pages: readonly PosterPage[];
}

/** A4 (or Letter) portrait; a table of more rows than a sheet takes runs over to the next. */
export function layoutPosters(shop: ResolvedShop, faces: Faces): PosterLayout {
  const paper = formatOf(shop.info.cardFormat === 'Letter' ? 'Letter' : 'A4');
  const setting: Setting = { faces, format: paper, problems: { missing: () => undefined, tooWide: () => undefined } };
  const computed = shop.tables.flatMap((table) => {
    const sheets: PosterPage[] = [];
    const count = Math.max(1, Math.ceil(table.rows.length / MOST_ROWS));
    const share = Math.ceil(table.rows.length / count);
    for (let i = 0; i < count; i++) {
      sheets.push({ title: table.title, blocks: sheetBlocks(setting, shop, table, i * share, share) });
    }
    return sheets;
  });
  return { width: paper.width, height: paper.height, pages: [...computed, ...statedPosterPages(setting, shop)] };
}

function sheetBlocks(
  setting: Setting,
  shop: ResolvedShop,
  table: TorqueTable,
  from: number,
  count: number,
): PlacedBlock[] {
  const { format } = setting;
  const width = format.width - 2 * MARGIN;
  const rows = table.rows.slice(from, from + count);
  const percent = Number((table.preloadShare * 100).toFixed(1));
  const head = sheetHead(setting, width, {
    title: [
      span(table.grade.id, 34, 'bold'),
      span(`\u00a0\u00a0${series(table)}${from > 0 ? ', continued' : ''}`, 20, 'semibold'),
    ],
    lead: mm(15),
    condition: table.condition.name,
    origin: `${percent}\u00a0% of the ${table.preloadBasis} load (${table.grade.standard}), nut factor K ${table.condition.nutFactor.nominal.toFixed(2)}`,
  });
  const foot = footBlock(setting, shop, table, width);
  return placeSheet(format.height, {
    head,
    foot,
    rows: rows.length,
    mostRow: mm(10.5),
    grid: (size, rowHeight) => gridBlock(setting, shop, table, rows, width, size, rowHeight),
  });
}

function gridBlock(
  setting: Setting,
  shop: ResolvedShop,
  table: TorqueTable,
  rows: TorqueTable['rows'],
  width: number,
  size: number,
  rowHeight: number,
): Block {
  const metricFirst = shop.info.leadingTorque === 'N·m';
  const [first, second] = metricFirst ? ['N·m', 'lbf·ft'] : ['lbf·ft', 'N·m'];
  const widths = shareWidth(width, [{ share: 1.5 }, { share: 1 }, { share: 1 }, { share: 1 }]);
  const columns: Column[] = [
    { head: 'Thread', width: widths[0] ?? 0 },
    { head: first ?? '', width: widths[1] ?? 0, align: 'decimal' },
    { head: second ?? '', width: widths[2] ?? 0, align: 'decimal' },
    { head: 'Preload, kN', width: widths[3] ?? 0, align: 'decimal' },
  ];
  const laid = layTable(
    setting,
    columns,
    rows.map((row) => {
      const pair = [row.printedNm, row.printedLbfFt];
      const [a, b] = metricFirst ? pair : [...pair].reverse();
      return {
        cells: [
          [span(row.thread.designation, size, 'bold')],
          [span(a === undefined ? '' : formatNumber(a), size, 'bold')],
          [span(b === undefined ? '' : formatNumber(b), size)],
          [span((row.preloadN / 1000).toFixed(1), size * 0.85)],
        ],
      };
    }),
    { size, headSize: Math.max(11.5, size * 0.8), rowHeight },
  );
  const lines = tableOf([laid.head, ...laid.rows]);
  if (table.rows.length > 0) return lines;
  return paragraph(setting, [span('No thread of this series is covered by the grade.', 11.5)], width);
}

function footBlock(setting: Setting, shop: ResolvedShop, table: TorqueTable, width: number): Block {
  const scatter = Math.round(table.condition.scatter * 100);
  const omitted =
    table.omitted.length === 0
      ? ''
      : ` Not covered by the standard: ${table.omitted.map((o) => o.designation).join(', ')}.`;
  return sheetFoot(setting, width, shop, {
    first: "Computed, not the maker's.",
    text: `A torque on a card or in the maker's manual goes before this table. Preload from a torque wrench scatters by about ±\u00a0${scatter}\u00a0%.${omitted}`,
  });
}

/** `metric coarse`, `UNC` */
function series(table: TorqueTable): string {
  return table.rows[0]?.thread.system === 'metric' ? `metric ${table.series}` : table.series;
}
