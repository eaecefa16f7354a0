/**
 * The ledger of parts of one card: what comes off and goes on, in the order of work, and how many are in the machine
 * before and after. Written once a card; every check of parts and joints reads it.
 */

import type { Fate, Part, PartMove, Step } from '../../resolve/index.ts';
import { onceACard, type Scene } from '../rule.ts';
import { handedOn } from './elsewhere.ts';
import { entryCount, entryNames } from './entries.ts';

export interface Move {
  readonly kind: 'off' | 'on';
  readonly step: Step;
  readonly move: PartMove;
  readonly fate: Fate | undefined;
  /** Pieces moved: all that are in the machine when they come off. */
  readonly quantity: number;
  /** Pieces in the machine before and after. */
  readonly before: number;
  readonly after: number;
}

/** What one part goes through on one card. */
export interface Life {
  readonly id: string;
  readonly part: Part;
  /** Pieces in the machine when the card begins. */
  readonly total: number;
  /** The parts list says how many there are; otherwise that is a fault of its own. */
  readonly counted: boolean;
  readonly moves: readonly Move[];
  /** Pieces in the machine at the end. */
  readonly inPlace: number;
  /** It can be had new: it has a part number, comes in a kit, or is put together on this card from parts that move. */
  readonly supplied: boolean;
  /** Parts of which it is built come off or go on here. */
  readonly built: boolean;
  /** It left with the assembly that it belongs to, which is renewed whole. */
  readonly leftWith?: string;
  /** Another procedure, named beside it, takes it off or puts it back. */
  readonly elsewhere: boolean;
}

export interface Ledger {
  readonly lives: ReadonlyMap<string, Life>;
}

const EMPTY: Ledger = { lives: new Map() };

/** Empty where something could not be read or resolved: every count after it would be an echo of that fault. */
export const ledgerOf = onceACard((scene): Ledger => (isWhole(scene) ? write(scene) : EMPTY));

/** Every part that the author moved and every joint that he opened or closed was found. */
export function isWhole(scene: Scene): boolean {
  return wholeness(scene).whole;
}

const wholeness = onceACard(({ document, machine, steps }) => ({
  whole: document.incomplete !== true && machine !== undefined && steps.every(isFound),
}));

function isFound(step: Step): boolean {
  return (
    entryCount(step, 'remove') === step.remove.length &&
    entryCount(step, 'fit') === step.fit.length &&
    (step.loosen !== undefined || entryCount(step, 'loosen') === 0) &&
    (step.tighten !== undefined || entryCount(step, 'tighten') === 0)
  );
}

/** Pieces of the part in the machine after a step's moves; undefined for a part that this card never moves. */
export function inPlaceAfter(life: Life | undefined, step: number): number | undefined {
  if (life === undefined) return undefined;
  let count = life.total;
  for (const m of life.moves) {
    if (m.step.number > step) break;
    count = m.after;
  }
  return count;
}

/** The move by which the part last came off before (or in) a step. */
export function lastOff(life: Life, step: number): Move | undefined {
  return life.moves.findLast((m) => m.kind === 'off' && m.step.number <= step);
}

interface Draft {
  readonly id: string;
  readonly part: Part;
  readonly total: number;
  readonly counted: boolean;
  readonly moves: Move[];
  inPlace: number;
  leftWith: string | undefined;
}

function write(scene: Scene): Ledger {
  const { machine, variant, steps } = scene;
  const parts = new Map((machine?.parts ?? []).map((p) => [p.id, p]));
  const inventory = new Map(variant.inventory.map((i) => [i.id, i.quantity]));
  const fastened = new Set((machine?.joints ?? []).flatMap(({ plan }) => [plan.fastener, ...plan.also]));
  const drafts = new Map<string, Draft>();
  const draftOf = (id: string): Draft | undefined => {
    const found = drafts.get(id);
    const part = parts.get(id);
    const total = inventory.get(id);
    // A part that this variant does not have is reported as that.
    if (found !== undefined || part === undefined || total === undefined) return found;
    const counted = fastened.has(id) || entryNames(part, 'quantity').length > 0;
    const made: Draft = { id, part, total, counted, moves: [], inPlace: total, leftWith: undefined };
    drafts.set(id, made);
    return made;
  };
  const children = (id: string): readonly Draft[] =>
    (parts.get(id)?.madeOf ?? []).map(draftOf).filter((d) => d !== undefined);
  for (const step of steps) {
    for (const move of step.remove) {
      const draft = draftOf(move.id);
      if (draft === undefined) continue;
      note(draft, 'off', step, move, draft.inPlace, 0);
      // What is still in an assembly that is thrown away goes with it.
      if (move.fate === 'discard') {
        for (const child of children(move.id)) {
          if (child.inPlace === 0) continue;
          child.inPlace = 0;
          child.leftWith = move.id;
        }
      }
    }
    for (const move of step.fit) {
      const draft = draftOf(move.id);
      if (draft === undefined) continue;
      note(draft, 'on', step, move, move.quantity, draft.inPlace + move.quantity);
      draft.leftWith = undefined;
      // A new assembly brings along whatever was not built into it here.
      for (const child of children(move.id)) {
        if (child.leftWith !== move.id) continue;
        child.inPlace = child.total;
        child.leftWith = undefined;
      }
    }
  }
  const handed = handedOn(scene).parts;
  const moved = new Set<string>();
  for (const { remove, fit } of steps) {
    for (const { id } of remove) moved.add(id);
    for (const { id } of fit) moved.add(id);
  }
  const isBuilt = (part: Part): boolean => part.madeOf?.some((id) => moved.has(id)) ?? false;
  const lives = [...drafts.values()]
    .filter((d) => d.moves.length > 0)
    .map(
      (d): Life => ({
        id: d.id,
        part: d.part,
        total: d.total,
        counted: d.counted,
        moves: d.moves,
        inPlace: d.inPlace,
        supplied: d.part.number !== undefined || d.part.kit !== undefined || isBuilt(d.part),
        built: isBuilt(d.part),
        elsewhere: handed.has(d.id),
        ...(d.leftWith === undefined ? {} : { leftWith: d.leftWith }),
      }),
    );
  return { lives: new Map(lives.map((l) => [l.id, l])) };
}

function note(draft: Draft, kind: Move['kind'], step: Step, move: PartMove, quantity: number, after: number): void {
  draft.moves.push({ kind, step, move, fate: move.fate, quantity, before: draft.inPlace, after });
  draft.inPlace = after;
}

/** The author wrote a count for this fitting: `fit: { screw: 4 }`, not `fit: [screw]`, which means all of them. */
export function isCounted(step: Step, id: string): boolean {
  return entryNames(step, 'fit', id).length > 0;
}
