/** What every poster shares: its sheet, its margin, and how many rows it takes. */

import { mm } from '../card/items.ts';
import type { PlacedBlock } from '../card/paginate.ts';

export interface PosterPage {
  readonly title: string;
  readonly blocks: readonly PlacedBlock[];
}

export const MARGIN = mm(15);
/** More rows would make the type too small for a wall. */
export const MOST_ROWS = 30;

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
