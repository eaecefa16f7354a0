/** Jacking screws: drawn in even fractions of a turn, so that the part comes off parallel. */

import type { Parsed } from '../units/index.ts';
import type { PatternFault } from './check-pattern.ts';
import { crossOrder } from './circle-order.ts';

export interface JackingInput {
  /** Screws at equal pitch on a circle. */
  readonly count: number;
  /** Turn of each screw at each move, as a share of a full turn. */
  readonly turn: number;
  readonly pitchMm: number;
  /** Of the screws; for the tilt. */
  readonly circleDiameterMm?: number;
}

export interface JackingPlan {
  /** Screw numbers in the order of one round. */
  readonly order: readonly number[];
  /** Turn of each screw at each move, as a share of a full turn. */
  readonly turns: number;
  /** Advance of one screw at each move, mm: pitch times turn. */
  readonly advanceMm: number;
  /** Slope of the part while one screw is a move ahead: advance over circle diameter. Absent without the circle. */
  readonly tiltPerMove?: number;
  /** For the card. */
  readonly rule: string;
}

/** More than this at once lets the part cock on its spigot. Common practice, no source. */
const MOST_TURN = 1;
/** More jacking screws than this is a slip. Practice. */
const MOST_SCREWS = 24;

/** What is wrong with an author's jacking screws; undefined when they can be drawn. */
export function jackingFault(input: JackingInput): PatternFault | undefined {
  const { count, turn, pitchMm, circleDiameterMm } = input;
  if (!Number.isInteger(count) || count < 2 || count > MOST_SCREWS) {
    return {
      problem: `\`${count}\` is not a number of jacking screws`,
      hint: `give 2 to ${MOST_SCREWS}: one alone does not lift a part parallel`,
    };
  }
  if (!(turn > 0 && turn <= MOST_TURN)) {
    return { problem: `\`${turn}\` of a turn is not a move`, hint: 'give a fraction of a turn, for example `1/4`' };
  }
  if (!(Number.isFinite(pitchMm) && pitchMm > 0)) {
    return { problem: `jacking thread pitch \`${pitchMm} mm\` is not a size`, hint: 'give a pitch above zero' };
  }
  if (circleDiameterMm !== undefined && !(Number.isFinite(circleDiameterMm) && circleDiameterMm > 0)) {
    return { problem: `jacking circle \`${circleDiameterMm} mm\` is not a size`, hint: 'give a length above zero' };
  }
  return undefined;
}

/**
 * One round of jacking: every screw once, crosswise, each by the same fraction of a turn; repeated until the part is free.
 * Throws RangeError on what `jackingFault` refuses. Source: common practice, no source; advance = pitch x turn.
 */
export function jackingPlan(input: JackingInput): JackingPlan {
  const fault = jackingFault(input);
  if (fault !== undefined) throw new RangeError(fault.problem);
  const { count, turn, pitchMm, circleDiameterMm } = input;
  const advanceMm = pitchMm * turn;
  return {
    order: crossOrder(count).order,
    turns: turn,
    advanceMm,
    ...(circleDiameterMm === undefined ? {} : { tiltPerMove: advanceMm / circleDiameterMm }),
    rule: `${count > 3 ? 'Crosswise' : 'In turn'}, each by ${turnInWords(turn)}; repeat until the part is free. Keep the gap even.`,
  };
}

/** Other spellings of a share. */
const SPELLINGS: ReadonlyMap<string, string> = new Map([
  ['½', '1/2'],
  ['¼', '1/4'],
  ['¾', '3/4'],
  ['⅛', '1/8'],
  ['⅜', '3/8'],
  ['⅓', '1/3'],
  ['⅙', '1/6'],
  ['full', '1'],
  ['a full', '1'],
]);

/** Reads a share of a turn: `1/4`, `1/8 turn`, `¼`, `0.25`, `0,25 of a turn`, `a full turn`. Above 0, at most 1. */
export function parseTurn(text: string): Parsed<number> {
  const hint = 'give a fraction of a turn above 0 and at most 1, for example `1/4`';
  const bare = text.trim().replace(/\s*(of a )?turn$/, '');
  const plain = SPELLINGS.get(bare) ?? bare;
  const match = /^(\d+)\s*\/\s*(\d+)$|^(\d+(?:[.,]\d+)?)$/.exec(plain);
  if (match === null) return { ok: false, problem: `\`${text}\` is not a fraction of a turn`, hint };
  const [, top, bottom, decimal] = match;
  const turn = decimal === undefined ? Number(top) / Number(bottom) : Number(decimal.replace(',', '.'));
  if (!(turn > 0 && turn <= MOST_TURN)) return { ok: false, problem: `\`${text}\` of a turn is not a move`, hint };
  return { ok: true, value: turn };
}

/** `1/4 of a turn`; a share that is no common fraction in decimals; `a full turn` for 1. */
export function turnInWords(turn: number): string {
  if (turn === 1) return 'a full turn';
  for (const bottom of [2, 3, 4, 6, 8, 12, 16]) {
    const top = turn * bottom;
    if (Math.abs(top - Math.round(top)) < 1e-9 && top > 0.5) return `${Math.round(top)}/${bottom} of a turn`;
  }
  return `${Number(turn.toPrecision(3))} of a turn`;
}
