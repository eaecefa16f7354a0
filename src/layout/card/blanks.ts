/** Places to write on: boxes with a label and a unit, and labelled lines. */

import { leading } from './format.ts';
import { type Block, type Decoration, mm, type Node, shift } from './items.ts';
import { baseline, line, paragraph, type Setting, span, widthOfSpans } from './setting.ts';

/** The longest label that stands over a box on one line. */
const LABEL_MOST = mm(44);

/** A box to write a measured value in, its label above, its unit behind. */
export function boxBlank(
  setting: Setting,
  label: string,
  unit: string,
): { readonly block: Block; readonly width: number } {
  const { table, small } = setting.format.type;
  const boxWidth = mm(24);
  const boxHeight = mm(7.5);
  const unitSpans = [span(unit, table)];
  const unitWidth = unit === '' ? 0 : widthOfSpans(setting, unitSpans) + mm(1.2);
  const labelSpans = [span(label, small, 'semibold', 'soft')];
  const labelWidth = label === '' ? 0 : Math.min(LABEL_MOST, widthOfSpans(setting, labelSpans) + 0.1);
  const width = Math.max(boxWidth + unitWidth, labelWidth);
  const head = label === '' ? undefined : paragraph(setting, labelSpans, width);
  const top = head?.height ?? 0;
  const nodes: Node[] = [...(head?.nodes ?? [])];
  if (unit !== '')
    nodes.push(...shift(line(setting, unitSpans, unitWidth + 1, { lead: boxHeight }), boxWidth + mm(1.2), top).nodes);
  const decoration: Decoration[] = [
    { kind: 'rect', x: 0, y: top, width: boxWidth, height: boxHeight, stroke: 'ink', lineWidth: 0.6 },
  ];
  return { block: { height: top + boxHeight, decoration, nodes }, width };
}

/** Boxes beside each other, in as many rows as the width asks for, in equal steps. */
export function boxRow(setting: Setting, labels: readonly string[], unit: string, width: number): Block {
  const boxes = (labels.length === 0 ? [''] : labels).map((label) => boxBlank(setting, label, unit));
  const step = Math.max(...boxes.map((b) => b.width)) + mm(5);
  const perRow = Math.max(1, Math.floor((width + mm(5)) / step));
  const decoration: Decoration[] = [];
  const nodes: Node[] = [];
  let y = 0;
  for (let i = 0; i < boxes.length; i += perRow) {
    const row = boxes.slice(i, i + perRow);
    const height = Math.max(...row.map((b) => b.block.height));
    row.forEach((b, k) => {
      // Boxes of one row stand on one line, however many lines their labels have.
      const moved = shift(b.block, k * step, y + height - b.block.height);
      decoration.push(...moved.decoration);
      nodes.push(...moved.nodes);
    });
    y += height + mm(2);
  }
  return { height: y - mm(2), decoration, nodes };
}

/** `Label ______` with the line filling `width`; the label wraps when it takes more than half. */
export function lineBlank(setting: Setting, label: string, width: number, lead = mm(8)): Block {
  const size = setting.format.type.table;
  const text = [span(label, size)];
  const labelWidth = Math.min(widthOfSpans(setting, text) + 0.1, width * 0.6);
  const words = paragraph(setting, text, labelWidth);
  const height = Math.max(lead, words.height + mm(2));
  const top = height - words.height - mm(1);
  const y = top + words.height - leading(size) + baseline(leading(size), size) + 1.2;
  return {
    height,
    decoration: [{ kind: 'line', x1: labelWidth + mm(1.5), y1: y, x2: width, y2: y, width: 0.5, ink: 'ink' }],
    nodes: shift(words, 0, top).nodes,
  };
}

/** Several labelled lines side by side; `shares` are their parts of the width. */
export function lineBlanks(
  setting: Setting,
  blanks: readonly { readonly label: string; readonly share: number }[],
  width: number,
  lead = mm(8),
): Block {
  const gap = mm(5);
  const total = blanks.reduce((sum, b) => sum + b.share, 0) || 1;
  const free = width - gap * (blanks.length - 1);
  let x = 0;
  let height = 0;
  const placed: { block: Block; x: number }[] = [];
  for (const blank of blanks) {
    const w = (free * blank.share) / total;
    const block = lineBlank(setting, blank.label, w, lead);
    placed.push({ block, x });
    height = Math.max(height, block.height);
    x += w + gap;
  }
  const moved = placed.map((p) => shift(p.block, p.x, height - p.block.height));
  return { height, decoration: moved.flatMap((b) => b.decoration), nodes: moved.flatMap((b) => b.nodes) };
}
