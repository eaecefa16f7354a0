/** One card as a tagged PDF. The same card gives the same bytes. */

import { type CardLayout, datedAs } from '../../layout/card/index.ts';
import { type Faces, limitWords, loadFaces } from '../../layout/type/index.ts';
import type { ResolvedShop } from '../../resolve/types.ts';
import { type Brush, paintAsArtifact, paintBlock } from './paint-blocks.ts';
import { type Bookmark, bookmark, bytesOf, newPdf } from './pdfkit-document.ts';

export async function paintCard(card: CardLayout, shop: ResolvedShop): Promise<Uint8Array> {
  const faces: Faces = loadFaces();
  limitWords(faces);
  const pdf = newPdf(faces, {
    title: `${card.standing === 'draft' ? 'DRAFT ' : ''}${card.doc} Rev ${card.rev}: ${card.title}${card.variantLabel === '' ? '' : `, ${card.variantLabel}`}`,
    author: shop.info.name,
    subject: `${card.machineName}, ${standingOf(card)}`,
    keywords: [card.doc, card.machineName, card.variantLabel].filter((t) => t !== '').join(', '),
    language: shop.info.language,
    date: card.effective,
    identity: { Document: card.doc, Revision: card.rev, Variant: card.variantKey, Fingerprint: card.fingerprint },
  });
  return bytesOf(pdf, () => {
    const root = pdf.struct('Document', {});
    pdf.addStructure(root);
    const brush: Brush = { pdf, faces, root };
    paintCardSides(brush, card, () => pdf.outline);
    root.end();
  });
}

function standingOf(card: CardLayout): string {
  const dated = datedAs(card.standing, card.effective).replaceAll('\u00a0', ' ');
  return `${dated}${card.temporary === undefined ? '' : `, with temporary change ${card.temporary.join(', ')}`}`;
}

/**
 * Adds the card's sides as pages of a document, and its stages as bookmarks. `parentOf` is asked for the entry above them when the
 * card's first page is there for it to lead to.
 */
export function paintCardSides(brush: Brush, card: CardLayout, parentOf: () => Bookmark): void {
  const { pdf, root } = brush;
  const part = pdf.struct('Sect', {});
  root.add(part);
  const inner: Brush = { ...brush, root: part };
  let parent: Bookmark | undefined;
  for (const side of card.sides) {
    pdf.addPage({ size: [card.width, card.height], margin: 0 });
    parent ??= parentOf();
    if (side.ground !== undefined) paintBlock(inner, side.ground);
    if (side.number === 1) paintBlock(inner, side.header);
    else paintAsArtifact(inner, side.header);
    for (const placed of side.body) {
      if (placed.bookmark !== undefined) bookmark(pdf, parent, placed.bookmark, placed.y);
      paintBlock(inner, placed);
    }
    if (side.bars !== undefined) paintBlock(inner, side.bars);
    for (const foot of [side.footer, side.copy]) {
      if (side.number === 1) paintBlock(inner, foot);
      else paintAsArtifact(inner, foot);
    }
  }
  part.end();
}
