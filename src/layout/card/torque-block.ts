/** The torque block: how tight, with what, in which rounds and in what order. Never parted. */

import { correctionText, isCorrected, jackingText, looseningText, turnedText } from '../../resolve/joint-words.ts';
import type { JointPlan } from '../../resolve/types.ts';
import { capitalised } from '../../resolve/words.ts';
import { formatNumber, formatQuantity } from '../../units/index.ts';
import { type Drawing, patternFigure, patternWidthMm } from '../drawing/index.ts';
import { type Arrangement, chooseLowest } from './choose.ts';
import { isWide } from './format.ts';
import { type Block, mm, node, overlay, PT_PER_MM, shift, stack } from './items.ts';
import { tableOf } from './paginate.ts';
import { ruled } from './ruled.ts';
import { paragraph, type Setting, span, widthOfSpans } from './setting.ts';
import { sourceText } from './source-text.ts';
import { type Column, layTable, tableWidth } from './table.ts';

const GAP = mm(4);
/** Least width of the words beside a figure. */
const LEAST_WORDS = mm(46);
/** Least width of the order in words beside the table. */
const LEAST_ORDER = mm(32);

/** Figure at the right where the width allows it, words and rounds beside or above it: the lowest of the arrangements that fit. */
export function torqueBlock(setting: Setting, joint: JointPlan, width: number): Block {
  const body = chooseLowest(setting, [
    ...arrangements(setting, joint, width, true),
    // On small paper the dimensions give way where that makes the block lower: order and torque are what the card is for.
    ...(isWide(setting.format) ? [] : arrangements(setting, joint, width, false)),
  ]);
  return ruled(body, width);
}

/** In order of preference; there is always one. */
function arrangements(setting: Setting, joint: JointPlan, width: number, dimensions: boolean): Arrangement[] {
  const rounds = roundsTable(setting, joint);
  const figureWidth = Math.min(figureWidthMm(joint, dimensions), width / PT_PER_MM);
  const fw = figureWidth * PT_PER_MM;
  const figure = figureBlock(figureOf(joint, figureWidth, { dimensions, loosen: false }));
  const rest = width - fw - GAP;
  const figureRight = shift(figure, width - fw, 0);
  const figureBelow = shift(figure, (width - fw) / 2, 0);
  /** The table with the order in words below it. */
  const tableOver = (s: Setting, w: number): Block => stack([rounds.block, orderWords(s, joint, w)], mm(1.2));
  /** The table with the order in words beside it. */
  const tableBeside = (s: Setting, w: number): Block =>
    overlay(rounds.block, shift(orderWords(s, joint, w - rounds.width - GAP), rounds.width + GAP, 0));
  const found: Arrangement[] = [];
  const spare = rest - LEAST_WORDS - GAP;
  if (spare >= rounds.width) {
    // What is left beside the words goes to the table's column, up to the measure of a short line.
    const column = Math.min(Math.max(rounds.width, rest * 0.5), spare);
    const words = (s: Setting): Block => wordsBlock(s, joint, rest - column - GAP);
    found.push((s) => overlay(words(s), shift(tableOver(s, column), rest - column, mm(1)), figureRight));
  }
  if (rest >= Math.max(LEAST_WORDS, rounds.width)) {
    found.push((s) => overlay(stack([wordsBlock(s, joint, rest), tableOver(s, rest)], mm(2)), figureRight));
    found.push((s) => stack([wordsBlock(s, joint, width), overlay(tableOver(s, rest), figureRight)], mm(2)));
  }
  if (rest >= rounds.width + GAP + LEAST_ORDER) {
    found.push((s) => overlay(stack([wordsBlock(s, joint, rest), tableBeside(s, rest)], mm(2)), figureRight));
  }
  if (width >= LEAST_WORDS + GAP + rounds.width) {
    const left = width - GAP - rounds.width;
    const table = (s: Setting): Block => shift(tableOver(s, rounds.width), width - rounds.width, mm(1));
    found.push((s) => stack([overlay(wordsBlock(s, joint, left), table(s)), figureBelow], mm(2)));
  }
  if (width >= rounds.width + GAP + LEAST_ORDER) {
    found.push((s) => stack([wordsBlock(s, joint, width), tableBeside(s, width), figureBelow], mm(2)));
  }
  found.push((s) => stack([wordsBlock(s, joint, width), tableOver(s, width), figureBelow], mm(2)));
  return found;
}

function figureBlock(drawing: Drawing): Block {
  return {
    height: drawing.height * PT_PER_MM,
    decoration: [],
    nodes: [
      node('Figure', [{ kind: 'drawing', x: 0, y: 0, drawing }], [], {
        alt: `${drawing.title}. ${drawing.description}`,
      }),
    ],
  };
}

/** Joints are drawn once a width, however many cards and steps show them. */
const figures = new WeakMap<JointPlan, Map<string, Drawing>>();

/** The width that suits a joint, found by trying: kept with its drawings. */
const widths = new WeakMap<JointPlan, Map<boolean, number>>();

export function figureWidthMm(joint: JointPlan, dimensions: boolean): number {
  const known = widths.get(joint) ?? new Map<boolean, number>();
  widths.set(joint, known);
  const found = known.get(dimensions) ?? patternWidthMm(joint, { dimensions });
  known.set(dimensions, found);
  return found;
}

export function figureOf(
  joint: JointPlan,
  widthMm: number,
  options: { readonly dimensions: boolean; readonly loosen: boolean },
): Drawing {
  const known = figures.get(joint) ?? new Map<string, Drawing>();
  figures.set(joint, known);
  const key = `${widthMm} ${options.dimensions} ${options.loosen}`;
  const drawing = known.get(key) ?? patternFigure(joint, { widthMm, ...options });
  known.set(key, drawing);
  return drawing;
}

function wordsBlock(setting: Setting, joint: JointPlan, width: number): Block {
  const { type } = setting.format;
  const corrected = isCorrected(joint);
  // What the mechanic sets stands large; with an adapter or a locking nut it is not the torque of the manual.
  const value = paragraph(
    setting,
    [
      ...(corrected ? [span('Set to ', type.stage, 'semibold')] : []),
      span(formatQuantity(joint.setting), type.value, 'bold'),
      span(` (${formatQuantity(joint.settingSecond)})`, type.stage),
    ],
    width,
    { lead: mm(8) },
  );
  const correction = corrected
    ? [paragraph(setting, [span(capitalised(correctionText(joint)), type.table, 'semibold')], width)]
    : [];
  const turned = turnedText(joint);
  const fastener = paragraph(
    setting,
    [
      span(`${joint.count}\u00a0×\u00a0${noBreak(joint.thread.designation)}`, type.step, 'bold'),
      span(`, ${joint.fastenerName}, ${noBreak(joint.grade.id)}`, type.table),
      ...(joint.nut === undefined ? [] : [span(`, nut ${noBreak(joint.nut.grade.id)}`, type.table)]),
      ...(turned === '' ? [] : [span(`. ${turned}`, type.table, 'semibold')]),
    ],
    width,
  );
  const condition = paragraph(setting, conditionSpans(joint, type.table), width);
  const wrench = paragraph(
    setting,
    [
      span('Wrench ', type.small, 'semibold', 'soft'),
      span(`${capitalised(joint.wrenchName)}, set to `, type.table),
      span(formatQuantity(joint.setting), type.table, 'bold'),
    ],
    width,
  );
  const socket =
    joint.socketName === undefined
      ? []
      : [
          paragraph(
            setting,
            [span('Socket ', type.small, 'semibold', 'soft'), span(capitalised(joint.socketName), type.table)],
            width,
          ),
        ];
  const origin = paragraph(
    setting,
    [
      span(joint.origin === 'computed' ? 'Computed ' : 'From ', type.small, 'semibold', 'soft'),
      span(originOf(joint), type.small),
    ],
    width,
  );
  const note =
    joint.note === undefined
      ? []
      : [paragraph(setting, [span('Note ', type.small, 'semibold', 'soft'), span(joint.note, type.small)], width)];
  return stack([value, ...correction, fastener, condition, wrench, ...socket, origin, ...note], mm(0.8));
}

function conditionSpans(joint: JointPlan, size: number) {
  if (joint.lubricantName === undefined) return [span(capitalised(joint.condition.name), size, 'bold')];
  const where = joint.where === undefined ? '' : ` on ${joint.where}`;
  return [span(capitalised(joint.lubricantName), size, 'bold'), span(where, size, 'semibold')];
}

/** A computed torque is never presented as the maker's. */
function originOf(joint: JointPlan): string {
  const source = joint.source;
  if (joint.origin === 'computed') {
    const percent = Number((joint.preloadShare * 100).toFixed(1));
    return `by the shop, not the maker's: ${percent}\u00a0% of ${joint.result.preloadBasis} load`;
  }
  return source === undefined ? 'the shop' : sourceText(source);
}

function roundsTable(setting: Setting, joint: JointPlan): { readonly block: Block; readonly width: number } {
  const { type } = setting.format;
  const tick = mm(4.4);
  const rowHeight = mm(6);
  const unit = joint.target.unit;
  const second = joint.targetSecond.unit;
  const first = isCorrected(joint) ? `Set, ${unit}` : unit;
  const firstWidth = Math.max(mm(14), widthOfSpans(setting, [span(first, type.small, 'semibold')]));
  const secondWidth = Math.max(mm(11), widthOfSpans(setting, [span(second, type.small, 'semibold')]));
  const columns: Column[] = [
    { head: '', width: tick },
    { head: 'Round', width: mm(9.5), align: 'right' },
    { head: first, width: firstWidth, align: 'decimal' },
    { head: second, width: secondWidth, align: 'decimal' },
  ];
  const table = layTable(
    setting,
    columns,
    joint.rounds.map((round) => ({
      cells: [
        [],
        [span(String(round.number), type.table)],
        [span(formatNumber(round.setting), type.step + 1, 'bold')],
        [span(formatNumber(round.settingSecond), type.table)],
      ],
      decoration: [
        { kind: 'rect', x: 0, y: (rowHeight - tick) / 2, width: tick, height: tick, stroke: 'ink', lineWidth: 0.6 },
      ],
    })),
    { size: type.table, headSize: type.small, rowHeight },
  );
  const width = tableWidth(columns);
  return { block: tableOf([table.head, ...table.rows]), width };
}

/** Which rounds go in order and which from neighbour to neighbour, and how the order comes about. */
function orderWords(setting: Setting, joint: JointPlan, width: number): Block {
  const inOrder = joint.rounds.filter((r) => r.pass === 'sequence').map((r) => r.number);
  const circular = joint.rounds.filter((r) => r.pass === 'circular').map((r) => r.number);
  const { small } = setting.format.type;
  const rounds = (numbers: readonly number[]): string =>
    `${numbers.length === 1 ? 'Round' : 'Rounds'}\u00a0${rangeText(numbers)}`;
  const lines = [
    ...(inOrder.length === 0 ? [] : [[span(`${rounds(inOrder)}: in order`, small)]]),
    ...(circular.length === 0
      ? []
      : [[span(`${rounds(circular)}: neighbour to neighbour, until no nut or screw turns`, small)]]),
    [span('Order ', small, 'semibold', 'soft'), span(joint.sequence.rule, small)],
  ];
  return stack(
    lines.map((spans) => paragraph(setting, spans, width)),
    mm(0.3),
  );
}

function rangeText(numbers: readonly number[]): string {
  const [first] = numbers;
  const last = numbers.at(-1);
  return first === last ? String(first) : `${first} to ${last}`.replaceAll(' ', '\u00a0');
}

function noBreak(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}

/** What holds a joint that is loosened. */
export function loosenWords(setting: Setting, joint: JointPlan, width: number): Block {
  const { type } = setting.format;
  const socket = joint.socketName === undefined ? '' : `, ${joint.socketName}`;
  return paragraph(
    setting,
    [
      span('Loosen ', type.small, 'semibold', 'soft'),
      span(`${joint.count}\u00a0×\u00a0${noBreak(joint.thread.designation)}`, type.step, 'bold'),
      span(`, ${joint.fastenerName}${socket}`, type.table),
      span(`. ${looseningText(joint)}`, type.small),
      ...(joint.jacking === undefined ? [] : [span(` ${jackingText(joint)}`, type.table, 'semibold')]),
    ],
    width,
  );
}

/** The order in which a joint comes apart; undefined for one or two bolts, which need no drawing. */
export function loosenFigure(
  joint: JointPlan,
  most: number,
): { readonly block: Block; readonly width: number } | undefined {
  if (joint.count < 3) return undefined;
  const widthMm = Math.min(figureWidthMm(joint, false), most / PT_PER_MM);
  return {
    block: figureBlock(figureOf(joint, widthMm, { dimensions: false, loosen: true })),
    width: widthMm * PT_PER_MM,
  };
}
