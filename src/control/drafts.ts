/** Drafts beside their latest issue: what has changed since, be it in the procedure, a machine, a joint or a register. */

import type { Document, ResolvedShop } from '../resolve/index.ts';
import { compareIssues, type Side } from './compare/index.ts';
import type { DocumentState, DraftDifference, IssueEntry, Snapshot } from './types.ts';

/**
 * Documents whose draft differs in meaning from the latest issue, or that were never issued; in the order of the shop. The digests
 * of the cards tell without parsing that nothing has changed.
 */
export function draftDifferences(
  draft: ResolvedShop,
  states: readonly DocumentState[],
  read: (issue: IssueEntry) => Snapshot | undefined,
  known: ReadonlyMap<string, Snapshot>,
): readonly DraftDifference[] {
  const byDoc = new Map(states.map((s) => [s.doc, s]));
  return draft.documents.flatMap((document): readonly DraftDifference[] => {
    const state = byDoc.get(document.doc);
    const { doc, title } = document;
    const latest = state?.issues.at(-1);
    if (latest === undefined) return [{ doc, title, rev: document.revision.rev, changes: [] }];
    if (isUnchanged(document, latest)) return [];
    const snapshot = latest === state?.current ? (known.get(doc) ?? read(latest)) : read(latest);
    if (snapshot === undefined) return [];
    const { changes } = compareIssues(snapshot, sideOf(draft, document));
    const asks = document.revision.rev !== latest.rev;
    return changes.length === 0 && !asks
      ? []
      : [{ doc, title, since: latest.rev, rev: document.revision.rev, changes }];
  });
}

function isUnchanged(document: Document, latest: IssueEntry): boolean {
  return (
    document.revision.rev === latest.rev &&
    document.variants.length === latest.cards.length &&
    document.variants.every((v, i) => latest.cards[i]?.variant === v.key && latest.cards[i]?.digest === v.digest)
  );
}

/** A draft as the comparison takes it. */
export function sideOf(shop: ResolvedShop, document: Document): Side {
  const machine = shop.machines.find((m) => m.id === document.machine);
  if (machine === undefined) throw new RangeError(`machine \`${document.machine}\` is not in the shop`);
  return { info: shop.info, people: shop.people, tools: shop.tools, machine, document };
}
