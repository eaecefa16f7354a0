/** Finds what overlaps in a drawing, from the faces themselves and not from the table of widths with which it was made. */

import type { CircleMark, Drawing, Point, TextMark } from '../../src/layout/drawing/index.ts';
import { loadFaces, widthOf } from '../../src/layout/type/index.ts';

const faces = loadFaces();

export interface InkBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function texts(drawing: Drawing): TextMark[] {
  return drawing.marks.flatMap((m) => (m.kind === 'text' ? [m] : []));
}

/** Bolt symbols. */
export function symbols(drawing: Drawing): CircleMark[] {
  return drawing.marks.flatMap((m) => (m.kind === 'circle' && m.bolt !== undefined ? [m] : []));
}

/** Rings of dowels and jacking screws, in the figure and in its legend. */
export function featureRings(drawing: Drawing): CircleMark[] {
  return drawing.marks.flatMap((m) =>
    m.kind === 'circle' && m.bolt === undefined && m.stroke === 'thin' && m.fill === 'paper' ? [m] : [],
  );
}

/** The ink of capitals and figures. */
export function inkBox(mark: TextMark): InkBox {
  const width = widthOf(faces[mark.weight], mark.text, mark.size);
  const left = mark.anchor === 'start' ? mark.at.x : mark.anchor === 'end' ? mark.at.x - width : mark.at.x - width / 2;
  return { left, right: left + width, top: mark.at.y - 0.66 * mark.size, bottom: mark.at.y };
}

/** Every pair of texts that overlap, every text on a symbol not its own, every pair of symbols that overlap. */
export function clashes(drawing: Drawing): string[] {
  const found: string[] = [];
  const all = texts(drawing).map((mark) => ({ mark, box: inkBox(mark) }));
  const round = [
    ...symbols(drawing).map((s) => ({
      centre: s.centre,
      radius: s.radius,
      hole: s.bolt?.hole,
      name: `bolt ${s.bolt?.hole}`,
    })),
    ...featureRings(drawing).map((s, i) => ({
      centre: s.centre,
      radius: s.radius,
      hole: undefined,
      name: `feature ${i}`,
    })),
  ];
  all.forEach((a, i) => {
    for (const b of all.slice(i + 1)) {
      const { box } = b;
      if (a.box.left < box.right && box.left < a.box.right && a.box.top < box.bottom && box.top < a.box.bottom) {
        found.push(`${a.mark.text} and ${b.mark.text}`);
      }
    }
    for (const s of round) {
      const own = a.mark.role === 'order' && a.mark.bolt?.hole === s.hole;
      if (!own && toBox(s.centre, a.box) < s.radius) found.push(`${a.mark.text} and ${s.name}`);
    }
  });
  round.forEach((a, i) => {
    for (const b of round.slice(i + 1)) {
      if (Math.hypot(a.centre.x - b.centre.x, a.centre.y - b.centre.y) < a.radius + b.radius) {
        found.push(`${a.name} and ${b.name}`);
      }
    }
  });
  return found;
}

function toBox(p: Point, box: InkBox): number {
  const dx = Math.max(box.left - p.x, 0, p.x - box.right);
  const dy = Math.max(box.top - p.y, 0, p.y - box.bottom);
  return Math.hypot(dx, dy);
}

/** Every straight line that runs through a text; numbers inside symbols lie on their own ground. */
export function struckTexts(drawing: Drawing): string[] {
  const lines = drawing.marks.flatMap((m) => (m.kind === 'line' ? [m] : []));
  return texts(drawing)
    .filter((t) => t.role !== 'order')
    .flatMap((mark) => {
      const box = inkBox(mark);
      const struck = lines.find((line) => runsThrough(line.from, line.to, box));
      return struck === undefined ? [] : [`a ${struck.stroke} line through ${mark.text}`];
    });
}

/** Cuts the line at the four sides of the box, drawn in by a hair; something is left when it runs through. */
function runsThrough(a: Point, b: Point, box: InkBox): boolean {
  const hair = 0.1;
  let [from, to] = [0, 1];
  for (const [start, end, low, high] of [
    [a.x, b.x, box.left + hair, box.right - hair],
    [a.y, b.y, box.top + hair, box.bottom - hair],
  ] as const) {
    if (Math.abs(end - start) < 1e-9) {
      if (start < low || start > high) return false;
      continue;
    }
    const [s, t] = [(low - start) / (end - start), (high - start) / (end - start)];
    from = Math.max(from, Math.min(s, t));
    to = Math.min(to, Math.max(s, t));
  }
  return from < to;
}
