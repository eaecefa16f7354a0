/** Top of every side: what identifies the card, what state it is in, and how many sides it has. */

import type { Document, ResolvedShop, Variant } from '../../resolve/types.ts';
import { textWidthOf } from './format.ts';
import { type Block, type Content, type Decoration, mm, type Node, node, overlay, shift, stack } from './items.ts';
import { moduleMm, QR_SIDE_MM, QUIET_MODULES } from './qr-size.ts';
import { line, paragraph, type Setting, span, widthOfSpans } from './setting.ts';
import { headedAs } from './standing.ts';

export interface FrameFacts {
  readonly shop: ResolvedShop;
  readonly document: Document;
  readonly variant: Variant;
}

/** Height of the line that holds the boxed standing. */
const STANDING_LEAD = mm(6);

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
  const status = statusBlock(setting, document, number, of, column - tagWidth);
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
    decoration: [rule, ...words.decoration, ...(placedTag?.decoration ?? [])],
    nodes: [...words.nodes.slice(0, 2), ...(placedTag?.nodes ?? []), ...words.nodes.slice(2), symbol, ...below.nodes],
  };
}

/** Revision, effective date and page; a standing that keeps the card from work stands boxed in place of the date. */
function statusBlock(setting: Setting, document: Document, number: number, of: number, width: number): Block {
  const { type } = setting.format;
  const rev = span(`Rev\u00a0${document.revision.rev}`, type.small + 1, 'bold', 'accent');
  const page = (n: number, all: number, before = '') =>
    span(`${before}Page\u00a0${n}\u00a0of\u00a0${all}`, type.small, 'semibold');
  if (document.standing === undefined) {
    const effective = span(` · Effective\u00a0${document.revision.effective}`, type.small, 'semibold');
    return paragraph(setting, [rev, effective, page(number, of, ' · ')], width, { lead: mm(5) });
  }
  const box = standingBox(setting, document, width);
  const before = widthOfSpans(setting, [rev]) + mm(2.5);
  // The same on every side, whatever its number.
  const beside = before + box.width + mm(2) + widthOfSpans(setting, [page(999, 999)]) <= width;
  if (!beside) return stack([paragraph(setting, [rev, page(number, of, ' · ')], width, { lead: mm(5) }), box.block]);
  const after = before + box.width + mm(2);
  return overlay(
    line(setting, [rev], before, { lead: STANDING_LEAD }),
    shift(box.block, before, 0),
    shift(line(setting, [page(number, of)], width - after, { lead: STANDING_LEAD }), after, 0),
  );
}

/** A draft in a filled box, a card whose day has not come in an open one: told apart on a grey copy and without colour. */
function standingBox(setting: Setting, document: Document, width: number): { block: Block; width: number } {
  const size = setting.format.type.small + 1;
  const draft = document.standing === 'draft';
  const text = [span(headedAs(document), size, 'bold', draft ? 'paper' : 'ink')];
  const pad = mm(1.8);
  const inner = Math.min(widthOfSpans(setting, text), width - 2 * pad) + 0.1;
  const words = paragraph(setting, text, inner, { lead: mm(5) });
  const outline: Decoration = {
    ...{ kind: 'rect', x: 0, y: mm(0.4), width: inner + 2 * pad, height: words.height + mm(0.2) },
    ...{ stroke: 'ink', lineWidth: 1.2, ...(draft ? { fill: 'ink' } : {}) },
  };
  const placed = shift(words, pad, mm(0.5));
  return {
    block: { height: words.height + STANDING_LEAD - mm(5), decoration: [outline], nodes: placed.nodes },
    width: inner + 2 * pad,
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
