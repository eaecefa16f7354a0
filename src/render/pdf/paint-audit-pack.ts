/** The audit pack as one PDF: cover, and every list of the pack that fits on paper. */

import type { ControlView, Ledger } from '../../control/types.ts';
import { layoutAuditPack } from '../../layout/control/index.ts';
import { limitWords, loadFaces } from '../../layout/type/index.ts';
import type { ResolvedShop } from '../../resolve/types.ts';
import { paintSheets } from './paint-sheets.ts';

/** Bytes of a tagged PDF; the same view and ledger give the same bytes. */
export function paintAuditPack(view: ControlView, shop: ResolvedShop, ledger: Ledger): Promise<Uint8Array> {
  const faces = loadFaces();
  limitWords(faces);
  return paintSheets(faces, layoutAuditPack(view, shop, ledger, faces), {
    title: `Audit pack as of ${view.asOf}, ${shop.info.name}`,
    author: shop.info.name,
    subject: 'Document control: register, changes, approvals, distribution, reviews, outside documents, feedback',
    keywords: view.documents.map((d) => d.doc).join(', '),
    language: shop.info.language,
    date: view.asOf,
    identity: { LedgerHead: view.ledger.head },
  });
}
