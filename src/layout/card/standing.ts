/** How a card says that it must not be worked from, or not yet. */

import type { Document, Standing } from '../../resolve/types.ts';

/** In the header: `Not before 2026-12-01`. */
export function headedAs({ standing, revision }: Document): string {
  if (standing === 'draft') return 'DRAFT: not for work';
  return `${standing === undefined ? 'Effective' : 'Not\u00a0before'}\u00a0${revision.effective}`;
}

/** In the foot and in what the file says of itself: `effective 2026-03-02`, in one piece. */
export function datedAs(standing: Standing | undefined, effective: string): string {
  if (standing === undefined) return `effective\u00a0${effective}`;
  return standing === 'draft' ? 'DRAFT:\u00a0not\u00a0for\u00a0work' : `not\u00a0before\u00a0${effective}`;
}
