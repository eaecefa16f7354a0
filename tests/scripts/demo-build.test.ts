/** The demo as published: cards beside pages, every printed address leading to a page that stands in the folder. */

import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { rasterise, scan } from '../cards/read-pdf.ts';
import { keptFolder, run } from './run.ts';

interface Manifest {
  readonly documents: readonly {
    readonly document: string;
    readonly variants: readonly { readonly path: string; readonly card: string; readonly fingerprint: string }[];
  }[];
  readonly files: Readonly<Record<string, string>>;
}

const out = path.join(keptFolder(), 'dist');
let manifest: Manifest = { documents: [], files: {} };

beforeAll(async () => {
  const { code, stderr } = await run('build.ts', ['--out', out, '--as-of', '2026-11-25']);
  expect(code, stderr).toBe(0);
  manifest = JSON.parse(readFileSync(path.join(out, 'manifest.json'), 'utf8')) as Manifest;
});

test('every card of the manifest stands in the folder, and every printed symbol opens a page that does', async () => {
  const variants = manifest.documents.flatMap((d) => d.variants);
  expect(variants.length).toBeGreaterThanOrEqual(14);
  for (const v of variants) {
    const bytes = new Uint8Array(readFileSync(path.join(out, v.card)));
    const [picture] = await rasterise(bytes, [1], 150);
    const [address = ''] = picture === undefined ? [] : await scan(picture);
    // A host ignores case and a path does not: the page must lie under the very letters that are printed.
    const { pathname } = new URL(address);
    expect(pathname).toBe(`/${v.path}`);
    const page = path.join(out, pathname, 'index.html');
    expect(existsSync(page), page).toBe(true);
    expect(readFileSync(page, 'utf8')).toMatch(new RegExp(`<title>[^<]*${v.path.split('/')[1]}`));
  }
});

test('every bench has its binder, and the shop its posters and schemas', () => {
  const files = Object.keys(manifest.files);
  expect(files.filter((f) => f.startsWith('binders/')).length).toBeGreaterThanOrEqual(6);
  expect(files).toContain('posters/torque-tables.pdf');
  expect(files.filter((f) => f.startsWith('worksheets/')).length).toBeGreaterThan(10);
  expect(files.filter((f) => f.startsWith('schema/'))).toHaveLength(12);
});

test('every link of every page leads to a file of the folder, letter by letter', () => {
  const files = new Set([...Object.keys(manifest.files), 'manifest.json']);
  const lost: string[] = [];
  let links = 0;
  for (const file of files) {
    // The page for lost addresses is shown at any depth; its links are whole, and have their own test.
    if (!file.endsWith('.html') || file === '404.html') continue;
    const html = readFileSync(path.join(out, file), 'utf8');
    for (const [, href = ''] of html.matchAll(/\s(?:href|src)="([^"]*)"/g)) {
      const url = new URL(href.replaceAll('&amp;', '&'), `https://shop.test/${file}`);
      if (url.host !== 'shop.test') continue;
      links += 1;
      const target = decodeURIComponent(url.pathname.slice(1));
      if (!files.has(target === '' || target.endsWith('/') ? `${target}index.html` : target))
        lost.push(`${file}: ${href}`);
    }
  }
  expect(lost).toEqual([]);
  expect(links).toBeGreaterThan(5000);
});
