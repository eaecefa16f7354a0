/** Bolt symbols with their order numbers, the hole numbers beside them, and the first moves between them. */

import { move } from './arrow.ts';
import { boxToCircle, extent } from './collide.ts';
import type { FigureStyle } from './figure-style.ts';
import type { PatternSpec, SpecHole } from './pattern-spec.ts';
import { distance, type Point, type Primitive, type TextMark } from './primitives.ts';
import { type Box, CAP_HEIGHT, centredBaseline, overlaps, textBox, textWidth } from './text-size.ts';

export interface PlacedHole extends SpecHole {
  /** In the drawing, mm. */
  readonly centre: Point;
}

/** Air between a symbol and the hole number beside it. */
const GAP = 0.7;
/** Moves shown: enough to see the rule, few enough to read. */
const MOVES = 4;

/** Symbols; the first to be tightened is filled, so that the eye finds the start on a grey copy too. */
export function boltSymbols(holes: readonly PlacedHole[], style: FigureStyle, numbered: boolean): Primitive[] {
  return holes.flatMap((hole): Primitive[] => {
    const bolt = { hole: hole.number, order: hole.order };
    const first = hole.order === 1;
    const circle: Primitive = {
      kind: 'circle',
      centre: hole.centre,
      radius: style.symbol,
      stroke: 'visible',
      ink: first ? 'accent' : 'ink',
      fill: first ? 'accent' : 'paper',
      bolt,
    };
    if (!numbered) return [circle];
    const text: TextMark = {
      kind: 'text',
      at: centredBaseline(hole.centre, style.order),
      text: String(hole.order),
      size: style.order,
      anchor: 'middle',
      weight: 'bold',
      role: 'order',
      ink: first ? 'paper' : 'ink',
      bolt,
    };
    return [circle, text];
  });
}

/**
 * Hole numbers beside the holes that want one, in the direction `outwards` where that is free.
 * A number that finds no free place is left out: the table of the order then names the hole.
 */
export function holeNumbers(
  holes: readonly PlacedHole[],
  outwards: (hole: PlacedHole) => Point,
  style: FigureStyle,
  wanted: (hole: PlacedHole) => boolean,
): TextMark[] {
  const texts: TextMark[] = [];
  const boxes: Box[] = [];
  for (const hole of holes) {
    if (!wanted(hole)) continue;
    for (const direction of directions(outwards(hole))) {
      const text = numberBeside(hole, direction, style);
      const box = textBox(text);
      const free =
        holes.every((other) => other === hole || boxToCircle(box, other.centre, style.symbol) > 0.3) &&
        boxes.every((other) => !overlaps(box, other, 0.4));
      if (!free) continue;
      texts.push(text);
      boxes.push(box);
      break;
    }
  }
  return texts;
}

/** The wanted direction first, then turned further and further from it. */
function directions(wanted: Point): Point[] {
  const outward = Math.hypot(wanted.x, wanted.y) < 1e-6 ? -Math.PI / 2 : Math.atan2(wanted.y, wanted.x);
  return [0, 45, -45, 90, -90, 135, -135, 180].map((turn) => {
    const a = outward + (turn * Math.PI) / 180;
    return { x: Math.cos(a), y: Math.sin(a) };
  });
}

function numberBeside(hole: PlacedHole, direction: Point, style: FigureStyle): TextMark {
  const text = String(hole.number);
  const w = textWidth(text, style.small);
  const h = CAP_HEIGHT * style.small;
  const away = style.symbol + GAP + extent({ left: 0, right: w, top: 0, bottom: h }, direction);
  const centre = { x: hole.centre.x + direction.x * away, y: hole.centre.y + direction.y * away };
  return {
    kind: 'text',
    at: centredBaseline(centre, style.small),
    text,
    size: style.small,
    anchor: 'middle',
    weight: 'regular',
    role: 'hole',
    ink: 'ink',
    bolt: { hole: hole.number, order: hole.order },
  };
}

/**
 * The straight pieces of the first moves that are long enough to be drawn; where neighbours are tightened in groups, these are
 * the moves from group to group.
 */
export function firstMoves(
  spec: PatternSpec,
  holes: readonly PlacedHole[],
  style: FigureStyle,
): { readonly from: Point; readonly to: Point }[] {
  const byNumber = new Map(holes.map((hole) => [hole.number, hole]));
  const moves: { from: Point; to: Point }[] = [];
  const least = 2 * clearOf(style) + style.moveHead;
  for (let i = 0; i + 1 < Math.min(spec.order.length, MOVES * 4) && moves.length < MOVES; i++) {
    const from = byNumber.get(spec.order[i] ?? -1)?.centre;
    const to = byNumber.get(spec.order[i + 1] ?? -1)?.centre;
    if (from !== undefined && to !== undefined && distance(from, to) > least) moves.push({ from, to });
  }
  return moves;
}

/** Arrows stay this far from the middle of a bolt. */
function clearOf(style: FigureStyle): number {
  return style.symbol + 0.5;
}

export function moveArrows(
  moves: readonly { readonly from: Point; readonly to: Point }[],
  style: FigureStyle,
): Primitive[] {
  return moves.flatMap(({ from, to }) => move(from, to, clearOf(style), style.moveHead, 'accent'));
}
