/** How high the torque block and the loosening of a joint can be: from its words and numbers, without drawing it. */

import { correctionText, isCorrected, jackingText, looseningText, turnedText } from '../../resolve/joint-words.ts';
import type { JointPlan } from '../../resolve/types.ts';
import { formatNumber, formatQuantity, type Torque } from '../../units/index.ts';
import type { Format } from './format.ts';
import { mm, PT_PER_MM } from './items.ts';
import type { TextRoom } from './screen-text.ts';
import { sourceText } from './source-text.ts';
import { figureOf, figureWidthMm } from './torque-block.ts';

/** Alike blocks may be this much higher than the lowest arrangement. */
export const LIKENESS = mm(3);
const LEAST_WORDS = mm(46);
const GAP = mm(4);
/** Above the body of a figure: TOP with its pointer; under it: the view, three sentences, and air. */
const AROUND_MM = 7.1 + 1.5 + 1;
const CAPTION_MM = 3.7;
/** Captions are set at 8 pt in mm. */
const CAPTION_SIZE = 2.83;
/** No figure on a card is wider. */
const WIDEST_MM = 104;

export interface FigureSize {
  readonly width: number;
  readonly height: number;
}

/**
 * Greatest size in pt of the figure in a column of `most` pt. drawn: the true size, which costs some milliseconds; else a bound for a
 * plain bolt circle, undefined for any other joint.
 */
export function figureBound(
  joint: JointPlan,
  most: number,
  dimensions: boolean,
  drawn: boolean,
  room: TextRoom,
): FigureSize | undefined {
  if (drawn) {
    const widthMm = Math.min(figureWidthMm(joint, dimensions), most / PT_PER_MM);
    const drawing = figureOf(joint, widthMm, { dimensions, loosen: !dimensions });
    return { width: widthMm * PT_PER_MM, height: drawing.height * PT_PER_MM };
  }
  const widthMm = widthBoundMm(joint, dimensions);
  if (widthMm === undefined || widthMm * PT_PER_MM > most) return undefined;
  // Captions are wrapped by a table of their own, never narrower than half of this one's widths.
  const narrowest = 46;
  room.add(`Seen ${joint.view}`, CAPTION_SIZE * 1.3);
  const view = room.lines(narrowest);
  room.add(joint.top ?? '', CAPTION_SIZE * 1.3);
  const top = room.lines(narrowest);
  const heightMm = widthMm * 1.15 + AROUND_MM + CAPTION_MM * (view + top + 4);
  return { width: widthMm * PT_PER_MM, height: heightMm * PT_PER_MM };
}

/** Width of the figure of a plain bolt circle: a step of the widths tried above what was measured over all counts and many angles. */
function widthBoundMm({ pattern, features, count }: JointPlan, dimensions: boolean): number | undefined {
  if (pattern.kind !== 'circle' || features.length > 0 || count > 48) return undefined;
  if (dimensions) return count <= 4 ? 58 : count <= 24 ? 86 : count <= 40 ? 94 : WIDEST_MM;
  return count <= 24 ? 58 : count <= 32 ? 78 : count <= 40 ? 86 : WIDEST_MM;
}

/** Height in pt of the torque block in a column of `width` pt, at the most. */
export function torqueBound(joint: JointPlan, format: Format, width: number, drawn: boolean, room: TextRoom): number {
  const figure = figureBound(joint, width, true, drawn, room);
  if (figure === undefined) return Number.POSITIVE_INFINITY;
  const outer = room.height;
  const words = (own: number): number => {
    room.height = 0;
    wordsBound(joint, format, own, room);
    return room.height;
  };
  const table = roundsBound(joint, format, room);
  const over = (own: number): number => {
    room.height = 0;
    const { small } = format.type;
    room.text('Rounds 100 to 100: in order', small, own);
    room.text('Rounds 100 to 100: neighbour to neighbour, until no nut or screw turns', small, own);
    room.text(`Order ${joint.sequence.rule}`, small, own);
    return table.height + mm(1.2) + room.height + mm(0.6);
  };
  // Everything under each other, and words and table beside the figure where a word is not too wide for that.
  let body = words(width) + mm(4) + over(width) + figure.height;
  const rest = width - figure.width - GAP;
  const { sure } = room;
  if (rest >= Math.max(LEAST_WORDS, table.width)) {
    const beside = Math.max(words(rest) + mm(2) + over(rest), figure.height);
    if (room.sure) body = Math.min(body, beside);
    room.sure = sure;
  }
  room.height = outer;
  return body + LIKENESS + mm(3.5);
}

function wordsBound(joint: JointPlan, { type }: Format, width: number, room: TextRoom): void {
  room.add('Set to ', type.stage);
  room.add(formatQuantity(joint.setting), type.value);
  room.add(` (${formatQuantity(joint.settingSecond)})`, type.stage);
  room.end(width, mm(8));
  if (isCorrected(joint)) room.text(correctionText(joint), type.table, width);
  const nut = joint.nut === undefined ? '' : `, nut ${noBreak(joint.nut.grade.id)}`;
  room.add(`${joint.count}\u00a0×\u00a0${noBreak(joint.thread.designation)}`, type.step);
  room.add(`, ${joint.fastenerName}, ${noBreak(joint.grade.id)}${nut}. ${turnedText(joint)}`, type.table);
  room.end(width, mm(5));
  room.text(`${joint.lubricantName ?? joint.condition.name} on ${joint.where ?? ''}`, type.table, width);
  room.text(`Wrench W${joint.wrenchName}, set to ${formatQuantity(joint.setting)}`, type.table, width);
  if (joint.socketName !== undefined) room.text(`Socket S${joint.socketName}`, type.table, width);
  const source = joint.source === undefined ? '' : sourceText(joint.source);
  room.text(`Computed by the shop, not the maker's: 100.0\u00a0% of the proof load`, type.small, width);
  room.text(`From ${source}`, type.small, width);
  if (joint.note !== undefined) room.text(`Note ${joint.note}`, type.small, width);
  room.height += 8 * mm(0.8);
}

function roundsBound(joint: JointPlan, { type }: Format, room: TextRoom): { width: number; height: number } {
  const column = (least: number, head: string, size: number, numbers: readonly Torque[]): number => {
    room.add(head, type.small);
    const headWidth = room.takeWidth();
    // The true column may be as narrow as `least`, so that the numbers must fit that.
    for (const n of numbers) {
      room.add(formatNumber(n), size);
      room.lines(least);
    }
    return Math.max(least, headWidth);
  };
  const first = column(
    mm(14),
    `Set, ${joint.target.unit}`,
    type.step + 1,
    joint.rounds.map((r) => r.setting),
  );
  const second = column(
    mm(11),
    joint.targetSecond.unit,
    type.table,
    joint.rounds.map((r) => r.settingSecond),
  );
  return { width: mm(4.4 + 9.5 + 9) + first + second, height: mm(6.2) * (joint.rounds.length + 1) };
}

/** Adds what a joint that comes apart says beside the step's words. */
export function loosenBound(joint: JointPlan, { type }: Format, width: number, room: TextRoom): void {
  const socket = joint.socketName === undefined ? '' : `, ${joint.socketName}`;
  room.add('Loosen ', type.small);
  room.add(`${joint.count}\u00a0×\u00a0${noBreak(joint.thread.designation)}`, type.step);
  room.add(`, ${joint.fastenerName}${socket}`, type.table);
  room.add(`. ${looseningText(joint)}`, type.small);
  room.add(` ${jackingText(joint)}`, type.table);
  room.end(width, mm(5));
}

function noBreak(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}
