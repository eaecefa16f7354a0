/** What a step takes: parts off and on with their fate, lubricant, lifting, heat, tools, consumables, time. */

import type { Fate, PartMove, Step, StepMark } from '../../resolve/types.ts';
import { capitalised } from '../../resolve/words.ts';
import { formatQuantity } from '../../units/index.ts';
import { chooseLowest } from './choose.ts';
import { columnsWidth } from './format.ts';
import { type Block, barred, type Decoration, EMPTY, mm, overlay, shift, stack } from './items.ts';
import { changesOf } from './marks.ts';
import { line, paragraph, type Setting, span, widthOfSpans } from './setting.ts';

/** Tool names by id; tools that have a place of their own in the step (wrench, socket, gauge) are left out. */
export interface FactNames {
  readonly tool: (id: string) => string;
  readonly shownElsewhere: ReadonlySet<string>;
}

/** Between the entries of a column, and between a label and what follows it in the same column. */
const ENTRY_GAP = mm(1.2);

/** Lays a group of entries out in a column of the width given. */
type Group = (width: number) => Block;

/** All that a step takes, under each other in one column; no height when it takes nothing. */
export function factsColumn(setting: Setting, step: Step, names: FactNames, width: number): Block {
  return stack(
    groupsOf(setting, step, names).map((group) => group(width)),
    ENTRY_GAP,
  );
}

/**
 * The same over the columns of the step's grid: what comes off, what goes on, with what and how. The columns have the same places on
 * all steps; a group takes several of them when there are fewer groups than columns.
 */
export function factsGrid(setting: Setting, step: Step, names: FactNames): Block {
  const { format } = setting;
  const count = groupsOf(setting, step, names).length;
  if (count === 0) return EMPTY;
  const ways = spansFor(count, format.columns);
  return chooseLowest(
    setting,
    ways.map((spans) => (trial) => placeGroups(trial, groupsOf(trial, step, names), spans)),
    // A hair: the first of equal choices.
    0.01,
  );
}

function placeGroups(setting: Setting, groups: readonly Group[], spans: readonly GridSpan[]): Block {
  const { format } = setting;
  let column = 0;
  const placed = spans.map(({ from, to, columns }) => {
    const own = groups.slice(from, to).map((group) => group(columnsWidth(format, columns)));
    const x = columnsWidth(format, column) + format.columnGap;
    column += columns;
    return shift(stack(own, ENTRY_GAP), x, 0);
  });
  return overlay(...placed);
}

interface GridSpan {
  /** Groups `from` up to, but not including, `to` stand under each other ... */
  readonly from: number;
  readonly to: number;
  /** ... in so many columns taken as one. */
  readonly columns: number;
}

/** Every way to share the columns among groups in their order. */
function spansFor(groups: number, columns: number, from = 0): (readonly GridSpan[])[] {
  if (from === groups) return columns >= 0 ? [[]] : [];
  const ways: (readonly GridSpan[])[] = [];
  for (let to = from + 1; to <= groups; to++) {
    for (let taken = 1; taken <= columns; taken++) {
      // The last group takes what is left: no column stays empty on purpose.
      if (to === groups && taken !== columns) continue;
      for (const rest of spansFor(groups, columns - taken, to)) ways.push([{ from, to, columns: taken }, ...rest]);
    }
  }
  return ways;
}

/** Parts off; parts on and their facing; lubricant, load and heat; consumables, tools and time. Empty groups are left out. */
function groupsOf(setting: Setting, step: Step, names: FactNames): Group[] {
  const small = setting.format.type.small;
  const size = setting.format.type.table - 0.5;
  const label = (text: string, width: number): Block =>
    paragraph(setting, [span(text, small, 'semibold', 'soft')], width);
  const text = (words: string, width: number, weight: 'regular' | 'semibold' | 'bold' = 'regular'): Block =>
    paragraph(setting, [span(words, size, weight)], width);
  const tagWidth = fateColumn(setting, step);
  const off: Group[] = [];
  const on: Group[] = [];
  const how: Group[] = [];
  const withWhat: Group[] = [];
  const changed = changesOf(step);
  /** An entry with its change bar where one of these parts is marked. */
  const entry =
    (part: StepMark, lay: Group): Group =>
    (width) =>
      barred(lay(width), changed(part));
  const rows = (head: string, parts: readonly PartMove[]) => (width: number) =>
    stack([label(head, width), ...parts.map((p) => moveRow(setting, p, width, tagWidth, size))]);
  const runIn = (head: string, words: string, wordSize: number) => (width: number) =>
    paragraph(setting, [span(`${head} `, small, 'semibold', 'soft'), span(words, wordSize)], width);

  if (step.remove.length > 0) off.push(entry('lists', rows('Take off', step.remove)));
  if (step.fit.length > 0) on.push(entry('lists', rows('Fit', step.fit)));
  const facing = step.facing.filter((f) => !step.fit.some((p) => p.id === f.id && p.facing === f.facing));
  if (facing.length > 0) {
    on.push(
      entry('lists', (width) =>
        stack([
          label('Facing', width),
          ...facing.map((f) =>
            paragraph(setting, [span(`${capitalised(f.name)}: `, size), span(f.facing, size, 'bold')], width),
          ),
        ]),
      ),
    );
  }
  const { lubricate, lift, heat } = step;
  if (lubricate !== undefined) {
    const amount = step.consumables.find((c) => c.id === lubricate.id)?.amount;
    const where = ` on ${lubricate.where}${amount === undefined ? '' : `, ${amount}`}`;
    how.push(
      entry('lists', (width) =>
        stack([
          label('Lubricate', width),
          paragraph(setting, [span(capitalised(lubricate.name), size, 'bold'), span(where, size)], width),
        ]),
      ),
    );
  }
  if (lift !== undefined) {
    how.push(
      entry('points', (width) =>
        stack([
          label('Lift', width),
          paragraph(setting, [span(formatQuantity(lift.mass), setting.format.type.stage, 'bold')], width),
          text(lift.by, width),
        ]),
      ),
    );
  }
  if (heat !== undefined) {
    how.push(
      entry('points', (width) =>
        stack([
          label('Heat', width),
          paragraph(setting, [span(`to\u00a0${formatQuantity(heat.to)}`, setting.format.type.stage, 'bold')], width),
          text(`never above ${formatQuantity(heat.most)}`, width, 'semibold'),
        ]),
      ),
    );
  }
  const consumables = step.consumables.filter((c) => c.id !== lubricate?.id);
  const uses = consumables.filter((c) => !names.shownElsewhere.has(c.id) || c.amount !== undefined);
  if (uses.length > 0) {
    const list = uses.map((c) => (c.amount === undefined ? c.name : `${c.name} ${c.amount}`)).join(', ');
    withWhat.push(entry('lists', runIn('Use', list, size)));
  }
  const tools = step.tools.filter((id) => !names.shownElsewhere.has(id));
  if (tools.length > 0) withWhat.push(entry('lists', runIn('With', tools.map(names.tool).join(', '), size)));
  if (step.time !== undefined) withWhat.push(entry('wait', runIn('Time', formatQuantity(step.time), small)));
  return [off, on, how, withWhat]
    .filter((entries) => entries.length > 0)
    .map(
      (entries) => (width) =>
        stack(
          entries.map((lay) => lay(width)),
          ENTRY_GAP,
        ),
    );
}

/** Column of fate tags or counts, as wide as the widest of this step. */
function fateColumn(setting: Setting, step: Step): number {
  const small = setting.format.type.small;
  const widths = [...step.remove, ...step.fit].map(
    (p) => widthOfSpans(setting, tagSpans(p, small)) + (p.fate === undefined ? 0 : mm(2)),
  );
  return Math.max(0, ...widths) + mm(1.6);
}

function tagSpans(p: PartMove, size: number) {
  return [span(p.fate ?? `${p.quantity}\u00a0×`, size, 'bold', p.fate === 'discard' ? 'paper' : 'ink')];
}

/** Fate (or count) in a tag, then the part; a discarded part's tag is filled so that it stands out on a grey copy. */
function moveRow(setting: Setting, p: PartMove, width: number, tagWidth: number, size: number): Block {
  const small = setting.format.type.small;
  const lead = mm(5);
  const tag = line(setting, tagSpans(p, small), tagWidth, { lead });
  const boxed = p.fate !== undefined;
  const own = widthOfSpans(setting, tagSpans(p, small));
  const decoration: Decoration[] = boxed ? [tagBox(p.fate, own)] : [];
  // With a fate the tag holds its word and the count stands before the name; else the tag holds the count.
  const count = boxed && p.quantity > 1 ? `${p.quantity}\u00a0×\u00a0` : '';
  const spans = [span(boxed && count === '' ? capitalised(p.name) : `${count}${p.name}`, size, 'semibold')];
  if (p.facing !== undefined) spans.push(span(`, ${p.facing}`, size, 'bold'));
  const name = shift(paragraph(setting, spans, width - tagWidth, { lead }), tagWidth, 0);
  return overlay({ ...shift(tag, boxed ? mm(1) : 0, 0), decoration }, name);
}

function tagBox(fate: Fate | undefined, width: number): Decoration {
  const box = {
    kind: 'rect',
    x: 0,
    y: mm(0.6),
    width: width + mm(2),
    height: mm(3.9),
    stroke: 'ink',
    lineWidth: 0.5,
  } as const;
  return fate === 'discard' ? { ...box, fill: 'ink' } : box;
}
