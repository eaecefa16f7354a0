/** The site of a shop under control, built once: its pages, the fingerprint, the binder audit in a real browser. */

import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { answerPage } from '../../src/render/html/control/index.ts';
import { buildSite } from '../../src/site/build-site.ts';
import { DESKTOP, launch, open, PHONE } from './browser.ts';
import { axeFaults } from './browser-suite.ts';
import { type Built, builtSite } from './built.ts';
import { AS_OF, controlled } from './control-fixture.ts';
import { controlElsewhere, controlSuite } from './control-suite.ts';
import { demoReport, demoShop } from './demo.ts';
import { htmlSuite } from './html-suite.ts';
import { type Served, serve } from './serve.ts';

const made = controlled(demoShop());
const { shop, control } = made;
const scratch = mkdtempSync(path.join(tmpdir(), 'fettlebook-control-'));
let browser: Browser;
let site: Built;
let served: Served;

const AUDIT = 'benches/heat-exchange/audit/';
const PAGES = [
  '',
  'C/OF-204/D/LARGE/',
  'C/OF-204/DRAFT/LARGE/',
  'procedures/of-204/',
  'revisions/',
  'control/',
  'control/receipts/',
  'control/reviews/',
  'control/outside/',
  'control/temporary/',
  'control/feedback/',
  'control/fingerprint/',
  'benches/heat-exchange/',
  AUDIT,
];

beforeAll(async () => {
  const report = demoReport();
  const outDir = path.join(scratch, 'site');
  const [started] = await Promise.all([launch(), buildSite(shop, { report, control, outDir })]);
  browser = started;
  site = builtSite(outDir);
  // The answers are written beside the pages, as a build does.
  const whole = path.join(scratch, 'whole');
  cpSync(outDir, whole, { recursive: true });
  const facts = { name: shop.info.name, language: 'en', safety: shop.info.safety, asOf: AS_OF, freshDays: 30 };
  for (const answer of control.answers) {
    mkdirSync(path.join(whole, answer.path), { recursive: true });
    writeFileSync(path.join(whole, answer.path, 'index.html'), answerPage(answer, facts));
  }
  served = await serve(whole);
});

afterAll(async () => {
  await served?.stop();
  await browser?.close();
  rmSync(scratch, { recursive: true, force: true });
});

htmlSuite(() => site, shop, controlElsewhere(made));
controlSuite(() => site, made);

const fingerprintOf = (doc: string, label: string) =>
  shop.documents.find((d) => d.doc === doc && d.standing === undefined)?.variants.find((v) => v.label === label)
    ?.fingerprint ?? '';

describe('on the screen', () => {
  test.each([
    ['phone, light', PHONE, 'light'],
    ['desk, dark', DESKTOP, 'dark'],
  ] as const)(
    '%s: no fault, nothing wider than the screen, nothing that axe names',
    async (_name, viewport, colorScheme) => {
      const { page, faults, close } = await open(browser, served.home, { viewport, colorScheme });
      await page.clock.setFixedTime(`${AS_OF}T09:00:00Z`);
      // The long pages of a procedure once each: the marked draft in the dark, the issue by day.
      const left = colorScheme === 'dark' ? 'C/OF-204/D/LARGE/' : 'C/OF-204/DRAFT/LARGE/';
      for (const at of PAGES.filter((p) => p !== left)) {
        await page.goto(`${served.home}${at}`);
        const over = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        expect(over, at).toBeLessThanOrEqual(0);
        expect((await axeFaults(page)).slice(0, 5), at).toEqual([]);
      }
      expect(faults).toEqual([]);
      await close();
    },
    180_000,
  );

  test('without JavaScript everything but the audit, the fingerprint and the search is there, and says where to look', async () => {
    const { page, close } = await open(browser, served.home, { viewport: PHONE, javaScriptEnabled: false });
    await page.goto(`${served.home}control/fingerprint/`);
    expect(await page.locator('form[data-fingerprints]').isVisible()).toBe(false);
    expect(await page.getByRole('link', { name: 'master list (PDF)' }).isVisible()).toBe(true);
    await page.goto(`${served.home}${AUDIT}`);
    expect(await page.locator('[data-part="desk"]').isVisible()).toBe(false);
    expect(await page.locator('.audit-list tbody tr').count()).toBe(5);
    await page.goto(`${served.home}control/`);
    expect(await page.getByRole('heading', { name: 'Suspended: no copy may be used' }).isVisible()).toBe(true);
    await page.goto(`${served.home}C/OF-204/D/LARGE/`);
    expect(await page.locator('.temporary').nth(1).isVisible()).toBe(true);
    await close();
  });

  test('a change bar stands in the margin beside what changed, as tall as it', async () => {
    const { page, close } = await open(browser, served.home, { viewport: PHONE });
    await page.goto(`${served.home}C/OF-204/D/LARGE/`);
    const bars = await page.evaluate(() =>
      [...document.querySelectorAll('.changed')].map((e) => {
        const style = getComputedStyle(e, '::before');
        return {
          left: Math.round(e.getBoundingClientRect().left + Number.parseFloat(style.left)),
          width: style.width,
          share: Number.parseFloat(style.height) / e.getBoundingClientRect().height,
        };
      }),
    );
    expect(bars.length).toBeGreaterThan(2);
    expect(new Set(bars.map((b) => b.left))).toEqual(new Set([bars[0]?.left]));
    expect(bars[0]?.left).toBeGreaterThanOrEqual(0);
    expect(bars.every((b) => b.width === '5px' && b.share > 0.7)).toBe(true);
    await close();
  });
});

describe('a fingerprint', () => {
  const type = async (page: Page, text: string) => {
    await page.fill('#fingerprint', text);
    await page.getByRole('button', { name: 'Check' }).click();
    const place = page.locator('[data-fingerprint-answer]');
    await place.locator('> *').first().waitFor();
    return (await place.textContent()) ?? '';
  };

  test('is answered: current with its page, superseded, suspended, unknown, or no fingerprint at all', async () => {
    const { page, faults, close } = await open(browser, served.home, { viewport: PHONE });
    await page.goto(`${served.home}control/fingerprint/`);
    const current = fingerprintOf('OF-204', 'Large');
    const spaced = `${current.slice(0, 4).toLowerCase()} ${current.slice(4).toLowerCase()}`;
    expect(await type(page, spaced)).toContain('CURRENTOF-204 Rev\u00a0D (Large)');
    const old = control.answers[0]?.fingerprint ?? '';
    await page.fill('#fingerprint', '');
    expect(await type(page, old)).toContain('SUPERSEDEDOF-204 Rev\u00a0C (Large)Take it out.');
    const stopped = control.answers[1]?.fingerprint ?? '';
    await page.fill('#fingerprint', '');
    expect(await type(page, stopped)).toContain('STOP. Do not use any copy');
    await page.fill('#fingerprint', '');
    expect(await type(page, '00000000')).toContain('No card of this shop bears it: take it to quality.');
    await page.fill('#fingerprint', '');
    expect(await type(page, 'hello')).toContain('eight characters');
    await page.fill('#fingerprint', '');
    await type(page, current);
    await page.getByRole('link', { name: 'Open its page' }).click();
    expect(new URL(page.url()).pathname).toMatch(/\/C\/OF-204\/D\/LARGE\/$/u);
    expect(faults).toEqual([]);
    await close();
  });

  test('cannot be looked up without the list, and the page says so', async () => {
    const { page, close } = await open(browser, served.home, {});
    await page.route('**/fingerprints.json', (route) => route.abort());
    await page.goto(`${served.home}control/fingerprint/`);
    expect(await type(page, '0A1B2C3D')).toContain('could not be loaded');
    await close();
  });
});

describe('a binder audit', () => {
  test('starts, is marked by the page of each card, by hand, and carries its result away', async () => {
    const { page, faults, close } = await open(browser, served.home, { viewport: PHONE, acceptDownloads: true });
    await page.goto(`${served.home}${AUDIT}`);
    await page.getByRole('button', { name: 'Start the audit' }).click();
    const summary = page.locator('[data-part="summary"]');
    expect(await summary.textContent()).toBe('0 of 5 current, 0 wrong, 5 not seen yet; 0 strange cards.');
    // The camera opens each card's page, often in a tab of its own.
    const other = await page.context().newPage();
    for (const card of ['C/OF-204/D/SMALL/', 'C/OF-204/C/LARGE/', 'C/OF-163/C/', 'C/OF-155/C/']) {
      await other.goto(`${served.home}${card}`);
      await other.getByText(/Audit of Heat exchange/u).waitFor();
    }
    await page.bringToFront();
    await page.waitForFunction(() => document.querySelectorAll('.other-cards li').length === 3);
    expect(await summary.textContent()).toBe('1 of 5 current, 1 wrong, 3 not seen yet; 2 strange cards.');
    const state = (card: string) => page.locator(`[data-state-of="${card}"]`).textContent();
    expect(await state('C/OF-204/D/SMALL')).toBe('✓ current');
    expect(await state('C/OF-204/D/LARGE')).toBe('✗ superseded: Rev\u00a0C hangs here');
    expect(await state('C/OF-131/C')).toBe('□ not seen yet');
    const others = await page.locator('.other-cards').textContent();
    for (const text of [
      'OF-204 Rev\u00a0C (Large)Superseded: take it out',
      'OF-163 Rev\u00a0CSuspended: take it out, do not use it',
      'OF-155 Rev\u00a0CNot of this binder: take it out',
    ])
      expect(others).toContain(text);

    // By hand: a fingerprint as a scanner at the desk types it, an address, and a card that nobody knows.
    for (const [entry, said] of [
      [fingerprintOf('OF-131', '').toLowerCase(), 'OF-131 : current.'],
      ['HTTPS://BINDER.OSFW.EXAMPLE/C/OF-240/C/', 'OF-240 : current.'],
      ['DEADBEEF', 'No card of this shop bears “DEADBEEF”.'],
    ] as const) {
      await page.fill('#entry', entry);
      await page.keyboard.press('Enter');
      await page.waitForFunction(
        (words) =>
          document.querySelector('[data-part="said"]')?.textContent?.replace(/\s+/gu, ' ') ===
          words.replace(/\s+/gu, ' '),
        said,
      );
    }
    expect(await summary.textContent()).toBe('3 of 5 current, 1 wrong, 1 not seen yet; 3 strange cards.');
    await page.getByRole('button', { name: 'Undo: DEADBEEF' }).click();
    expect(await summary.textContent()).toContain('2 strange cards');
    expect((await axeFaults(page)).slice(0, 5)).toEqual([]);

    // No result without a name.
    await page.getByRole('button', { name: 'Result as CSV' }).click();
    expect(await page.locator('[data-part="said"]').textContent()).toContain('Give the name');
    await page.getByLabel('Audited by').fill('Petr Adeyinka');
    const carry = async (button: string) => {
      const [file] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: button }).click(),
      ]);
      return { name: file.suggestedFilename(), text: readFileSync(await file.path(), 'utf8') };
    };
    const csv = await carry('Result as CSV');
    expect(csv.name).toMatch(/^audit-heat-exchange-\d{4}-\d\d-\d\d\.csv$/u);
    expect(csv.text).toMatch(
      /\r\nsuperseded,OF-204,Large,D,[0-9A-F]{8},C,[0-9A-F]{8},.*,Heat exchange,1,Petr Adeyinka,/u,
    );
    expect(csv.text).toContain('missing,OF-184,,C');
    const json: unknown = JSON.parse((await carry('Result as JSON')).text);
    expect(json).toMatchObject({
      bench: 'heat-exchange',
      copy: 1,
      by: 'Petr Adeyinka',
      asOf: AS_OF,
      counts: { current: 3, wrong: 1, missing: 1, strange: 2 },
    });

    // A reload keeps it; finishing asks once and clears.
    await page.reload();
    expect(await summary.textContent()).toContain('3 of 5 current');
    expect(await page.getByLabel('Audited by').inputValue()).toBe('Petr Adeyinka');
    await page.getByRole('button', { name: 'Finish', exact: true }).click();
    await page.getByRole('button', { name: 'Go on' }).click();
    expect(await summary.textContent()).toContain('3 of 5 current');
    await page.getByRole('button', { name: 'Finish', exact: true }).click();
    await page.getByRole('button', { name: 'Finish and clear' }).click();
    expect(await page.evaluate(() => localStorage.getItem('fettlebook.audit'))).toBeNull();
    expect(await page.getByRole('button', { name: 'Start the audit' }).isVisible()).toBe(true);
    expect(faults).toEqual([]);
    await close();
  });

  test('of another bench is not dropped without a word, and a forged address in the storage leads nowhere', async () => {
    const { page, faults, close } = await open(browser, served.home, { viewport: PHONE });
    await page.goto(`${served.home}${AUDIT}`);
    await page.getByRole('button', { name: 'Start the audit' }).click();
    await page.goto(`${served.home}benches/hydraulics/audit/`);
    expect(await page.getByRole('button', { name: 'Start the audit' }).isVisible()).toBe(false);
    await page.getByRole('link', { name: 'The audit of Heat exchange' }).click();
    expect(page.url()).toBe(`${served.home}${AUDIT}`);
    await page.evaluate(() => {
      const audit = JSON.parse(localStorage.getItem('fettlebook.audit') ?? '{}');
      localStorage.setItem('fettlebook.audit', JSON.stringify({ ...audit, page: 'javascript:window.hit=1' }));
    });
    await page.goto(`${served.home}benches/hydraulics/audit/`);
    expect(await page.locator('[data-part="elsewhere-link"]').getAttribute('href')).toBeNull();
    await page.getByRole('button', { name: 'start here and drop its marks' }).click();
    expect(await page.locator('[data-part="summary"]').textContent()).toContain('0 of');
    await page.evaluate(() => localStorage.setItem('fettlebook.audit', '{"bench":1'));
    await page.reload();
    expect(await page.getByRole('button', { name: 'Start the audit' }).isVisible()).toBe(true);
    expect(faults).toEqual([]);
    await close();
  });

  test('works on paper: boxes, lines for what else is found, a place to sign, nothing of the screen', async () => {
    const { page, close } = await open(browser, served.home, {});
    await page.goto(`${served.home}${AUDIT}`);
    await page.getByRole('button', { name: 'Start the audit' }).click();
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('[data-part="desk"]').isVisible()).toBe(false);
    expect(await page.locator('.audit-list .paper-box').first().isVisible()).toBe(true);
    expect(await page.locator('.paper-sign').isVisible()).toBe(true);
    expect(await page.locator('.print-mark').isVisible()).toBe(true);
    await close();
  });

  test('has targets that a glove hits', async () => {
    const { page, close } = await open(browser, served.home, { viewport: PHONE });
    await page.goto(`${served.home}${AUDIT}`);
    await page.getByRole('button', { name: 'Start the audit' }).click();
    await page.fill('#entry', 'DEADBEEF');
    await page.keyboard.press('Enter');
    await page.locator('.other-cards button').waitFor();
    const small = await page.locator('.audit button, .audit input, .audit-list tbody a').evaluateAll((all) =>
      all
        .map((e) => ({ text: e.textContent, box: e.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0 && (box.height < 47.5 || box.width < 40))
        .map(({ text }) => text),
    );
    expect(small).toEqual([]);
    await close();
  });
});

test('a search finds the issue in force and says of the draft that it is one', async () => {
  const { page, close } = await open(browser, served.home, {});
  await page.goto(`${served.home}#find=OF-204`);
  await page.locator('[data-results] .hit').first().waitFor();
  const titles = await page.locator('[data-results] .hit').allTextContents();
  const drafted = titles.filter((t) => t.includes('OF-204') && t.includes('(draft)'));
  const issued = titles.filter((t) => t.includes('OF-204') && !t.includes('(draft)'));
  expect([drafted.length, issued.length]).toEqual([1, 1]);
  await close();
});
