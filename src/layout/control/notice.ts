/** A change notice for one bench: what it is to take out and put in, why, and where it signs. One sheet where it fits. */

import { addDays } from '../../control/dates.ts';
import type { Notice } from '../../control/types.ts';
import type { ResolvedShop } from '../../resolve/types.ts';
import { lineBlanks } from '../card/blanks.ts';
import type { Chunk } from '../card/chunks.ts';
import { textWidthOf } from '../card/format.ts';
import { type Block, mm, node, overlay, shift, stack } from '../card/items.ts';
import { line, paragraph, type Setting, span, widthOfSpans } from '../card/setting.ts';
import { sentence } from '../card/source-text.ts';
import type { Faces, Span } from '../type/index.ts';
import { noticeTables } from './notice-tables.ts';
import { type NoticeWords, noticeWords, oldCopies, unapproved, within } from './notice-words.ts';
import { proseChunks } from './paper-table.ts';
import { type Frame, layoutSheets, NO_RANGE, type SheetsLayout, sheetFormat, sheetSetting } from './sheets.ts';

/** What a notice takes from the shop: its name, paper and language, and the names behind ids of people. */
export type NoticeShop = Pick<ResolvedShop, 'info' | 'people'>;

/** `asOf`: day for which the notice is drawn up, `2026-03-02`. */
export function layoutNotice(notice: Notice, shop: NoticeShop, asOf: string, faces: Faces): SheetsLayout {
  const setting = sheetSetting(faces, sheetFormat(shop.info));
  const words = noticeWords(notice);
  const width = textWidthOf(setting.format);
  const chunk = (block: Block, gap: number, keepWithNext = false): Chunk => ({
    block,
    gap,
    keepWithNext,
    what: 'the notice',
    range: NO_RANGE,
  });
  const chunks: Chunk[] = [
    chunk(titleBlock(setting, notice, words, width), 0, true),
    chunk(factsBlock(setting, notice, shop, width), mm(3)),
    chunk(orderBlock(setting, words, width), mm(4)),
    ...noticeTables(setting, notice, words),
    ...reasonChunks(setting, notice, shop, width),
    chunk(signBlock(setting, notice, width), mm(5)),
  ];
  return layoutSheets(setting, frameOf(notice, shop, asOf), [chunks]);
}

function frameOf(notice: Notice, shop: NoticeShop, asOf: string): Frame {
  return {
    title: shop.info.name,
    right: `${notice.number} · ${notice.benchName} · copy ${notice.copy} of ${notice.copies}`,
    foot: [
      'A card without a copy number is UNCONTROLLED and does not belong in the binder.',
      `Change notice ${notice.number} · ${notice.doc} · drawn up as of ${asOf}`,
    ],
  };
}

function titleBlock(setting: Setting, notice: Notice, words: NoticeWords, width: number): Block {
  const { type } = setting.format;
  const tagSpans = [span(words.tag, type.stage, 'bold', words.stop ? 'paper' : 'ink')];
  const tagWidth = widthOfSpans(setting, tagSpans) + mm(6);
  const title = [span(`CHANGE NOTICE ${notice.number}`, type.doc, 'bold')];
  const beside = widthOfSpans(setting, title) + tagWidth + mm(4) <= width;
  const tag: Block = {
    height: mm(9),
    decoration: [
      {
        kind: 'rect',
        x: 0,
        y: 0,
        width: tagWidth,
        height: mm(8.4),
        stroke: words.stop ? 'danger' : 'ink',
        lineWidth: 1.5,
        ...(words.stop ? { fill: 'danger' } : {}),
      },
    ],
    nodes: shift(line(setting, tagSpans, tagWidth, { align: 'center', lead: mm(8.4) }), 0, 0).nodes,
  };
  const first = paragraph(setting, title, beside ? width - tagWidth - mm(4) : width, { tag: 'H1', lead: mm(9) });
  const upper = beside ? overlay(first, shift(tag, width - tagWidth, 0)) : stack([first, tag], mm(1));
  const subject = paragraph(
    setting,
    [span(`${notice.doc}\u2002`, type.title, 'bold', 'accent'), span(notice.title, type.title, 'semibold')],
    width,
    { lead: mm(6.5) },
  );
  return stack([upper, subject], mm(1));
}

/** Where the copy hangs and by when it is done, under a heavy rule. */
function factsBlock(setting: Setting, notice: Notice, shop: NoticeShop, width: number): Block {
  const { type } = setting.format;
  const answer = addDays(notice.due, notice.limitDays);
  const facts: readonly (readonly [string, string, string, number])[] = [
    ['Bench', notice.benchName, notice.place, 2.5],
    ['Copy', `${notice.copy} of ${notice.copies}`, '', 0.9],
    ['Do it by', notice.due, `class ${notice.class}`, 1.3],
    ['Confirm', within(notice.limitDays), `by ${answer}`, 1.5],
  ];
  const total = facts.reduce((sum, [, , , share]) => sum + share, 0);
  let x = 0;
  const columns = facts.map(([label, value, below, share]) => {
    const own = (width * share) / total;
    const block = stack([
      paragraph(setting, [span(label, type.small, 'semibold', 'soft')], own - mm(4)),
      paragraph(setting, [span(value, type.stage, 'bold')], own - mm(4), { lead: mm(6) }),
      paragraph(setting, [span(below, type.table)], own - mm(4)),
    ]);
    const placed = shift(block, x, 0);
    x += own;
    return placed;
  });
  const state = stateLine(setting, notice, shop, width);
  const body = shift(stack([overlay(...columns), state], mm(1.5)), 0, mm(2.5));
  return {
    height: body.height + mm(2.5),
    decoration: [{ kind: 'rect', x: 0, y: 0, width, height: mm(0.8), fill: 'ink' }, ...body.decoration],
    nodes: [node('Div', [], body.nodes)],
  };
}

/** Said when the holder has confirmed, or is late. */
function stateLine(setting: Setting, notice: Notice, shop: NoticeShop, width: number): Block {
  const { type } = setting.format;
  const { receipt } = notice;
  if (receipt !== undefined) {
    const words = `Confirmed by ${personName(shop, receipt.by)} on ${receipt.on}.`;
    return paragraph(setting, [span(words, type.step, 'bold')], width);
  }
  if (!notice.overdue) return paragraph(setting, [], width);
  const since = notice.age === undefined ? '' : `: ${dayCount(notice.age)} since it was due`;
  return paragraph(setting, [span(`OVERDUE${since}.`, type.step, 'bold', 'danger')], width);
}

function dayCount(count: number): string {
  return count === 1 ? '1\u00a0day' : `${count}\u00a0days`;
}

/** What to do, the largest words under the title, in a tinted band. */
function orderBlock(setting: Setting, words: NoticeWords, width: number): Block {
  const { type } = setting.format;
  const inner = width - mm(9);
  const text = stack(
    [
      paragraph(setting, [span(words.order, type.title, 'bold')], inner, { lead: mm(6.5) }),
      paragraph(setting, [span(words.more, type.step)], inner),
    ],
    mm(1),
  );
  const height = text.height + mm(5);
  const placed = shift(text, mm(5), mm(2.5));
  return {
    height,
    decoration: [
      { kind: 'rect', x: 0, y: 0, width, height, fill: words.stop ? 'tint-danger' : 'tint' },
      { kind: 'rect', x: 0, y: 0, width: mm(2), height, fill: words.stop ? 'danger' : 'ink' },
      ...placed.decoration,
    ],
    nodes: [node('Div', [], placed.nodes)],
  };
}

function reasonChunks(setting: Setting, notice: Notice, shop: NoticeShop, width: number): Chunk[] {
  const { type } = setting.format;
  const labelled = (label: string, text: string): Span[] => [
    span(`${label}: `, type.step, 'bold'),
    span(sentence(text), type.step),
  ];
  const approved = notice.approver === undefined ? unapproved(notice.cause) : personName(shop, notice.approver);
  return [
    ...proseChunks(setting, labelled('What', notice.what), width, mm(5), 'what'),
    ...proseChunks(setting, labelled('Why', notice.why), width, mm(1), 'why'),
    ...proseChunks(setting, labelled('Approved by', approved), width, mm(1), 'approval'),
  ];
}

function personName(shop: NoticeShop, id: string): string {
  return shop.people.find((p) => p.id === id)?.name ?? id;
}

/** Where the bench signs and where quality does. It stays whole. */
function signBlock(setting: Setting, notice: Notice, width: number): Block {
  const { type } = setting.format;
  const signature = (label: string): Block =>
    lineBlanks(
      setting,
      [
        { label, share: 2.2 },
        { label: 'Signature', share: 1.5 },
        { label: 'Date', share: 1 },
      ],
      width,
      mm(9.5),
    );
  const destroys = notice.takeOut.length > 0 && notice.cause !== 'suspend' && notice.cause !== 'withdraw';
  const back = addDays(notice.due, notice.limitDays);
  const body = stack(
    [
      paragraph(setting, [span('Done at the bench', type.title, 'bold')], width, { tag: 'H2', lead: mm(7) }),
      ...(notice.takeOut.length > 0 ? [paragraph(setting, [span(oldCopies(notice), type.table)], width)] : []),
      ...(notice.takeOut.length > 0 ? [signature('Taken out by')] : []),
      ...(notice.putIn.length > 0 ? [signature('Put in by')] : []),
      ...(notice.takeOut.length > 0 ? [copiesRow(setting, destroys, width)] : []),
      paragraph(setting, [span(`Return this sheet to quality by ${back}.`, type.stage, 'bold')], width, {
        lead: mm(8),
      }),
      lineBlanks(
        setting,
        [
          { label: 'Quality: receipt entered by', share: 2.2 },
          { label: 'Date', share: 1 },
        ],
        width,
        mm(8),
      ),
    ],
    mm(0.8),
  );
  const inner = shift(body, 0, mm(2));
  return {
    height: inner.height + mm(2),
    decoration: [{ kind: 'line', x1: 0, y1: 0, x2: width, y2: 0, width: 0.75, ink: 'rule' }, ...inner.decoration],
    nodes: [node('Div', [], inner.nodes)],
  };
}

/** Boxes to tick: what became of the old copies. */
function copiesRow(setting: Setting, destroys: boolean, width: number): Block {
  const { type } = setting.format;
  const height = mm(8.5);
  const box = mm(4.2);
  const labels = destroys ? ['returned with this sheet', 'destroyed here'] : ['handed to quality'];
  const lead = [span('Old copies:', type.table, 'semibold')];
  let x = widthOfSpans(setting, lead) + mm(4);
  let row = line(setting, lead, width, { lead: height });
  for (const label of labels) {
    const text = [span(label, type.table)];
    const words = shift(line(setting, text, width, { lead: height }), x + box + mm(2), 0);
    row = overlay(row, {
      ...words,
      decoration: [{ kind: 'rect', x, y: (height - box) / 2, width: box, height: box, stroke: 'ink', lineWidth: 0.8 }],
    });
    x += box + mm(2) + widthOfSpans(setting, text) + mm(8);
  }
  return row;
}
