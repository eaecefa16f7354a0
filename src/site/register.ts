/** What a register table is made of. */

import type { StandingWord } from './control-words.ts';

export interface Cell {
  readonly text: string;
  /** Address of what the cell names, already relative to the page. */
  readonly to?: string;
  /** A second line in smaller type. */
  readonly sub?: string;
  /** What the column is sorted by, where that is not the text. */
  readonly sort?: string;
  /** Standing of a document, shown with its shape instead of `text`. */
  readonly sign?: StandingWord;
  /** The second line, or without one the text, says that something is late or soon will be. */
  readonly weight?: 'late' | 'soon';
  /** Further links under the text, already relative to the page. */
  readonly links?: readonly { readonly text: string; readonly to: string }[];
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
