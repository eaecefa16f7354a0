/** The shop as the pages use it: look-ups by id, once for all pages of a build. */

import virtualControl from 'virtual:control';
import virtualShop from 'virtual:shop';
import { paths, type RefTarget } from '../render/html/index.ts';
import type { Document, Machine, ResolvedShop, Run, Use, Variant } from '../resolve/types.ts';

const NOTHING: ResolvedShop = {
  info: {
    name: 'No shop',
    address: 'http://localhost/',
    basePath: '/',
    language: 'en',
    leadingTorque: 'N·m',
    secondTorque: 'lbf·ft',
    cardFormat: 'A5',
    safety: '',
    liftAlone: { dimension: 'mass', value: 0, unit: 'kg', decimals: 0, si: 0 },
    heatLimit: { dimension: 'temperature', value: 0, unit: 'K', decimals: 0, si: 0 },
    control: {
      scheme: 'letters',
      signed: [],
      receiptDays: { suspension: 1, major: 3, minor: 7 },
      temporaryMost: 2,
      temporaryDays: 90,
      dueSoonDays: 60,
      freshDays: 30,
    },
    file: '',
  },
  people: [],
  benches: [],
  tools: [],
  consumables: [],
  machines: [],
  documents: [],
  tables: [],
  statedTables: [],
  whereUsed: { tools: {}, consumables: {}, parts: {}, joints: {} },
  outside: [],
  temporaryChanges: [],
  feedback: [],
  stages: [],
};

/** Empty only in a dev server that has not met a good shop yet, and whose pages are never shown. */
export const shop: ResolvedShop = virtualShop ?? NOTHING;

/** Documents from which work may be done; drafts, where they are wanted, stand beside them in `shop.documents`. */
export const inForce: readonly Document[] = shop.documents.filter((d) => d.standing === undefined);
export const drafts: readonly Document[] = shop.documents.filter((d) => d.standing !== undefined);

/** Where a document is in force and also drafted, its number means the one in force. */
const documentByNumber = new Map([...drafts, ...inForce].map((d) => [d.doc, d]));
const machineById = new Map(shop.machines.map((m) => [m.id, m]));
const personById = new Map(shop.people.map((p) => [p.id, p]));
const toolById = new Map(shop.tools.map((t) => [t.id, t]));
const consumableById = new Map(shop.consumables.map((c) => [c.id, c]));

export function findDocument(doc: string): Document | undefined {
  return documentByNumber.get(doc);
}

/** Documents that are answered for without being in force; a draft that was never issued has no such page. */
const answered = new Set(
  (virtualControl?.documents ?? []).filter((s) => s.standing !== 'draft only').map((s) => s.doc),
);

/** Landing page of a number, also of a document that is suspended, withdrawn or not yet effective; undefined without one. */
export function landingPath(doc: string): string | undefined {
  const document = documentByNumber.get(doc);
  if (document !== undefined) return paths.procedure(document.slug);
  return answered.has(doc) ? paths.procedure(doc.toLowerCase()) : undefined;
}

export function findMachine(id: string): Machine | undefined {
  return machineById.get(id);
}

export function findTool(id: string) {
  return toolById.get(id);
}

export function findConsumable(id: string) {
  return consumableById.get(id);
}

/** `Edda Marsh, quality lead`; the id itself for someone who is not in the register. */
export function personText(id: string): string {
  const person = personById.get(id);
  return person === undefined ? id : `${person.name}, ${person.role}`;
}

/** The name alone. */
export function personName(id: string): string {
  return personById.get(id)?.name ?? id;
}

/** Page of what a reference stands for, from the root; undefined for things without a page. */
export function refPath(ref: NonNullable<Run['ref']>, machine: string, variant?: Variant): string | undefined {
  switch (ref.kind) {
    case 'tool':
      return toolById.has(ref.id) ? paths.tool(ref.id) : undefined;
    case 'consumable':
      return consumableById.has(ref.id) ? paths.consumable(ref.id) : undefined;
    case 'part':
      return findMachine(machine)?.parts.some((p) => p.id === ref.id) ? paths.part(machine, ref.id) : undefined;
    case 'joint':
      return findMachine(machine)?.joints.some((j) => j.plan.id === ref.id) ? paths.joint(machine, ref.id) : undefined;
    case 'procedure':
      return landingPath(ref.id);
    case 'step':
      return variant === undefined ? undefined : `${paths.variant(variant.path)}#${ref.id}`;
  }
}

/** The same as a link maker for prose, relative to a page. */
export function refTarget(go: (to: string) => string, machine: string, variant?: Variant): RefTarget {
  return (ref) => {
    const to = refPath(ref, machine, variant);
    return to === undefined ? undefined : go(to);
  };
}

const pagesInForce = new Set(inForce.flatMap((d) => d.variants.map((v) => v.path)));

/** Uses by documents in force drawn together by document, so that a register can say `used in n procedures`. */
export function usesByDocument(uses: readonly Use[] | undefined): ReadonlyMap<string, readonly Use[]> {
  const map = new Map<string, Use[]>();
  for (const use of (uses ?? []).filter((u) => pagesInForce.has(u.path)))
    map.set(use.doc, [...(map.get(use.doc) ?? []), use]);
  return map;
}

/** `Rev B` of the revision in force. */
export function revisionText(document: Document): string {
  return `Rev\u00a0${document.revision.rev}`;
}
