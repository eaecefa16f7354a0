/** The torque block: how tight, with what, in which rounds and in what order. Never parted. */

import type { JointPlan } from '../../resolve/types.ts';
import { capitalised } from '../../resolve/words.ts';
import { formatNumber, formatQuantity } from '../../units/index.ts';
import { type Drawing, patternFigure, patternWidthMm } from '../drawing/index.ts';
import { type Block, mm, node, overlay, PT_PER_MM, shift, stack } from './items.ts';
import { tableOf } from './paginate.ts';
import { paragraph, type Setting, span, widthOfSpans } from './setting.ts';
import { type Column, layTable, tableWidth } from './table.ts';

const GAP = mm(4);
/** Least width of the words beside a figure. */
const LEAST_WORDS = mm(48);

export function torqueBlock(setting: Setting, joint: JointPlan, width: number): Block {
  const rounds = roundsTable(setting, joint);
  const wanted = patternWidthMm(joint);
  const most = width / PT_PER_MM;
  const figureWidth = Math.min(wanted, most);
  const drawing = figureOf(joint, figureWidth);
  const fw = figureWidth * PT_PER_MM;
  const figure = figureBlock(drawing);
  const rest = width - fw - GAP;
  let body: Block;
  if (rest >= LEAST_WORDS + GAP + rounds.width) {
    const words = wordsBlock(setting, joint, rest - GAP - rounds.width);
    body = overlay(words, shift(rounds.block, rest - rounds.width, mm(1)), shift(figure, width - fw, 0));
  } else if (rest >= Math.max(LEAST_WORDS, rounds.width)) {
    body = overlay(stack([wordsBlock(setting, joint, rest), rounds.block], mm(3)), shift(figure, width - fw, 0));
  } else if (width >= LEAST_WORDS + GAP + rounds.width) {
    const words = wordsBlock(setting, joint, width - GAP - rounds.width);
    body = stack(
      [overlay(words, shift(rounds.block, width - rounds.width, mm(1))), shift(figure, (width - fw) / 2, 0)],
      mm(3),
    );
  } else {
    body = stack([wordsBlock(setting, joint, width), rounds.block, shift(figure, (width - fw) / 2, 0)], mm(3));
  }
  const inner = shift(body, 0, mm(2));
  const height = body.height + mm(3.5);
  return {
    height,
    decoration: [
      { kind: 'line', x1: 0, y1: 0, x2: width, y2: 0, width: 0.75, ink: 'rule' },
      { kind: 'line', x1: 0, y1: height, x2: width, y2: height, width: 0.75, ink: 'rule' },
      ...inner.decoration,
    ],
    nodes: [node('Div', [], inner.nodes)],
  };
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

function figureOf(joint: JointPlan, widthMm: number, loosen = false): Drawing {
  const known = figures.get(joint) ?? new Map<string, Drawing>();
  figures.set(joint, known);
  const key = `${widthMm} ${loosen}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  const drawing = patternFigure(joint, { widthMm, loosen, dimensions: !loosen });
  known.set(key, drawing);
  return drawing;
}

function wordsBlock(setting: Setting, joint: JointPlan, width: number): Block {
  const { type } = setting.format;
  const second = ` (${formatQuantity(joint.targetSecond)})`;
  const value = paragraph(
    setting,
    [span(formatQuantity(joint.target), type.value, 'bold'), span(second, type.stage)],
    width,
    { lead: mm(8) },
  );
  const fastener = paragraph(
    setting,
    [
      span(`${joint.count}\u00a0×\u00a0${noBreak(joint.thread.designation)}`, type.step, 'bold'),
      span(`, ${joint.fastenerName}, ${noBreak(joint.grade.id)}`, type.table),
    ],
    width,
  );
  const condition = paragraph(setting, conditionSpans(joint, type.table), width);
  const wrench = paragraph(
    setting,
    [
      span('Wrench ', type.small, 'semibold', 'soft'),
      span(`${capitalised(joint.wrenchName)}, set to `, type.table),
      span(formatQuantity(joint.target), type.table, 'bold'),
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
  const order = paragraph(
    setting,
    [span('Order ', type.small, 'semibold', 'soft'), span(joint.sequence.rule, type.small)],
    width,
  );
  const origin = paragraph(
    setting,
    [span('From ', type.small, 'semibold', 'soft'), span(originOf(joint), type.small)],
    width,
  );
  const note =
    joint.note === undefined
      ? []
      : [paragraph(setting, [span('Note ', type.small, 'semibold', 'soft'), span(joint.note, type.small)], width)];
  return stack([value, fastener, condition, wrench, ...socket, order, origin, ...note], mm(0.8));
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
    return `computed by the shop, not the maker's: ${percent}\u00a0% of ${joint.result.preloadBasis} load`;
  }
  if (source === undefined) return 'stated by the shop';
  return [source.document, source.edition, source.place].filter((t) => t !== undefined).join(', ');
}

function roundsTable(setting: Setting, joint: JointPlan): { readonly block: Block; readonly width: number } {
  const { type } = setting.format;
  const tick = mm(4.4);
  const rowHeight = mm(6);
  const unit = joint.target.unit;
  const second = joint.targetSecond.unit;
  const firstWidth = Math.max(mm(14), widthOfSpans(setting, [span(unit, type.small, 'semibold')]));
  const secondWidth = Math.max(mm(11), widthOfSpans(setting, [span(second, type.small, 'semibold')]));
  const columns: Column[] = [
    { head: '', width: tick },
    { head: 'Round', width: mm(9.5), align: 'right' },
    { head: unit, width: firstWidth, align: 'decimal' },
    { head: second, width: secondWidth, align: 'decimal' },
  ];
  const table = layTable(
    setting,
    columns,
    joint.rounds.map((round) => ({
      cells: [
        [],
        [span(String(round.number), type.table)],
        [span(formatNumber(round.torque), type.step + 1, 'bold')],
        [span(formatNumber(round.second), type.table)],
      ],
      decoration: [
        { kind: 'rect', x: 0, y: (rowHeight - tick) / 2, width: tick, height: tick, stroke: 'ink', lineWidth: 0.6 },
      ],
    })),
    { size: type.table, headSize: type.small, rowHeight },
  );
  const width = tableWidth(columns);
  return { block: stack([tableOf([table.head, ...table.rows]), passWords(setting, joint, width)], mm(1)), width };
}

/** Which rounds go in order and which from neighbour to neighbour. */
function passWords(setting: Setting, joint: JointPlan, width: number): Block {
  const inOrder = joint.rounds.filter((r) => r.pass === 'sequence').map((r) => r.number);
  const circular = joint.rounds.filter((r) => r.pass === 'circular').map((r) => r.number);
  const small = setting.format.type.small;
  const lines = [
    ...(inOrder.length === 0
      ? []
      : [`${inOrder.length === 1 ? 'Round' : 'Rounds'}\u00a0${rangeText(inOrder)}: in order`]),
    ...(circular.length === 0
      ? []
      : [
          `${circular.length === 1 ? 'Round' : 'Rounds'}\u00a0${rangeText(circular)}: neighbour to neighbour, until no nut or screw turns`,
        ]),
  ];
  return stack(
    lines.map((text) => paragraph(setting, [span(text, small)], width)),
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
      ...(joint.count < 3 ? [] : [span('. The last one tightened comes first.', type.small)]),
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
  const widthMm = Math.min(patternWidthMm(joint, { dimensions: false }), most / PT_PER_MM);
  return { block: figureBlock(figureOf(joint, widthMm, true)), width: widthMm * PT_PER_MM };
}
