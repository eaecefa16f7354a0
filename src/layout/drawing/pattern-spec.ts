/** What the pattern figure needs to know of a joint, in the frame of the drawing (mm on the part, x right, y down). */

import type { Point } from './primitives.ts';

export interface SpecHole {
  /** Counted clockwise from hole 1, or as listed. */
  readonly number: number;
  /** Place in the tightening order, from 1. */
  readonly order: number;
  readonly at: Point;
}

export interface PatternSpec {
  readonly kind: 'circle' | 'rectangle' | 'points';
  readonly name: string;
  readonly holes: readonly SpecHole[];
  /** Hole numbers in tightening order. */
  readonly order: readonly number[];
  readonly action: 'tighten' | 'loosen';
  /** Bolt circle diameter in mm, for circles. */
  readonly diameter?: number;
  /** Left out when false. */
  readonly dimensions?: boolean;
  readonly view: string;
  readonly top?: string;
  /** The rounds in words, for the alternative text. */
  readonly rounds: string;
}
