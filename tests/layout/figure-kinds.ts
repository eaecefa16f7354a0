/** Every kind of pattern at any count, drawn without a joint, and what is wrong with a drawing. */

import {
  type Feature,
  type Pattern,
  patternHoles,
  type SequenceOptions,
  tighteningSequence,
} from '../../src/geometry/index.ts';
import { boundsOf, type Drawing, drawPattern, specFrom } from '../../src/layout/drawing/index.ts';
import { clashes, struckTexts, texts } from './figure-boxes.ts';

/** Card columns in use; every count is drawn at one of them. */
export const WIDTHS = [52, 70, 94];

export const KINDS: Readonly<Record<string, (count: number) => Pattern>> = {
  circle: (count) => ({ kind: 'circle', diameterMm: 600, count, firstDeg: 180 / count }),
  'circle counted the other way': (count) => ({
    kind: 'circle',
    diameterMm: 600,
    count,
    firstDeg: 0,
    numbering: 'anticlockwise',
  }),
  'short arc': (count) => ({ kind: 'arc', diameterMm: 600, count, firstDeg: -40, spanDeg: 100 }),
  'long arc': (count) => ({
    kind: 'arc',
    diameterMm: 600,
    count,
    firstDeg: 15,
    spanDeg: 290,
    numbering: 'anticlockwise',
  }),
  'arc at the side': (count) => ({ kind: 'arc', diameterMm: 600, count, firstDeg: 45, spanDeg: 90 }),
  'concentric circles': (count) => ({
    kind: 'circles',
    circles: [
      { diameterMm: 600, count, firstDeg: 0 },
      { diameterMm: 420, count: Math.max(2, Math.floor(count / 2)), firstDeg: 0 },
    ],
  }),
  slot: (count) => ({ kind: 'slot', lengthMm: 700, widthMm: 420, count, straddle: count % 2 === 0 }),
  rectangle: (count) => ({
    kind: 'rectangle',
    lengthMm: 700,
    widthMm: 500,
    along: Math.ceil(count / 4) + 1,
    across: Math.max(1, Math.floor(count / 4)),
  }),
  points: (count) => ({
    kind: 'points',
    points: Array.from({ length: count }, (_, i) => ({
      xMm: 97 * (i % 8) + 13 * (i % 3),
      yMm: 110 * Math.floor(i / 8),
    })),
  }),
};

export function draw(
  pattern: Pattern,
  widthMm: number,
  features: readonly Feature[] = [],
  options: SequenceOptions = {},
): Drawing {
  const sequence = tighteningSequence(pattern, options);
  return drawPattern(
    specFrom({
      pattern,
      holes: patternHoles(pattern),
      sequence,
      action: 'tighten',
      name: 'cover joint',
      view: 'from the pump side',
      top: 'arrow on the casing',
      features,
    }),
    { widthMm },
  );
}

/** Overlaps, struck texts, marks out of bounds, type under 8 pt. */
export function problems(drawing: Drawing): string[] {
  const found = [...clashes(drawing), ...struckTexts(drawing)];
  const b = boundsOf(drawing.marks);
  if (b.left < -0.01 || b.top < -0.01 || b.right > drawing.width + 0.01 || b.bottom > drawing.height + 0.01) {
    found.push(`out of bounds: ${JSON.stringify(b)} in ${drawing.width} by ${drawing.height}`);
  }
  // 8 pt
  for (const t of texts(drawing)) if (t.size < 2.82) found.push(`${t.text} is set at ${t.size} mm`);
  return found;
}
