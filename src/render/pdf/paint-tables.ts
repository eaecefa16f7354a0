/** The torque tables of the shop as posters for the wall, one sheet a table. */

import { layoutPosters } from '../../layout/poster/index.ts';
import { loadFaces } from '../../layout/type/index.ts';
import type { ResolvedShop } from '../../resolve/types.ts';
import { type Brush, paintBlock } from './paint-blocks.ts';
import { bytesOf, newPdf } from './pdfkit-document.ts';

export async function paintTables(shop: ResolvedShop): Promise<Uint8Array> {
  const faces = loadFaces();
  const layout = layoutPosters(shop, faces);
  const dates = shop.documents.map((d) => d.revision.effective).sort();
  const date = dates.at(-1) ?? '1970-01-01';
  const pdf = newPdf(faces, {
    title: `Torque tables, ${shop.info.name}`,
    author: shop.info.name,
    subject: 'Tightening torque by thread, grade and condition',
    keywords: [...shop.tables, ...shop.statedTables].map((t) => t.id).join(', '),
    language: shop.info.language,
    date,
    identity: {},
  });
  return bytesOf(pdf, () => {
    const root = pdf.struct('Document', {});
    pdf.addStructure(root);
    const brush: Brush = { pdf, faces, root };
    for (const page of layout.pages) {
      pdf.addPage({ size: [layout.width, layout.height], margin: 0 });
      for (const placed of page.blocks) paintBlock(brush, placed);
    }
    root.end();
  });
}
