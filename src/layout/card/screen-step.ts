/** How high a step can be on a card, at the most: everything under each other over the whole width, which is one of the arrangements tried. */

import { measuredText } from '../../resolve/joint-words.ts';
import type { JointPlan, Measure, PartMove, Step, TemporaryNote, Warning } from '../../resolve/types.ts';
import { formatQuantity } from '../../units/index.ts';
import { type Format, textWidthOf } from './format.ts';
import { mm } from './items.ts';
import { figureBound, LIKENESS, loosenBound, torqueBound } from './screen-joint.ts';
import type { TextRoom } from './screen-text.ts';
import { sentence, sourceText } from './source-text.ts';
import type { StepScene } from './step-block.ts';
import { TEMPORARY_PAD, temporaryHead, temporaryWhy } from './temporary.ts';

const LONGEST_LINE = mm(124);
const ENTRY_GAP = mm(1.2);
/** Of blanks with a label of our own, which may stand in two lines. */
const LINE_BLANKS = mm(14);
const BAND = mm(42);
/** The longest label over a box, and the least width of a box. */
const LABEL = mm(44);
const BOX = mm(24);
/** Widths of what is measured beside the boxes, and the least that is left for them. */
const BESIDE = [mm(66), mm(48)];
const LEAST_BLANKS = mm(40);
const MEASURE_GAP = mm(5);

/**
 * Height in pt, infinite when it cannot be told. drawn: with the true sizes of figures, which have to be drawn for that.
 * Words without a sure place are noted in `room`.
 */
export function stepBound(step: Step, scene: StepScene, format: Format, drawn: boolean, room: TextRoom): number {
  const { type } = format;
  const width = textWidthOf(format);
  const column = width - format.gutter;
  const tightened = step.tighten === undefined ? undefined : scene.joint(step.tighten);
  const loosened = step.loosen === undefined ? undefined : scene.joint(step.loosen);
  room.height = 0;
  for (const t of step.temporary ?? []) temporaryBound(t, scene, format, width, room);
  for (const w of step.warnings) warningBound(w, format, width, room);
  const warnings = room.height;
  room.height = 0;
  const words = Math.min(column, LONGEST_LINE);
  room.prose(step.text, type.step, words);
  if (step.note !== undefined) room.prose(step.note, type.table, words, 'Note: ');
  if (loosened !== undefined) loosenBound(loosened, format, words, room);
  room.height += 3 * ENTRY_GAP + mm(2);
  factsBound(step, scene, format, column, room);
  if (loosened !== undefined && tightened === undefined && loosened.count >= 3) {
    const figure = figureBound(loosened, column, false, drawn, room);
    room.height += (figure?.height ?? Number.POSITIVE_INFINITY) + mm(2) + LIKENESS;
  }
  if (tightened !== undefined) room.height += mm(2.5) + torqueOf(tightened, format, column, drawn, room);
  if (step.wait !== undefined) {
    room.text(step.wait.why, type.step, column - BAND);
    checkBand(`WAIT\u00a0${formatQuantity(step.wait.time)}`, room);
    room.height += mm(2.5) + LINE_BLANKS + mm(9.5);
  }
  for (const m of step.measures) measureBound(m, format, column, room);
  for (const label of step.records) {
    room.text(label, type.table, Math.min(column, mm(110)) * 0.6);
    room.height += mm(8);
  }
  if (step.witness !== undefined) {
    room.text(`Told before this step: ${step.witness}. Work may go on if nobody comes.`, type.step, column - BAND);
    room.height += mm(2.5 + 9.5);
  }
  if (step.hold !== undefined) {
    room.text(`Work stops here until it is released. By: ${step.hold}`, type.step, column - BAND);
    room.height += mm(2.5 + 9.5) + LINE_BLANKS;
  }
  checkNumber(step.number, format, room);
  // The tick box stands under the number, where the step itself is low.
  return warnings + Math.max(room.height, mm(11));
}

/** Keeps the height of the step in hand while that of the torque block is found. */
function torqueOf(joint: JointPlan, format: Format, column: number, drawn: boolean, room: TextRoom): number {
  const before = room.height;
  const height = torqueBound(joint, format, column, drawn, room);
  room.height = before;
  return height;
}

function temporaryBound(note: TemporaryNote, scene: StepScene, { type }: Format, width: number, room: TextRoom): void {
  const inner = width - 2 * TEMPORARY_PAD;
  room.text(temporaryHead(note), type.stage, inner);
  room.text(sentence(note.scope), type.table, inner);
  room.prose(note.text, type.step, inner);
  room.text(`Why: ${temporaryWhy(note, scene.person)}`, type.small, inner);
  room.height += 3 * mm(0.8) + mm(5 + 2);
}

function warningBound(warning: Warning, { type }: Format, width: number, room: TextRoom): void {
  const before = room.height;
  const narrow = width < mm(140);
  const textWidth = width - mm(10.5 + 4 + 2) - (narrow ? 0 : mm(30));
  room.height = 0;
  room.prose(warning.hazard, type.step, textWidth);
  room.prose(warning.avoid, type.step, textWidth);
  const text = room.height + mm(0.6) + mm(narrow ? 9.3 : 2) + mm(1.8);
  room.height = before + Math.max(text, mm(10.5 + 3.6)) + mm(2);
}

function checkBand(word: string, room: TextRoom): void {
  room.add(word, 11);
  room.lines(mm(36));
}

function checkNumber(number: number, format: Format, room: TextRoom): void {
  room.add(String(number), format.type.title);
  room.lines(format.gutter - mm(1));
}

/** What the step takes, under each other. */
function factsBound(step: Step, scene: StepScene, format: Format, width: number, room: TextRoom): void {
  const { type } = format;
  const size = type.table - 0.5;
  moves(step.remove, size, type.small, width, room);
  moves(step.fit, size, type.small, width, room);
  if (step.facing.length > 0) label(room);
  for (const f of step.facing) room.text(`${f.name}: ${f.facing}`, size, width);
  const { lubricate, lift, heat } = step;
  if (lubricate !== undefined) {
    label(room);
    const amount = step.consumables.find((c) => c.id === lubricate.id)?.amount ?? '';
    room.text(`${lubricate.name} on ${lubricate.where}, ${amount}`, size, width);
  }
  if (lift !== undefined) {
    label(room);
    room.text(formatQuantity(lift.mass), type.stage, width);
    room.text(lift.by, size, width);
  }
  if (heat !== undefined) {
    label(room);
    room.text(`to\u00a0${formatQuantity(heat.to)}`, type.stage, width);
    room.text(`never above ${formatQuantity(heat.most)}`, size, width);
  }
  if (step.consumables.length > 0) {
    room.add('Use ', size);
    for (const c of step.consumables) room.add(`${c.name} ${c.amount ?? ''}, `, size);
    room.end(width, mm(4.5));
    room.height += ENTRY_GAP;
  }
  if (step.tools.length > 0) {
    room.add('With ', size);
    for (const id of step.tools) room.add(`${scene.tool(id)}, `, size);
    room.end(width, mm(4.5));
    room.height += ENTRY_GAP;
  }
  if (step.time !== undefined) {
    room.text(`Time ${formatQuantity(step.time)}`, type.small, width);
    room.height += ENTRY_GAP;
  }
}

/** A label of our own over entries, with the gap before it. */
function label(room: TextRoom): void {
  room.height += mm(4) + ENTRY_GAP;
}

function moves(parts: readonly PartMove[], size: number, small: number, width: number, room: TextRoom): void {
  if (parts.length === 0) return;
  label(room);
  // The column of tags: a fate, which is at most `discard`, or a count.
  let tag = mm(16);
  for (const p of parts) {
    room.add(`${p.quantity}\u00a0×`, small);
    tag = Math.max(tag, room.takeWidth() + mm(3.6));
  }
  for (const p of parts) {
    room.add(`${p.quantity}\u00a0×\u00a0${p.name}`, size);
    room.add(`, ${p.facing ?? ''}`, size);
    room.height += Math.max(1, room.lines(width - tag)) * mm(5);
  }
}

function measureBound(measure: Measure, format: Format, width: number, room: TextRoom): void {
  const { type } = format;
  const before = room.height;
  /** What is measured, with the boxes beside it, or below where `left` is the whole width. */
  const upper = (left: number): number => {
    room.height = 0;
    room.text(measuredText(measure), type.step, left);
    room.text(measure.limitText.replaceAll(' ', '\u00a0'), type.value, left, mm(8.5));
    room.text(`With ${measure.toolName}`, type.table, left);
    const said = room.height + mm(0.4);
    if (left === width) return said + mm(1.5) + boxesBound(measure, format, width, room);
    return Math.max(said, boxesBound(measure, format, width - left - MEASURE_GAP, room));
  };
  let least = upper(width);
  for (const left of BESIDE) {
    if (width - left - MEASURE_GAP < LEAST_BLANKS) continue;
    // Where a word is too wide for this arrangement, another is taken.
    const { sure } = room;
    const height = upper(left);
    if (room.sure) least = Math.min(least, height);
    room.sure = sure;
  }
  room.height = before;
  room.prose(measure.ifOut, type.table, width, 'If out of limit: ');
  if (measure.source !== undefined) room.text(`From ${sourceText(measure.source)}`, type.small, width);
  room.height += least + mm(2.4 + 3.5 + 2.5) + LIKENESS;
}

function boxesBound(measure: Measure, { type }: Format, width: number, room: TextRoom): number {
  room.add(measure.unit, type.table);
  let box = BOX + room.takeWidth() + mm(1.2);
  let lines = 0;
  for (const at of measure.at) {
    room.add(at, type.small);
    box = Math.max(box, Math.min(LABEL, room.takeWidth()) + 0.1);
    room.add(at, type.small);
    lines = Math.max(lines, room.lines(LABEL));
  }
  const perRow = Math.max(1, Math.floor((width + mm(5)) / (box + mm(5))));
  const rows = Math.ceil(Math.max(1, measure.at.length) / perRow);
  // Over the boxes stands `As found` or the like.
  return mm(4 + 0.8) + rows * (lines * mm(4) + mm(7.5 + 2));
}
