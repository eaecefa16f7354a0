/** What the pattern figure needs to know of a joint, in the frame of the drawing (mm on the part, x right, y down). */

import type { Feature, Hole, Pattern, Sequence } from '../../geometry/index.ts';
import type { Point } from './primitives.ts';

export interface SpecHole {
  /** Counted from hole 1 as the pattern says, or as listed. */
  readonly number: number;
  /** The number in the symbol: place in the order, from 1; holes tightened at the same moment have the same one. */
  readonly order: number;
  readonly at: Point;
  /** Which of concentric circles, from 0; 0 for all others. */
  readonly ring: number;
}

export interface SpecFeature {
  readonly kind: Feature['kind'];
  readonly at: Point;
  readonly diameterMm?: number;
  /** As printed in place of the diameter: `M12`. */
  readonly size?: string;
  readonly label?: string;
}

export interface PatternSpec {
  readonly pattern: Pattern;
  readonly name: string;
  readonly holes: readonly SpecHole[];
  /** Hole numbers in the order of work; more than one at a time where several tools are used. */
  readonly moves: readonly (readonly number[])[];
  readonly features: readonly SpecFeature[];
  readonly action: 'tighten' | 'loosen';
  /** Left out when false. */
  readonly dimensions?: boolean;
  /** The angle of hole 1 of an arc is said under the figure, which then shows the arc alone. */
  readonly arcAlone?: boolean;
  readonly view: string;
  readonly top?: string;
  /** The rounds in words, for the alternative text. */
  readonly rounds: string;
}

export interface SpecInput {
  readonly pattern: Pattern;
  /** In the frame of the part: x right, y up. */
  readonly holes: readonly Hole[];
  /** The order to be shown: for `loosen` that of loosening. */
  readonly sequence: Sequence;
  readonly action: PatternSpec['action'];
  readonly name: string;
  readonly view: string;
  readonly top?: string;
  readonly features?: readonly Feature[];
  readonly rounds?: string;
}

/** Geometry counts y upwards; drawings count it downwards. Pure: no joint, no disk, no font. */
export function specFrom(input: SpecInput): PatternSpec {
  const { pattern, sequence } = input;
  const ends = ringEnds(pattern);
  return {
    pattern,
    name: input.name,
    holes: input.holes.map((hole, i) => ({
      number: hole.number,
      order: sequence.moveAt[hole.number - 1] ?? i + 1,
      at: { x: hole.xMm, y: -hole.yMm },
      ring: Math.max(
        0,
        ends.findIndex((end) => hole.number <= end),
      ),
    })),
    moves: sequence.moves,
    features: (input.features ?? []).map(({ kind, xMm, yMm, diameterMm, size, label }) => ({
      kind,
      at: { x: xMm, y: -yMm },
      ...(diameterMm === undefined ? {} : { diameterMm }),
      ...(size === undefined ? {} : { size }),
      ...(label === undefined ? {} : { label }),
    })),
    action: input.action,
    view: input.view,
    ...(input.top === undefined ? {} : { top: input.top }),
    rounds: input.rounds ?? '',
  };
}

/** The last hole number of each concentric circle. */
function ringEnds(pattern: Pattern): readonly number[] {
  if (pattern.kind !== 'circles') return [];
  let sum = 0;
  return pattern.circles.map((circle) => {
    sum += circle.count;
    return sum;
  });
}
