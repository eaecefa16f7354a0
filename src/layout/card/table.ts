/** Tables drawn by hand: no cell is ever cut, numbers align on the point, head rows repeat where a table runs over. */

import { breakLines, oneLine, type Span, type TextLine } from '../type/index.ts';
import { leading } from './format.ts';
import { type Block, type Decoration, mm, type Node, node } from './items.ts';
import { baseline, lineItems, type Setting } from './setting.ts';

export interface Column {
  readonly head: string;
  /** In pt. */
  readonly width: number;
  /** `decimal`: the points of the numbers stand under each other, as far right as the longest fraction allows. */
  readonly align?: 'left' | 'right' | 'decimal';
}

export interface TableRow {
  readonly cells: readonly (readonly Span[])[];
  /** Drawn over the row, such as a tick box; coordinates from the row's corner. */
  readonly decoration?: readonly Decoration[];
}

export interface Table {
  readonly head: Block;
  readonly rows: readonly Block[];
}

/** Space between columns. */
const GAP = mm(3);
const PAD = mm(0.75);

export interface TableOptions {
  readonly size: number;
  readonly headSize: number;
  /** Least height of a row in pt. */
  readonly rowHeight?: number;
  readonly ruleEvery?: boolean;
}

export function layTable(
  setting: Setting,
  columns: readonly Column[],
  rows: readonly TableRow[],
  options: TableOptions,
): Table {
  const total = columns.reduce((sum, c) => sum + c.width, 0) + GAP * (columns.length - 1);
  const fractions = columns.map((column, i) =>
    column.align === 'decimal' ? Math.max(0, ...rows.map((row) => fractionWidth(setting, row.cells[i] ?? []))) : 0,
  );
  const head = layRow(
    setting,
    columns,
    columns.map((c) => [{ text: c.head, weight: 'semibold', size: options.headSize, ink: 'soft' } as const]),
    columns.map(() => 0),
    { ...options, size: options.headSize, rowHeight: 0 },
    'TH',
    total,
    { ink: 'rule', width: 0.75 },
  );
  return {
    head,
    rows: rows.map((row) => {
      const block = layRow(
        setting,
        columns,
        row.cells,
        fractions,
        options,
        'TD',
        total,
        options.ruleEvery === false ? undefined : { ink: 'hairline', width: 0.4 },
      );
      return row.decoration === undefined ? block : { ...block, decoration: [...block.decoration, ...row.decoration] };
    }),
  };
}

function layRow(
  setting: Setting,
  columns: readonly Column[],
  cells: readonly (readonly Span[])[],
  fractions: readonly number[],
  options: TableOptions,
  tag: 'TH' | 'TD',
  total: number,
  rule: { readonly ink: 'rule' | 'hairline'; readonly width: number } | undefined,
): Block {
  const lead = leading(options.size);
  let x = 0;
  let height = Math.max(options.rowHeight ?? 0, lead + 2 * PAD);
  const placed: { lines: readonly TextLine[]; column: Column; x: number; fraction: number }[] = [];
  columns.forEach((column, i) => {
    const spans = cells[i] ?? [];
    const lines = breakLines(setting.faces, spans, column.width, setting.problems);
    height = Math.max(height, lines.length * lead + 2 * PAD);
    placed.push({ lines, column, x, fraction: fractions[i] ?? 0 });
    x += column.width + GAP;
  });
  const nodes: Node[] = placed.map(({ lines, column, x: left, fraction }, i) => {
    // One line sits in the middle of a high row; more lines start at its top.
    const top = lines.length === 1 ? (height - lead) / 2 : Math.max(PAD, (height - lines.length * lead) / 2);
    const own = lines.flatMap((l, n) => {
      const y = top + n * lead + baseline(lead, options.size);
      const point = lines.length === 1 ? fractionWidth(setting, cells[i] ?? []) : 0;
      const start =
        column.align === 'right'
          ? left + column.width - l.width
          : column.align === 'decimal' && tag === 'TD'
            ? left + column.width - fraction - (l.width - point)
            : column.align === 'decimal'
              ? left + column.width - l.width
              : left;
      return lineItems(l, start, y);
    });
    return node(tag, own, [], tag === 'TH' ? { scope: 'Column' } : {});
  });
  const decoration: Decoration[] =
    rule === undefined
      ? []
      : [{ kind: 'line', x1: 0, y1: height, x2: total, y2: height, width: rule.width, ink: rule.ink }];
  return { height, decoration, nodes: [node('TR', [], nodes)] };
}

/** Width of what stands from the decimal point on; 0 for whole numbers. */
function fractionWidth(setting: Setting, spans: readonly Span[]): number {
  const [first] = spans;
  if (first === undefined) return 0;
  const at = first.text.search(/[.,]\d*$/u);
  return at < 0 ? 0 : oneLine(setting.faces, [{ ...first, text: first.text.slice(at) }], setting.problems).width;
}

export function tableWidth(columns: readonly Column[]): number {
  return columns.reduce((sum, c) => sum + c.width, 0) + GAP * (columns.length - 1);
}

/** Widths for columns that share `width`: fixed ones in pt, the rest by weight. */
export function shareWidth(
  width: number,
  columns: readonly { readonly fixed?: number; readonly share?: number }[],
): number[] {
  const fixed = columns.reduce((sum, c) => sum + (c.fixed ?? 0), 0);
  const shares = columns.reduce((sum, c) => sum + (c.share ?? 0), 0) || 1;
  const free = width - fixed - GAP * (columns.length - 1);
  return columns.map((c) => c.fixed ?? (free * (c.share ?? 0)) / shares);
}
