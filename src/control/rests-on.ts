/** Which numbers of a procedure rest on which outside document, and in which edition of it. */

import type {
  Document,
  JointPlan,
  Measure,
  OutsideDocument,
  ResolvedShop,
  SourceNote,
  Step,
  Variant,
} from '../resolve/index.ts';
import { formatQuantity } from '../units/index.ts';
import { foldedDocument, foldedEdition, isSameEdition } from './editions.ts';
import type { EditionState } from './types.ts';

/** One edition of one document on which a procedure rests. */
export interface Resting {
  /** Id in the register of outside documents; absent when it is not listed there. */
  readonly outsideId?: string;
  /** As the procedure names it. */
  readonly document: string;
  /** As the procedure names it; empty when it names none. */
  readonly edition: string;
  /**
   * What rests on it, joints before steps: `torque of the end-cover joint 85 N·m (page 31)`,
   * `limit of the gap 0 to 0.10 mm, step 31 (page 32)`. Empty when it is named for the procedure as a whole.
   */
  readonly numbers: readonly string[];
}

const registers = new WeakMap<ResolvedShop, ReadonlyMap<string, OutsideDocument>>();

/** The outside document of that name; case and blanks do not matter. */
export function outsideNamed(shop: ResolvedShop, name: string): OutsideDocument | undefined {
  let register = registers.get(shop);
  if (register === undefined) {
    register = new Map(shop.outside.map((o) => [foldedDocument(o.document), o]));
    registers.set(shop, register);
  }
  return register.get(foldedDocument(name));
}

/** The comparison of the procedure with the edition that the shop holds; one made before that edition came in was with an older. */
export function confirmationOf(
  outside: OutsideDocument,
  doc: string,
): OutsideDocument['confirmed'][number] | undefined {
  const { received = '' } = outside;
  return outside.confirmed.find((c) => c.doc === doc && c.on >= received);
}

/** A number before it is known at which steps and on which cards it stands. */
interface Found {
  readonly source: SourceNote;
  readonly words?: string;
  readonly step?: number;
  readonly variant?: string;
}

interface Numbers {
  readonly words: string;
  readonly place: string | undefined;
  readonly steps: Set<number>;
  readonly variants: Set<string>;
}

/** Reads what the cards say alone, so that it serves a draft and an issue alike. In the order of first mention. */
export function restsOn(shop: ResolvedShop, document: Document): readonly Resting[] {
  const found: Found[] = [
    ...document.sources.map((source) => ({ source })),
    ...document.variants.flatMap((v) => inVariant(shop, v)),
  ];
  const groups = new Map<string, { first: SourceNote; numbers: Map<string, Numbers> }>();
  for (const { source, words, step, variant } of found) {
    const key = `${foldedDocument(source.document)}\n${foldedEdition(source.edition ?? '')}`;
    let group = groups.get(key);
    if (group === undefined) {
      group = { first: source, numbers: new Map() };
      groups.set(key, group);
    }
    if (words === undefined) continue;
    const place = source.place;
    const name = `${words}\n${place ?? ''}`;
    const known = group.numbers.get(name) ?? { words, place, steps: new Set(), variants: new Set() };
    group.numbers.set(name, known);
    if (step !== undefined) known.steps.add(step);
    if (variant !== undefined) known.variants.add(variant);
  }
  return [...groups.values()].map(({ first, numbers }): Resting => {
    const outsideId = outsideNamed(shop, first.document)?.id;
    return {
      document: first.document,
      edition: first.edition ?? '',
      numbers: [...numbers.values()].map((n) => inWords(n, document.variants.length)),
      ...(outsideId === undefined ? {} : { outsideId }),
    };
  });
}

/** Every outside document, sorted by id, with the procedures that name an older edition of it, confirmed or not. */
export function editionStates(shop: ResolvedShop): readonly EditionState[] {
  const byId = new Map(shop.outside.map((o) => [o.id, o]));
  const rests = new Map<string, EditionState['rests'][number][]>();
  for (const document of byId.size === 0 ? [] : shop.documents) {
    for (const { outsideId = '', edition, numbers } of restsOn(shop, document)) {
      const outside = byId.get(outsideId);
      if (outside === undefined || edition === '' || isSameEdition(edition, outside.edition)) continue;
      const confirmed = confirmationOf(outside, document.doc);
      const list = rests.get(outsideId) ?? [];
      rests.set(outsideId, list);
      list.push({
        doc: document.doc,
        title: document.title,
        edition,
        numbers,
        ...(confirmed === undefined
          ? {}
          : { confirmed: { by: confirmed.by, on: confirmed.on, finding: confirmed.finding } }),
      });
    }
  }
  return shop.outside
    .map(
      ({ id, document, kind, edition, owner, kept }): EditionState => ({
        id,
        document,
        kind,
        edition,
        owner,
        rests: (rests.get(id) ?? []).sort((a, b) => (a.doc < b.doc ? -1 : a.doc > b.doc ? 1 : 0)),
        ...(kept === undefined ? {} : { kept }),
      }),
    )
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

function inVariant(shop: ResolvedShop, variant: Variant): Found[] {
  const steps = variant.stages.flatMap((s) => s.steps);
  const tightened = new Set(steps.map((s) => s.tighten));
  const joints = variant.joints.filter((j) => tightened.has(j.id));
  return [...joints.flatMap((j) => inJoint(shop, j)), ...steps.flatMap(inStep)].map((f) => ({
    ...f,
    variant: variant.label,
  }));
}

function inJoint(shop: ResolvedShop, plan: JointPlan): Found[] {
  const { name, source, clamp, bearingLimit, gasketLoad } = plan;
  const found: Found[] = [];
  if (source !== undefined)
    found.push({
      source,
      words:
        plan.origin === 'stated'
          ? `torque of the ${name} ${formatQuantity(plan.target)}`
          : `preload of the ${name} ${percent(plan.preloadShare)}`,
    });
  if (clamp !== undefined)
    found.push({ source: clamp.source, words: `least clamp force of the ${name} ${formatQuantity(clamp.force)}` });
  if (bearingLimit !== undefined)
    found.push({
      source: bearingLimit.source,
      words: `pressure that the faces of the ${name} bear ${formatQuantity(bearingLimit.pressure)}`,
    });
  if (gasketLoad !== undefined) {
    const { seating, most } = gasketLoad;
    const ends = [
      ...(seating === undefined ? [] : [`at least ${formatQuantity(seating)}`]),
      ...(most === undefined ? [] : [`at most ${formatQuantity(most)}`]),
    ];
    found.push({ source: gasketLoad.source, words: `pressure on the gasket of the ${name} ${ends.join(' and ')}` });
  }
  const factor = ownNutFactor(shop, plan);
  if (factor !== undefined)
    found.push({ source: factor, words: `nut factor of the ${name} ${plan.condition.nutFactor.nominal}` });
  return found;
}

/** A plan keeps the source of a lubricant's own nut factor as words, `K: document, edition, place; …`: known by a listed name. */
function ownNutFactor(shop: ResolvedShop, plan: JointPlan): SourceNote | undefined {
  const words = /^K: (.*?); mu: /su.exec(plan.condition.source)?.[1];
  if (words === undefined) return undefined;
  const outside = shop.outside.find((o) => words.startsWith(`${o.document}, `) || words === o.document);
  if (outside === undefined) return undefined;
  const rest = words.slice(outside.document.length + 2);
  const present = rest === outside.edition || rest.startsWith(`${outside.edition}, `);
  const edition = present ? outside.edition : (rest.split(', ')[0] ?? '');
  const place = rest.slice(edition.length + 2);
  return { document: outside.document, edition, ...(place === '' ? {} : { place }) };
}

function inStep(step: Step): Found[] {
  const { number } = step;
  return [
    ...step.measures.flatMap((m): Found[] =>
      m.source === undefined ? [] : [{ source: m.source, words: limitWords(m), step: number }],
    ),
    ...step.reuse.map(({ id, source }): Found => {
      const moved = [...step.fit, ...step.remove].find((p) => p.id === id);
      return { source, words: `use of the ${moved?.name ?? id} again`, step: number };
    }),
  ];
}

/** `limit of the gap 0 to 0.10 mm` */
function limitWords({ what, limitText }: Measure): string {
  const name = /^[A-Z][a-z]/.test(what) ? what.charAt(0).toLowerCase() + what.slice(1) : what;
  return `limit of the ${name} ${limitText}`;
}

function inWords({ words, place, steps, variants }: Numbers, cards: number): string {
  const sorted = [...steps].sort((a, b) => a - b);
  const last = sorted.pop();
  const at =
    last === undefined ? [] : [sorted.length === 0 ? `step ${last}` : `steps ${sorted.join(', ')} and ${last}`];
  const some = variants.size === cards || variants.has('') ? [] : [[...variants].join('; ')];
  return `${[words, ...at, ...some].join(', ')}${place === undefined ? '' : ` (${place})`}`;
}

function percent(share: number): string {
  return `${Number((100 * share).toFixed(1))}\u00a0%`;
}
