/**
 * What is wrong with the life of one part, each fault under one name only. The checks of the ledger each print one kind;
 * together they hold that every piece that comes off goes back or is replaced, and that nothing goes on twice.
 */

import { onceACard, type Scene } from '../rule.ts';
import { inPlaceAfter, type Ledger, type Life, lastOff, ledgerOf, type Move } from './ledger.ts';
import { ordersOf } from './ordered-moves.ts';
import { servesOnce } from './serves-once.ts';
import { wordsOf } from './step-words.ts';

export type LifeFaultKind =
  | 'never refitted'
  | 'discarded refitted'
  | 'not replaced'
  | 'never supplied'
  | 'already in'
  | 'removed twice'
  | 'wrong quantity';

export interface LifeFault {
  readonly kind: LifeFaultKind;
  readonly life: Life;
  /** Where it shows. */
  readonly move: Move;
  /** The earlier move with which it disagrees. */
  readonly earlier?: Move;
  /** How many should have gone on. */
  readonly expected?: number;
  /** How many do. */
  readonly found?: number;
}

export const lifeFaults = onceACard((scene): readonly LifeFault[] => {
  const ledger = ledgerOf(scene);
  const found: LifeFault[] = [];
  for (const life of ledger.lives.values()) found.push(...faultsOf(life, ledger, scene));
  return found;
});

function* faultsOf(life: Life, ledger: Ledger, scene: Scene): Generator<LifeFault> {
  let off: Move | undefined;
  let on: Move | undefined;
  for (const move of life.moves) {
    if (move.kind === 'off') {
      if (move.before === 0 && off !== undefined) {
        yield { kind: 'removed twice', life, move, earlier: off };
        return;
      }
      off = move;
      on = undefined;
      continue;
    }
    const kind = fitFault(life, move, off, on, scene);
    if (kind !== undefined) {
      const earlier = kind === 'already in' ? on : off;
      yield {
        kind,
        life,
        move,
        ...(earlier === undefined ? {} : { earlier }),
        ...(kind === 'wrong quantity' ? { expected: life.total - move.before, found: move.quantity } : {}),
      };
      return;
    }
    on = move;
  }
  if (off === undefined || life.elsewhere || life.leftWith !== undefined) return;
  if (life.inPlace === 0) {
    if (off.fate === undefined || cameWithNew(life, ledger, scene)) return;
    yield { kind: off.fate === 'discard' ? 'not replaced' : 'never refitted', life, move: off };
  } else if (on !== undefined && life.counted && life.inPlace < life.total) {
    const ofJoints = joined(life.id, scene);
    if (life.inPlace === ofJoints) return;
    const expected = ofJoints === 0 ? life.total : ofJoints;
    yield { kind: 'wrong quantity', life, move: on, earlier: off, expected, found: life.inPlace };
  }
}

function fitFault(
  life: Life,
  move: Move,
  off: Move | undefined,
  on: Move | undefined,
  scene: Scene,
): LifeFaultKind | undefined {
  if (move.before >= life.total) {
    if (on !== undefined) return 'already in';
    if (life.elsewhere || comesApart(life, scene)) return undefined;
    if (!life.supplied) return 'never supplied';
    return isBuiltNew(move, scene) ? undefined : 'already in';
  }
  if (life.counted && move.after > life.total) return 'wrong quantity';
  if (off?.fate !== 'discard') return undefined;
  return !life.supplied || putsOldBack(life, move) || !isRenewed(life, move, scene) ? 'discarded refitted' : undefined;
}

/** An assembly may come apart in the machine and go back whole; not one that the words of a step take off. */
function comesApart({ id, built }: Life, { steps }: Scene): boolean {
  return built && !steps.some((s) => ordersOf(s.text).some((o) => o.kind === 'off' && o.part === id));
}

/** Nothing has come off yet, so that the card builds from new parts; or its words say that the part is added. */
function isBuiltNew(move: Move, { steps }: Scene): boolean {
  const comesOff = steps.some((s) => s.number <= move.step.number && s.remove.length > 0);
  return !comesOff || ADDED.test(wordsOf(move.step.text).text);
}

const ADDED = /^add\b|\b(?:additional|for the first time)\b/;

/** Something says that a new one goes on: the parts list, the kind of part, or the words of the step; or it is built anew. */
export function isRenewed({ id, part, built }: Life, { step }: Move, { shop }: Pick<Scene, 'shop'>): boolean {
  if (built || part.pastYield === true || servesOnce(part) !== undefined) return true;
  if (part.kit !== undefined || part.rate !== undefined) return true;
  // Words are read in English only.
  if (!/^en\b/.test(shop.info.language)) return true;
  const last = part.name.toLowerCase().match(/[\p{L}-]+$/u)?.[0] ?? id;
  return [step.text, ...(step.note === undefined ? [] : [step.note])].some((prose) => {
    const { text, signOf } = wordsOf(prose);
    const thing = `(?:${signOf(id) ?? last}|${last}|${TOGETHER})`;
    return new RegExp(`\\b(?:new|fresh|spare) (?:\\S+ ){0,3}?${thing}`).test(text) || RENEWED.test(text);
  });
}

/** New things of which the part is one. */
const TOGETHER = 'parts?|sets?|kits?|ones?|pairs?|fasteners?|hardware';
const RENEWED = /\b(?:renew|replace)(?:d|s)?\b/;

/** `Refit the <part:gasket>`, `the old <part:gasket>`, `put the <part:gasket> back`. */
function putsOldBack({ id }: Life, { step }: Move): boolean {
  const { text, signOf } = wordsOf(step.text);
  const sign = signOf(id);
  if (sign === undefined) return false;
  return (
    new RegExp(`\\b(?:refit|replace back|put back|reuse|re-use) (?:(?!new\\b)[\\w-]+ ){0,3}${sign}`).test(text) ||
    new RegExp(`\\b(?:old|same|original|used) ${sign}`).test(text) ||
    new RegExp(`\\b(?:put|screw|lay|set|clip|bolt) (?:(?!new\\b)[\\w-]+ ){0,3}${sign}s? back\\b`).test(text)
  );
}

/** A new assembly brings its own. */
function cameWithNew(life: Life, ledger: Ledger, { machine }: Scene): boolean {
  return (machine?.parts ?? []).some((p) => {
    if (p.madeOf?.includes(life.id) !== true) return false;
    const whole = ledger.lives.get(p.id);
    if (whole === undefined || whole.inPlace === 0) return false;
    return lastOff(whole, Number.POSITIVE_INFINITY)?.fate === 'discard';
  });
}

/** How many of the part the joints have that this card opens or closes. */
function joined(part: string, { variant }: Scene): number {
  return variant.joints.reduce((n, j) => n + (j.fastener === part || j.also.includes(part) ? j.count : 0), 0);
}

/** Parts of which an assembly is built that are not in it when it goes on, and that go on later. */
export function* missingWhenFitted(
  whole: Life,
  ledger: Ledger,
): Generator<{ readonly at: Move; readonly later: Move }> {
  for (const at of whole.moves) {
    if (at.kind !== 'on') continue;
    for (const id of whole.part.madeOf ?? []) {
      const child = ledger.lives.get(id);
      if (child === undefined || inPlaceAfter(child, at.step.number) !== 0) continue;
      const later = child.moves.find((m) => m.kind === 'on' && m.step.number > at.step.number);
      if (later !== undefined) yield { at, later };
    }
  }
}
