/** The body of a pattern figure at one scale: centre lines, bolts, features, moves, dimensions; the captions come later. */

import { textBeside } from './beside.ts';
import { boltDiscs, boltSymbols, holeNumbers, type PlacedHole } from './bolts.ts';
import { boxOf } from './bounds.ts';
import { centreLines, onCircleOut, outwards } from './centre-lines.ts';
import { areTrue, featureMarks, leaders, type PlacedFeature, placeFeatures, wordsBeside } from './features.ts';
import type { FigureStyle } from './figure-style.ts';
import { firstMoves, freeMoves, type Moves, moveMarksOf } from './moves.ts';
import { NO_DIMENSIONS, patternDimensions } from './pattern-dimensions.ts';
import type { PatternSpec } from './pattern-spec.ts';
import { type Disc, distance, type Point, type Primitive, type Segment, type TextMark } from './primitives.ts';
import { type Box, textBox, textWidth } from './text-size.ts';

export interface Body {
  readonly marks: readonly Primitive[];
  /** Top of everything within `reach` mm left and right of `x`: the TOP mark stands on it. */
  readonly crown: (x: number, reach: number) => number;
  /** Dimensions that found no place free of moves and symbols, to be said under the figure. */
  readonly notes: readonly string[];
  /** Features stand where they are. */
  readonly true: boolean;
}

/** The middle of the circle, slot or rectangle; of listed points that of the box around them. */
export function middleOf(spec: PatternSpec): Point {
  if (spec.pattern.kind !== 'points') return { x: 0, y: 0 };
  const xs = spec.holes.map((h) => h.at.x);
  const ys = spec.holes.map((h) => h.at.y);
  return { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
}

/**
 * `scale`: mm in the drawing for each mm of the part. `numbered`: order numbers stand in the symbols. `trial`: only the outer bounds
 * matter yet, and the diameters inside circles, whose places take long to find, are left out.
 */
export function patternBody(
  spec: PatternSpec,
  style: FigureStyle,
  scale: number,
  numbered: boolean,
  trial = false,
): Body {
  const m = middleOf(spec);
  const holes: PlacedHole[] = spec.holes.map((h) => ({
    ...h,
    centre: { x: (h.at.x - m.x) * scale, y: (h.at.y - m.y) * scale },
  }));
  const bolts = boltDiscs(holes, style);
  const features = placeFeatures(spec, m, scale, bolts);
  const wantedMoves = firstMoves(spec, holes, style);
  const texts = numbersOf(spec, holes, features, wantedMoves, style, scale, numbered);
  const labels = featureLabels(features, bolts, texts.map(textBox), wantedMoves, style);
  const words = [...texts, ...labels];
  const moves = freeMoves(wantedMoves, words.map(textBox), features, style);
  const discs = [...bolts, ...features];
  const dimensions =
    spec.dimensions === false
      ? NO_DIMENSIONS
      : patternDimensions({ spec, holes, discs, words: words.map(textBox), moves, style, scale }, trial);
  const marks = [
    ...centreLines(spec, scale, style.symbol),
    ...moveMarksOf(moves, style),
    ...dimensions.marks,
    ...featureMarks(features),
    ...boltSymbols(holes, style, numbered),
    ...words,
  ];
  const crown = (x: number, reach: number): number =>
    marks
      .map(boxOf)
      .filter((b) => b.left < x + reach && b.right > x - reach)
      .reduce((top, b) => Math.min(top, b.top), Math.min(...holes.map((h) => h.centre.y)));
  return { marks, crown, notes: dimensions.notes, true: areTrue(features) };
}

/** The hole numbers: beside every hole where they differ from the order, beside some where the order has no room in the symbols. */
function numbersOf(
  spec: PatternSpec,
  holes: readonly PlacedHole[],
  features: readonly PlacedFeature[],
  moves: Moves,
  style: FigureStyle,
  scale: number,
  numbered: boolean,
): readonly TextMark[] {
  if (numbered && spec.holes.every((h) => h.number === h.order)) return [];
  const every = numbered ? 1 : labelEvery(holes, style);
  const digits = '0'.repeat(String(spec.holes.length).length);
  const room = 2 * style.symbol + textWidth(digits, style.small) + 1.8;
  return holeNumbers(
    holes,
    outwards(spec, holes, scale, room),
    style,
    { discs: features, boxes: [], segments: [...moves.arrows, ...moves.links] },
    leaders(features),
    (hole) => every === 1 || hole.number === 1 || hole.number % every === 0,
  );
}

/** Every how-manieth hole gets its number when not all can have one: 2, 5, 10, 20 ... so that they lie 6 mm apart or more. */
function labelEvery(holes: readonly PlacedHole[], style: FigureStyle): number {
  const [a, b] = holes;
  const pitch = a === undefined || b === undefined ? 10 : Math.max(0.1, distance(a.centre, b.centre));
  const need = textWidth('000', style.small) + 1.5;
  return [1, 2, 5, 10, 20, 50, 100].find((k) => k * pitch >= need) ?? 100;
}

/** `J1` beside its screw: inwards, where dimensions and hole numbers leave most room. */
function featureLabels(
  features: readonly PlacedFeature[],
  bolts: readonly Disc[],
  taken: readonly Box[],
  moves: Moves,
  style: FigureStyle,
): readonly TextMark[] {
  const boxes = [...taken];
  const words = wordsBeside(features.map((f) => f.feature));
  return features.flatMap((placed) => {
    const label = words.get(placed.feature);
    if (label === undefined) return [];
    const out = onCircleOut(placed.centre);
    const text = { text: label, size: style.small, weight: 'regular', role: 'label', ink: 'ink' } as const;
    const segments: readonly Segment[] = [...moves.arrows, ...moves.links];
    const way = { discs: [...bolts, ...features.filter((f) => f !== placed)], boxes, segments };
    const inwards = { x: -out.x, y: -out.y };
    const mark = textBeside(placed, inwards, text, way) ?? textBeside(placed, inwards, text, { ...way, segments: [] });
    if (mark === undefined) return [];
    boxes.push(textBox(mark));
    return [mark];
  });
}
