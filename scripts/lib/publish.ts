/** Writes a checked shop into a folder: site, cards, binders, posters, schemas, manifest. */

import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { jsonSchemas } from '../../src/model/index.ts';
import type { Compiled } from '../../src/pipeline/index.ts';
import { paintBinder, paintCard, paintTables } from '../../src/render/pdf/index.ts';
import { buildSite } from '../../src/site/build-site.ts';
import { writeManifest } from './manifest.ts';
import type { Progress } from './progress.ts';

/** Returns the number of files written. The site is rendered in a process of its own while the PDFs are drawn here. */
export async function publish(
  { shop, cards }: NonNullable<Compiled['checked']>,
  folder: string,
  progress: Progress,
): Promise<number> {
  const write = (name: string, bytes: Uint8Array | string): void => {
    const full = path.join(folder, name);
    mkdirSync(path.dirname(full), { recursive: true });
    writeFileSync(full, bytes);
  };
  // Its failure must not go unhandled while the PDFs are drawn; it is thrown again where it is awaited.
  const site = buildSite(shop, { outDir: folder }).then(
    () => undefined,
    (cause: unknown) => ({ cause }),
  );
  progress.stage('cards', cards.length);
  let n = 0;
  for (const card of cards) {
    write(`cards/${card.name}.pdf`, await paintCard(card, shop));
    n += 1;
    progress.done(n);
  }
  progress.stage('binders', shop.benches.length);
  for (const [i, bench] of shop.benches.entries()) {
    write(`binders/${bench.id}.pdf`, await paintBinder(shop, bench, cards));
    progress.done(i + 1);
  }
  if (shop.tables.length > 0) {
    progress.stage('torque table posters', 1);
    write('posters/torque-tables.pdf', await paintTables(shop));
  }
  for (const [name, text] of jsonSchemas()) write(`schema/${name}`, text);
  progress.stage('site', 0);
  const failed = await site;
  if (failed !== undefined) throw failed.cause;
  progress.stage('manifest', 0);
  const files = writeManifest(folder, shop);
  progress.end();
  return files;
}
