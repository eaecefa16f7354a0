/**
 * Torque tables typed from a maker's manual, compared cell by cell. A maker keeps one friction and one share of preload
 * throughout a table, so that the ratio of stated to computed torque is nearly the same in every cell, whatever it is: one
 * cell that leaves the ratio of the others is a slip, even where it lies inside the band of friction.
 */

import type { Band } from './band.ts';
import type { JointCondition } from './conditions.ts';
import { type PlacedCell, placeCell, type StatedCell } from './stated-cell.ts';
import { bandFault, type CellFault, riseFaults, slipFault, unitsFault } from './stated-faults.ts';
import { keepingOf } from './stated-keeping.ts';
import { columnsOf } from './stated-neighbours.ts';

export interface StatedTableInput {
  readonly condition: JointCondition;
  /** Share of the proof load, or of yield load, at which the manual is said to aim. */
  readonly preloadShare: number;
  readonly cells: readonly StatedCell[];
}

export interface CellComparison extends StatedCell {
  /** Torque by T = K d F for the asked preload, N·m. */
  readonly computed: Band;
  /** Stated over computed, nominal. */
  readonly ratio: number;
  /** `ratio` over the median of the table. */
  readonly againstTable: number;
  readonly verdict: 'holds' | CellFault['verdict'];
  /** A sentence without its full stop; absent when the cell holds. */
  readonly problem?: string;
  /** What probably happened; absent where nothing in particular fits. */
  readonly hint?: string;
}

export interface StatedTableComparison {
  /** In the order of the input. */
  readonly cells: readonly CellComparison[];
  /** Median of stated over computed torque. */
  readonly medianRatio: number;
  /** A cell stands out when it is further from the median than this share and its own rounding; absent in a small table. */
  readonly standsOutAt?: number;
}

/**
 * One verdict a cell, the most specific first: the two units differ; a slip of unit, decimal point or digit; a cell that
 * stands out from the ratio of the table; a torque that does not rise with the size; a torque outside the band of
 * friction. A slip in one cell raises nothing at its neighbours, except where two are exchanged or a row is shifted.
 * A table of fewer than four cells keeps no ratio of its own: there only cells outside the band are looked at.
 * Throws RangeError on an empty table, and on torques or a share that are not above zero.
 */
export function compareStatedTable(table: StatedTableInput): StatedTableComparison {
  if (table.cells.length === 0) throw new RangeError('the table has no cells');
  const cells = table.cells.map((c) => placeCell(c, table.condition.nutFactor, table.preloadShare));
  const columns = columnsOf(cells);
  const keeping = keepingOf(cells);
  const faults = new Map<PlacedCell, CellFault>();
  for (const cell of cells) {
    const column = columns.get(cell.column) ?? [];
    const fault = unitsFault(cell, keeping) ?? slipFault(cell, cells, column, keeping);
    if (fault !== undefined) faults.set(cell, fault);
  }
  for (const column of columns.values()) {
    const holding = column.filter((c) => !faults.has(c));
    for (const [cell, fault] of riseFaults(holding, keeping)) faults.set(cell, fault);
  }
  return {
    cells: cells.map((cell) => compared(cell, faults.get(cell) ?? bandFault(cell, keeping), keeping.median)),
    medianRatio: keeping.median,
    ...(Number.isFinite(keeping.spread) ? { standsOutAt: keeping.spread } : {}),
  };
}

function compared(cell: PlacedCell, fault: CellFault | undefined, median: number): CellComparison {
  const { thread, grade, strength, stated, second, computed, ratio } = cell;
  return {
    thread,
    grade,
    strength,
    stated,
    ...(second === undefined ? {} : { second }),
    computed,
    ratio,
    againstTable: ratio / median,
    ...(fault ?? { verdict: 'holds' }),
  };
}
