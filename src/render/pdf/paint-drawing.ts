/** Paints a drawing into a PDF: the same marks in the same order as on a page of the site. */

import { PT_PER_MM } from '../../layout/card/index.ts';
import {
  arcPoints,
  DASHES_MM,
  type Drawing,
  INK_COLOURS,
  type Ink,
  type Point,
  type Primitive,
  STROKE_WIDTH_MM,
  type Stroke,
  type TextMark,
} from '../../layout/drawing/index.ts';
import { cutByFace, type Faces, widthOf } from '../../layout/type/index.ts';
import { type Pdf, useFace } from './pdfkit-document.ts';

/** Characters without a glyph were reported when the card was laid out. */
const QUIET = { missing: () => undefined, tooWide: () => undefined };

/** x, y: top left corner in pt. */
export function paintDrawing(pdf: Pdf, faces: Faces, drawing: Drawing, x: number, y: number): void {
  const at = (p: Point): Point => ({ x: x + p.x * PT_PER_MM, y: y + p.y * PT_PER_MM });
  for (const mark of drawing.marks) paintMark(pdf, faces, mark, at);
}

function paintMark(pdf: Pdf, faces: Faces, mark: Primitive, at: (p: Point) => Point): void {
  switch (mark.kind) {
    case 'text':
      paintText(pdf, faces, mark, at(mark.at));
      return;
    case 'line': {
      const from = at(mark.from);
      const to = at(mark.to);
      pdf.moveTo(from.x, from.y).lineTo(to.x, to.y);
      finish(pdf, mark.stroke, mark.ink, undefined);
      return;
    }
    case 'circle': {
      const c = at(mark.centre);
      pdf.circle(c.x, c.y, mark.radius * PT_PER_MM);
      finish(pdf, mark.stroke, mark.ink, mark.fill);
      return;
    }
    case 'arc':
      trace(pdf, arcPoints(mark).map(at), true, false);
      finish(pdf, mark.stroke, mark.ink, undefined);
      return;
    case 'path':
      trace(pdf, mark.points.map(at), mark.curved, mark.closed);
      finish(pdf, mark.stroke, mark.ink, mark.fill);
  }
}

function trace(pdf: Pdf, points: readonly Point[], curved: boolean, closed: boolean): void {
  const [first, ...rest] = points;
  if (first === undefined) return;
  pdf.moveTo(first.x, first.y);
  if (curved) {
    for (let i = 0; i + 2 < rest.length; i += 3) {
      const [a, b, c] = [rest[i], rest[i + 1], rest[i + 2]];
      if (a !== undefined && b !== undefined && c !== undefined) pdf.bezierCurveTo(a.x, a.y, b.x, b.y, c.x, c.y);
    }
  } else for (const p of rest) pdf.lineTo(p.x, p.y);
  if (closed) pdf.closePath();
}

function finish(pdf: Pdf, stroke: Stroke, ink: Ink, fill: Ink | undefined): void {
  if (stroke !== 'none') {
    pdf.lineWidth(STROKE_WIDTH_MM[stroke] * PT_PER_MM).strokeColor(INK_COLOURS[ink]);
    const dashes = DASHES_MM[stroke];
    // Written as an operator: PDFKit's own call takes one dash and one gap only.
    pdf.addContent(`[${dashes.map((d) => (d * PT_PER_MM).toFixed(2)).join(' ')}] 0 d`);
  }
  if (fill !== undefined) pdf.fillColor(INK_COLOURS[fill]);
  if (fill !== undefined && stroke !== 'none') pdf.fillAndStroke();
  else if (fill !== undefined) pdf.fill();
  else pdf.stroke();
}

function paintText(pdf: Pdf, faces: Faces, mark: TextMark, p: Point): void {
  const size = mark.size * PT_PER_MM;
  const pieces = cutByFace(faces, { text: mark.text, weight: mark.weight, size, ink: 'ink' }, QUIET);
  const widths = pieces.map((piece) => widthOf(piece.face, piece.text, size));
  const width = widths.reduce((sum, w) => sum + w, 0);
  let x = mark.anchor === 'start' ? p.x : mark.anchor === 'end' ? p.x - width : p.x - width / 2;
  pdf.fillColor(INK_COLOURS[mark.ink]);
  pieces.forEach((piece, i) => {
    useFace(pdf, piece.face);
    pdf.fontSize(size).text(piece.text, x, p.y, { lineBreak: false, baseline: 'alphabetic' });
    x += widths[i] ?? 0;
  });
}
