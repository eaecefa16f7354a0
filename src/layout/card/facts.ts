/** What a step takes: parts off and on with their fate, lubricant, lifting, heat, tools, consumables, time. */

import type { Fate, PartMove, Step } from '../../resolve/types.ts';
import { capitalised } from '../../resolve/words.ts';
import { formatQuantity } from '../../units/index.ts';
import { type Block, type Decoration, mm, overlay, shift, stack } from './items.ts';
import { line, paragraph, type Setting, span, widthOfSpans } from './setting.ts';

/** Tool names by id; tools that have a place of their own in the step (wrench, socket, gauge) are left out. */
export interface FactNames {
  readonly tool: (id: string) => string;
  readonly shownElsewhere: ReadonlySet<string>;
}

/** Entries under each other, in columns when the width allows two. Undefined when the step takes nothing. */
export function factsBlock(setting: Setting, step: Step, names: FactNames, width: number): Block | undefined {
  const small = setting.format.type.small;
  const size = setting.format.type.table - 0.5;
  const entries: Block[] = [];
  const entry = (label: string, ...body: Block[]): void => {
    entries.push(stack([paragraph(setting, [span(label, small, 'semibold', 'soft')], width), ...body], 0));
  };
  const runIn = (label: string, words: string): void => {
    entries.push(paragraph(setting, [span(`${label} `, small, 'semibold', 'soft'), span(words, size)], width));
  };
  const text = (words: string, weight: 'regular' | 'semibold' | 'bold' = 'regular'): Block =>
    paragraph(setting, [span(words, size, weight)], width);
  const tagWidth = fateColumn(setting, step);
  if (step.remove.length > 0) entry('Take off', ...step.remove.map((p) => moveRow(setting, p, width, tagWidth, size)));
  if (step.fit.length > 0) entry('Fit', ...step.fit.map((p) => moveRow(setting, p, width, tagWidth, size)));
  const facing = step.facing.filter((f) => !step.fit.some((p) => p.id === f.id && p.facing === f.facing));
  if (facing.length > 0) {
    entry(
      'Facing',
      ...facing.map((f) =>
        paragraph(setting, [span(`${capitalised(f.name)}: `, size), span(f.facing, size, 'bold')], width),
      ),
    );
  }
  if (step.lubricate !== undefined) {
    const amount = step.consumables.find((c) => c.id === step.lubricate?.id)?.amount;
    entry(
      'Lubricate',
      paragraph(
        setting,
        [
          span(capitalised(step.lubricate.name), size, 'bold'),
          span(` on ${step.lubricate.where}${amount === undefined ? '' : `, ${amount}`}`, size),
        ],
        width,
      ),
    );
  }
  if (step.lift !== undefined) {
    entry(
      'Lift',
      paragraph(setting, [span(formatQuantity(step.lift.mass), setting.format.type.stage, 'bold')], width),
      text(step.lift.by),
    );
  }
  if (step.heat !== undefined) {
    entry(
      'Heat',
      paragraph(
        setting,
        [span(`to ${formatQuantity(step.heat.to)}`.replace('to ', 'to\u00a0'), setting.format.type.stage, 'bold')],
        width,
      ),
      text(`never above ${formatQuantity(step.heat.most)}`, 'semibold'),
    );
  }
  const consumables = step.consumables.filter((c) => c.id !== step.lubricate?.id);
  const uses = consumables.filter((c) => !names.shownElsewhere.has(c.id) || c.amount !== undefined);
  if (uses.length > 0) {
    runIn('Use', uses.map((c) => (c.amount === undefined ? c.name : `${c.name} ${c.amount}`)).join(', '));
  }
  const tools = step.tools.filter((id) => !names.shownElsewhere.has(id));
  if (tools.length > 0) runIn('With', tools.map(names.tool).join(', '));
  if (step.time !== undefined)
    entries.push(
      paragraph(setting, [span('Time ', small, 'semibold', 'soft'), span(formatQuantity(step.time), small)], width),
    );
  return entries.length === 0 ? undefined : stack(entries, mm(1.2));
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
