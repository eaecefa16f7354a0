/** Finds a free place for a short text beside a symbol. */

import { boxToCircle, boxToSegment, extent } from './collide.ts';
import { type Disc, onCircle, type Point, type Segment, type TextMark } from './primitives.ts';
import { type Box, CAP_HEIGHT, centredBaseline, overlaps, textBox, textWidth } from './text-size.ts';

/** What a text must keep clear of. */
export interface InTheWay {
  readonly discs: readonly Disc[];
  readonly boxes: readonly Box[];
  readonly segments: readonly Segment[];
}

export type BesideText = Omit<TextMark, 'kind' | 'at' | 'anchor'>;

/** Air between a symbol and the text beside it, and between two texts. */
const GAP = 0.7;
const TEXT_GAP = 0.4;
/** Least air to a symbol that is not its own. */
const SYMBOL_GAP = 0.3;
/** Tried in this order: the wanted direction first, then turned further and further from it. */
const TURNS: readonly number[] = [0, 30, -30, 60, -60, 90, -90, 120, -120, 150, -150, 180];

/** The text beside `own` in the direction wanted or as near to it as is free; undefined when no place is. */
export function textBeside(own: Disc, wanted: Point, text: BesideText, way: InTheWay): TextMark | undefined {
  const outward = Math.hypot(wanted.x, wanted.y) < 1e-6 ? 0 : (Math.atan2(wanted.x, -wanted.y) * 180) / Math.PI;
  for (const turn of TURNS) {
    const mark = placed(own, onCircle({ x: 0, y: 0 }, 1, outward + turn), text);
    const box = textBox(mark);
    const free =
      way.discs.every((d) => d === own || boxToCircle(box, d.centre, d.radius) > SYMBOL_GAP) &&
      way.boxes.every((other) => !overlaps(box, other, TEXT_GAP)) &&
      way.segments.every((s) => boxToSegment(box, s.from, s.to) > SYMBOL_GAP);
    if (free) return mark;
  }
  return undefined;
}

function placed(own: Disc, direction: Point, text: BesideText): TextMark {
  const box = { left: 0, right: textWidth(text.text, text.size), top: 0, bottom: CAP_HEIGHT * text.size };
  const away = own.radius + GAP + extent(box, direction);
  const centre = { x: own.centre.x + direction.x * away, y: own.centre.y + direction.y * away };
  return { kind: 'text', at: centredBaseline(centre, text.size), anchor: 'middle', ...text };
}
