/** What every poster shares: its sheet, its margin, and how many rows it takes. */

import { type Block, mm } from '../card/items.ts';
import type { PlacedBlock } from '../card/paginate.ts';

export interface PosterPage {
  readonly title: string;
  readonly blocks: readonly PlacedBlock[];
}

export const MARGIN = mm(15);
/** More rows would make the type too small for a wall. */
export const MOST_ROWS = 30;

/** Rows no lower than that are read from two steps away. */
const LEAST_ROW = mm(5.6);

/** What stands on a sheet: head at the top, foot at the bottom, and between them a grid whose rows share the room. */
export interface SheetParts {
  readonly head: Block;
  readonly foot: Block;
  readonly rows: number;
  /** Highest row, pt. */
  readonly mostRow: number;
  /** Type size and row height, pt. */
  readonly grid: (size: number, rowHeight: number) => Block;
}

export function placeSheet(paperHeight: number, { head, foot, rows, mostRow, grid }: SheetParts): PlacedBlock[] {
  const room = paperHeight - 2 * MARGIN - head.height - foot.height - mm(16);
  const rowHeight = Math.max(LEAST_ROW, Math.min(mostRow, room / (rows + 1)));
  const size = Math.min(18, Math.max(11.5, rowHeight * 0.58));
  return [
    { x: MARGIN, y: MARGIN, block: head },
    { x: MARGIN, y: MARGIN + head.height + mm(6), block: grid(size, rowHeight) },
    { x: MARGIN, y: paperHeight - MARGIN - foot.height, block: foot },
  ];
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
