/** The list of what was published: every file with its SHA-256, and the revision of every document. */

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { ENGINE } from '../../src/control/index.ts';
import type { Published } from '../../src/pipeline/index.ts';
import { MANIFEST } from './staging.ts';

/** Writes `manifest.json` into the folder; paths are sorted and use `/`, so that it is the same on every system. */
export function writeManifest(folder: string, { shop, view }: Published): number {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile() && !e.name.startsWith('.'))
    .map((e) => path.relative(folder, path.join(e.parentPath, e.name)).split(path.sep).join('/'))
    .sort();
  const manifest = {
    shop: shop.info.name,
    asOf: view.asOf,
    engine: ENGINE,
    ledger: { entries: view.ledger.entries, head: view.ledger.head },
    documents: shop.documents.map((d) => ({
      document: d.doc,
      revision: d.revision.rev,
      ...(d.standing === undefined ? {} : { standing: d.standing }),
      effective: d.revision.effective,
      variants: d.variants.map((v) => ({
        variant: v.key,
        path: `${v.path}/`,
        card: `cards/${v.cardName}.pdf`,
        fingerprint: v.fingerprint,
      })),
    })),
    files: Object.fromEntries(
      files.map((f) => [
        f,
        createHash('sha256')
          .update(readFileSync(path.join(folder, f)))
          .digest('hex'),
      ]),
    ),
  };
  writeFileSync(path.join(folder, MANIFEST), `${JSON.stringify(manifest, null, 1)}\n`);
  return files.length;
}
