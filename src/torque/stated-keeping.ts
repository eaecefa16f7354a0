/** The ratio of stated to computed torque that a table keeps, and how far a cell may leave it. */

import { within } from './band.ts';
import type { PlacedCell } from './stated-cell.ts';

export interface Keeping {
  /** Median of the ratios of all cells. */
  readonly median: number;
  /** The ratio to expect of a cell: the median, or 1 in a table too small to keep one. */
  readonly expected: number;
  /** Share by which a cell may leave the expected ratio, besides its rounding; infinite in a small table. */
  readonly spread: number;
  /** How near a mended value must come to the expected one, besides its rounding. */
  readonly fit: number;
}

/** With fewer cells the table keeps no ratio of its own, and the computed torque stands in for it. Practice. */
const LEAST_CELLS = 4;
/**
 * Every table is granted this. Practice, from printed tables: single cells of TM 10-3510-220-24 Table D-1 leave a ratio
 * that the others keep to 1 % by up to 10 %.
 */
const LEAST_SPREAD = 0.11;
/** A loose table is granted so many times its own median deviation, and this share at most. Practice. */
const DEVIATIONS = 4;
const MOST_SPREAD = 0.2;
/** Practice. */
const FIT = 0.03;
/** Where the computed torque stands in: the scatter of a joint, as for a single stated torque. Practice. */
const LOOSE_FIT = 0.15;

export function keepingOf(cells: readonly PlacedCell[]): Keeping {
  const median = middle(cells.map((c) => c.ratio));
  if (cells.length < LEAST_CELLS) return { median, expected: 1, spread: Number.POSITIVE_INFINITY, fit: LOOSE_FIT };
  const deviation = middle(cells.map((c) => apart(c.ratio, median)));
  const spread = Math.min(MOST_SPREAD, Math.max(LEAST_SPREAD, DEVIATIONS * deviation));
  return { median, expected: median, spread, fit: FIT };
}

/** Does the cell leave the ratio of its table? In a small table: does it leave the band of friction? */
export function strayed(cell: PlacedCell, { expected, spread }: Keeping): boolean {
  return Number.isFinite(spread)
    ? apart(cell.ratio, expected) > spread + cell.rounding
    : !within(cell.computed, cell.statedNm);
}

/** Neighbours of one step agree to this. Practice. */
const STEP = 0.05;

/**
 * Does the column go over to another ratio here (another class or finish from some size on, as in TM 9-2320-362-14&P
 * Table F-1 from 3/4 in up)? Then a cell beside this one strays as far in the same direction; a slip stands alone.
 */
export function inStep(cell: PlacedCell, column: readonly PlacedCell[], keeping: Keeping): boolean {
  const at = column.indexOf(cell);
  return [column[at - 1], column[at + 1]].some(
    (c) => c !== undefined && strayed(c, keeping) && apart(c.ratio, cell.ratio) <= STEP,
  );
}

/** How far two ratios are apart as a share, the same upwards and downwards: 0.25 for 1.25 and for 0.8 against 1. */
export function apart(a: number, b: number): number {
  return Math.max(a / b, b / a) - 1;
}

function middle(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] ?? 0) + (sorted[Math.floor(half)] ?? 0)) / 2;
}
