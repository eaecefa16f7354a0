/** The head of the document and what the shop prints on every card. */

import type { Document, SourceNote, Variant } from '../../resolve/types.ts';
import { exchanged, paired } from './pairing.ts';
import { evenBlanks, proseChange, sourceWords, textChange, valueChange } from './phrases.ts';
import { proseKey } from './texts.ts';
import type { Finding, Side, Told } from './types.ts';

export function* compareDocument(older: Side, newer: Side): Generator<Finding> {
  yield* wholes(compareEnergies(older.document, newer.document));
  yield* wholes(compareFacts(older, newer));
  yield* wholes(compareSources(older.document.sources, newer.document.sources));
  yield* wholes(compareMachine(older, newer));
  yield* wholes(compareShop(older.info, newer.info));
}

function wholes(told: readonly Told[]): readonly Finding[] {
  return told.map((t) => ({ ...t, form: 'whole', stepsBefore: [], stepsAfter: [] }));
}

function compareEnergies(a: Document, b: Document): readonly Told[] {
  const { added, removed } = paired(a.energy, b.energy, evenBlanks);
  return [
    ...added.flatMap((e) => valueChange('energy', 'stored energy', '', e)),
    ...removed.flatMap((e) => valueChange('energy', 'stored energy', e, '')),
  ];
}

function compareFacts(older: Side, newer: Side): readonly Told[] {
  const a = older.document;
  const b = newer.document;
  const list = (words: readonly string[]): string => words.join(', ');
  const purpose = proseKey(a.purpose) !== proseKey(b.purpose);
  return [
    ...textChange('document', 'title', a.title, b.title),
    ...(purpose ? proseChange('document', 'purpose', a.purpose, b.purpose) : []),
    ...valueChange('document', 'people needed', String(a.people), String(b.people)),
    ...valueChange('document', 'owner', nameOf(older, a.owner), nameOf(newer, b.owner)),
    ...valueChange('document', 'level of use', a.level, b.level),
    ...valueChange('document', 'review interval', a.review, b.review),
    ...valueChange('document', 'former names', list(a.formerly), list(b.formerly)),
  ];
}

function nameOf(side: Side, person: string): string {
  return side.people.find((p) => p.id === person)?.name ?? person;
}

/** A source of the same name with another edition is the same source. */
function compareSources(older: readonly SourceNote[], newer: readonly SourceNote[]): readonly Told[] {
  const same = paired(older, newer, sourceWords);
  const alike = exchanged(same, (a, b) => a.document === b.document);
  return [
    ...alike.both.flatMap(([a, b]) =>
      (a.edition ?? '') === (b.edition ?? '')
        ? valueChange('document', `place in ${b.document}`, a.place ?? '', b.place ?? '')
        : valueChange('document', `edition of ${b.document}`, a.edition ?? '', b.edition ?? ''),
    ),
    ...alike.added.flatMap((s) => valueChange('document', 'source', '', sourceWords(s))),
    ...alike.removed.flatMap((s) => valueChange('document', 'source', sourceWords(s), '')),
  ];
}

function compareMachine({ machine: a }: Side, { machine: b }: Side): readonly Told[] {
  return [
    ...valueChange('document', 'machine', a.name, b.name),
    ...valueChange('document', 'mark on the machine', a.mark ?? '', b.mark ?? ''),
    ...valueChange('document', 'place of the machine', a.where ?? '', b.where ?? ''),
  ];
}

function compareShop(a: Side['info'], b: Side['info']): readonly Told[] {
  return [
    ...textChange('document', 'safety words', a.safety, b.safety),
    ...textChange('document', 'words on stored energy', a.storedEnergy ?? '', b.storedEnergy ?? ''),
    ...textChange('document', 'how to report a mistake', a.report ?? '', b.report ?? ''),
    ...valueChange('document', 'name of the shop', a.name, b.name),
    ...valueChange('document', 'address of the binder', a.address, b.address),
    ...valueChange('document', 'card format', a.cardFormat, b.cardFormat),
  ];
}

export interface VariantPlan {
  /** Variants that are compared, in the order of the newer issue. */
  readonly pairs: readonly { readonly older: Variant; readonly newer: Variant }[];
  readonly findings: readonly { readonly finding: Finding; readonly variants: readonly string[] }[];
}

/**
 * Which variant of the older issue each one of the newer is compared with: the one of the same key; where an axis came or
 * went, the first whose choices do not contradict. One with a new value is a new card, and nothing of it is compared.
 */
export function planVariants(older: Document, newer: Document): VariantPlan {
  const pairs: { older: Variant; newer: Variant }[] = [];
  const fresh: Variant[] = [];
  for (const v of newer.variants) {
    const partner = older.variants.find((o) => o.key === v.key) ?? older.variants.find((o) => agree(o, v));
    if (partner === undefined) fresh.push(v);
    else pairs.push({ older: partner, newer: v });
  }
  const lost = older.variants.filter((o) => !pairs.some((p) => p.older === o || agree(o, p.newer)));
  const resplit = older.variants.some((o) => pairs.some((p) => p.older === o && p.newer.key !== o.key));
  const told: { told: Told; variants: readonly string[] }[] = [];
  if (resplit) {
    const before = cards(older);
    const after = cards(newer);
    told.push({
      told: { kind: 'exchanged', of: 'variant', say: `cards ${before} → ${after}`, before, after },
      variants: [],
    });
  }
  for (const v of fresh) {
    const serials = v.serials.length === 0 ? '' : `, serial numbers ${v.serials.join(', ')}`;
    told.push({
      told: { kind: 'added', of: 'variant', say: `new card: ${v.label}${serials}`, after: v.label },
      variants: [v.label],
    });
  }
  for (const v of lost) {
    told.push({
      told: { kind: 'removed', of: 'variant', say: `card removed: ${v.label}`, before: v.label },
      variants: [],
    });
  }
  return {
    pairs,
    findings: told.flatMap((t) => wholes([t.told]).map((finding) => ({ finding, variants: t.variants }))),
  };
}

/** On every axis that both choose they choose the same, and one of them chooses all that the other does. */
function agree(a: Variant, b: Variant): boolean {
  const [few, many] = a.choices.length < b.choices.length ? [a, b] : [b, a];
  return (
    few.choices.length < many.choices.length &&
    few.choices.every((c) => many.choices.some((d) => d.axis === c.axis && d.value === c.value))
  );
}

function cards({ variants }: Document): string {
  return variants.length === 1 && variants[0]?.label === '' ? 'one for all' : variants.map((v) => v.label).join('; ');
}
