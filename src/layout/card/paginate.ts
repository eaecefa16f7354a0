/** Fills sides with chunks: nothing is parted that belongs together, and what stays empty is spread evenly over the sides. */

import type { Report } from '../../diagnostics/index.ts';
import type { Chunk } from './chunks.ts';
import { type Block, type Node, node, shift } from './items.ts';

export interface PlacedBlock {
  readonly x: number;
  readonly y: number;
  readonly block: Block;
  /** Title of an entry in the list of bookmarks that leads here. */
  readonly bookmark?: string;
}

/** Share of a side that the last one should fill; below it counts as nearly empty. */
const LEAST_LAST = 0.34;
/** Gaps may shrink to this share where that saves a side; type never does. */
const TIGHT = 0.6;
/** Weighs more than all emptiness that sides can have together (each counts at most 1): no side is spent to even out others. */
const SIDE_COST = 1e6;
const LAST_COST = 20;
/** Sums of heights differ in their last digits. */
const TOLERANCE = 0.01;

/** Chunks that stay together. */
interface Unit {
  readonly chunks: readonly Chunk[];
  /** Height at the top of a side, where its first gap falls away and an open table gets its head again. */
  readonly first: number;
  /** Height under the unit before it. */
  readonly next: number;
}

/**
 * Sides of `height` pt. A unit that is taller than a side is reported as CRD001 and gets a side of its own.
 * Returns for each side its blocks with their y from the top of the text area.
 */
export function paginate(chunks: readonly Chunk[], height: number, report: Report): (readonly PlacedBlock[])[] {
  const units = unitsOf(chunks, 1);
  for (const unit of units) {
    if (unit.first <= height + TOLERANCE) continue;
    const tallest = unit.chunks.reduce((a, b) => (b.block.height > a.block.height ? b : a));
    report(
      'CRD001',
      tallest.range,
      `${tallest.what} needs ${toMm(unit.first)} of a card side, and a side has ${toMm(height)}`,
      { hint: 'part it into two steps, shorten its warnings, or use a larger card format' },
    );
  }
  const loose = split(units, height);
  const tight = split(unitsOf(chunks, TIGHT), height);
  const [sides, gaps] = tight.length < loose.length ? [tight, TIGHT] : [loose, 1];
  return sides.map((side) =>
    placed(
      side.flatMap((unit) => unit.chunks),
      gaps,
    ),
  );
}

function unitsOf(chunks: readonly Chunk[], gaps: number): Unit[] {
  const units: Unit[] = [];
  let current: Chunk[] = [];
  /** Table of the chunk before the current ones. */
  let open: number | undefined;
  const close = (): void => {
    units.push({
      chunks: current,
      first: heightOf(current, undefined, gaps) - (current[0]?.gap ?? 0) * gaps,
      next: heightOf(current, open, gaps),
    });
    open = current.at(-1)?.table?.id;
    current = [];
  };
  for (const chunk of chunks) {
    current.push(chunk);
    if (!chunk.keepWithNext) close();
  }
  if (current.length > 0) close();
  return units;
}

/** Height of chunks with all their gaps, after a chunk of table `open`. */
function heightOf(chunks: readonly Chunk[], open: number | undefined, gaps: number): number {
  let sum = 0;
  let table = open;
  for (const chunk of chunks) {
    if (chunk.table !== undefined && chunk.table.id !== table) {
      sum += chunk.table.head.height + (chunk.table.heading?.height ?? 0);
    }
    sum += chunk.gap * gaps + chunk.block.height;
    table = chunk.table?.id;
  }
  return sum;
}

/**
 * The fewest sides, and among the ways to fill so many the one with the least sum of squared empty shares. The last side may be
 * empty from a third on. Looks at every unit at which a side may begin, in one pass from the end.
 */
function split(units: readonly Unit[], height: number): (readonly Unit[])[] {
  const costs: number[] = Array.from({ length: units.length + 1 }, () => Number.POSITIVE_INFINITY);
  const ends: number[] = Array.from({ length: units.length + 1 }, () => 0);
  costs[units.length] = 0;
  for (let from = units.length - 1; from >= 0; from--) {
    let used = 0;
    for (let to = from; to < units.length; to++) {
      const unit = units[to];
      if (unit === undefined) break;
      used += to === from ? unit.first : unit.next;
      // A unit that is too tall for any side stands alone.
      if (to > from && used > height + TOLERANCE) break;
      const after = units[to + 1];
      // A table that runs over fills its side first.
      if (after !== undefined && continues(unit, after) && used + after.next <= height + TOLERANCE) continue;
      const empty = Math.max(0, 1 - used / height);
      const bare = Math.max(0, LEAST_LAST - used / height);
      const own = to === units.length - 1 ? LAST_COST * bare ** 2 : empty ** 2;
      const cost = SIDE_COST + own + (costs[to + 1] ?? 0);
      if (cost < (costs[from] ?? 0)) {
        costs[from] = cost;
        ends[from] = to + 1;
      }
    }
  }
  const sides: (readonly Unit[])[] = [];
  for (let from = 0; from < units.length; ) {
    const to = Math.max(from + 1, ends[from] ?? 0);
    sides.push(units.slice(from, to));
    from = to;
  }
  return sides;
}

/** Both lie in one table. */
function continues(unit: Unit, after: Unit): boolean {
  const table = unit.chunks.at(-1)?.table;
  return table !== undefined && after.chunks[0]?.table?.id === table.id;
}

function placed(chunks: readonly Chunk[], gaps: number): PlacedBlock[] {
  const blocks: PlacedBlock[] = [];
  let y = 0;
  let rows: { id: number; y: number; parts: Block[] } | undefined;
  const put = (block: Block, bookmark?: string): void => {
    blocks.push({ x: 0, y, block, ...(bookmark === undefined ? {} : { bookmark }) });
    y += block.height;
  };
  const closeTable = (): void => {
    if (rows !== undefined) blocks.push({ x: 0, y: rows.y, block: tableOf(rows.parts) });
    rows = undefined;
  };
  chunks.forEach((chunk, i) => {
    if (chunk.table?.id !== rows?.id) closeTable();
    if (i > 0) y += chunk.gap * gaps;
    if (chunk.table === undefined) {
      put(chunk.block, chunk.bookmark);
      return;
    }
    if (rows === undefined) {
      if (chunk.table.heading !== undefined) put(chunk.table.heading);
      rows = { id: chunk.table.id, y, parts: [chunk.table.head] };
      y += chunk.table.head.height;
    }
    rows.parts.push(chunk.block);
    y += chunk.block.height;
  });
  closeTable();
  return blocks;
}

/** Rows under each other as one table element. */
export function tableOf(rows: readonly Block[]): Block {
  let y = 0;
  const nodes: Node[] = [];
  const decoration: Block['decoration'][number][] = [];
  for (const row of rows) {
    const moved = shift(row, 0, y);
    nodes.push(...moved.nodes);
    decoration.push(...moved.decoration);
    y += row.height;
  }
  return { height: y, decoration, nodes: [node('Table', [], nodes)] };
}

function toMm(pt: number): string {
  return `${Math.ceil((pt * 25.4) / 72)} mm`;
}
