/** One PDF a bench: cover, list of effective pages, dividers and the cards in binder order. */

import { type BinderControl, layoutBinder } from '../../layout/binder/index.ts';
import type { CardLayout } from '../../layout/card/index.ts';
import { limitWords, loadFaces } from '../../layout/type/index.ts';
import type { Bench, ResolvedShop } from '../../resolve/types.ts';
import { type Brush, paintBlock } from './paint-blocks.ts';
import { paintCardSides } from './paint-card.ts';
import { type Bookmark, bookmark, bytesOf, newPdf } from './pdfkit-document.ts';

/** control: copy number, day and documents not in force; without it the cards are bound as they are. */
export async function paintBinder(
  shop: ResolvedShop,
  bench: Bench,
  cards: readonly CardLayout[],
  control?: BinderControl,
): Promise<Uint8Array> {
  const faces = loadFaces();
  limitWords(faces);
  const layout = layoutBinder(shop, bench, cards, faces, control);
  const prints = layout.entries.flatMap((e) =>
    e.kind === 'card' ? [`${e.card.name} ${e.card.rev} ${e.card.fingerprint}`] : [],
  );
  const copy = control === undefined ? undefined : `${bench.copy} of ${control.copies}`;
  const pdf = newPdf(faces, {
    title: `Binder ${bench.name}${copy === undefined ? '' : `, copy ${copy}`}, as of ${layout.date}`,
    author: shop.info.name,
    subject: bench.place,
    keywords: bench.binder.join(', '),
    language: shop.info.language,
    date: layout.date,
    identity: { Binder: bench.id, Cards: prints.join('; '), ...(copy === undefined ? {} : { Copy: copy }) },
  });
  return bytesOf(pdf, () => {
    const root = pdf.struct('Document', {});
    pdf.addStructure(root);
    const brush: Brush = { pdf, faces, root };
    let parent: Bookmark = pdf.outline;
    for (const entry of layout.entries) {
      if (entry.kind === 'card') {
        const { card } = entry;
        const over = parent;
        paintCardSides(brush, card, () =>
          card.variantLabel === '' ? over : bookmark(pdf, over, card.variantLabel, 0),
        );
        continue;
      }
      pdf.addPage({ size: [layout.width, layout.height], margin: 0 });
      if (entry.title !== '') parent = bookmark(pdf, pdf.outline, entry.title, 0);
      for (const placed of entry.blocks) paintBlock(brush, placed);
    }
    root.end();
  });
}
