/** The worksheets of a machine's joints, one PDF a machine. */

import { limitWords, loadFaces } from '../../layout/type/index.ts';
import { layoutWorksheets } from '../../layout/worksheet/index.ts';
import type { Machine, ResolvedShop } from '../../resolve/types.ts';
import { type Brush, paintAsArtifact, paintBlock } from './paint-blocks.ts';
import { bookmark, bytesOf, newPdf } from './pdfkit-document.ts';

/** Bytes of a tagged PDF; the same machine gives the same bytes. A machine without joints gives no sheet: do not ask. */
export async function paintWorksheets(shop: ResolvedShop, machine: Machine): Promise<Uint8Array> {
  if (machine.joints.length === 0) throw new RangeError(`${machine.id} has no joints`);
  const faces = loadFaces();
  limitWords(faces);
  const layout = layoutWorksheets(shop, machine, faces);
  const dates = shop.documents.map((d) => d.revision.effective).sort();
  const pdf = newPdf(faces, {
    title: `Worksheets: ${machine.name}, ${shop.info.name}`,
    author: shop.info.name,
    subject: 'Tightening torque of each joint with its inputs and its working',
    keywords: machine.joints.map((j) => j.plan.name).join(', '),
    language: shop.info.language,
    date: dates.at(-1) ?? '1970-01-01',
    identity: { Machine: machine.id },
  });
  return bytesOf(pdf, () => {
    const root = pdf.struct('Document', {});
    pdf.addStructure(root);
    const brush: Brush = { pdf, faces, root };
    layout.pages.forEach((page, i) => {
      pdf.addPage({ size: [layout.width, layout.height], margin: 0 });
      if (page.bookmark !== '') bookmark(pdf, pdf.outline, page.bookmark, 0);
      for (const placed of page.blocks) paintBlock(brush, placed);
      // The foot is read out once.
      if (i === 0) paintBlock(brush, page.footer);
      else paintAsArtifact(brush, page.footer);
    });
    root.end();
  });
}
