/** What the sides of a card are filled with: blocks that stay whole, and which of them stay together. */

import type { Range } from '../../diagnostics/index.ts';
import type { Block } from './items.ts';
import type { Table } from './table.ts';

export interface Chunk {
  readonly block: Block;
  /** Space above it, unless it stands at the top of a side. */
  readonly gap: number;
  /** No side ends between this and the next chunk. */
  readonly keepWithNext: boolean;
  /** Rows of one table carry the same number. What stands over a row where it is the first of its side: head, and heading if any. */
  readonly table?: { readonly id: number; readonly head: Block; readonly heading?: Block };
  /** Title of an entry in the list of bookmarks that leads here. */
  readonly bookmark?: string;
  /** What is named when it does not fit a side. */
  readonly what: string;
  readonly range: Range;
}

/**
 * A table as chunks: head and first two rows stay together, and so do the last two. `continued` is the heading of the table's rest
 * on the next side.
 */
export function tableChunks(
  table: Table,
  id: number,
  gap: number,
  what: string,
  range: Range,
  continued?: Block,
): Chunk[] {
  const last = table.rows.length - 1;
  return table.rows.map(
    (row, i): Chunk => ({
      block: row,
      gap: i === 0 ? gap : 0,
      keepWithNext: (i === 0 && last > 0) || (i === last - 1 && last > 1),
      table: { id, head: table.head, ...(i === 0 || continued === undefined ? {} : { heading: continued }) },
      what,
      range,
    }),
  );
}
