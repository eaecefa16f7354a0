/** One panel of the figure of bands: title, lines with their words, bars with their names, scale. */

import type { Band } from '../../torque/index.ts';
import type { Primitive } from '../drawing/primitives.ts';
import { textWidth } from '../drawing/text-size.ts';
import { wrapText } from '../drawing/wrap.ts';
import { type AxisRow, drawAxis, type Scale, xOf } from './axis.ts';
import { drawGuide, type Guide, guideLines, guideWords } from './band-guides.ts';
import { LINE, SIZE, words } from './band-words.ts';

const BAR = 4;
const TITLE = SIZE + 0.3;

/** A band to draw: its name and what its numbers are. */
export interface Bar {
  readonly name: string;
  readonly numbers: string;
  readonly band: Band;
}

export interface Panel {
  readonly title: string;
  readonly most: number;
  readonly bars: readonly Bar[];
  readonly guides: readonly Guide[];
  readonly axes: readonly AxisRow[];
}

export interface DrawnPanel {
  readonly marks: readonly Primitive[];
  readonly bottom: number;
}

export const NO_PANEL: DrawnPanel = { marks: [], bottom: 0 };

function scaleOf(p: Panel, width: number): Scale {
  return { most: p.most, left: 1.5, right: width - 1.5 };
}

/** Lines of title and guide words over the bars. */
export function headLines(p: Panel, width: number): number {
  return wrapText(p.title, TITLE, width).length + guideLines(p.guides, scaleOf(p, width), width);
}

/** lines: of title and guide words to leave room for, where another panel has more. */
export function drawPanel(p: Panel, width: number, lines: number): DrawnPanel {
  const marks: Primitive[] = [];
  const scale = scaleOf(p, width);
  let y = 0;
  for (const line of wrapText(p.title, TITLE, width)) {
    y += LINE;
    marks.push(words(0, y - 0.8, line, 'start', 'semibold', TITLE));
  }
  y += LINE * Math.max(0, lines - headLines(p, width));
  y = guideWords(marks, p.guides, scale, y + 0.8, width);
  for (const bar of p.bars) {
    marks.push(words(0, y + LINE - 1, bar.name, 'start', 'semibold'));
    marks.push(words(textWidth(bar.name, SIZE) + 2, y + LINE - 1, bar.numbers, 'start'));
    y += LINE + 0.6;
    drawBar(marks, scale, y, bar.band);
    // The lines stop at the names above the bars.
    for (const guide of p.guides) drawGuide(marks, guide, xOf(scale, guide.at), { from: y - 0.5, to: y + BAR + 0.9 });
    y += BAR + 1.6;
  }
  return { marks, bottom: drawAxis(marks, scale, y, p.axes, SIZE) };
}

/** A box from low to high with a heavy line at the nominal value. */
function drawBar(marks: Primitive[], scale: Scale, y: number, band: Band): void {
  const [left, middle, right] = [xOf(scale, band.low), xOf(scale, band.nominal), xOf(scale, band.high)];
  const corners = [
    { x: left, y },
    { x: right, y },
    { x: right, y: y + BAR },
    { x: left, y: y + BAR },
  ];
  marks.push(
    { kind: 'path', points: corners, curved: false, closed: true, stroke: 'thin', ink: 'ink', fill: 'tint' },
    { kind: 'line', from: { x: middle, y }, to: { x: middle, y: y + BAR }, stroke: 'visible', ink: 'ink' },
  );
}
