/** Paints placed blocks: decoration as artifacts first, then the texts and figures as elements in reading order. */

import type { Content, Decoration, Node, PlacedBlock } from '../../layout/card/index.ts';
import type { Faces } from '../../layout/type/index.ts';
import { QUIET_MODULES, qrSymbol } from '../qr/index.ts';
import { CARD_INKS } from './ink.ts';
import { paintDrawing } from './paint-drawing.ts';
import { type Pdf, type StructElement, useFace } from './pdfkit-document.ts';

export interface Brush {
  readonly pdf: Pdf;
  readonly faces: Faces;
  /** Element that takes what is painted. */
  readonly root: StructElement;
}

export function paintBlock(brush: Brush, placed: PlacedBlock): void {
  const { pdf } = brush;
  const { block, x, y } = placed;
  if (block.decoration.length > 0) {
    pdf.markContent('Artifact', { type: 'Layout' });
    for (const item of block.decoration) paintDecoration(brush, item, x, y);
    pdf.endMarkedContent();
  }
  for (const n of block.nodes) paintNode(brush, brush.root, n, x, y);
}

/** Painted on every side but read out on the first only, as far as it repeats. */
export function paintAsArtifact(brush: Brush, placed: PlacedBlock): void {
  const { pdf } = brush;
  const { block, x, y } = placed;
  pdf.markContent('Artifact', { type: 'Pagination' });
  for (const item of block.decoration) paintDecoration(brush, item, x, y);
  for (const n of block.nodes) if (n.link === undefined) paintPlain(brush, n, x, y);
  pdf.endMarkedContent();
  for (const n of block.nodes) if (n.link !== undefined) paintNode(brush, brush.root, n, x, y);
}

function paintPlain(brush: Brush, n: Node, x: number, y: number): void {
  for (const item of n.items) paintContent(brush, item, x, y);
  for (const kid of n.kids) paintPlain(brush, kid, x, y);
}

function paintNode(brush: Brush, parent: StructElement, n: Node, x: number, y: number): void {
  const { pdf } = brush;
  const [figure] = n.items;
  const box =
    figure?.kind === 'drawing' ? drawingBox(figure, x, y) : figure?.kind === 'qr' ? qrBox(figure, x, y) : undefined;
  const element = pdf.struct(n.tag, {
    ...(n.alt === undefined ? {} : { alt: n.alt }),
    ...(n.scope === undefined ? {} : { scope: n.scope }),
    ...(box === undefined ? {} : { bbox: box }),
  });
  parent.add(element);
  if (n.items.length > 0) {
    element.add(() => {
      for (const item of n.items) paintContent(brush, item, x, y);
    });
  }
  for (const kid of n.kids) paintNode(brush, element, kid, x, y);
  if (n.link !== undefined) {
    const { link } = n;
    // A String object is written as a text; a plain string would become a PDF name.
    pdf.link(x + link.x, y + link.y, link.width, link.height, link.url, {
      structParent: element,
      Contents: new String(n.alt ?? link.url),
    });
  }
  element.end();
}

function drawingBox(
  item: Content & { kind: 'drawing' },
  x: number,
  y: number,
): readonly [number, number, number, number] {
  const scale = 72 / 25.4;
  return [x + item.x, y + item.y, x + item.x + item.drawing.width * scale, y + item.y + item.drawing.height * scale];
}

function qrBox(item: Content & { kind: 'qr' }, x: number, y: number): readonly [number, number, number, number] {
  return [x + item.x, y + item.y, x + item.x + item.side, y + item.y + item.side];
}

function paintContent(brush: Brush, item: Content, x: number, y: number): void {
  const { pdf, faces } = brush;
  switch (item.kind) {
    case 'text':
      useFace(pdf, faces[item.face]);
      pdf.fontSize(item.size).fillColor(CARD_INKS[item.ink]);
      pdf.text(item.text, x + item.x, y + item.y, { lineBreak: false, baseline: 'alphabetic' });
      return;
    case 'drawing':
      paintDrawing(pdf, faces, item.drawing, x + item.x, y + item.y);
      return;
    case 'qr': {
      const symbol = qrSymbol(item.address);
      const size = item.side / (symbol.size + 2 * QUIET_MODULES);
      const left = x + item.x + QUIET_MODULES * size;
      const top = y + item.y + QUIET_MODULES * size;
      pdf.fillColor('#000000');
      for (const run of symbol.runs) pdf.rect(left + run.x * size, top + run.y * size, run.length * size, size);
      pdf.fill();
    }
  }
}

function paintDecoration(brush: Brush, item: Decoration, x: number, y: number): void {
  const { pdf } = brush;
  if (item.kind === 'drawing') {
    paintDrawing(pdf, brush.faces, item.drawing, x + item.x, y + item.y);
    return;
  }
  pdf.addContent('[] 0 d');
  if (item.kind === 'line') {
    pdf.lineWidth(item.width).strokeColor(CARD_INKS[item.ink]);
    pdf
      .moveTo(x + item.x1, y + item.y1)
      .lineTo(x + item.x2, y + item.y2)
      .stroke();
    return;
  }
  pdf.rect(x + item.x, y + item.y, item.width, item.height);
  if (item.stroke !== undefined) pdf.lineWidth(item.lineWidth ?? 0.5).strokeColor(CARD_INKS[item.stroke]);
  if (item.fill !== undefined) pdf.fillColor(CARD_INKS[item.fill]);
  if (item.fill !== undefined && item.stroke !== undefined) pdf.fillAndStroke();
  else if (item.fill !== undefined) pdf.fill();
  else pdf.stroke();
}
