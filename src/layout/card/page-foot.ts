/** Foot of every side: what governs, which copy it is, and what the side belongs to. */

import type { Bench, Document } from '../../resolve/types.ts';
import { textWidthOf } from './format.ts';
import { type Block, type Decoration, mm, type Node, overlay, shift, stack } from './items.ts';
import type { FrameFacts } from './page-frame.ts';
import { baseline, line, paragraph, type Setting, span, widthOfSpans } from './setting.ts';
import { datedAs } from './standing.ts';
import { temporaryNumbers, withTemporary } from './temporary.ts';

/** A copy of the distribution list. */
export interface ControlledCopy {
  /** Number of this copy, from 1. */
  readonly copy: number;
  /** How many copies there are. */
  readonly copies: number;
  /** Name of the bench where it hangs: `Heat exchange`. */
  readonly bench: string;
}

export interface Foot {
  /** All of the foot but the line that says which copy it is; its room is left free. */
  readonly block: Block;
  /** The line of a loose card. */
  readonly copy: Block;
  /** Distance of that line from the top of the foot. */
  readonly copyTop: number;
}

/** Line spacing of what is said of the copy. */
const COPY_LEAD = mm(4.6);
/** A shorter name takes no more room than the words of a loose card, even when it is all W. */
const SHORT_BENCH = 25;

export function isLongBench(bench: Bench): boolean {
  return bench.name.length > SHORT_BENCH;
}

/** The foot; the last side says "end" instead of "continued over". Its height does not depend on the side. */
export function footOf(setting: Setting, facts: FrameFacts, number: number, of: number): Foot {
  const { shop, document, variant } = facts;
  const { format } = setting;
  const width = textWidthOf(format);
  const safety = paragraph(setting, [span(shop.info.safety, format.type.least, 'regular')], width, { lead: mm(3.4) });
  const copy = looseLine(setting, document, width);
  // Room for the same card as a controlled copy at any bench.
  const room = Math.max(copy.height, ...shop.benches.map((bench) => stampedHeight(setting, bench, width)));
  const turn = number === of ? 'end' : 'continued over';
  const page: [ReturnType<typeof span>, ReturnType<typeof span>] = [
    span(`Page\u00a0${number}\u00a0of\u00a0${of}`, format.type.small, 'semibold'),
    span(`, ${turn.replace(' ', '\u00a0')}`, format.type.small, 'semibold'),
  ];
  const right = line(setting, page, width, { align: 'right', lead: mm(4.2) });
  const temporary = withTemporary(temporaryNumbers(variant));
  const identity = paragraph(
    setting,
    [
      span(`${shop.info.name} · `, format.type.small),
      span(`${document.doc}\u00a0Rev\u00a0${document.revision.rev}`, format.type.small, 'semibold'),
      ...(temporary === '' ? [] : [span(temporary, format.type.small, 'bold')]),
      span(
        ` ·\u00a0${datedAs(document.standing, document.revision.effective)} ·\u00a0fingerprint\u00a0${variant.fingerprint}`,
        format.type.small,
      ),
    ],
    width - widthOfSpans(setting, page) - mm(4),
    { lead: mm(4.2) },
  );
  const last = overlay(identity, right);
  const body = shift(stack([safety, { height: room, decoration: [], nodes: [] }, last], mm(0.8)), 0, mm(1.4));
  const rule: Decoration = { kind: 'line', x1: 0, y1: 0, x2: width, y2: 0, width: 0.75, ink: 'ink' };
  return {
    block: { height: body.height + mm(1.4), decoration: [rule, ...body.decoration], nodes: body.nodes },
    copy,
    copyTop: mm(1.4) + (safety.height === 0 ? 0 : safety.height + mm(0.8)),
  };
}

/** A card without a copy number from the distribution list is uncontrolled; a draft never gets one. */
function looseLine(setting: Setting, document: Document, width: number): Block {
  const size = setting.format.type.small;
  if (document.standing === 'draft') {
    const words = [span('UNCONTROLLED', size, 'bold'), span('. A draft gets no copy number.', size, 'semibold')];
    return paragraph(setting, words, width, { lead: COPY_LEAD });
  }
  const spans = [span('UNCONTROLLED', size, 'bold'), span(' unless it bears a copy number.', size, 'semibold')];
  const words = paragraph(setting, spans, width, { lead: COPY_LEAD });
  const used = widthOfSpans(setting, spans);
  const labels = [
    { text: 'Copy', blank: mm(12) },
    { text: 'of', blank: mm(12) },
    { text: 'Bench', blank: mm(32) },
  ];
  const need = labels.reduce(
    (sum, l) => sum + widthOfSpans(setting, [span(l.text, size)]) + mm(1.5) + l.blank + mm(2),
    0,
  );
  const beside = used + mm(4) + need <= width;
  const top = beside ? 0 : COPY_LEAD;
  let x = beside ? width - need + mm(2) : 0;
  const decoration: Decoration[] = [];
  const nodes: Node[] = [];
  for (const label of labels) {
    const text = shift(line(setting, [span(label.text, size)], width, { lead: COPY_LEAD }), x, top);
    nodes.push(...text.nodes);
    x += widthOfSpans(setting, [span(label.text, size)]) + mm(1.5);
    const y = top + baseline(COPY_LEAD, size) + 1;
    decoration.push({ kind: 'line', x1: x, y1: y, x2: x + label.blank, y2: y, width: 0.5, ink: 'ink' });
    x += label.blank + mm(2);
  }
  return { height: words.height + top, decoration, nodes: [...words.nodes, ...nodes] };
}

/** `CONTROLLED COPY 3 of 7` in a filled field, then the bench: told from a loose card at a glance. */
export function stampedLine(setting: Setting, { copy, copies, bench }: ControlledCopy, width: number): Block {
  const size = setting.format.type.small;
  const pad = mm(1.6);
  const tag = [span(`CONTROLLED COPY ${copy} of ${copies}`.replaceAll(' ', '\u00a0'), size, 'bold', 'paper')];
  const field = widthOfSpans(setting, tag) + 2 * pad;
  const left = field + mm(1.4);
  const name = paragraph(setting, [span(`·\u00a0${bench}`, size, 'bold')], width - left, { lead: COPY_LEAD });
  const words = overlay(shift(line(setting, tag, field, { lead: COPY_LEAD }), pad, 0), shift(name, left, 0));
  return {
    ...words,
    decoration: [
      { kind: 'rect', x: 0, y: mm(0.2), width: field, height: COPY_LEAD - mm(0.4), fill: 'ink' },
      ...words.decoration,
    ],
  };
}

/** Room that the words of a loose card might not leave. */
function stampedHeight(setting: Setting, bench: Bench, width: number): number {
  if (!isLongBench(bench)) return 0;
  const quiet: Setting = { ...setting, problems: { missing: () => undefined, tooWide: () => undefined } };
  return stampedLine(quiet, { copy: 999, copies: 999, bench: bench.name }, width).height;
}
