/** What the page of a comparison says beside the changes, drawn from the view of document control. */

import type { Comparison, ControlView, DocumentState, IssueEntry } from '../../../control/types.ts';
import { paths } from '../paths.ts';

export interface ComparisonFacts {
  readonly title: string;
  /** `of-204` */
  readonly slug: string;
  readonly standing: DocumentState['standing'];
  readonly older: IssueEntry;
  readonly newer: IssueEntry;
  /** As printed, of the newer issue: `Ines Calder, quality engineer`. */
  readonly author: string;
  readonly approver: string;
  /** Of the issue in force, when there is one that may be used. */
  readonly current?: { readonly rev: string; readonly path: string };
  /** The pairs before and after this one. */
  readonly before?: Neighbour;
  readonly after?: Neighbour;
}

export interface Neighbour {
  readonly from: string;
  readonly to: string;
  readonly path: string;
}

/** Throws a RangeError when the view does not hold both issues. `personText`: a person's id as printed. */
export function comparisonFacts(
  { doc, from, to }: Comparison,
  view: ControlView,
  personText: (id: string) => string,
): ComparisonFacts {
  const state = view.documents.find((d) => d.doc === doc);
  const older = state?.issues.find((i) => i.rev === from);
  const newer = state?.issues.find((i) => i.rev === to);
  if (state === undefined || older === undefined || newer === undefined)
    throw new RangeError(`${doc}: no issues ${from} and ${to} to compare`);
  const slug = doc.toLowerCase();
  const pairs = view.comparisons.filter((c) => c.doc === doc);
  const before = pairs.find((c) => c.to === from);
  const after = pairs.find((c) => c.from === to);
  const inForce = state.standing === 'in force' ? state.current : undefined;
  const only = inForce?.cards.length === 1 ? inForce.cards[0] : undefined;
  return {
    title: newer.title,
    slug,
    standing: state.standing,
    older,
    newer,
    author: personText(newer.author),
    approver: personText(newer.approver),
    ...(inForce === undefined
      ? {}
      : {
          current: {
            rev: inForce.rev,
            path: only === undefined ? paths.procedure(slug) : paths.variant(only.path),
          },
        }),
    ...(before === undefined ? {} : { before }),
    ...(after === undefined ? {} : { after }),
  };
}
