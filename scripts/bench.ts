/** `npm run bench`: speed and memory on synthetic shops, as ratios within one run. Prints the table of DEVELOPERS.md. */

import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parseDocument } from 'yaml';
import { collector } from '../src/diagnostics/index.ts';
import { layoutCards } from '../src/layout/card/index.ts';
import { loadFaces } from '../src/layout/type/index.ts';
import { compileShop } from '../src/pipeline/index.ts';
import { paintCard } from '../src/render/pdf/index.ts';
import { CATALOGUE } from '../src/rules/index.ts';
import { readFiles } from '../src/source/index.ts';
import { measureControl } from './bench/control.ts';
import { measureCommand } from './bench/memory.ts';
import { KINDS } from './bench/mutations/kinds.ts';
import { MISTAKES_A_KIND, runnerOf, seedOf } from './bench/mutations/run.ts';
import { mistakesInWords, mistakesTable } from './bench/mutations/table.ts';
import { demoFiles } from './bench/sub-shop.ts';
import { writeSyntheticLedger } from './bench/synthetic-ledger.ts';
import { writeSyntheticShop } from './bench/synthetic-shop.ts';
import { CHROMIUM_LAUNCH } from './lib/chromium.ts';
import { runCommand } from './lib/faults.ts';
import { readOptions } from './lib/options.ts';

const rows: [string, string, string][] = [];
const row = (what: string, value: string, beside = ''): void => {
  rows.push([what, value, beside]);
  process.stderr.write(`${what}: ${value} ${beside}\n`);
};
const ms = (value: number): string => `${value < 10 ? value.toFixed(1) : value.toFixed(0)} ms`;

await runCommand(async () => {
  const options = readOptions('bench', 'Measures speed and memory on synthetic shops.', {
    procedures: { type: 'string', help: 'size of the large shop; default 1000' },
    control: { type: 'boolean', help: 'only the check, the ledger and its history' },
    mutations: { type: 'boolean', help: 'only the mistakes made on purpose in the demo, and who catches them' },
  });
  if (options['mutations'] === true) {
    mistakes();
    return 0;
  }
  const large = Number(options['procedures'] ?? 1000);
  const small = Math.max(10, Math.round(large / 10));
  const folder = mkdtempSync(path.join(tmpdir(), 'fettlebook-bench-'));
  try {
    const shops = [small, large].map((procedures) => {
      const shop = path.join(folder, `shop-${procedures}`);
      writeSyntheticShop(shop, { procedures, steps: 30, seed: 2026 });
      return { procedures, shop };
    });
    for (const { procedures, shop } of shops) checking(procedures, shop);
    for (const { procedures, shop } of shops) {
      measureControl(shop, procedures, row);
      writeSyntheticLedger(shop, compileShop({ folder: shop, shown: 'shop', cards: 'suspect' }).resolved, 1);
    }
    if (options['control'] === true) return printed();
    const built: number[] = [];
    for (const { procedures, shop } of shops) {
      const out = path.join(folder, `dist-${procedures}`);
      const m = await measureCommand('build.ts', ['--shop', shop, '--out', out]);
      built.push(m.ms / procedures);
      row(
        `full build, ${procedures} procedures`,
        `${ms(m.ms / procedures)} each`,
        `${(m.ms / 1000).toFixed(1)} s, peak ${m.peakMb.toFixed(0)} MB over all processes`,
      );
    }
    row(
      `growth of the build from ${small} to ${large}`,
      `${((built[1] ?? 0) / (built[0] ?? 1)).toFixed(2)} times the time each`,
      '1 is linear',
    );
    const first = shops[0];
    if (first !== undefined) await printing(first.shop, path.join(folder, `dist-${small}`));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  printed();
  mistakes();
  return 0;
});

/** The rows as the table of DEVELOPERS.md. */
function printed(): number {
  const width = [0, 1].map((i) => Math.max(...rows.map((r) => (r[i] ?? '').length)));
  process.stdout.write(
    rows.map(([a, b, c]) => `| ${a.padEnd(width[0] ?? 0)} | ${b.padEnd(width[1] ?? 0)} | ${c} |\n`).join(''),
  );
  return 0;
}

/** Mistakes made on purpose in the demo shop: the table of DEVELOPERS.md. FETTLEBOOK_SEED chooses other places. */
function mistakes(): void {
  const started = performance.now();
  const { run } = runnerOf(demoFiles(), seedOf(process.env['FETTLEBOOK_SEED']));
  const tallies = KINDS.map((kind) => run(kind, MISTAKES_A_KIND));
  const seconds = ((performance.now() - started) / 1000).toFixed(0);
  process.stdout.write(`\n${mistakesTable(tallies)}\n${mistakesInWords(tallies)} (${seconds} s)\n`);
}

/** Check-only time beside the time that `yaml` takes to parse the same files, medians of three. */
function checking(procedures: number, shop: string): void {
  const yamlMs = median(() => {
    for (const f of readFiles(shop, 'shop', collector(CATALOGUE).report)) parseDocument(f.text);
  });
  const checkMs = median(() => {
    if (compileShop({ folder: shop, shown: 'shop', cards: 'suspect' }).checked === undefined)
      throw new Error('the synthetic shop has faults');
  });
  row(
    `check, ${procedures} procedures of 30 steps`,
    ms(checkMs),
    `${(checkMs / yamlMs).toFixed(1)} times the ${ms(yamlMs)} of parsing the YAML alone; cards that may not fit are laid out`,
  );
}

function median(run: () => void): number {
  const times = [0, 1, 2].map(() => {
    const started = performance.now();
    run();
    return performance.now() - started;
  });
  return times.sort((a, b) => a - b)[1] ?? 0;
}

/** Drawing card PDFs beside Chromium printing the pages of the same procedures, in the same run. */
async function printing(shop: string, dist: string): Promise<void> {
  const { checked } = compileShop({ folder: shop, shown: 'shop' });
  if (checked === undefined) throw new Error('the synthetic shop has faults');
  const cards = layoutCards(checked.shop, loadFaces(), collector(CATALOGUE).report).slice(0, 40);
  const sides = cards.reduce((n, c) => n + c.sides.length, 0);
  const [cold] = cards;
  if (cold !== undefined) await paintCard(cold, checked.shop);
  let started = performance.now();
  let bytes = 0;
  for (const card of cards) bytes += (await paintCard(card, checked.shop)).length;
  const ours = (performance.now() - started) / sides;
  row(
    `PDF by pdfkit, ${cards.length} cards of ${sides} sides`,
    `${ms(ours)} a side`,
    `${(bytes / sides / 1024).toFixed(0)} kB a side`,
  );

  const { chromium } = await import('playwright-core');
  const server = createServer((request, response) => {
    try {
      const name = path.join(dist, decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname));
      response.end(readFileSync(name.endsWith('/') ? path.join(name, 'index.html') : name));
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  const browser = await chromium.launch(CHROMIUM_LAUNCH);
  try {
    const variants = checked.shop.documents.flatMap((d) => d.variants).slice(0, cards.length);
    const context = await browser.newContext();
    const print = async (url: string): Promise<number> => {
      const page = await context.newPage();
      await page.goto(url, { waitUntil: 'load' });
      const pdf = await page.pdf({ format: 'A4' });
      await page.close();
      return (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;
    };
    const url = (v: { path: string }): string => `http://127.0.0.1:${port}/${v.path}/`;
    const [warm] = variants;
    if (warm !== undefined) await print(url(warm));
    let pages = 0;
    started = performance.now();
    for (const v of variants) pages += await print(url(v));
    const theirs = (performance.now() - started) / Math.max(1, pages);
    row(
      `the same procedures printed by Chromium, ${pages} pages`,
      `${ms(theirs)} a page`,
      `pdfkit is ${(theirs / ours).toFixed(1)} times faster a page`,
    );
  } finally {
    await browser.close();
    server.close();
  }
}
