/**
 * Tells without laying a card out that nothing on it can be at fault: every word fits its place, every sign is in the faces, every
 * step fits a side, and the address fits the symbol. Where that is not certain, the card is to be laid out, which alone decides.
 * The bounds follow the blocks of this folder; tests hold that no block is higher than its bound.
 */

import type { Document, ResolvedShop, Variant } from '../../resolve/types.ts';
import { personName } from './control-block.ts';
import { type Format, formatOf, textWidthOf } from './format.ts';
import { mm } from './items.ts';
import { LEAST_MODULE_MM, moduleMm } from './qr-size.ts';
import { footerBound, frontBounds, headerBound } from './screen-front.ts';
import { stepBound } from './screen-step.ts';
import { TextRoom } from './screen-text.ts';
import type { StepScene } from './step-block.ts';

/** Whether the layout of the card could report something. */
export function needsLayout(shop: ResolvedShop, document: Document, variant: Variant): boolean {
  if (moduleMm(variant.address) < LEAST_MODULE_MM) return true;
  const format = formatOf(shop.info.cardFormat);
  const room = new TextRoom();
  const edges = headerBound(document, variant, format, room) + footerBound(shop, document, variant, format, room);
  // The gaps under the header and over the foot.
  const side = format.height - format.top - format.bottom - edges - mm(7);
  if (!room.sure || frontBounds(shop, document, variant, format, room) > side || !room.sure) return true;
  const names = toolNames(shop);
  const scene: StepScene = {
    joint: (id) => variant.joints.find((j) => j.id === id),
    tool: (id) => names.get(id) ?? id,
    person: (id) => personName(shop, id),
  };
  for (const stage of variant.stages) {
    // Its heading would stand together with what comes after it.
    if (stage.steps.length === 0) return true;
    let before = headingBound(stage, format, room);
    for (const step of stage.steps) {
      if (before + stepBound(step, scene, format, false, room) > side) {
        if (!room.sure || before + stepBound(step, scene, format, true, room) > side) return true;
      }
      before = 0;
    }
    if (!room.sure || before > side) return true;
  }
  return !room.sure;
}

/** Stage heading with its introduction and the gap under it. */
function headingBound(stage: Variant['stages'][number], format: Format, room: TextRoom): number {
  const width = textWidthOf(format);
  room.height = 0;
  room.add(`Stage\u00a0${stage.number}`, format.type.table);
  room.lines(mm(18));
  room.text(stage.title, format.type.stage, width - mm(21 + 26), mm(6.5));
  if (stage.intro !== undefined) room.prose(stage.intro, format.type.table, width - format.gutter);
  // A time of a thousand days would not fit its place.
  if (stage.time !== undefined && stage.time.si > 8e7) room.sure = false;
  return room.height + mm(6.5 + 0.8 + 1.6 + 3);
}

const names = new WeakMap<ResolvedShop, ReadonlyMap<string, string>>();

function toolNames(shop: ResolvedShop): ReadonlyMap<string, string> {
  const known = names.get(shop) ?? new Map(shop.tools.map((t) => [t.id, t.name]));
  names.set(shop, known);
  return known;
}
