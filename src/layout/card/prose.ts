/** The author's paragraphs and lists, with the words that stand for things set apart. */

import type { Prose, Run } from '../../resolve/types.ts';
import type { Span, TextInk, Weight } from '../type/index.ts';
import { leading } from './format.ts';
import { type Block, mm, node, overlay, shift, stack } from './items.ts';
import { paragraph, type Setting, span } from './setting.ts';

/** Tools, parts and the like stand out by weight; never underlined, and capitals and slanted type are kept for nothing. */
function weightOf(run: Run, base: Weight): Weight {
  if (run.strong === true) return 'bold';
  if (run.emphasis === true) return base === 'regular' ? 'semibold' : 'bold';
  if (run.ref !== undefined && run.ref.kind !== 'step' && run.ref.kind !== 'procedure')
    return base === 'regular' ? 'semibold' : base;
  return base;
}

export function spansOf(runs: readonly Run[], size: number, base: Weight = 'regular', ink: TextInk = 'ink'): Span[] {
  return runs.map((run) => span(run.text, size, weightOf(run, base), ink));
}

export interface ProseOptions {
  readonly weight?: Weight;
  readonly ink?: TextInk;
  /** Words set before the first paragraph, such as `Note: `. */
  readonly lead?: readonly Span[];
  readonly gap?: number;
}

/** Paragraphs under each other; items hang on a bullet. */
export function setProse(
  setting: Setting,
  prose: Prose,
  size: number,
  width: number,
  options: ProseOptions = {},
): Block {
  const bulletWidth = mm(4);
  const blocks: Block[] = prose.map((p, i) => {
    const own = spansOf(p.runs, size, options.weight, options.ink);
    const spans = i === 0 && options.lead !== undefined ? [...options.lead, ...own] : own;
    if (p.kind === 'paragraph') return paragraph(setting, spans, width);
    const bullet = paragraph(setting, [span('•', size, 'bold', options.ink)], bulletWidth, { tag: 'Lbl' });
    const body = shift(paragraph(setting, spans, width - bulletWidth, { tag: 'LBody' }), bulletWidth, 0);
    const item = overlay(bullet, body);
    return { ...item, nodes: [node('L', [], [node('LI', [], item.nodes)])] };
  });
  return joinLists(stack(blocks, options.gap ?? leading(size) * 0.2));
}

/** Items that follow each other belong to one list. */
function joinLists(block: Block): Block {
  const nodes = [...block.nodes];
  for (let i = nodes.length - 1; i > 0; i--) {
    const [before, here] = [nodes[i - 1], nodes[i]];
    if (before?.tag === 'L' && here?.tag === 'L') nodes.splice(i - 1, 2, node('L', [], [...before.kids, ...here.kids]));
  }
  return { ...block, nodes };
}
