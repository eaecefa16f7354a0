/** Torque tables from manuals as wall posters: a thread a row, a grade a column, both units where the manual prints them. */

import type { ResolvedShop, StatedTable } from '../../resolve/types.ts';
import type { CellComparison } from '../../torque/index.ts';
import { formatNumber } from '../../units/index.ts';
import { type Block, mm } from '../card/items.ts';
import { type PlacedBlock, tableOf } from '../card/paginate.ts';
import { type Setting, span } from '../card/setting.ts';
import { sourceText } from '../card/source-text.ts';
import { type Column, layTable, shareWidth } from '../card/table.ts';
import { capital, MARGIN, MOST_ROWS, type PosterPage, placeSheet, sheetFoot, sheetHead } from './poster-page.ts';

/** Beyond this the second unit gives way, so that the type stays large. */
const MOST_WITH_SECOND = 3;

/** One sheet a table; a table of more rows than a sheet takes runs over to the next. */
export function statedPosterPages(setting: Setting, shop: ResolvedShop): readonly PosterPage[] {
  return shop.statedTables.flatMap((table) => {
    const threads = [...new Set(table.comparison.cells.map((c) => c.thread.designation))];
    const sheets = Math.max(1, Math.ceil(threads.length / MOST_ROWS));
    const share = Math.ceil(threads.length / sheets);
    return Array.from({ length: sheets }, (_, i) => ({
      title: table.title,
      blocks: sheet(setting, shop, table, threads.slice(i * share, (i + 1) * share), i > 0),
    }));
  });
}

function sheet(
  setting: Setting,
  shop: ResolvedShop,
  table: StatedTable,
  threads: readonly string[],
  continued: boolean,
): PlacedBlock[] {
  const { format } = setting;
  const width = format.width - 2 * MARGIN;
  const percent = Number((table.preloadShare * 100).toFixed(1));
  const head = sheetHead(setting, width, {
    title: [span(`${capital(table.title)}${continued ? ', continued' : ''}`, 24, 'bold')],
    lead: mm(11),
    condition: table.condition.name,
    origin: `From ${sourceText(table.source)}; ${percent}\u00a0% of the proof or yield load`,
  });
  const foot = sheetFoot(setting, width, shop, {
    first: 'Typed from the manual and checked cell by cell.',
    text: `The manual itself goes before this copy, and a torque on a card before both.${table.note === undefined ? '' : ` ${table.note}`}`,
  });
  return placeSheet(format.height, {
    head,
    foot,
    rows: threads.length,
    mostRow: mm(12),
    grid: (size, rowHeight) => grid(setting, table, threads, width, size, rowHeight),
  });
}

function grid(
  setting: Setting,
  table: StatedTable,
  threads: readonly string[],
  width: number,
  size: number,
  rowHeight: number,
): Block {
  const { cells } = table.comparison;
  const grades = [...new Set(cells.map((c) => c.grade.id))];
  const withSecond = grades.length <= MOST_WITH_SECOND && cells.some((c) => c.second !== undefined);
  const cellOf = (thread: string, grade: string): CellComparison | undefined =>
    cells.find((c) => c.thread.designation === thread && c.grade.id === grade);
  const perGrade = withSecond ? [{ share: 1.1 }, { share: 0.9 }] : [{ share: 1 }];
  const widths = shareWidth(width, [{ share: 1.2 }, ...grades.flatMap(() => perGrade)]);
  const columns: Column[] = [
    { head: 'Thread', width: widths[0] ?? 0 },
    ...grades.flatMap((grade, i): Column[] => {
      const first = cells.find((c) => c.grade.id === grade);
      const at = 1 + i * perGrade.length;
      const own: Column = { head: `${grade}, ${first?.stated.unit ?? ''}`, width: widths[at] ?? 0, align: 'decimal' };
      const second: Column = { head: first?.second?.unit ?? '', width: widths[at + 1] ?? 0, align: 'decimal' };
      return withSecond ? [own, second] : [own];
    }),
  ];
  const laid = layTable(
    setting,
    columns,
    threads.map((thread) => ({
      cells: [
        [span(thread, size, 'bold')],
        ...grades.flatMap((grade) => {
          const cell = cellOf(thread, grade);
          const own = [span(cell === undefined ? '–' : formatNumber(cell.stated), size, 'bold')];
          const second = [span(cell?.second === undefined ? '' : formatNumber(cell.second), size * 0.85)];
          return withSecond ? [own, second] : [own];
        }),
      ],
    })),
    { size, headSize: Math.max(11.5, size * 0.75), rowHeight },
  );
  return tableOf([laid.head, ...laid.rows]);
}
