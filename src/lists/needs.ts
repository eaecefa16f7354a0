/** What one card asks for, as numbers that can be multiplied and added: the plain data from which orders are drawn up. */

import type { Consumable, Document, Machine, ResolvedShop, Variant } from '../resolve/types.ts';
import type { Amount, Time } from '../units/index.ts';
import { consumableNeeds } from './consumables.ts';
import { type KitNeed, type PartNeed, partNeeds } from './parts.ts';

/** A part as an order sees it. Its number is the maker's, so it counts within its machine only. */
export interface WantedPart {
  readonly id: string;
  readonly name: string;
  readonly number?: string;
  /** Pieces fitted new and in no kit. */
  readonly fresh: number;
  readonly inspected: number;
  /** Share of the inspected ones that is usually replaced; 0.1 for 10 %. Absent when nobody has stated it. */
  readonly rate?: number;
  readonly kit?: string;
  readonly lead?: Time;
}

export interface CardNeeds {
  /** `OF-204-LARGE`: name of the card file, and its key in an address. */
  readonly card: string;
  readonly doc: string;
  readonly slug: string;
  readonly title: string;
  /** `Large`; empty when the procedure has no variants. */
  readonly label: string;
  readonly machine: string;
  readonly machineName: string;
  readonly kits: readonly KitNeed[];
  readonly parts: readonly WantedPart[];
  readonly consumables: readonly {
    readonly id: string;
    readonly amounts: readonly Amount[];
    /** Number of steps that use it without a stated amount. */
    readonly asNeeded: number;
  }[];
}

/** What an order says of a consumable. */
export interface Stocked {
  readonly name: string;
  readonly number?: string;
  readonly pack?: Amount;
  readonly lead?: Time;
}

/** Every card of a shop, and the consumables by id: all that the page of orders needs, as JSON. */
export interface OrderBook {
  readonly cards: readonly CardNeeds[];
  readonly consumables: Readonly<Record<string, Stocked>>;
}

/** Needs of one job by this card. */
export function cardNeeds(document: Document, variant: Variant, machine: Machine): CardNeeds {
  const parts = partNeeds(variant, machine);
  const wanted = new Map([...parts.loose, ...parts.inspected].map((p) => [p.id, wantedPart(p)]));
  return {
    card: variant.cardName,
    doc: document.doc,
    slug: document.slug,
    title: document.title,
    label: variant.label,
    machine: machine.id,
    machineName: machine.name,
    kits: parts.kits,
    parts: [...wanted.values()],
    consumables: consumableNeeds(variant.stages.flatMap((s) => s.steps)).map(({ id, amounts, asNeeded }) => ({
      id,
      amounts,
      asNeeded: asNeeded.length,
    })),
  };
}

function wantedPart({ id, name, number, fresh, inspected, rate, kit, lead }: PartNeed): WantedPart {
  return {
    id,
    name,
    fresh: kit === undefined ? fresh : 0,
    inspected,
    ...(number === undefined ? {} : { number }),
    ...(rate === undefined ? {} : { rate: rate.si }),
    ...(kit === undefined ? {} : { kit }),
    ...(lead === undefined ? {} : { lead }),
  };
}

/** The order book of the shop: documents in their order, variants in theirs. */
export function orderBook(shop: Pick<ResolvedShop, 'documents' | 'machines' | 'consumables'>): OrderBook {
  const machines = new Map(shop.machines.map((m) => [m.id, m]));
  return {
    cards: shop.documents.flatMap((document) => {
      const machine = machines.get(document.machine);
      return machine === undefined ? [] : document.variants.map((variant) => cardNeeds(document, variant, machine));
    }),
    consumables: Object.fromEntries(shop.consumables.map((c) => [c.id, stocked(c)])),
  };
}

/** What an order says of this consumable. */
export function stocked({ name, number, packSize, lead }: Consumable): Stocked {
  return {
    name,
    ...(number === undefined ? {} : { number }),
    ...(packSize === undefined ? {} : { pack: packSize }),
    ...(lead === undefined ? {} : { lead }),
  };
}
