/** What a card is made of: placed marks in pt (x right, y down) and, beside them, the order and kind in which they are read out. */

import type { Drawing } from '../drawing/index.ts';
import type { FaceName, TextInk } from '../type/index.ts';

export const PT_PER_MM = 72 / 25.4;

/** Length in pt of a length in mm. */
export function mm(value: number): number {
  return value * PT_PER_MM;
}

export type CardInk =
  | TextInk
  | 'hairline'
  | 'rule'
  | 'tint'
  | 'signal-danger'
  | 'signal-warning'
  | 'signal-caution'
  | 'signal-notice'
  | 'tint-danger'
  | 'tint-warning'
  | 'tint-caution'
  | 'tint-notice';

export interface TextItem {
  readonly kind: 'text';
  readonly x: number;
  /** Of the baseline. */
  readonly y: number;
  readonly width: number;
  readonly text: string;
  readonly face: FaceName;
  readonly size: number;
  readonly ink: TextInk;
}

export interface DrawingItem {
  readonly kind: 'drawing';
  readonly x: number;
  readonly y: number;
  /** The drawing is painted at its own size in mm. */
  readonly drawing: Drawing;
}

/** The square symbol; x, y are the corner of its light margin and `side` includes it. */
export interface QrItem {
  readonly kind: 'qr';
  readonly x: number;
  readonly y: number;
  readonly side: number;
  readonly address: string;
}

export interface LineItem {
  readonly kind: 'line';
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly width: number;
  readonly ink: CardInk;
}

export interface RectItem {
  readonly kind: 'rect';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly fill?: CardInk;
  readonly stroke?: CardInk;
  readonly lineWidth?: number;
}

/** Read out by screen readers, in the order of the tree. */
export type Content = TextItem | DrawingItem | QrItem;
/** Rules, boxes and grounds: never read out. A drawing here is a sign whose word stands beside it. */
export type Decoration = LineItem | RectItem | DrawingItem;

export type Tag =
  | 'H1'
  | 'H2'
  | 'P'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Table'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Figure'
  | 'Formula'
  | 'Link'
  | 'Div';

/** One element of the reading order. */
export interface Node {
  readonly tag: Tag;
  readonly alt?: string;
  readonly scope?: 'Column' | 'Row';
  /** Where a link leads, and the box that answers to it. */
  readonly link?: {
    readonly url: string;
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
  readonly items: readonly Content[];
  readonly kids: readonly Node[];
}

/** Something with a height, laid out from its own top left corner. */
/** A stretch of a block that differs from the issue before, from the top of the block; in pt. */
export interface Bar {
  readonly y: number;
  readonly height: number;
}

export interface Block {
  readonly height: number;
  readonly decoration: readonly Decoration[];
  readonly nodes: readonly Node[];
  /** Each gets a change bar in the outer margin of the side on which the block comes to stand. */
  readonly bars?: readonly Bar[];
}

export const EMPTY: Block = { height: 0, decoration: [], nodes: [] };

export function node(
  tag: Tag,
  items: readonly Content[],
  kids: readonly Node[] = [],
  more: Partial<Pick<Node, 'alt' | 'scope' | 'link'>> = {},
): Node {
  return { tag, items, kids, ...more };
}

/** The same block, moved. */
export function shift(block: Block, dx: number, dy: number): Block {
  if (dx === 0 && dy === 0) return block;
  return {
    height: block.height,
    decoration: block.decoration.map((item) => shiftItem(item, dx, dy)),
    nodes: block.nodes.map((n) => shiftNode(n, dx, dy)),
    ...(block.bars === undefined ? {} : { bars: block.bars.map((bar) => ({ ...bar, y: bar.y + dy })) }),
  };
}

/** The block with a change bar beside all of it. */
export function barred(block: Block, changed = true): Block {
  if (!changed || block.height === 0) return block;
  return { ...block, bars: [{ y: 0, height: block.height }] };
}

function barsOf(blocks: readonly Block[]): { readonly bars?: readonly Bar[] } {
  const bars = blocks.flatMap((b) => b.bars ?? []);
  return bars.length === 0 ? {} : { bars };
}

function shiftNode(n: Node, dx: number, dy: number): Node {
  const moved: Node = {
    ...n,
    items: n.items.map((item) => shiftItem(item, dx, dy)),
    kids: n.kids.map((kid) => shiftNode(kid, dx, dy)),
  };
  return n.link === undefined ? moved : { ...moved, link: { ...n.link, x: n.link.x + dx, y: n.link.y + dy } };
}

function shiftItem<T extends Content | Decoration>(item: T, dx: number, dy: number): T {
  if (item.kind === 'line') return { ...item, x1: item.x1 + dx, y1: item.y1 + dy, x2: item.x2 + dx, y2: item.y2 + dy };
  return { ...item, x: item.x + dx, y: item.y + dy };
}

/** Blocks under each other with `gap` pt between those that have a height. */
export function stack(blocks: readonly Block[], gap = 0): Block {
  let y = 0;
  const placed: Block[] = [];
  for (const block of blocks) {
    if (block.height === 0) continue;
    if (y > 0) y += gap;
    placed.push(shift(block, 0, y));
    y += block.height;
  }
  return { ...overlay(...placed), height: y };
}

/** Blocks over each other from one corner; as high as the highest. */
export function overlay(...blocks: readonly Block[]): Block {
  return {
    height: Math.max(0, ...blocks.map((b) => b.height)),
    decoration: blocks.flatMap((b) => b.decoration),
    nodes: blocks.flatMap((b) => b.nodes),
    ...barsOf(blocks),
  };
}
