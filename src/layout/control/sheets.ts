/** Sheets of document control: paper, a running head, a foot with the page's number, and between them what is paginated. */

import type { ShopInfo } from '../../resolve/types.ts';
import type { Chunk } from '../card/chunks.ts';
import { type Format, formatOf, textWidthOf } from '../card/format.ts';
import { type Block, mm, overlay, shift, stack } from '../card/items.ts';
import { type PlacedBlock, paginate } from '../card/paginate.ts';
import { line, paragraph, type Setting, span, widthOfSpans } from '../card/setting.ts';
import type { Faces, Span } from '../type/index.ts';

export interface SheetPage {
  readonly header: PlacedBlock;
  readonly body: readonly PlacedBlock[];
  readonly footer: PlacedBlock;
}

export interface SheetsLayout {
  /** Paper in pt. */
  readonly width: number;
  readonly height: number;
  readonly pages: readonly SheetPage[];
}

export interface Frame {
  /** At the left of the top edge: what the sheets are. */
  readonly title: string;
  /** At its right. */
  readonly right: string;
  /** Lines above the rule's foot line, such as where the facts are from; the page's number stands beside the last one. */
  readonly foot: readonly string[];
}

export const NO_RANGE = { file: '', start: 0, end: 0 };
const HEAD = mm(8);

/** A4, or Letter where the shop's cards are: these sheets go into a file and not into the pocket of a small binder. */
export function sheetFormat(info: Pick<ShopInfo, 'cardFormat'>, turned = false): Format {
  const upright = formatOf(info.cardFormat === 'Letter' ? 'Letter' : 'A4');
  if (!turned) return upright;
  // Turned, the holes are at the top.
  return {
    ...upright,
    width: upright.height,
    height: upright.width,
    binding: upright.outer,
    top: mm(19),
    bottom: upright.outer,
  };
}

/** What these sheets say stood in the content or the ledger before, where its problems were reported. */
export function sheetSetting(faces: Faces, format: Format): Setting {
  return { faces, format, problems: { missing: () => undefined, tooWide: () => undefined } };
}

/** Height that a page has for its body, in pt. */
function bodyRoom(setting: Setting, frame: Frame): number {
  const { format } = setting;
  return format.height - format.top - format.bottom - HEAD - footBlock(setting, frame, 1, 1).height - mm(3);
}

/** Fills as many pages as the groups need; each group begins a page. Its chunks are no taller than a page. */
export function layoutSheets(setting: Setting, frame: Frame, groups: readonly (readonly Chunk[])[]): SheetsLayout {
  const { format } = setting;
  const room = bodyRoom(setting, frame);
  const bodies = groups.flatMap((chunks) => paginate(chunks, room, () => undefined));
  const pages = bodies.map((body, i): SheetPage => {
    const footer = footBlock(setting, frame, i + 1, bodies.length);
    return {
      header: { x: format.binding, y: format.top, block: headBlock(setting, frame) },
      body: body.map((b) => ({ ...b, x: format.binding + b.x, y: format.top + HEAD + b.y })),
      footer: { x: format.binding, y: format.height - format.bottom - footer.height, block: footer },
    };
  });
  return { width: format.width, height: format.height, pages };
}

function headBlock(setting: Setting, frame: Frame): Block {
  const { format } = setting;
  const { small } = format.type;
  const width = textWidthOf(format);
  const half = width / 2 - mm(2);
  const words = (text: string, ink: 'accent' | 'ink'): Span[] => [span(text, small, 'semibold', ink)];
  const fitted = (text: string): string => shortened(text, (t) => widthOfSpans(setting, words(t, 'ink')) <= half);
  const left = line(setting, words(fitted(frame.title), 'accent'), half, { lead: mm(5) });
  const right = line(setting, words(fitted(frame.right), 'ink'), half, { align: 'right', lead: mm(5) });
  return overlay(left, shift(right, width / 2 + mm(2), 0));
}

/** The running head has one line; the whole name stands in the body. */
function shortened(text: string, fits: (text: string) => boolean): string {
  if (fits(text)) return text;
  let kept = text;
  while (kept !== '' && !fits(`${kept}…`)) kept = kept.slice(0, -1).trimEnd();
  return `${kept}…`;
}

function footBlock(setting: Setting, frame: Frame, number: number, of: number): Block {
  const { format } = setting;
  const { small, least } = format.type;
  const width = textWidthOf(format);
  const page = [span(`Page\u00a0${number}\u00a0of\u00a0${of}`, small, 'semibold')];
  // The same room on every page, however many digits its number has: all feet are of one height.
  const room = width - mm(36);
  const words = stack(frame.foot.map((text) => paragraph(setting, [span(text, least)], room, { lead: mm(3.8) })));
  const right = line(setting, page, width, { align: 'right', lead: mm(3.8) });
  const body = shift(overlay(words, shift(right, 0, Math.max(0, words.height - mm(3.8)))), 0, mm(1.4));
  return {
    height: words.height + mm(1.4),
    decoration: [{ kind: 'line', x1: 0, y1: 0, x2: width, y2: 0, width: 0.75, ink: 'ink' }, ...body.decoration],
    nodes: body.nodes,
  };
}
