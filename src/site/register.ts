/** What a register table is made of. */

export interface Cell {
  readonly text: string;
  /** Address of what the cell names, already relative to the page. */
  readonly to?: string;
  /** A second line in smaller type. */
  readonly sub?: string;
  /** What the column is sorted by, where that is not the text. */
  readonly sort?: string;
  /** A day that the reader's browser compares with today: `calibration`, `review`. */
  readonly due?: string;
}

export interface Column {
  readonly label: string;
  /** Numbers stand to the right and sort as numbers. */
  readonly numeric?: boolean;
  /** The cell that heads its row. */
  readonly head?: boolean;
}
