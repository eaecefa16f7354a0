/** Preload left in each bolt after each round: a row of dots a round, with least, mean and most. An illustration, never on a card. */

import type { ChartOptions } from './balance-chart.ts';
import { CHART_LINE, CHART_TYPE, centredOn, chartCaption, chartText, thinLine } from './chart-text.ts';
import type { Drawing, Point, Primitive } from './primitives.ts';
import { textWidth } from './text-size.ts';
import { wrapText } from './wrap.ts';

export interface RoundsChartInput {
  readonly rounds: readonly {
    /** `Round 1, 30 %`. */
    readonly name: string;
    /** By hole, from hole 1; 1 is the target. */
    readonly shares: readonly number[];
  }[];
}

/** Room for the dots of a round, under its name. */
const STRIP = 5.8;
const DOT = 0.55;
const CAPTION = 'One dot a bolt, strong stroke at the mean.';

/** Default 84 mm wide and as high as the rounds need; a greater height gives the dots more room. Pure. */
export function roundsChart({ rounds }: RoundsChartInput, options: ChartOptions = {}): Drawing {
  const width = Math.max(60, options.widthMm ?? 84);
  const column = textWidth('mean', CHART_TYPE) + 1.4;
  const [left, right] = [1, width - 3 * column - 1];
  const top = 2 * CHART_LINE;
  const below = CHART_LINE * (1 + wrapText(CAPTION, CHART_TYPE, width).length) + 1.6;
  const named = rounds.map((r) => wrapText(r.name, CHART_TYPE, right - left - 6));
  const words = named.reduce((sum, lines) => sum + lines.length * CHART_LINE, 0);
  const spare = ((options.heightMm ?? 0) - top - below - words) / Math.max(1, rounds.length);
  const strip = Math.max(STRIP, spare);
  const bottom = top + words + rounds.length * strip;
  const most = rounds.flatMap((r) => r.shares).reduce((m, s) => Math.max(m, s), 1.02) + 0.02;
  const x = (share: number): number => left + (share / most) * (right - left);
  const marks: Primitive[] = [
    chartText({ x: 0, y: CHART_LINE - 1.3 }, 'Preload left in each bolt, % of the target'),
    chartText({ x: width, y: CHART_LINE - 1.3 }, 'illustration', { anchor: 'end', weight: 'semibold' }),
    ...heads(width, column, top - 0.6),
    ...scale(x, top, bottom, most),
  ];
  let y = top;
  rounds.forEach(({ shares }, i) => {
    for (const line of named[i] ?? []) {
      y += CHART_LINE;
      marks.push(chartText({ x: left + 1.2, y: y - 0.7 }, line));
    }
    const middle = y + strip / 2;
    marks.push(...dots(shares, x, middle, strip));
    const { least, mean, most: greatest } = spreadOf(shares);
    [least, mean, greatest].forEach((share, k) => {
      const at = { x: width - (2 - k) * column, y: centredOn(middle) };
      marks.push(chartText(at, percent(share), { anchor: 'end', weight: k === 0 ? 'semibold' : 'regular' }));
    });
    y += strip;
  });
  const height = chartCaption(CAPTION, width, bottom + CHART_LINE + 1.2, marks);
  return {
    width,
    height: Math.ceil(height * 10) / 10,
    title: 'Preload left after each round, an illustration',
    description: inWords(rounds),
    marks,
  };
}

function heads(width: number, column: number, y: number): Primitive[] {
  return ['least', 'mean', 'most'].map((head, k) =>
    chartText({ x: width - (2 - k) * column, y }, head, { anchor: 'end' }),
  );
}

/** A line at the target, an axis below with its numbers. */
function scale(x: (share: number) => number, top: number, bottom: number, most: number): Primitive[] {
  const marks: Primitive[] = [thinLine({ x: x(0), y: bottom }, { x: x(most), y: bottom })];
  for (const share of [0, 0.5, 1]) {
    if (share === 0) marks.push(thinLine({ x: x(0), y: top }, { x: x(0), y: bottom }));
    marks.push(thinLine({ x: x(share), y: bottom }, { x: x(share), y: bottom + 0.8 }));
    marks.push(chartText({ x: x(share), y: bottom + CHART_LINE }, percent(share), { anchor: 'middle' }));
  }
  marks.push({ kind: 'line', from: { x: x(1), y: top }, to: { x: x(1), y: bottom }, stroke: 'centre', ink: 'ink' });
  return marks;
}

/** Dots of equal preload stand above and below each other; a thin line from least to most, a strong stroke at the mean. */
function dots(shares: readonly number[], x: (share: number) => number, middle: number, strip: number): Primitive[] {
  if (shares.length === 0) return [];
  const spread = spreadOf(shares);
  const marks: Primitive[] = [thinLine({ x: x(spread.least), y: middle }, { x: x(spread.most), y: middle })];
  const placed: Point[] = [];
  const room = strip / 2 - DOT - 0.3;
  for (const share of [...shares].sort((a, b) => a - b)) {
    const at = x(share);
    let y = middle;
    for (let step = 0; step * 0.6 <= room; step++) {
      const free = [1, -1]
        .map((side) => middle + side * step * 0.6)
        .find((level) => placed.every((p) => Math.hypot(p.x - at, p.y - level) >= 2 * DOT));
      if (free === undefined) continue;
      y = free;
      break;
    }
    placed.push({ x: at, y });
    marks.push({ kind: 'circle', centre: { x: at, y }, radius: DOT, stroke: 'thin', ink: 'ink', fill: 'paper' });
  }
  const reach = strip / 2 - 0.6;
  marks.push({
    kind: 'line',
    from: { x: x(spread.mean), y: middle - reach },
    to: { x: x(spread.mean), y: middle + reach },
    stroke: 'visible',
    ink: 'accent',
  });
  return marks;
}

function spreadOf(shares: readonly number[]): { readonly least: number; readonly mean: number; readonly most: number } {
  if (shares.length === 0) return { least: 0, mean: 0, most: 0 };
  const mean = shares.reduce((sum, s) => sum + s, 0) / shares.length;
  return { least: Math.min(...shares), mean, most: Math.max(...shares) };
}

function percent(share: number): string {
  return String(Math.round(share * 100));
}

function inWords(rounds: RoundsChartInput['rounds']): string {
  const said = rounds.map(({ name, shares }) => {
    const { least, mean, most } = spreadOf(shares);
    return `${name}: least ${percent(least)} %, mean ${percent(mean)} %, most ${percent(most)} %.`;
  });
  return `An illustration: preload left in each bolt after each round, as a share of the target. ${said.join(' ')}`;
}
