/** Parts of one card: kits with their contents, loose new parts, parts that are inspected, parts that go back. */

import type { Part, Step, Variant } from '../resolve/types.ts';
import type { Ratio, Time } from '../units/index.ts';
import { type PartFlow, partFlow } from './part-flow.ts';

/** One part with what becomes of it over one job. */
export interface PartNeed extends PartFlow {
  readonly number?: string;
  readonly kit?: string;
  readonly lead?: Time;
  /** Share of the inspected ones that is usually replaced. */
  readonly rate?: Ratio;
}

export interface KitContent {
  readonly id: string;
  readonly name: string;
  readonly number?: string;
  /** Pieces in one kit: as many as the machine holds. */
  readonly inKit: number;
  /** Pieces that the job fits new. */
  readonly used: number;
  /** Pieces over when the job is done, from all kits that it takes. */
  readonly leftOver: number;
  /** Steps that fit it; empty for what is left over whole. */
  readonly steps: readonly number[];
}

export interface KitNeed {
  readonly name: string;
  /** Kits for one job. */
  readonly quantity: number;
  readonly contents: readonly KitContent[];
  /** The longest delivery time of what is in it. */
  readonly lead?: Time;
}

export interface PartNeeds {
  /** Kits of which at least one part is fitted new. */
  readonly kits: readonly KitNeed[];
  /** Fitted new out of a kit. */
  readonly inKits: readonly PartNeed[];
  /** Fitted new and in no kit. */
  readonly loose: readonly PartNeed[];
  /** Come off, are inspected, and go back when they are good. */
  readonly inspected: readonly PartNeed[];
  /** Come off and go back. */
  readonly reused: readonly PartNeed[];
  /** Come off, are thrown away, and nothing is fitted for them. */
  readonly dropped: readonly PartNeed[];
}

type PartFacts = Pick<Part, 'id' | 'name' | 'number' | 'kit' | 'lead' | 'rate' | 'madeOf' | 'quantity'>;

/** What the lists read of a card and of its machine. */
export interface PartSource {
  readonly stages: readonly { readonly steps: readonly Pick<Step, 'number' | 'remove' | 'fit'>[] }[];
  readonly inventory: Variant['inventory'];
}

/**
 * Parts of one job. A part stands in one list by each of its roles, and what is bought stands in `kits` or in `loose`, never
 * in both: a kit lists its contents, so that nothing is counted twice (common practice). A sub-assembly that is put together
 * in the procedure is not bought: its parts are.
 */
export function partNeeds(card: PartSource, machine: { readonly parts: readonly PartFacts[] }): PartNeeds {
  const known = new Map(machine.parts.map((p) => [p.id, p]));
  const flow = partFlow(card.stages.flatMap((s) => s.steps));
  const moved = new Set(flow.map((f) => f.id));
  const needs = flow.map((f): PartNeed => {
    const { number, kit, lead, rate, madeOf } = known.get(f.id) ?? {};
    const isBuiltHere = (madeOf ?? []).some((id) => moved.has(id));
    return {
      ...f,
      fresh: isBuiltHere ? 0 : f.fresh,
      ...(number === undefined ? {} : { number }),
      ...(kit === undefined ? {} : { kit }),
      ...(lead === undefined ? {} : { lead }),
      ...(rate === undefined ? {} : { rate }),
    };
  });
  return {
    kits: kitsOf(needs, card, machine.parts),
    inKits: needs.filter((n) => n.fresh > 0 && n.kit !== undefined),
    loose: needs.filter((n) => n.fresh > 0 && n.kit === undefined),
    inspected: needs.filter((n) => n.inspected > 0),
    reused: needs.filter((n) => n.reused > 0),
    dropped: needs.filter((n) => n.discarded > 0 && n.fresh === 0),
  };
}

function kitsOf(needs: readonly PartNeed[], card: PartSource, parts: readonly PartFacts[]): readonly KitNeed[] {
  const names = [...new Set(needs.flatMap((n) => (n.kit !== undefined && n.fresh > 0 ? [n.kit] : [])))];
  const inVariant = new Map(card.inventory.map((i) => [i.id, i.quantity]));
  const byId = new Map(needs.map((n) => [n.id, n]));
  return names.map((name) => {
    const inside = parts.filter((p) => p.kit === name && inVariant.has(p.id));
    const holds = (p: PartFacts): number => inVariant.get(p.id) ?? p.quantity;
    const quantity = Math.max(1, ...inside.map((p) => Math.ceil((byId.get(p.id)?.fresh ?? 0) / holds(p))));
    const lead = longest(inside.flatMap((p) => p.lead ?? []));
    return {
      name,
      quantity,
      contents: inside.map((p) => {
        const used = byId.get(p.id)?.fresh ?? 0;
        return {
          id: p.id,
          name: p.name,
          inKit: holds(p),
          used,
          leftOver: quantity * holds(p) - used,
          steps: used === 0 ? [] : (byId.get(p.id)?.steps ?? []),
          ...(p.number === undefined ? {} : { number: p.number }),
        };
      }),
      ...(lead === undefined ? {} : { lead }),
    };
  });
}

/** The longest of the times, with the words of its author; undefined for none. */
export function longest(times: readonly Time[]): Time | undefined {
  return times.reduce<Time | undefined>((most, t) => (most === undefined || t.si > most.si ? t : most), undefined);
}
