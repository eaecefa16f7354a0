/** Writes a checked shop into a folder: site, cards, binders, worksheets, posters, schemas, manifest. */

import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { jsonSchemas } from '../../src/model/index.ts';
import type { BuildReport, Compiled } from '../../src/pipeline/index.ts';
import { paintBinder, paintCard, paintTables, paintWorksheets } from '../../src/render/pdf/index.ts';
import { buildSite } from '../../src/site/build-site.ts';
import { writeManifest } from './manifest.ts';
import type { Progress } from './progress.ts';

type Checked = NonNullable<Compiled['checked']>;

/** Returns the number of files written. The site is rendered in a process of its own while the PDFs are drawn here. */
export async function publish(
  checked: Checked,
  report: BuildReport,
  folder: string,
  progress: Progress,
): Promise<number> {
  const stop = new AbortController();
  // Its failure must not go unhandled while the PDFs are drawn; it is thrown again where it is awaited.
  const site = buildSite(checked.shop, { report, outDir: folder, signal: stop.signal }).then(
    () => undefined,
    (cause: unknown) => ({ cause }),
  );
  try {
    await writePdfs(checked, folder, progress);
    for (const [name, text] of jsonSchemas()) write(folder, `schema/${name}`, text);
    progress.stage('site', 0);
    const failed = await site;
    if (failed !== undefined) throw failed.cause;
  } catch (cause) {
    // The site must have stopped writing before the caller clears the folder away.
    stop.abort();
    await site;
    throw cause;
  }
  progress.stage('manifest', 0);
  const files = writeManifest(folder, checked.shop);
  progress.end();
  return files;
}

async function writePdfs({ shop, cards }: Checked, folder: string, progress: Progress): Promise<void> {
  progress.stage('cards', cards.length);
  for (const [i, card] of cards.entries()) {
    write(folder, `cards/${card.name}.pdf`, await paintCard(card, shop));
    progress.done(i + 1);
  }
  progress.stage('binders', shop.benches.length);
  for (const [i, bench] of shop.benches.entries()) {
    write(folder, `binders/${bench.id}.pdf`, await paintBinder(shop, bench, cards));
    progress.done(i + 1);
  }
  const withJoints = shop.machines.filter((m) => m.joints.length > 0);
  progress.stage('worksheets', withJoints.length);
  for (const [i, machine] of withJoints.entries()) {
    write(folder, `worksheets/${machine.id}.pdf`, await paintWorksheets(shop, machine));
    progress.done(i + 1);
  }
  if (shop.tables.length + shop.statedTables.length > 0) {
    progress.stage('torque table posters', 1);
    write(folder, 'posters/torque-tables.pdf', await paintTables(shop));
  }
}

function write(folder: string, name: string, bytes: Uint8Array | string): void {
  const full = path.join(folder, name);
  mkdirSync(path.dirname(full), { recursive: true });
  writeFileSync(full, bytes);
}
