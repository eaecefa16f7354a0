/** Fills sides with chunks: nothing is parted that belongs together, and no side is left nearly empty where it can be helped. */

import type { Report } from '../../diagnostics/index.ts';
import type { Chunk } from './chunks.ts';
import { type Block, type Node, node, shift } from './items.ts';

export interface PlacedBlock {
  readonly x: number;
  readonly y: number;
  readonly block: Block;
}

/** Share of a side under which the last one counts as nearly empty. */
const NEARLY_EMPTY = 0.34;
/** Gaps may shrink to this share where that saves a side; type never does. */
const TIGHT = 0.6;

/** Chunks that stay together, with the room they take. */
interface Unit {
  readonly chunks: readonly Chunk[];
}

/**
 * Sides of `height` pt. A unit that is taller than a side is reported as CRD001 and gets a side of its own.
 * Returns for each side its blocks with their y from the top of the text area.
 */
export function paginate(chunks: readonly Chunk[], height: number, report: Report): (readonly PlacedBlock[])[] {
  const units = unitsOf(chunks);
  for (const unit of units) {
    const need = fill([unit], Number.POSITIVE_INFINITY, 1)[0]?.used ?? 0;
    if (need <= height + 0.01) continue;
    const tallest = unit.chunks.reduce((a, b) => (b.block.height > a.block.height ? b : a));
    report(
      'CRD001',
      tallest.range,
      `${tallest.what} needs ${toMm(need)} of a card side, and a side has ${toMm(height)}`,
      { hint: 'part it into two steps, shorten its warnings, or use a larger card format' },
    );
  }
  const loose = fill(units, height, 1);
  const tight = fill(units, height, TIGHT);
  const gaps = tight.length < loose.length ? TIGHT : 1;
  const sides = evenedEnd(gaps === 1 ? loose : tight, height, gaps);
  return sides.map((side) => side.blocks);
}

/** When the last side is nearly empty, the last few sides share their content evenly; the sides before stay full. */
function evenedEnd(sides: readonly Side[], height: number, gaps: number): readonly Side[] {
  const last = sides.at(-1);
  if (sides.length < 2 || last === undefined || last.used >= NEARLY_EMPTY * height) return sides;
  for (let count = 2; count <= Math.min(4, sides.length); count++) {
    const kept = sides.slice(0, sides.length - count);
    const found = evened(
      sides.slice(-count).flatMap((side) => side.units),
      height,
      gaps,
      count,
    );
    if (found !== undefined && (found.at(-1)?.used ?? 0) >= NEARLY_EMPTY * height) return [...kept, ...found];
  }
  return sides;
}

/** The least height of side that still gives `count` sides, so that the last one is no mere rest. */
function evened(units: readonly Unit[], height: number, gaps: number, count: number): Side[] | undefined {
  let low = height * 0.3;
  let high = height;
  let best: Side[] | undefined;
  for (let i = 0; i < 12; i++) {
    const middle = (low + high) / 2;
    const found = fill(units, middle, gaps);
    if (found.length <= count && found.every((side) => side.used <= height + 0.01)) {
      best = found;
      high = middle;
    } else low = middle;
  }
  return best;
}

interface Side {
  readonly units: readonly Unit[];
  readonly blocks: readonly PlacedBlock[];
  readonly used: number;
}

function unitsOf(chunks: readonly Chunk[]): Unit[] {
  const units: Unit[] = [];
  let current: Chunk[] = [];
  for (const chunk of chunks) {
    current.push(chunk);
    if (chunk.keepWithNext) continue;
    units.push({ chunks: current });
    current = [];
  }
  if (current.length > 0) units.push({ chunks: current });
  return units;
}

function fill(units: readonly Unit[], height: number, gaps: number): Side[] {
  const sides: Side[] = [];
  let side: { units: Unit[]; used: number; table: number | undefined } = { units: [], used: 0, table: undefined };
  const close = (): void => {
    if (side.units.length > 0) sides.push(placed(side.units, gaps));
    side = { units: [], used: 0, table: undefined };
  };
  for (const unit of units) {
    const after = room(side.used, side.table, unit.chunks, gaps, side.units.length === 0);
    if (side.units.length > 0 && after > height + 0.01) close();
    side.used = room(side.used, side.table, unit.chunks, gaps, side.units.length === 0);
    side.units.push(unit);
    side.table = unit.chunks.at(-1)?.table?.id;
  }
  close();
  return sides;
}

/** Height in use after adding chunks to a side. */
function room(used: number, table: number | undefined, chunks: readonly Chunk[], gaps: number, first: boolean): number {
  let sum = used;
  let open = table;
  chunks.forEach((chunk, i) => {
    const starts = chunk.table !== undefined && chunk.table.id !== open;
    if (!(first && i === 0)) sum += chunk.gap * gaps;
    if (starts) sum += chunk.table?.head.height ?? 0;
    sum += chunk.block.height;
    open = chunk.table?.id;
  });
  return sum;
}

function placed(units: readonly Unit[], gaps: number): Side {
  const chunks = units.flatMap((unit) => unit.chunks);
  const blocks: PlacedBlock[] = [];
  let y = 0;
  let rows: { id: number; y: number; parts: Block[] } | undefined;
  const closeTable = (): void => {
    if (rows !== undefined) blocks.push({ x: 0, y: rows.y, block: tableOf(rows.parts) });
    rows = undefined;
  };
  chunks.forEach((chunk, i) => {
    if (chunk.table?.id !== rows?.id) closeTable();
    if (i > 0) y += chunk.gap * gaps;
    if (chunk.table === undefined) {
      blocks.push({ x: 0, y, block: chunk.block });
      y += chunk.block.height;
      return;
    }
    if (rows === undefined) {
      rows = { id: chunk.table.id, y, parts: [chunk.table.head] };
      y += chunk.table.head.height;
    }
    rows.parts.push(chunk.block);
    y += chunk.block.height;
  });
  closeTable();
  return { units, blocks, used: y };
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
