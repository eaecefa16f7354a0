/** What a bench lays out before step 1: the union over the cards of its binder. */

import type { Bench, Consumable, Document, ResolvedShop, Tool, Variant } from '../resolve/types.ts';
import { formatQuantity, type Mass } from '../units/index.ts';
import { type Waste, wasteOf } from './consumables.ts';
import { compareText, groupTools, type SortedTool, type ToolGroup } from './tools.ts';
import { type WrenchSettings, wrenchSettings } from './wrench-settings.ts';

/** A card of the bench. */
export interface SetUpCard {
  readonly document: Document;
  readonly variant: Variant;
}

/** Which cards of the bench need something. */
export interface NeededBy {
  readonly cards: readonly SetUpCard[];
  /** Every card of the bench does. */
  readonly isAll: boolean;
  /** The one card that does, when it is the only one and the bench has others. */
  readonly only?: SetUpCard;
  /** Numbers of the documents, in binder order. */
  readonly docs: readonly string[];
}

export interface SetUpTool {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  /** Size, range or safe working load, as printed. */
  readonly detail: string;
  readonly kept?: string;
  readonly serial?: string;
  readonly calibrationDue?: string;
  /** Torque wrench: what it is set to over all cards of the bench. */
  readonly settings?: WrenchSettings;
  readonly neededBy: NeededBy;
}

export interface SetUpConsumable {
  readonly id: string;
  readonly name: string;
  readonly ppe: readonly string[];
  readonly hazards: readonly string[];
  readonly neededBy: NeededBy;
}

export interface SetUpLift {
  readonly mass: Mass;
  readonly by: string;
  readonly neededBy: NeededBy;
}

export interface SetUpList {
  readonly cards: readonly SetUpCard[];
  readonly tools: readonly ToolGroup<SetUpTool>[];
  readonly ppe: readonly { readonly name: string; readonly neededBy: NeededBy }[];
  readonly consumables: readonly SetUpConsumable[];
  /** Heaviest first. */
  readonly lifts: readonly SetUpLift[];
  readonly waste: readonly Waste[];
}

/** The list of one bench; documents of its binder that the shop lacks are left out. */
export function setUpList(shop: Pick<ResolvedShop, 'documents' | 'tools' | 'consumables'>, bench: Bench): SetUpList {
  const documents = new Map(shop.documents.map((d) => [d.doc, d]));
  const cards = bench.binder.flatMap((doc): SetUpCard[] => {
    const document = documents.get(doc);
    return document === undefined ? [] : document.variants.map((variant) => ({ document, variant }));
  });
  const neededBy = (using: readonly SetUpCard[]): NeededBy => whoNeeds(cards, using);
  const tools = new Map(shop.tools.map((t) => [t.id, t]));
  const consumables = new Map(shop.consumables.map((c) => [c.id, c]));
  const usedConsumables = union(cards, ({ variant }) => variant.consumables);
  return {
    cards,
    tools: groupTools(
      union(cards, ({ variant }) => variant.tools).map(({ thing, using }): SetUpTool => {
        const tool = tools.get(thing.id);
        const settings = tool?.kind === 'torque wrench' ? wrenchSettings(tool, using) : undefined;
        return {
          id: thing.id,
          name: thing.name,
          kind: thing.kind,
          detail: thing.detail,
          neededBy: neededBy(using),
          ...(tool?.kept === undefined ? {} : { kept: tool.kept }),
          ...(tool?.serial === undefined ? {} : { serial: tool.serial }),
          ...(tool?.calibrationDue === undefined ? {} : { calibrationDue: tool.calibrationDue }),
          ...(settings === undefined ? {} : { settings }),
        };
      }),
      (tool) => sortedBy(tool, tools.get(tool.id)),
    ),
    ppe: union(cards, ({ variant }) => variant.ppe.map((name) => ({ id: name }))).map(({ thing, using }) => ({
      name: thing.id,
      neededBy: neededBy(using),
    })),
    consumables: usedConsumables
      .map(({ thing, using }) => ({
        id: thing.id,
        name: thing.name,
        ppe: thing.ppe,
        hazards: thing.hazards,
        neededBy: neededBy(using),
      }))
      .sort((a, b) => compareText(a.name, b.name) || compareText(a.id, b.id)),
    lifts: liftsOf(cards, neededBy),
    waste: wasteOf(
      usedConsumables.flatMap(({ thing }): readonly Consumable[] => {
        const known = consumables.get(thing.id);
        return known === undefined ? [] : [known];
      }),
    ),
  };
}

/** What `groupTools` sorts a tool by; the register may lack it in a part of a shop. */
export function sortedBy(
  use: { readonly id: string; readonly name: string; readonly kind: string },
  tool: Pick<Tool, 'size' | 'range'> | undefined,
): SortedTool {
  const reach = tool?.range?.max?.si;
  return {
    id: use.id,
    name: use.name,
    kind: use.kind,
    ...(tool?.size === undefined ? {} : { size: tool.size }),
    ...(reach === undefined ? {} : { reach }),
  };
}

/** Everything that the cards name, once by id, in the order of first use, with the cards that name it. */
function union<T extends { readonly id: string }>(
  cards: readonly SetUpCard[],
  of: (card: SetUpCard) => readonly T[],
): readonly { readonly thing: T; readonly using: readonly SetUpCard[] }[] {
  const found = new Map<string, { readonly thing: T; readonly using: SetUpCard[] }>();
  for (const card of cards) {
    for (const thing of of(card)) {
      const known = found.get(thing.id);
      if (known === undefined) found.set(thing.id, { thing, using: [card] });
      else known.using.push(card);
    }
  }
  return [...found.values()];
}

function whoNeeds(all: readonly SetUpCard[], cards: readonly SetUpCard[]): NeededBy {
  const [first] = cards;
  return {
    cards,
    isAll: cards.length === all.length,
    docs: [...new Set(cards.map((c) => c.document.doc))],
    ...(cards.length === 1 && all.length > 1 && first !== undefined ? { only: first } : {}),
  };
}

/** Every different lift once. */
function liftsOf(
  cards: readonly SetUpCard[],
  neededBy: (using: readonly SetUpCard[]) => NeededBy,
): readonly SetUpLift[] {
  const lifts = union(cards, ({ variant }) => {
    const ofCard = new Map<string, { readonly id: string; readonly mass: Mass; readonly by: string }>();
    for (const { lift } of variant.stages.flatMap((s) => s.steps)) {
      if (lift === undefined) continue;
      const id = `${formatQuantity(lift.mass)} ${lift.by}`;
      ofCard.set(id, { id, ...lift });
    }
    return [...ofCard.values()];
  });
  return lifts
    .map(({ thing, using }) => ({ mass: thing.mass, by: thing.by, neededBy: neededBy(using) }))
    .sort((a, b) => b.mass.si - a.mass.si || compareText(a.by, b.by));
}
