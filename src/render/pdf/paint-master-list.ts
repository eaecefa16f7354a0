/** The master list as a PDF: documents, effective pages and copies as of one day. */

import type { ControlView } from '../../control/types.ts';
import { layoutMasterList } from '../../layout/control/index.ts';
import { limitWords, loadFaces } from '../../layout/type/index.ts';
import type { ResolvedShop } from '../../resolve/types.ts';
import { paintSheets } from './paint-sheets.ts';

/** Bytes of a tagged PDF; the same view gives the same bytes. */
export function paintMasterList(view: ControlView, shop: ResolvedShop): Promise<Uint8Array> {
  const faces = loadFaces();
  limitWords(faces);
  return paintSheets(faces, layoutMasterList(view, shop, faces), {
    title: `Master list as of ${view.asOf}, ${shop.info.name}`,
    author: shop.info.name,
    subject: 'Documents, effective pages and controlled copies',
    keywords: view.documents.map((d) => d.doc).join(', '),
    language: shop.info.language,
    date: view.asOf,
    identity: { LedgerHead: view.ledger.head },
  });
}
