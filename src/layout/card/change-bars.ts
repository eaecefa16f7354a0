/** Change bars: what of a side differs from the issue before, marked in its outer margin. */

import { type Format, leftOf, textWidthOf } from './format.ts';
import { type Bar, mm } from './items.ts';
import type { PlacedBlock } from './paginate.ts';

/** Wide enough to survive a grey copy, and wider than any rule of a card. */
export const BAR_WIDTH = mm(1);
/** Away from the text where the margin allows it. */
const AWAY = mm(1.8);
/** Office printers leave so much of the paper's edge white. */
const UNPRINTED = mm(6.5);
/** Bars that are no further apart are one bar: neighbouring parts of one step. */
const JOINED = mm(2.6);

/** The bars of one side as a block of their own; undefined where nothing is marked. side: its number, which says where the outer margin is. */
export function barsOfSide(format: Format, side: number, body: readonly PlacedBlock[]): PlacedBlock | undefined {
  const bars = joined(body.flatMap(({ y, block }) => (block.bars ?? []).map((bar) => ({ ...bar, y: y + bar.y }))));
  const [first] = bars;
  const last = bars.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const gap = Math.min(AWAY, format.outer - UNPRINTED - BAR_WIDTH);
  const left = leftOf(format, side);
  const outerIsRight = side % 2 === 1;
  return {
    x: outerIsRight ? left + textWidthOf(format) + gap : left - gap - BAR_WIDTH,
    y: first.y,
    block: {
      height: last.y + last.height - first.y,
      decoration: bars.map((bar) => ({
        kind: 'rect',
        x: 0,
        y: bar.y - first.y,
        width: BAR_WIDTH,
        height: bar.height,
        fill: 'ink',
      })),
      nodes: [],
    },
  };
}

/** From top to bottom, overlapping and neighbouring ones as one. */
function joined(bars: readonly Bar[]): Bar[] {
  const found: { y: number; height: number }[] = [];
  for (const bar of [...bars].sort((a, b) => a.y - b.y || a.height - b.height)) {
    const before = found.at(-1);
    if (before === undefined || bar.y > before.y + before.height + JOINED) found.push({ ...bar });
    else before.height = Math.max(before.height, bar.y + bar.height - before.y);
  }
  return found;
}
