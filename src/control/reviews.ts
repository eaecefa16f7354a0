/** When each document is to be reviewed: its interval from the last approval, or from the last review that left it as it is. */

import type { Document } from '../resolve/types.ts';
import { addDays, addInterval } from './dates.ts';
import type { DocumentState, ReviewState } from './types.ts';

/** documents: the issues in force, by number. */
export function reviewStates(
  states: readonly DocumentState[],
  documents: ReadonlyMap<string, Document>,
  asOf: string,
  dueSoonDays: number,
): readonly ReviewState[] {
  return states.flatMap((state): readonly ReviewState[] => {
    const document = documents.get(state.doc);
    if (state.current === undefined || state.withdrawn !== undefined || document === undefined) return [];
    const { rev, approved } = state.current;
    const last = [approved, ...state.reviews.filter((r) => r.rev === rev).map((r) => r.on)].sort().at(-1) ?? approved;
    const due = addInterval(last, document.review) ?? last;
    return [
      {
        doc: state.doc,
        title: state.title,
        owner: document.owner,
        interval: document.review,
        last,
        due,
        state: due < asOf ? 'overdue' : due <= addDays(asOf, dueSoonDays) ? 'due soon' : 'in order',
      },
    ];
  });
}
