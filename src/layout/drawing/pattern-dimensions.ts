/** The dimensions of a pattern figure: which ones each kind of pattern has, one after the other, clear of each other. */

import type { ArcPattern } from '../../geometry/index.ts';
import { arcAngles, fromTop } from './angles.ts';
import type { PlacedHole } from './bolts.ts';
import { chordDimension } from './chord.ts';
import { type DiameterInput, diameterDimension, gapsBetween } from './diameter.ts';
import { dimensionText } from './dimensions.ts';
import type { FigureStyle } from './figure-style.ts';
import type { Moves } from './moves.ts';
import { overallDimensions } from './overall.ts';
import type { PatternSpec } from './pattern-spec.ts';
import type { Disc, Primitive } from './primitives.ts';
import type { Box } from './text-size.ts';

/** What the dimensions are of, and what they keep clear of. */
export interface DimensionInput {
  readonly spec: PatternSpec;
  readonly holes: readonly PlacedHole[];
  /** Bolts, in the order of the holes, then features. */
  readonly discs: readonly Disc[];
  readonly words: readonly Box[];
  readonly moves: Moves;
  readonly style: FigureStyle;
  readonly scale: number;
}

export interface Dimensions {
  readonly marks: readonly Primitive[];
  /** What found no free place in the figure and is said under it. */
  readonly notes: readonly string[];
}

/** No dimensions at all. */
export const NO_DIMENSIONS: Dimensions = { marks: [], notes: [] };

/** Where several circles leave few gaps in line, a diameter may stand at any angle. */
const ALL_ROUND: readonly number[] = Array.from({ length: 120 }, (_, i) => i * 3);

/** `trial`: only the outer bounds matter yet, and the diameters inside circles, whose places take long to find, are left out. */
export function patternDimensions(input: DimensionInput, trial: boolean): Dimensions {
  const { spec, holes, words, style, scale } = input;
  const p = spec.pattern;
  const obstacles = [...words, ...boxesOf(input.discs.slice(holes.length))];
  if (p.kind === 'arc') {
    const radius = (p.diameterMm / 2) * scale;
    const angles = p.count < 2 ? [] : arcAngles(p, radius, obstacles, style, spec.arcAlone === true);
    const found = diameters(input, [arcDiameter(p, scale)]);
    const notes = saidAs('Arc', found.notes);
    if (spec.arcAlone === true) notes.push(`Hole 1: ${fromTop(p.firstDeg)}.`);
    return { marks: [...found.marks, ...angles], notes };
  }
  if (p.kind !== 'circle' && p.kind !== 'circles') {
    return { marks: overallDimensions(spec, holes, scale, [...words, ...boxesOf(input.discs)], style), notes: [] };
  }
  if (holes.length < 2) return NO_DIMENSIONS;
  const rings = p.kind === 'circle' ? [p] : p.circles;
  const widest = rings.reduce((best, r, i) => (r.diameterMm > (rings[best]?.diameterMm ?? 0) ? i : best), 0);
  const chord = chordDimension(
    holes.filter((h) => h.ring === widest),
    obstacles,
    style,
  );
  if (trial) return { marks: chord, notes: [] };
  const inputs = rings.map((r, i): DiameterInput => {
    const places = holes.filter((h) => h.ring === i).map((h) => h.centre);
    return {
      label: `Ø\u00a0${dimensionText(r.diameterMm)}`,
      radius: (r.diameterMm / 2) * scale,
      angles: rings.length === 1 ? gapsBetween(places) : ALL_ROUND,
      short: false,
      others: rings.flatMap((other) => (other === r ? [] : [(other.diameterMm / 2) * scale])),
    };
  });
  // The smallest circle leaves its dimension the least choice.
  const found = diameters(
    input,
    [...inputs].sort((a, b) => a.radius - b.radius),
  );
  return { marks: [...found.marks, ...chord], notes: saidAs('Circle', found.notes) };
}

/** Symbols as boxes, for dimensions that run past them. */
function boxesOf(discs: readonly Disc[]): readonly Box[] {
  return discs.map(({ centre: { x, y }, radius: r }) => ({ left: x - r, right: x + r, top: y - r, bottom: y + r }));
}

/** Up to half a circle is dimensioned by its radius, more by its diameter, as ISO 129-1 has it (memory). */
function arcDiameter(p: ArcPattern, scale: number): DiameterInput {
  const half = p.spanDeg <= 180;
  const pitch = (p.numbering === 'anticlockwise' ? -p.spanDeg : p.spanDeg) / Math.max(1, p.count - 1);
  return {
    label: half ? `R\u00a0${dimensionText(p.diameterMm / 2)}` : `Ø\u00a0${dimensionText(p.diameterMm)}`,
    radius: (p.diameterMm / 2) * scale,
    angles: Array.from({ length: Math.max(1, p.count - 1) }, (_, i) => p.firstDeg + pitch * (i + 0.5)),
    short: half,
    others: [],
  };
}

/** Labels that found no place, as one sentence. */
function saidAs(what: string, labels: readonly string[]): string[] {
  return labels.length === 0 ? [] : [`${what}${labels.length === 1 ? '' : 's'} ${labels.join(', ')}.`];
}

/** One after the other, each clear of the ones before. */
function diameters({ discs, words, moves, style }: DimensionInput, inputs: readonly DiameterInput[]): Dimensions {
  const marks: Primitive[] = [];
  const boxes = [...words];
  const segments = [...moves.arrows, ...moves.links];
  const notes: string[] = [];
  for (const input of inputs) {
    const found = diameterDimension(input, style, { discs, boxes, segments });
    if (!found.clear) {
      notes.push(input.label);
      continue;
    }
    marks.push(...found.marks);
    if (found.box !== undefined) boxes.push(found.box);
    segments.push(...found.lines);
  }
  return { marks, notes };
}
