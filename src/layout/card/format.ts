/** Card formats: paper, margins and type sizes. */

import type { ShopInfo } from '../../resolve/types.ts';
import { mm } from './items.ts';

export interface Format {
  readonly name: ShopInfo['cardFormat'];
  /** Paper in pt. */
  readonly width: number;
  readonly height: number;
  /** Margin on the side of the binder's holes: left on odd sides, right on even ones. */
  readonly binding: number;
  readonly outer: number;
  readonly top: number;
  readonly bottom: number;
  /** Column of step number and tick box. */
  readonly gutter: number;
  /** Columns for what a step takes. With three, the last of them may stand beside the words; with two, all stand below. */
  readonly columns: 2 | 3;
  readonly columnGap: number;
  readonly type: {
    readonly doc: number;
    readonly title: number;
    readonly value: number;
    readonly stage: number;
    readonly step: number;
    readonly table: number;
    readonly small: number;
    /** Nothing on a card is smaller. */
    readonly least: number;
  };
}

/** For a card on the bench, read from about 600 mm. */
const TYPE = { doc: 20, title: 14, value: 18, stage: 13, step: 11.5, table: 10.5, small: 9, least: 8 } as const;

/** Two holes after ISO 838 lie 12 mm from the edge and want 20 mm or more free. */
const A4: Format = {
  name: 'A4',
  width: mm(210),
  height: mm(297),
  binding: mm(22),
  outer: mm(12),
  top: mm(10),
  bottom: mm(9),
  gutter: mm(12),
  columns: 3,
  columnGap: mm(6),
  type: TYPE,
};

const FORMATS: Readonly<Record<ShopInfo['cardFormat'], Format>> = {
  A4,
  Letter: { ...A4, name: 'Letter', width: 612, height: 792 },
  A5: {
    name: 'A5',
    width: mm(148),
    height: mm(210),
    binding: mm(20),
    outer: mm(8),
    top: mm(8),
    bottom: mm(7.5),
    gutter: mm(10),
    columns: 2,
    columnGap: mm(5),
    type: { ...TYPE, value: 16 },
  },
};

export function formatOf(name: ShopInfo['cardFormat']): Format {
  return FORMATS[name];
}

/** The format of a card by the size of its paper, which no two formats share. */
export function formatOfPaper(width: number, height: number): Format {
  const found = Object.values(FORMATS).find((f) => f.width === width && f.height === height);
  if (found === undefined) throw new RangeError(`no card format has paper of ${width} by ${height} pt`);
  return found;
}

/** Left edge of the text area: the binding margin on odd sides, which are fronts, the outer one on even sides. */
export function leftOf(format: Format, side: number): number {
  return side % 2 === 1 ? format.binding : format.outer;
}

/** Width of the text area. */
export function textWidthOf(format: Format): number {
  return format.width - format.binding - format.outer;
}

/** Paper wide enough for things beside each other that stand under each other on small paper. */
export function isWide(format: Format): boolean {
  return format.columns === 3;
}

/** Width of `count` neighbouring columns of the grid on which a step's lists stand, gaps between them included. */
export function columnsWidth(format: Format, count = 1): number {
  const all = textWidthOf(format) - format.gutter;
  const one = (all - (format.columns - 1) * format.columnGap) / format.columns;
  return count * one + (count - 1) * format.columnGap;
}

/** Line spacing for a type size: whole half-millimetres, so that columns of different blocks keep step. */
export function leading(size: number): number {
  return mm(Math.ceil((size * 1.21 * 2) / mm(1)) / 2);
}
