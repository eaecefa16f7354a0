/** A temporary change concerns an issue, a step and cards that are there. */

import { didYouMean } from '../../diagnostics/index.ts';
import { type Document, keyPlaceOf, placeOf, type ResolvedShop, type TemporaryDraft } from '../../resolve/index.ts';
import type { Check, Fault } from '../check.ts';
import { lookUp } from '../rule.ts';
import { exampleChange } from './temporary.ts';

export const temporaryTargetMissing: Check = {
  code: 'REV018',
  name: 'temporary-target-missing',
  severity: 'error',
  title: 'A temporary change names a document, revision, step, card, bench or serial number that it cannot concern.',
  why: 'The slip is shown nowhere, or before the wrong step, and the bench works on as if it had never been written.',
  sources: ['common practice: a temporary change states its scope, and is posted with every copy that it affects'],
  example: {
    bad: [{ file: 'temporary.yaml', to: exampleChange({ step: '«42»' }) }],
    good: [{ file: 'temporary.yaml', to: exampleChange() }],
  },
  found: (shop, tell) => {
    if (shop.temporaryChanges.length === 0) return;
    const documents = new Map(shop.documents.map((d) => [d.doc, d]));
    for (const t of shop.temporaryChanges) {
      const document = documents.get(t.doc);
      const faults = document === undefined ? missingDocument(shop, t, documents.keys()) : faultsOf(shop, document, t);
      for (const f of faults) tell(f.range, f.message, f);
    }
  },
};

function missingDocument(shop: ResolvedShop, t: TemporaryDraft, known: Iterable<string>): readonly Fault[] {
  // What could not be read may be the procedure.
  if (shop.incomplete === true) return [];
  return [
    {
      range: placeOf(t, 'doc'),
      message: `${t.number} changes \`${t.doc}\`, and the shop has no such procedure`,
      hint: didYouMean(t.doc, known) ?? 'name a document of `procedures/`',
    },
  ];
}

function faultsOf(shop: ResolvedShop, document: Document, t: TemporaryDraft): readonly Fault[] {
  const { doc } = document;
  const revisions = document.revisions.map((r) => r.rev);
  if (!revisions.includes(t.rev)) {
    return [
      {
        range: placeOf(t, 'rev'),
        message: `${t.number} changes revision \`${t.rev}\` of ${doc}, which has none of that name`,
        hint: `name the issue that hangs at the bench: ${revisions.map((r) => `\`${r}\``).join(', ')}`,
      },
    ];
  }
  const faults = benchFaults(shop, document, t);
  // Steps and cards of an older issue are no longer in the file.
  if (t.rev !== document.revision.rev || document.incomplete === true) return faults;
  const named = new Set(t.variants);
  const meant = document.variants.filter((v) => named.has(v.key));
  // Where no card of those names is there, a wrong step is one still.
  const variants = meant.length > 0 ? meant : document.variants;
  return [
    ...faults,
    ...variantFaults(document, t),
    ...stepFaults(document, t, variants),
    ...serialFaults(shop, document, t, variants),
  ];
}

function benchFaults(shop: ResolvedShop, document: Document, t: TemporaryDraft): readonly Fault[] {
  return (
    (t.benches ?? [])
      // An unknown bench has its own report.
      .filter((b) => !document.benches.includes(b) && shop.benches.some((x) => x.id === b))
      .map((b) => ({
        range: keyPlaceOf(t, 'scope', 'benches', b),
        message: `${t.number} holds at \`${b}\`, whose binder does not hold ${document.doc}`,
        hint:
          document.benches.length === 0
            ? `put \`${document.doc}\` into the binder of the bench`
            : `benches that hold it: ${document.benches.map((x) => `\`${x}\``).join(', ')}`,
      }))
  );
}

function variantFaults(document: Document, t: TemporaryDraft): readonly Fault[] {
  const keys = document.variants.map((v) => v.key).filter((k) => k !== '');
  return (t.variants ?? [])
    .filter((v) => !keys.includes(v))
    .map((v) => ({
      range: keyPlaceOf(t, 'scope', 'variants', v),
      message: `${t.number} holds for \`${v}\`, and ${document.doc} has no such card`,
      hint:
        didYouMean(v, keys) ??
        (keys.length === 0
          ? 'leave `variants` out: the document has one card'
          : `its cards: ${keys.map((k) => `\`${k}\``).join(', ')}`),
    }));
}

function stepFaults(document: Document, t: TemporaryDraft, variants: Document['variants']): readonly Fault[] {
  const least = Math.min(...variants.map((v) => v.stepCount));
  if (t.step <= least) return [];
  const short = variants.filter((v) => v.stepCount < t.step);
  const which = short.length === document.variants.length ? '' : ` (${short.map((v) => v.label).join('; ')})`;
  return [
    {
      range: placeOf(t, 'step'),
      message: `${t.number} stands before step ${t.step}, and ${document.doc} has ${least} steps${which}`,
      hint: 'read the number of the step from the card that hangs at the bench',
    },
  ];
}

/** A serial number that is on no machine of these cards is on the plate of none. */
function serialFaults(
  shop: ResolvedShop,
  document: Document,
  t: TemporaryDraft,
  variants: Document['variants'],
): readonly Fault[] {
  const { serials } = t;
  if (serials === undefined) return [];
  const range = placeOf(t, 'scope', 'serials');
  if (serials.from > serials.to) {
    return [
      {
        range,
        message: `${t.number} holds for serial numbers ${serials.from} to ${serials.to}, which run backwards`,
        hint: 'write the smaller number first',
      },
    ];
  }
  const all = lookUp(shop).machine(document.machine)?.serials ?? [];
  // A machine whose serial numbers are not listed may have any.
  if (all.length === 0) return [];
  const covered = all.filter((s) =>
    variants.some((v) => v.choices.every((c) => s.is.every((i) => i.axis !== c.axis || i.value === c.value))),
  );
  const isThere = (n: number): boolean => covered.some((s) => s.from <= n && n <= s.to);
  if (isThere(serials.from) && isThere(serials.to)) return [];
  return [
    {
      range,
      message: `${t.number} holds for serial numbers ${serials.from} to ${serials.to}, and its cards of ${document.doc} cover others`,
      hint: `read them from the plate of the machine; covered: ${covered.map((s) => `${s.from} to ${s.to}`).join(', ')}`,
    },
  ];
}
