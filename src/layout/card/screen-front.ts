/** How high the edges and the front of a card can be, at the most. */

import type { ChangePanel, Document, ResolvedShop, Variant } from '../../resolve/types.ts';
import { listed } from '../../resolve/words.ts';
import { PANEL_BULLET, PANEL_INDENT, PANEL_LEGEND, PANEL_LIKENESS, panelLines } from './changes-panel.ts';
import { revisionText } from './control-block.ts';
import { type Format, isWide, textWidthOf } from './format.ts';
import { stepList } from './front.ts';
import { mm } from './items.ts';
import { isLongBench } from './page-foot.ts';
import { QR_SIDE_MM } from './qr-size.ts';
import type { TextRoom } from './screen-text.ts';
import { sentence, sourceText } from './source-text.ts';
import { datedAs, headedAs } from './standing.ts';
import { shareWidth } from './table.ts';
import { temporaryNumbers, withTemporary } from './temporary.ts';

/** Over and under the lines of a row of a table. */
const PADS = mm(1.5);
/** Head of a table, in one line of our own words. */
const HEAD = mm(6);

export function headerBound(document: Document, variant: Variant, { type, ...format }: Format, room: TextRoom): number {
  const width = textWidthOf({ type, ...format });
  const column = width - mm(QR_SIDE_MM) - mm(2);
  room.height = 0;
  const most = column * 0.45;
  let tag = 0;
  let tagHeight = 0;
  if (variant.label !== '') {
    room.add(variant.label, 16);
    const natural = room.takeWidth();
    room.add(variant.label, 16);
    tagHeight = room.lines(most - mm(5)) * mm(7) + mm(2.4);
    tag = Math.min(natural + mm(5), most) + mm(4) + 0.1;
  }
  const own = column - tag;
  room.add(document.doc, type.doc);
  room.height += room.lines(own) * mm(8);
  room.text(document.title, type.title, own, mm(6));
  room.add(`Rev\u00a0${document.revision.rev}`, type.small + 1);
  room.add(` · Effective\u00a0${document.revision.effective} · Page\u00a0999\u00a0of\u00a0999`, type.small);
  room.end(own, mm(5));
  if (document.standing !== undefined) {
    // Its box stands beside the revision, or under it.
    room.add(headedAs(document), type.small + 1);
    room.height += room.lines(own - mm(3.6)) * mm(5) + mm(1);
  }
  const upper = Math.max(room.height, mm(QR_SIDE_MM), tagHeight);
  room.height = 0;
  room.text(variant.address, type.least, width, mm(3.6));
  return upper + room.height + mm(1);
}

export function footerBound(
  shop: ResolvedShop,
  document: Document,
  variant: Variant,
  format: Format,
  room: TextRoom,
): number {
  const { type } = format;
  const width = textWidthOf(format);
  room.height = 0;
  room.text(shop.info.safety, type.least, width, mm(3.4));
  room.add('Page\u00a0999\u00a0of\u00a0999, continued\u00a0over', type.small);
  const page = room.takeWidth();
  room.add(`${shop.info.name} · ${document.doc}\u00a0Rev\u00a0${document.revision.rev}`, type.small);
  room.add(withTemporary(temporaryNumbers(variant)), type.small);
  // The fingerprint has eight signs from 0 to F, of which D is the widest.
  room.add(` ·\u00a0${datedAs(document.standing, document.revision.effective)}`, type.small);
  room.add(' ·\u00a0fingerprint\u00a0DDDDDDDD', type.small);
  const identity = Math.max(1, room.lines(width - page - mm(4)));
  // The copy line takes two lines on small paper, and more for a long name of a bench.
  let copy = isWide(format) ? 1 : 2;
  for (const bench of shop.benches) {
    if (!isLongBench(bench)) continue;
    room.add('CONTROLLED\u00a0COPY\u00a0999\u00a0of\u00a0999', type.small);
    const tag = room.takeWidth() + mm(5.2);
    room.add(`·\u00a0${bench.name}`, type.small);
    copy = Math.max(copy, room.lines(width - tag));
  }
  return room.height + copy * mm(4.6) + identity * mm(4.2) + mm(1.6 + 2.8);
}

/** Height of the highest thing on the front that must stand together. */
export function frontBounds(
  shop: ResolvedShop,
  document: Document,
  variant: Variant,
  format: Format,
  room: TextRoom,
): number {
  const width = textWidthOf(format);
  const { type } = format;
  let highest = 0;
  const block = (fill: () => void): void => {
    room.height = 0;
    fill();
    highest = Math.max(highest, room.height);
  };
  block(() => {
    room.prose(document.purpose, type.step, width);
    const machine = shop.machines.find((m) => m.id === document.machine);
    room.text(
      `Machine M${document.machineName}, ${machine?.mark ?? ''}, serial numbers ${listed(variant.serials)}. ${machine?.where ?? ''}`,
      type.table,
      width,
    );
    room.height += mm(1.5);
  });
  const { changes } = document;
  if (changes !== undefined) block(() => panelBound(changes, document.revision.why, format, room));
  // Counts and times that fit their places: four digits, and less than a thousand days.
  if (document.people > 999 || variant.stepCount > 999 || variant.workSeconds > 8e7 || variant.waitSeconds > 8e7)
    room.sure = false;
  block(() => {
    const inner = width - mm(6);
    room.add(`Stored energy: ${listed(document.energy)}. `, type.table);
    room.add(shop.info.storedEnergy ?? '', type.table);
    room.end(inner, mm(4.5));
    room.text(`Wear: ${listed(variant.ppe)}`, type.table, inner);
    room.height += mm(4);
  });
  block(() => {
    room.text(`Revision\u00a0${document.revision.rev}: ${revisionText(shop, document)}`, type.small, width);
    room.text(`Rests on: ${document.sources.map(sourceText).join('; ')}`, type.small, width);
    room.text(`Something wrong on this card? ${sentence(shop.info.report ?? '')}`, type.small, width);
    room.height += mm(1.2);
  });
  return Math.max(highest, listBounds(variant, format, width, room));
}

/** The panel of changes in one column, which is one of the arrangements tried. */
function panelBound(changes: ChangePanel, why: string, format: Format, room: TextRoom): void {
  const { type } = format;
  const width = textWidthOf(format) - PANEL_INDENT;
  room.text(`Changed since Rev\u00a0${changes.since} · ${PANEL_LEGEND}`, type.step, width);
  for (const text of panelLines(changes)) room.text(text, type.table, width - PANEL_BULLET);
  room.text(`Why: ${sentence(why)}`, type.table, width);
  room.height += mm(2.6) + PANEL_LIKENESS;
}

/** Rows that must stand together: at most three, with the heading and the head, or under both when the list runs over. */
function listBounds(variant: Variant, format: Format, width: number, room: TextRoom): number {
  const { type } = format;
  const wide = isWide(format);
  let row = 0;
  /** One row of cells, each a paragraph of its own in its column. */
  const cell = (text: string, size: number, column: number | undefined): void => {
    room.add(text, size);
    row = Math.max(row, room.lines(column ?? 0));
  };
  const steps = (numbers: readonly number[], column: number | undefined): void =>
    cell(stepList(numbers), type.small, column);
  const [part, number, quantity, , kit, partSteps] = wide
    ? shareWidth(width, [
        { share: 3.2 },
        { share: 1.8 },
        { fixed: mm(10) },
        { fixed: mm(16) },
        { share: 2.4 },
        { fixed: mm(20) },
      ])
    : shareWidth(width, [
        { share: 2.6 },
        { share: 1.6 },
        { fixed: mm(8) },
        { fixed: mm(15) },
        { fixed: 0 },
        { fixed: mm(16) },
      ]);
  for (const p of variant.parts) {
    cell(p.name, type.table, part);
    cell(p.number ?? '', type.table, number);
    cell(String(p.quantity), type.table, quantity);
    if (wide) cell(p.kit ?? '', type.table, kit);
    steps(p.steps, partSteps);
  }
  // Long lists are tried with two and with three tools a row, and must fit both ways.
  const several = wide && variant.tools.length > 5;
  const two = [{ share: 2 }, { share: 1.3 }, { fixed: mm(19) }];
  const three = [{ share: 1 }, { fixed: mm(15) }];
  const [tool, detail, toolSteps] = shareWidth(width, several ? [...two, ...two] : two);
  const [narrow, narrowSteps] = shareWidth(width, [...three, ...three, ...three]);
  for (const t of variant.tools) {
    cell(t.name, type.table, tool);
    cell(t.detail, type.table, detail);
    steps(t.steps, toolSteps);
    if (!several) continue;
    cell(`${t.name} ${t.detail}`, type.table, narrow);
    steps(t.steps, narrowSteps);
  }
  const [consumable, amount, consumableSteps] = shareWidth(width, [{ share: 2.4 }, { share: 1 }, { fixed: mm(18) }]);
  for (const c of variant.consumables) {
    cell(`${c.name}. ${listed(c.hazards)}`, type.table, consumable);
    cell(c.amount ?? '', type.table, amount);
    steps(c.steps, consumableSteps);
  }
  return mm(6 + 6) + HEAD + 3 * (row * mm(4.5) + PADS);
}
