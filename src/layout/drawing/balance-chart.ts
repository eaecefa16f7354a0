/** How far the clamped bolts stand to one side after each bolt: the order of a joint beside going round. */

import type { Balance } from '../../geometry/index.ts';
import { CHART_LINE, CHART_TYPE, centredOn, chartCaption, chartText, thinLine } from './chart-text.ts';
import { curveLabel, piecesOf } from './curve-label.ts';
import type { Drawing, Point, Primitive } from './primitives.ts';
import { type Box, textBox, textWidth } from './text-size.ts';

export interface BalanceChartInput {
  /** Of the joint's own order. */
  readonly order: Balance;
  /** Of going round in hole order. */
  readonly circular: Balance;
  /** Number of bolts, at least 1. */
  readonly count: number;
}

export interface ChartOptions {
  readonly widthMm?: number;
  readonly heightMm?: number;
}

const TITLE = 'Offset of the clamped centroid, share of radius';
const IN_ORDER = 'in order';
const ROUND = 'going round';
/** Marks on a curve stand no closer than this. */
const LEAST_PITCH = 1.8;

/** After so many bolts the centroid stands so far out. */
interface Step {
  readonly tight: number;
  readonly share: number;
}

/**
 * Default 84 by 34 mm. One curve whole with dots, one dashed with squares: told apart without colour. The radius is the distance of
 * the outermost bolt from the centroid of all. Pure.
 */
export function balanceChart(input: BalanceChartInput, options: ChartOptions = {}): Drawing {
  const width = Math.max(50, options.widthMm ?? 84);
  const marks: Primitive[] = [];
  const caption: Primitive[] = [];
  const captionHeight = chartCaption(runsInWords(input), width, 0, caption);
  const height = Math.max(26 + captionHeight, options.heightMm ?? 34);
  const area: Box = {
    left: textWidth('0.5', CHART_TYPE) + 2.4,
    right: width - 1.2,
    top: CHART_LINE + 1.4,
    bottom: height - captionHeight - CHART_LINE - 1.2,
  };
  const x = (tight: number): number =>
    input.count < 2
      ? area.left + 2
      : area.left + 2 + ((tight - 1) / (input.count - 1)) * (area.right - area.left - 3.5);
  const y = (share: number): number => area.bottom - share * (area.bottom - area.top);
  marks.push(chartText({ x: 0, y: CHART_LINE - 1.3 }, TITLE), ...axes(area, input.count, x, y));
  const order = stepsOf(input.order).map((s): Point => ({ x: x(s.tight), y: y(s.share) }));
  const round = stepsOf(input.circular).map((s): Point => ({ x: x(s.tight), y: y(s.share) }));
  marks.push(...curve(round, 'round'), ...curve(order, 'order'), ...labels(order, round, area));
  chartCaption(runsInWords(input), width, height - captionHeight, marks);
  return { width, height, title: 'Balance of the tightening order', description: inWords(input), marks };
}

/** The states that the joint passes, one a move. */
function stepsOf(b: Balance): readonly Step[] {
  return b.afterMove.map(({ tight, centroidShare }) => ({ tight, share: centroidShare }));
}

function axes(area: Box, count: number, x: (tight: number) => number, y: (share: number) => number): Primitive[] {
  const marks: Primitive[] = [];
  for (const [share, text] of [
    [0, '0'],
    [0.5, '0.5'],
    [1, '1'],
  ] as const) {
    const at = y(share);
    marks.push(thinLine({ x: area.left - 0.8, y: at }, { x: share === 0 ? area.right : area.left, y: at }));
    marks.push(chartText({ x: area.left - 1.4, y: centredOn(at) }, text, { anchor: 'end' }));
  }
  marks.push(thinLine({ x: area.left, y: area.top }, { x: area.left, y: area.bottom }));
  const name = 'after bolt';
  const baseline = area.bottom + CHART_LINE;
  // The name of the axis stands between its first and its last number.
  const numbers = [1, ...(count > 1 ? [count] : [])];
  for (const n of numbers) {
    marks.push(thinLine({ x: x(n), y: area.bottom }, { x: x(n), y: area.bottom + 0.8 }));
    marks.push(chartText({ x: x(n), y: baseline }, String(n), { anchor: 'middle' }));
  }
  for (let n = 2; n < count; n++) {
    if (n % tickEvery(count) === 0)
      marks.push(thinLine({ x: x(n), y: area.bottom }, { x: x(n), y: area.bottom + 0.8 }));
  }
  marks.push(chartText({ x: (area.left + area.right) / 2, y: baseline }, name, { anchor: 'middle' }));
  return marks;
}

function tickEvery(count: number): number {
  return count <= 24 ? 1 : count <= 60 ? 4 : Math.ceil(count / 20);
}

function curve(points: readonly Point[], which: 'order' | 'round'): Primitive[] {
  const ink = which === 'order' ? 'accent' : 'ink';
  const marks: Primitive[] = [];
  if (points.length > 1) {
    marks.push({
      kind: 'path',
      points,
      curved: false,
      closed: false,
      stroke: which === 'order' ? 'move' : 'hidden',
      ink,
    });
  }
  const [first, second] = points;
  const pitch = first === undefined || second === undefined ? LEAST_PITCH : Math.max(0.01, second.x - first.x);
  const every = Math.ceil(LEAST_PITCH / pitch - 1e-6);
  points.forEach((p, i) => {
    if (i % every !== 0 && i !== points.length - 1) return;
    if (which === 'order') marks.push({ kind: 'circle', centre: p, radius: 0.7, stroke: 'none', ink, fill: ink });
    else marks.push(square(p));
  });
  return marks;
}

function square({ x, y }: Point): Primitive {
  const h = 0.65;
  return {
    kind: 'path',
    points: [
      { x: x - h, y: y - h },
      { x: x + h, y: y - h },
      { x: x + h, y: y + h },
      { x: x - h, y: y + h },
    ],
    curved: false,
    closed: true,
    stroke: 'thin',
    ink: 'ink',
    fill: 'paper',
  };
}

/** Names at the curves; one for both where they are the same. */
function labels(order: readonly Point[], round: readonly Point[], area: Box): Primitive[] {
  const same = order.length === round.length && order.every((p, i) => Math.abs(p.y - (round[i]?.y ?? p.y)) < 0.05);
  if (same) {
    const both = curveLabel(`${IN_ORDER}, the same ${ROUND}`, piecesOf(order), [], [], area);
    return both === undefined ? [] : [both];
  }
  const away = curveLabel(ROUND, piecesOf(round), piecesOf(order), [], area);
  const near = curveLabel(IN_ORDER, piecesOf(order), piecesOf(round), away === undefined ? [] : [textBox(away)], area);
  return [away, near].filter((m) => m !== undefined);
}

function runsInWords({ order, circular }: BalanceChartInput): string {
  return `Most neighbours tightened in a row: ${order.longestRun} ${IN_ORDER}, ${circular.longestRun} ${ROUND}.`;
}

function inWords(input: BalanceChartInput): string {
  const list = (b: Balance): string =>
    stepsOf(b)
      .map((s) => `${s.tight}: ${s.share.toFixed(2)}`)
      .join(', ');
  return (
    'Distance of the centroid of the tightened bolts from that of all, as a share of the distance of the outermost bolt, ' +
    `after each bolt. In order: ${list(input.order)}. Going round: ${list(input.circular)}. ${runsInWords(input)}`
  );
}
