/** How much room text takes in a drawing, from the advance widths of the card face; drawings are made without opening a font. */

import type { Point, TextMark } from './primitives.ts';

/** Advance widths of Source Sans 3 Bold in thousandths of an em (the widest weight used), for U+0020 to U+007E. */
const WIDTHS: readonly number[] = [
  200, 340, 537, 528, 528, 857, 667, 300, 344, 344, 457, 528, 300, 332, 300, 339, 528, 528, 528, 528, 528, 528, 528,
  528, 528, 528, 300, 300, 528, 528, 528, 463, 902, 573, 605, 582, 635, 548, 524, 638, 674, 301, 509, 614, 518, 762,
  665, 684, 596, 684, 613, 556, 556, 665, 556, 813, 567, 525, 541, 344, 339, 344, 528, 500, 555, 527, 573, 468, 573,
  518, 341, 534, 571, 276, 278, 548, 286, 857, 572, 555, 573, 573, 398, 443, 383, 568, 523, 776, 514, 521, 460, 344,
  268, 344, 528,
];
/** Any other character: as wide as a capital, so that room is never short. */
const OTHER = 690;

/** Share of the type size from the baseline up to the top of capitals and figures. */
export const CAP_HEIGHT = 0.66;
/** Share of the type size below the baseline. */
export const DESCENT = 0.2;

/** Width in mm of `text` set at `size` mm, never less than the face needs. */
export function textWidth(text: string, size: number): number {
  let sum = 0;
  for (const c of text) {
    const cp = c.codePointAt(0) ?? 0;
    sum += cp === 0xa0 ? (WIDTHS[0] ?? OTHER) : (WIDTHS[cp - 0x20] ?? OTHER);
  }
  return (sum * size) / 1000;
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The box that the ink of a text can fill. */
export function textBox(mark: TextMark): Box {
  const w = textWidth(mark.text, mark.size);
  const left = mark.anchor === 'start' ? mark.at.x : mark.anchor === 'end' ? mark.at.x - w : mark.at.x - w / 2;
  const descent = /[gjpqy,;()[\]Q⌀]/u.test(mark.text) ? DESCENT : 0.02;
  return { left, right: left + w, top: mark.at.y - CAP_HEIGHT * mark.size, bottom: mark.at.y + descent * mark.size };
}

export function overlaps(a: Box, b: Box, gap = 0): boolean {
  return a.left < b.right + gap && b.left < a.right + gap && a.top < b.bottom + gap && b.top < a.bottom + gap;
}

/** The baseline that centres capitals and figures of `size` on `centre`. */
export function centredBaseline(centre: Point, size: number): Point {
  return { x: centre.x, y: centre.y + (CAP_HEIGHT * size) / 2 };
}
