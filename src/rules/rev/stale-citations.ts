/** Sources that name another edition than the register of outside documents holds, and the procedures that rest on them. */

import { isSameEdition } from '../../control/editions.ts';
import { outsideNamed } from '../../control/rests-on.ts';
import type { Range } from '../../diagnostics/index.ts';
import {
  type Document,
  type Machine,
  type OutsideDocument,
  READ_FROM,
  type ResolvedShop,
} from '../../resolve/index.ts';
import { writtenIn } from '../written.ts';

export interface Stale {
  readonly outside: OutsideDocument;
  readonly edition: string;
  /** Place of the edition. */
  readonly range: Range;
  /** Procedures whose numbers rest on it, by number. */
  readonly users: readonly string[];
  /** Machine whose file it stands in, outside its joints: it names the manual. */
  readonly machine?: string;
}

/** In the order of the registers. Empty, and cheap, where every source names the edition that the shop holds. */
export function staleCitations(shop: ResolvedShop): readonly Stale[] {
  if (shop.outside.length === 0) return [];
  const stale = writtenIn(shop).cited.flatMap((c) => {
    const { edition, editionRange: range } = c;
    const outside = edition === undefined ? undefined : outsideNamed(shop, c.document);
    return edition === undefined ||
      range === undefined ||
      outside === undefined ||
      isSameEdition(edition, outside.edition)
      ? []
      : [{ outside, edition, range }];
  });
  if (stale.length === 0) return [];
  const owners = ownersOf(shop);
  return stale.map((s): Stale => {
    const owner = owners.get(s.range.file)?.find((o) => o.range.start <= s.range.start && s.range.end <= o.range.end);
    return { ...s, users: owner?.users() ?? [], ...(owner?.machine === undefined ? {} : { machine: owner.machine }) };
  });
}

interface Owner {
  readonly range: Range;
  readonly users: () => readonly string[];
  readonly machine?: string;
}

/** By file: what stands there, the narrower before the wider. */
function ownersOf(shop: ResolvedShop): ReadonlyMap<string, readonly Owner[]> {
  const owners = new Map<string, Owner[]>();
  const add = (owner: Owner): void => {
    const list = owners.get(owner.range.file) ?? [];
    owners.set(owner.range.file, list);
    list.push(owner);
  };
  for (const machine of shop.machines) {
    for (const { plan } of machine.joints)
      add({ range: plan[READ_FROM].range, users: () => tightening(shop, machine, plan.id) });
    add({ range: machine[READ_FROM].range, users: () => [], machine: machine.id });
  }
  for (const stage of shop.stages) add({ range: stage[READ_FROM].range, users: () => stage.usedBy });
  for (const d of shop.documents) add({ range: d[READ_FROM].range, users: () => [d.doc] });
  for (const c of shop.consumables)
    add({ range: c[READ_FROM].range, users: () => (c.nutFactor === undefined ? [] : lubricating(shop, c.id)) });
  return owners;
}

function tightening(shop: ResolvedShop, machine: Machine, joint: string): readonly string[] {
  return docsWith(shop, (d) => d.machine === machine.id && tightens(d, (id) => id === joint));
}

function lubricating(shop: ResolvedShop, consumable: string): readonly string[] {
  return docsWith(shop, (d) =>
    d.variants.some((v) => {
      const joints = new Set(v.joints.filter((j) => j.lubricant === consumable).map((j) => j.id));
      return joints.size > 0 && tightens(d, (id) => joints.has(id));
    }),
  );
}

function tightens(document: Document, isMeant: (joint: string) => boolean): boolean {
  return document.variants.some((v) =>
    v.stages.some((s) => s.steps.some((step) => step.tighten !== undefined && isMeant(step.tighten))),
  );
}

function docsWith(shop: ResolvedShop, holds: (document: Document) => boolean): readonly string[] {
  return shop.documents.filter(holds).map((d) => d.doc);
}
