/** Bolt symbols with their order numbers, and the hole numbers beside them. */

import { type InTheWay, textBeside } from './beside.ts';
import type { FigureStyle } from './figure-style.ts';
import type { SpecHole } from './pattern-spec.ts';
import type { Disc, Point, Primitive, Segment, TextMark } from './primitives.ts';
import { centredBaseline, textBox } from './text-size.ts';

export interface PlacedHole extends SpecHole {
  /** In the drawing, mm. */
  readonly centre: Point;
}

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

/** The room that the symbols take, in the order of the holes. */
export function boltDiscs(holes: readonly PlacedHole[], style: FigureStyle): readonly Disc[] {
  return holes.map((hole) => ({ centre: hole.centre, radius: style.symbol }));
}

/**
 * Hole numbers beside the holes that want one, in the direction `outwards` where that is free, clear of the arrows where that can
 * be had, and of `leaders` always. A number that finds no free place is left out: the table of the order then names the hole.
 */
export function holeNumbers(
  holes: readonly PlacedHole[],
  outwards: (hole: PlacedHole) => Point,
  style: FigureStyle,
  way: InTheWay,
  leaders: readonly Segment[],
  wanted: (hole: PlacedHole) => boolean,
): TextMark[] {
  const texts: TextMark[] = [];
  const boxes = [...way.boxes];
  const discs = boltDiscs(holes, style);
  const all = { discs: [...discs, ...way.discs], boxes, segments: [...way.segments, ...leaders] };
  const apartFromMoves = { ...all, segments: leaders };
  holes.forEach((hole, i) => {
    const own = discs[i];
    if (own === undefined || !wanted(hole)) return;
    const text = {
      text: String(hole.number),
      size: style.small,
      weight: 'regular',
      role: 'hole',
      ink: 'ink',
      bolt: { hole: hole.number, order: hole.order },
    } as const;
    const mark = textBeside(own, outwards(hole), text, all) ?? textBeside(own, outwards(hole), text, apartFromMoves);
    if (mark === undefined) return;
    texts.push(mark);
    boxes.push(textBox(mark));
  });
  return texts;
}
