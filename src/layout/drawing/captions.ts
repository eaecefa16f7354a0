/** Words around a pattern figure: TOP over it, the view and the legend under it, the order as a table where symbols hold no number. */

import { FEATURE_RADIUS, featureSymbol, type LegendEntry, legendEntries } from './features.ts';
import type { FigureStyle } from './figure-style.ts';
import { legendOf } from './in-words.ts';
import type { PatternSpec } from './pattern-spec.ts';
import type { Primitive, TextMark } from './primitives.ts';
import { CAP_HEIGHT, textWidth } from './text-size.ts';
import { wrapText } from './wrap.ts';

/** From baseline to baseline, mm. */
const LINE = 3.7;

/** What stands under the TOP mark: the body of the figure. */
interface Below {
  /** Where the pointer stands, in the body. */
  readonly topX: number;
  readonly crown: (x: number, reach: number) => number;
}

/**
 * TOP with a filled pointer over the middle, and what marks it. `shiftX`: from the body's own x to the drawing's. Returns where the
 * body's own zero comes to lie: low enough for every line of words to stand free over what is under it.
 */
export function topMark(
  spec: PatternSpec,
  style: FigureStyle,
  body: Below,
  shiftX: number,
  width: number,
  marks: Primitive[],
): number {
  const x = shiftX + body.topX;
  const words: TextMark[] = [];
  let y = 0;
  for (const line of spec.top === undefined ? [] : wrapText(spec.top, style.small, width)) {
    y += LINE;
    words.push(caption(line, x, y - 0.9, style.small, 'regular', width));
  }
  y += LINE + 0.3;
  words.push({ ...caption('TOP', x, y - 0.9, style.order + 0.2, 'bold', width), role: 'label' });
  const tip = { x, y: y + 2.3 };
  marks.push(...words, {
    kind: 'path',
    points: [tip, { x: x - 1.4, y: y - 0.3 }, { x: x + 1.4, y: y - 0.3 }],
    curved: false,
    closed: true,
    stroke: 'none',
    ink: 'ink',
    fill: 'ink',
  });
  const under = (text: TextMark): number => {
    const half = textWidth(text.text, text.size) / 2 + 0.5;
    return text.at.y + 1.2 - body.crown(text.at.x - shiftX, half);
  };
  const overTip = tip.y + 0.8 - body.crown(body.topX, textWidth('TOP', style.order) / 2 + 0.5);
  return Math.max(overTip, ...words.map(under));
}

/** What the captions need to know of the body over them. */
interface Shown {
  readonly numbered: boolean;
  readonly notes: readonly string[];
}

/** The view, dimensions without a place in the figure, what the numbers mean, the symbols of the features; returns where they end. */
export function captions(
  spec: PatternSpec,
  style: FigureStyle,
  width: number,
  from: number,
  shown: Shown,
  legend: boolean,
  marks: Primitive[],
): number {
  let y = from;
  // A sentence that does not fit beside the one before it begins its own line.
  const put = (sentences: readonly string[], weight: TextMark['weight']): void => {
    for (const line of sentences.reduce<readonly string[]>(
      (lines, s) => withSentence(lines, s, style.small, width),
      [],
    )) {
      y += LINE;
      marks.push(caption(line, width / 2, y - 0.9, style.small, weight, width));
    }
  };
  put([`Seen ${spec.view}`], 'semibold');
  put(shown.notes, 'regular');
  if (!legend) return y;
  put(legendOf(spec, shown.numbered), 'regular');
  return featureLegend(spec, style, width, y, marks);
}

function withSentence(lines: readonly string[], sentence: string, size: number, width: number): readonly string[] {
  const last = lines.at(-1);
  const joined = last === undefined ? sentence : `${last} ${sentence}`;
  if (last !== undefined && textWidth(joined, size) <= width) return [...lines.slice(0, -1), joined];
  return [...lines, ...wrapText(sentence, size, width)];
}

/** From a symbol to its words, and from one entry to the next on a line. */
const SYMBOL_GAP = 1;
const ENTRY_GAP = 4;

interface LegendLine {
  /** Absent where the words of an entry run on. */
  readonly kind?: LegendEntry['kind'];
  readonly words: string;
  readonly width: number;
}

/** Drawn symbols with their words, as many entries on a line as have room. */
function featureLegend(spec: PatternSpec, style: FigureStyle, width: number, from: number, marks: Primitive[]): number {
  const lead = 2 * FEATURE_RADIUS + SYMBOL_GAP;
  const rows: LegendLine[][] = [];
  for (const { kind, words } of legendEntries(spec.features)) {
    const lines = wrapText(words, style.small, width - lead).map((line, i): LegendLine => {
      const size = lead + textWidth(line, style.small);
      return i === 0 ? { kind, words: line, width: size } : { words: line, width: size };
    });
    const last = rows.at(-1);
    const [line] = lines;
    if (line !== undefined && lines.length === 1 && last !== undefined && rowWidth([...last, line]) <= width) {
      last.push(line);
    } else rows.push(...lines.map((l) => [l]));
  }
  let y = from + (rows.length === 0 ? 0 : 0.6);
  // Lines begin under each other, as one block in the middle.
  const left = (width - rows.reduce((most, row) => Math.max(most, rowWidth(row)), 0)) / 2;
  for (const row of rows) {
    y += LINE + 0.3;
    let x = left;
    for (const { kind, words, width: size } of row) {
      const middle = y - 0.9 - (CAP_HEIGHT * style.small) / 2;
      if (kind !== undefined) marks.push(...featureSymbol(kind, { x: x + FEATURE_RADIUS, y: middle }, { x: 0, y: -1 }));
      marks.push({
        kind: 'text',
        at: { x: x + lead, y: y - 0.9 },
        text: words,
        size: style.small,
        anchor: 'start',
        weight: 'regular',
        role: 'note',
        ink: 'ink',
      });
      x += size + ENTRY_GAP;
    }
  }
  // The lowest symbol reaches below its words.
  return rows.length === 0 ? y : y + 0.3;
}

function rowWidth(row: readonly LegendLine[]): number {
  return row.reduce((sum, line) => sum + line.width, 0) + ENTRY_GAP * (row.length - 1);
}

function caption(
  text: string,
  x: number,
  y: number,
  size: number,
  weight: TextMark['weight'],
  width: number,
): TextMark {
  // Near an edge the caption is moved in, so that it stays whole.
  const half = textWidth(text, size) / 2;
  const centre = Math.max(half, Math.min(width - half, x));
  return { kind: 'text', at: { x: centre, y }, text, size, anchor: 'middle', weight, role: 'note', ink: 'ink' };
}

/** Hole numbers in the order of work, row by row, for patterns whose symbols are too small for numbers. */
export function orderTable(
  spec: PatternSpec,
  style: FigureStyle,
  width: number,
  from: number,
  marks: Primitive[],
): number {
  const cells = spec.moves.map((move) => move.join('+'));
  const cell = cells.reduce((most, text) => Math.max(most, textWidth(text, style.small)), 0) + 1.4;
  const head = textWidth(`${'0'.repeat(String(cells.length).length)}.`, style.small) + 2.2;
  const most = Math.floor((width - head) / cell);
  const columns = most >= 20 ? 20 : most >= 10 ? 10 : most >= 5 ? 5 : Math.max(1, most);
  const left = Math.max(0, (width - head - columns * cell) / 2);
  let y = from;
  for (let first = 0; first < cells.length; first += columns) {
    y += LINE + 0.3;
    const baseline = y - 0.9;
    const put = (x: number, text: string, more: Pick<TextMark, 'weight' | 'role' | 'bolt'>): void => {
      marks.push({ kind: 'text', at: { x, y: baseline }, text, size: style.small, anchor: 'end', ink: 'ink', ...more });
    };
    put(left + head - 2.2, `${first + 1}.`, { weight: 'bold', role: 'note' });
    cells.slice(first, first + columns).forEach((text, i) => {
      const bolt = { hole: spec.moves[first + i]?.[0] ?? 0, order: first + i + 1 };
      put(left + head + (i + 1) * cell - 1.4, text, { weight: 'regular', role: 'order', bolt });
    });
  }
  return y + 0.5;
}
