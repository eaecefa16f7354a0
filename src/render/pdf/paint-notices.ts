/** Change notices, one PDF a notice and bench: each is a sheet that the bench signs and returns. */

import type { Notice } from '../../control/types.ts';
import { layoutNotice, type NoticeShop } from '../../layout/control/index.ts';
import { limitWords, loadFaces } from '../../layout/type/index.ts';
import { paintSheets } from './paint-sheets.ts';

/**
 * Bytes of a tagged PDF; the same notice gives the same bytes. `asOf`: day for which it is drawn up, `2026-03-02`. Ids of people
 * that the shop does not know are printed as they are.
 */
export function paintNotice(notice: Notice, shop: NoticeShop, asOf: string): Promise<Uint8Array> {
  const faces = loadFaces();
  limitWords(faces);
  return paintSheets(faces, layoutNotice(notice, shop, asOf, faces), {
    title: `Change notice ${notice.number}: ${notice.doc}, ${notice.benchName}`,
    author: shop.info.name,
    subject: `${notice.title}, due ${notice.due}`,
    keywords: [notice.number, notice.doc, notice.bench, notice.cause].join(', '),
    language: shop.info.language,
    date: asOf,
    identity: { Notice: notice.number, Bench: notice.bench, Copy: String(notice.copy) },
  });
}
