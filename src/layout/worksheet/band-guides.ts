/** Lines across the bars of a panel, with their words placed so that none lies on another or on a line. */

import type { Primitive } from '../drawing/primitives.ts';
import { textWidth } from '../drawing/text-size.ts';
import { type Scale, xOf } from './axis.ts';
import { LINE, SIZE, words } from './band-words.ts';

const POINTER = 2.2;
/** Air between words and a line beside them. */
const CLEAR = 0.25;

/** A line across all bars of a panel, with its words above. */
export interface Guide {
  readonly at: number;
  readonly words: string;
  readonly look: 'pointer' | 'whole' | 'dashed';
}

/** Words of the guides in as many lines as keep them apart, each with its pointer or stroke below. Returns the bottom. */
export function guideWords(
  marks: Primitive[],
  guides: readonly Guide[],
  scale: Scale,
  top: number,
  width: number,
): number {
  const placed = placeWords(guides, scale, width);
  const levels = levelsOf(placed);
  const bottom = top + levels * LINE + POINTER;
  for (const { guide, x, left, level } of placed) {
    // The first level stands lowest, next to the bars.
    const base = top + (levels - level) * LINE - 1;
    const pointer = guide.look === 'pointer';
    marks.push({
      ...words(left, base, guide.words, 'start', pointer ? 'bold' : 'regular'),
      ink: pointer ? 'accent' : 'ink',
    });
    if (pointer) {
      const points = [
        { x, y: bottom },
        { x: x - 1.2, y: bottom - POINTER },
        { x: x + 1.2, y: bottom - POINTER },
      ];
      marks.push({ kind: 'path', points, curved: false, closed: true, stroke: 'none', ink: 'accent', fill: 'accent' });
    } else drawGuide(marks, guide, x, { from: base + 0.8, to: bottom });
  }
  return bottom;
}

function levelsOf(placed: readonly PlacedWords[]): number {
  return Math.max(0, ...placed.map((p) => p.level)) + 1;
}

interface PlacedWords {
  readonly guide: Guide;
  readonly x: number;
  readonly left: number;
  readonly level: number;
}

/**
 * Words over their line, or ending or beginning at it, on the lowest level where they meet neither other words nor the
 * lines of words above them.
 */
function placeWords(guides: readonly Guide[], scale: Scale, width: number): PlacedWords[] {
  const placed: PlacedWords[] = [];
  for (const [i, guide] of guides.entries()) {
    const wide = textWidth(guide.words, SIZE);
    const x = xOf(scale, guide.at);
    const inside = (left: number): number => Math.min(width - wide, Math.max(0, left));
    const free = (left: number, level: number): boolean =>
      placed.every((p) => {
        const right = p.left + textWidth(p.guide.words, SIZE);
        if (p.level === level) return left > right + 1.5 || left + wide < p.left - 1.5;
        const [lineAt, from, to] = p.level > level ? [p.x, left, left + wide] : [x, p.left, right];
        return lineAt < from - CLEAR || lineAt > to + CLEAR;
      });
    const later = guides.slice(i + 1).map((g) => xOf(scale, g.at));
    // First where the words cover no line that is still to come: it may have to come down from words above.
    const uncovered = (left: number): boolean => later.every((at) => at < left - CLEAR || at > left + wide + CLEAR);
    const choices = [x - wide / 2, x - wide - 0.3, x + 0.3].map(inside);
    const spot = firstFree(choices.filter(uncovered), guides.length, free) ??
      firstFree(choices, guides.length, free) ?? { left: inside(x - wide / 2), level: guides.length };
    placed.push({ guide, x, ...spot });
  }
  return placed;
}

/** The lowest of `levels` levels on which one of the choices is free, the first such choice. */
function firstFree(
  choices: readonly number[],
  levels: number,
  free: (left: number, level: number) => boolean,
): { readonly left: number; readonly level: number } | undefined {
  for (let level = 0; level < levels; level++) {
    const left = choices.find((c) => free(c, level));
    if (left !== undefined) return { left, level };
  }
  return undefined;
}

/** Lines that the words of the guides take. */
export function guideLines(guides: readonly Guide[], scale: Scale, width: number): number {
  return levelsOf(placeWords(guides, scale, width));
}

export function drawGuide(
  marks: Primitive[],
  guide: Guide,
  x: number,
  run: { readonly from: number; readonly to: number },
): void {
  const [from, to] = [
    { x, y: run.from },
    { x, y: run.to },
  ];
  const pointer = guide.look === 'pointer';
  marks.push({
    kind: 'line',
    from,
    to,
    stroke: pointer ? 'visible' : guide.look === 'dashed' ? 'hidden' : 'thin',
    ink: pointer ? 'accent' : 'ink',
  });
}
