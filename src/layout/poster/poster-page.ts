/** What every poster shares: its sheet, its margin, and how many rows it takes. */

import type { ResolvedShop } from '../../resolve/types.ts';
import { type Block, mm, stack } from '../card/items.ts';
import type { PlacedBlock } from '../card/paginate.ts';
import { paragraph, type Setting, span } from '../card/setting.ts';
import type { Span } from '../type/index.ts';

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

/** Title, condition, and under them where the numbers come from. `lead`: line pitch of the title, pt. */
export function sheetHead(
  setting: Setting,
  width: number,
  { title, lead, condition, origin }: { title: readonly Span[]; lead: number; condition: string; origin: string },
): Block {
  const kind = span('Tightening torque', setting.format.type.title, 'semibold', 'accent');
  return stack(
    [
      paragraph(setting, [kind], width, { lead: mm(7) }),
      paragraph(setting, [...title], width, { tag: 'H1', lead }),
      paragraph(setting, [span(capital(condition), 17, 'bold')], width, { lead: mm(8) }),
      paragraph(setting, [span(origin, 11.5)], width),
    ],
    mm(0.6),
  );
}

/** What goes before the table, the shop's safety words, and its name. */
export function sheetFoot(
  setting: Setting,
  width: number,
  shop: ResolvedShop,
  { first, text }: { first: string; text: string },
): Block {
  const { type } = setting.format;
  return stack(
    [
      paragraph(setting, [span(`${first} `, 11.5, 'bold'), span(text, type.table)], width),
      paragraph(setting, [span(shop.info.safety, type.small)], width),
      paragraph(setting, [span(shop.info.name, type.small, 'semibold')], width),
    ],
    mm(1),
  );
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
