/** Top and foot of every side: what identifies the card, what state it is in, and how many sides it has. */

import type { Document, ResolvedShop, Variant } from '../../resolve/types.ts';
import { textWidthOf } from './format.ts';
import { type Block, type Content, type Decoration, mm, type Node, node, overlay, shift, stack } from './items.ts';
import { moduleMm, QR_SIDE_MM, QUIET_MODULES } from './qr-size.ts';
import { baseline, line, paragraph, type Setting, span, widthOfSpans } from './setting.ts';

export interface FrameFacts {
  readonly shop: ResolvedShop;
  readonly document: Document;
  readonly variant: Variant;
}

/** The top edge; height does not depend on the side. `number` counts sides from 1; even sides are mirrored. */
export function headerBlock(setting: Setting, facts: FrameFacts, number: number, of: number): Block {
  const { document, variant } = facts;
  const { format } = setting;
  const width = textWidthOf(format);
  const odd = number % 2 === 1;
  const quiet = mm(moduleMm(variant.address) * QUIET_MODULES);
  const qrSide = mm(QR_SIDE_MM);
  // The light margin of the symbol reaches into the white margin of the paper on two sides.
  const qrWidth = qrSide - quiet;
  const textLeft = odd ? 0 : qrWidth + mm(2);
  const column = width - qrWidth - mm(2);
  const tag = variantTag(setting, variant.label, column * 0.45);
  const tagWidth = tag === undefined ? 0 : tag.width + mm(4);
  const first = number === 1;
  const doc = line(setting, [span(document.doc, format.type.doc, 'bold')], column - tagWidth, { lead: mm(8) });
  const title = paragraph(setting, [span(document.title, format.type.title, 'semibold')], column - tagWidth, {
    lead: mm(6),
    tag: first ? 'H1' : 'P',
  });
  const status = paragraph(
    setting,
    [
      span(`Rev\u00a0${document.revision.rev}`, format.type.small + 1, 'bold', 'accent'),
      span(` · Effective\u00a0${document.revision.effective}`, format.type.small, 'semibold'),
      span(` · Page\u00a0${number}\u00a0of\u00a0${of}`, format.type.small, 'semibold'),
    ],
    column - tagWidth,
    { lead: mm(5) },
  );
  const words = shift(stack([doc, title, status]), textLeft, 0);
  const address = shift(
    paragraph(setting, [span(variant.address, format.type.least, 'regular', 'soft')], width, {
      align: odd ? 'right' : 'left',
      lead: mm(3.6),
    }),
    0,
    0,
  );
  const qrX = odd ? width - qrWidth : -quiet;
  const symbol = qrNode(variant.address, qrX, -quiet, qrSide);
  const upper = Math.max(words.height, qrSide - quiet, tag === undefined ? 0 : tag.block.height);
  const below = shift(address, 0, upper);
  const height = upper + address.height + mm(1);
  const placedTag = tag === undefined ? undefined : shift(tag.block, textLeft + column - tag.width, mm(0.6));
  const rule: Decoration = { kind: 'line', x1: 0, y1: height, x2: width, y2: height, width: 0.75, ink: 'ink' };
  return {
    height,
    decoration: [rule, ...(placedTag?.decoration ?? [])],
    nodes: [...words.nodes.slice(0, 2), ...(placedTag?.nodes ?? []), ...words.nodes.slice(2), symbol, ...below.nodes],
  };
}

function qrNode(address: string, x: number, y: number, side: number): Node {
  const item: Content = { kind: 'qr', x, y, side, address };
  return node('Link', [item], [], {
    alt: `Open this card: ${address}`,
    link: { url: address, x, y, width: side, height: side },
  });
}

/** The boxed words of the variant: large, so that two near-alike cards differ by more than a digit. */
function variantTag(
  setting: Setting,
  label: string,
  most: number,
): { readonly block: Block; readonly width: number } | undefined {
  if (label === '') return undefined;
  const pad = mm(2.5);
  const size = 16;
  const lead = mm(7);
  const natural = widthOfSpans(setting, [span(label, size, 'bold')]);
  const inner = Math.min(natural, most - 2 * pad) + 0.1;
  const text = paragraph(setting, [span(label, size, 'bold')], inner, { lead, align: 'center' });
  const block: Block = {
    height: text.height + mm(2.4),
    decoration: [
      { kind: 'rect', x: 0, y: 0, width: inner + 2 * pad, height: text.height + mm(2), stroke: 'ink', lineWidth: 1.5 },
    ],
    nodes: shift(text, pad, mm(1)).nodes,
  };
  return { block, width: inner + 2 * pad };
}

/** The foot; `last` says "end" instead of "continued over". */
export function footerBlock(setting: Setting, facts: FrameFacts, number: number, of: number): Block {
  const { shop, document, variant } = facts;
  const { format } = setting;
  const width = textWidthOf(format);
  const small = format.type.least;
  const safety = paragraph(setting, [span(shop.info.safety, small, 'regular')], width, { lead: mm(3.4) });
  const copy = copyLine(setting, width);
  const turn = number === of ? 'end' : 'continued over';
  const page: [ReturnType<typeof span>, ReturnType<typeof span>] = [
    span(`Page\u00a0${number}\u00a0of\u00a0${of}`, format.type.small, 'semibold'),
    span(`, ${turn.replace(' ', '\u00a0')}`, format.type.small, 'semibold'),
  ];
  const right = line(setting, page, width, { align: 'right', lead: mm(4.2) });
  const identity = paragraph(
    setting,
    [
      span(`${shop.info.name} · `, format.type.small),
      span(`${document.doc}\u00a0Rev\u00a0${document.revision.rev}`, format.type.small, 'semibold'),
      span(
        ` · effective\u00a0${document.revision.effective} · fingerprint\u00a0${variant.fingerprint}`,
        format.type.small,
      ),
    ],
    width - widthOfSpans(setting, page) - mm(4),
    { lead: mm(4.2) },
  );
  const last = overlay(identity, right);
  const body = shift(stack([safety, copy, last], mm(0.8)), 0, mm(1.4));
  const rule: Decoration = { kind: 'line', x1: 0, y1: 0, x2: width, y2: 0, width: 0.75, ink: 'ink' };
  return { height: body.height + mm(1.4), decoration: [rule, ...body.decoration], nodes: body.nodes };
}

/** A card without a copy number from the distribution list is uncontrolled. */
function copyLine(setting: Setting, width: number): Block {
  const size = setting.format.type.small;
  const words = paragraph(
    setting,
    [span('UNCONTROLLED', size, 'bold'), span(' unless it bears a copy number.', size, 'semibold')],
    width,
    { lead: mm(4.6) },
  );
  const used = widthOfSpans(setting, [
    span('UNCONTROLLED', size, 'bold'),
    span(' unless it bears a copy number.', size, 'semibold'),
  ]);
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
  const top = beside ? 0 : mm(4.6);
  let x = beside ? width - need + mm(2) : 0;
  const decoration: Decoration[] = [];
  const nodes: Node[] = [];
  for (const label of labels) {
    const text = shift(line(setting, [span(label.text, size)], width, { lead: mm(4.6) }), x, top);
    nodes.push(...text.nodes);
    x += widthOfSpans(setting, [span(label.text, size)]) + mm(1.5);
    const y = top + baseline(mm(4.6), size) + 1;
    decoration.push({ kind: 'line', x1: x, y1: y, x2: x + label.blank, y2: y, width: 0.5, ink: 'ink' });
    x += label.blank + mm(2);
  }
  return { height: words.height + top, decoration, nodes: [...words.nodes, ...nodes] };
}
