/** Blank sides of a binder, and the foot of the sheets that are no cards. */

import type { Range } from '../../diagnostics/index.ts';
import { leftOf, textWidthOf } from '../card/format.ts';
import type { PlacedBlock } from '../card/index.ts';
import { mm } from '../card/items.ts';
import { paragraph, type Setting, span } from '../card/setting.ts';
import type { BinderFacts, BinderPage } from './types.ts';

/** Sheets of a binder are written in no file of the author's. */
export const NO_RANGE: Range = { file: '', start: 0, end: 0 };

const BLANK = 'This side is left blank.';
/** Height of the foot with the air above it. */
export const SHEET_FOOT = mm(9);

/** side: its number in the binder, which says where the binding margin is. */
export function blankSide(setting: Setting, side: number): BinderPage {
  const { format } = setting;
  const words = paragraph(setting, [span(BLANK, format.type.small, 'regular', 'soft')], textWidthOf(format), {
    align: 'center',
  });
  return { kind: 'sheet', title: '', blocks: [{ x: leftOf(format, side), y: format.height / 2, block: words }] };
}

/** `Binder Heat exchange, copy 3 of 7, as of 2026-03-02 · binder page 5 of 40` */
export function sheetFoot(setting: Setting, { bench, copy, date }: BinderFacts, page: number, of: number): PlacedBlock {
  const { format } = setting;
  const { small } = format.type;
  const words = paragraph(
    setting,
    [
      span(`Binder ${bench.name}, `, small),
      span(`${copy ?? ''}, as\u00a0of\u00a0${date}`, small, 'semibold'),
      span(` · binder\u00a0page\u00a0${page}\u00a0of\u00a0${of}`, small),
    ],
    textWidthOf(format),
    { lead: mm(4.2), align: page % 2 === 1 ? 'right' : 'left' },
  );
  return { x: leftOf(format, page), y: format.height - format.bottom - words.height, block: words };
}
