/** Cells that stand in each other's place: two exchanged, a row shifted, one copied from beside it. */

import { nameOf, type PlacedCell } from './stated-cell.ts';

/** How near a value must come to what its true place asks for, besides its rounding. Practice. */
const FIT = 0.03;

/** A column of a table, smallest thread first. */
export type Column = readonly PlacedCell[];

/** Cells of the table by grade and series, each column sorted by diameter. */
export function columnsOf(cells: readonly PlacedCell[]): ReadonlyMap<string, Column> {
  const columns = Map.groupBy(cells, (c) => c.column);
  return new Map(
    [...columns].map(([name, column]) => [name, column.toSorted((a, b) => a.thread.diameterMm - b.thread.diameterMm)]),
  );
}

/**
 * What a cell that stands out has to do with the cells beside it (up and down in its column, and of the same thread in
 * the other columns); undefined when nothing. median: ratio of stated to computed torque that the table keeps.
 */
export function neighbourSlip(
  cell: PlacedCell,
  cells: readonly PlacedCell[],
  column: Column,
  median: number,
): string | undefined {
  const fits = (a: PlacedCell | undefined, b: PlacedCell | undefined): boolean =>
    a !== undefined && b !== undefined && Math.abs(a.statedNm / (median * b.computed.nominal) - 1) <= FIT + a.rounding;
  const at = column.indexOf(cell);
  const beside = [
    ...[column[at - 1], column[at + 1]].filter((c) => c !== undefined),
    ...cells.filter((c) => c !== cell && c.thread.designation === cell.thread.designation),
  ];
  const exchanged = beside.find((other) => fits(cell, other) && fits(other, cell));
  if (exchanged !== undefined) return `exchanged with ${nameOf(exchanged)}?`;
  for (const step of [-1, 1]) {
    const runs = fits(column[at - 1], column[at - 1 + step]) || fits(column[at + 1], column[at + 1 + step]);
    const own = column[at + step];
    if (own !== undefined && runs && fits(cell, own)) return `shifted by a row? it would fit ${nameOf(own)}`;
  }
  return undefined;
}

/** The neighbour with the very same number, which would then have been copied; undefined where there is none. */
export function copiedFrom(cell: PlacedCell, column: Column): PlacedCell | undefined {
  const at = column.indexOf(cell);
  return [column[at - 1], column[at + 1]].find((c) => c !== undefined && c.statedNm === cell.statedNm);
}
