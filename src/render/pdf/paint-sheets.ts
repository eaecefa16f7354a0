/** Paints sheets of document control: head and foot are read out once, the body in its order, bookmarks where it has them. */

import type { SheetsLayout } from '../../layout/control/index.ts';
import type { Faces } from '../../layout/type/index.ts';
import { type Brush, paintAsArtifact, paintBlock } from './paint-blocks.ts';
import { bookmark, bytesOf, newPdf, type PdfFacts } from './pdfkit-document.ts';

export function paintSheets(faces: Faces, layout: SheetsLayout, facts: PdfFacts): Promise<Uint8Array> {
  const pdf = newPdf(faces, facts);
  return bytesOf(pdf, () => {
    const root = pdf.struct('Document', {});
    pdf.addStructure(root);
    const brush: Brush = { pdf, faces, root };
    layout.pages.forEach((page, i) => {
      const repeated = i === 0 ? paintBlock : paintAsArtifact;
      pdf.addPage({ size: [layout.width, layout.height], margin: 0 });
      repeated(brush, page.header);
      for (const placed of page.body) {
        if (placed.bookmark !== undefined) bookmark(pdf, pdf.outline, placed.bookmark, placed.y);
        paintBlock(brush, placed);
      }
      repeated(brush, page.footer);
    });
    root.end();
  });
}
