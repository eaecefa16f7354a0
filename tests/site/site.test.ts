/** Builds the demo site once, serves it from a sub-folder, and drives it. */

import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { buildSite } from '../../src/site/build-site.ts';
import { launch, open, PHONE } from './browser.ts';
import { browserSuite, kinds } from './browser-suite.ts';
import { type Built, builtSite } from './built.ts';
import { demoReport, demoShop } from './demo.ts';
import { hostileShop, MARKUP } from './hostile.ts';
import { htmlSuite } from './html-suite.ts';
import { listsSuite } from './lists-suite.ts';
import { type Served, serve } from './serve.ts';
import { useSuite } from './use-suite.ts';
import { worksheetSuite } from './worksheet-suite.ts';

const shop = demoShop();
const report = demoReport();
const scratch = mkdtempSync(path.join(tmpdir(), 'fettlebook-site-'));
let browser: Browser;
let site: Built;
let served: Served;
const progress: string[] = [];

beforeAll(async () => {
  const told = (done: string) => progress.push(done);
  const [started] = await Promise.all([
    launch(),
    buildSite(shop, { report, outDir: path.join(scratch, 'site'), onProgress: told }),
    buildSite(shop, { report, outDir: path.join(scratch, 'far', 'away', 'again') }),
  ]);
  browser = started;
  site = builtSite(path.join(scratch, 'site'));
  served = await serve(site.folder);
});

afterAll(async () => {
  await served?.stop();
  await browser?.close();
  rmSync(scratch, { recursive: true, force: true });
});

htmlSuite(() => site, shop);
browserSuite(
  () => browser,
  () => served.home,
  shop,
);
useSuite(
  () => browser,
  () => served.home,
  shop,
);
worksheetSuite(
  () => browser,
  () => served.home,
  shop,
);
listsSuite(
  () => site,
  () => browser,
  () => served.home,
  shop,
);

describe('building', () => {
  test('two builds at once, in two places, give the same bytes, and tell what was done', () => {
    const again = builtSite(path.join(scratch, 'far', 'away', 'again'));
    expect(again.files).toEqual(site.files);
    const bytes = (built: Built, file: string) => readFileSync(path.join(built.folder, file));
    expect(site.files.filter((f) => !bytes(again, f).equals(bytes(site, f)))).toEqual([]);
    expect(progress.length).toBeGreaterThan(0);
  });

  test('a shop without control shows nothing of it', () => {
    expect(site.files.filter((f) => f.startsWith('control/') || f.includes('/audit/'))).toEqual([]);
    const pages = site.files.filter((f) => f.endsWith('.html'));
    expect(pages.filter((f) => /As of|scan-mark|Document control|data-card-path/u.test(site.read(f)))).toEqual([]);
  });

  test('hostile text appears as text on every page, fits the phone, and runs nothing', async () => {
    const hostile = hostileShop(shop);
    const outDir = path.join(scratch, 'hostile');
    await buildSite(hostile, { report, outDir });
    const built = builtSite(outDir);
    const at = await serve(outDir, '/shop/');
    const { page, faults, close } = await open(browser, at.home, { viewport: PHONE });
    const pages = built.files.filter((f) => f.endsWith('.html')).map((f) => built.read(f));
    await page.goto(at.home);
    const made = await page.evaluate((texts) => {
      const parser = new DOMParser();
      return texts.map(
        (html) =>
          parser.parseFromString(html, 'text/html').querySelectorAll('img, script:not([src]), [onerror]').length,
      );
    }, pages);
    expect(made.filter((n) => n > 0)).toEqual([]);
    for (const address of kinds(hostile).filter((k) => k !== '404.html')) {
      await page.goto(`${at.home}${address}`);
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over, `${address} is wider than the phone`).toBeLessThanOrEqual(0);
      expect(await page.evaluate(() => (window as { hit?: number }).hit), address).toBeUndefined();
    }
    await page.goto(`${at.home}machines/`);
    expect(await page.locator('tbody').textContent()).toContain(MARKUP);
    await page.goto(`${at.home}#find=${hostile.documents[0]?.doc}`);
    await page.locator('[data-results] a').first().waitFor();
    expect(await page.locator('[data-results]').textContent()).toContain(MARKUP);
    expect(await page.locator('[data-results] img').count()).toBe(0);
    expect(faults).toEqual([]);
    await close();
    await at.stop();
  });
});
