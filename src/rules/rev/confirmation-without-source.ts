/** A confirmation belongs to a procedure that names an older edition. */

import { isSameEdition } from '../../control/editions.ts';
import { restsOn } from '../../control/rests-on.ts';
import { didYouMean } from '../../diagnostics/index.ts';
import { type Document, keyPlaceOf, type OutsideDocument, type ResolvedShop } from '../../resolve/index.ts';
import type { Check } from '../check.ts';

const MANUAL = (more: string) =>
  `pump-manual:\n  document: Pump manual\n  kind: maker's manual\n  edition: ${more}\n  owner: ben\n`;
const CONFIRMED = (doc: string) =>
  `  confirmed:\n    ${doc}: { by: ben, on: 2026-02-03, finding: "Torque, gap and pressure are the same" }\n`;

export const confirmationWithoutSource: Check = {
  code: 'REV013',
  name: 'confirmation-without-source',
  severity: 'warning',
  title: 'A procedure is confirmed against a new edition of a document, and names no older one.',
  why: 'The line of the confirmation was meant for another procedure, whose old numbers nobody has compared; or it is left over and hides the next new edition.',
  sources: ['common practice: a new edition of a manual triggers a review of every card that cites it'],
  example: {
    bad: [{ file: 'outside.yaml', to: `${MANUAL('"3"')}${CONFIRMED('«MW-1»')}` }],
    good: [{ file: 'outside.yaml', to: `${MANUAL('"4"')}${CONFIRMED('MW-1')}` }],
  },
  found: (shop, tell) => {
    for (const outside of shop.outside) {
      for (const { doc } of outside.confirmed) {
        const problem = problemOf(shop, outside, doc);
        if (problem === undefined) continue;
        tell(keyPlaceOf(outside, 'confirmed', doc), problem.message, { hint: problem.hint });
      }
    }
  },
};

function problemOf(
  shop: ResolvedShop,
  outside: OutsideDocument,
  doc: string,
): { readonly message: string; readonly hint: string } | undefined {
  const document = shop.documents.find((d) => d.doc === doc);
  // What could not be read may be the procedure, or the source.
  if (document === undefined ? shop.incomplete === true : document.incomplete === true) return undefined;
  if (document === undefined) {
    return {
      message: `\`${doc}\` is confirmed, and the shop has no such procedure`,
      hint:
        didYouMean(doc, resting(shop, outside)) ?? 'take the confirmation out, or name the procedure that was compared',
    };
  }
  const rests = restsOn(shop, document).filter((r) => r.outsideId === outside.id);
  if (rests.length === 0) {
    return {
      message: `\`${doc}\` is confirmed, and names \`${outside.document}\` nowhere`,
      hint:
        didYouMean(doc, resting(shop, outside)) ?? 'take the confirmation out, or name the procedure that was compared',
    };
  }
  if (rests.some((r) => r.edition !== '' && !isSameEdition(r.edition, outside.edition))) return undefined;
  return {
    message: `\`${doc}\` is confirmed, and already names \`${outside.edition}\``,
    hint: 'take the confirmation out: it stands for a procedure that names an older edition',
  };
}

/** Procedures that rest on the document and are not confirmed: which was meant. */
function resting(shop: ResolvedShop, outside: OutsideDocument): readonly Document['doc'][] {
  const confirmed = new Set(outside.confirmed.map((c) => c.doc));
  return shop.documents
    .filter((d) => !confirmed.has(d.doc) && restsOn(shop, d).some((r) => r.outsideId === outside.id))
    .map((d) => d.doc);
}
