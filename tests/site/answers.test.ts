/** The plain pages in the browser: read without a script on a phone, marked in an audit, and known when they are old. */

import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { answerPage, comparisonPage, documentAnswerPage } from '../../src/render/html/control/index.ts';
import { makeSiteFonts } from '../../src/site/fonts.ts';
import { ANSWERS, COMPARISON, FACTS, SITE, STATE, SUSPENDED_ANSWERS, SUSPENSION } from '../render/control-samples.ts';
import { DESKTOP, launch, open, PHONE, type Watched } from './browser.ts';
import { type Served, serve } from './serve.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const PUBLIC = path.resolve(import.meta.dirname, '..', '..', 'public');
const KEY = 'fettlebook.audit';

/** A long title and a long reason, to push against the edges. */
const LONG = { ...ANSWERS.SUSPENDED, title: 'Überholen des Plattenwärmeübertragerabschlussdeckelgehäuses'.repeat(2) };

/** Path from the root to the page. */
const PAGES: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    Object.entries({ ...ANSWERS, LONG }).map(([name, a]) => {
      const at = { ...a, path: `C/OF-204/B/${name}` };
      return [`C/OF-204/B/${name}/`, answerPage(at, SITE)];
    }),
  ),
  'procedures/of-204/': documentAnswerPage(
    { ...STATE, standing: 'suspended', suspended: SUSPENSION },
    SUSPENDED_ANSWERS,
    SITE,
  ),
  'compare/of-204/b-c/': comparisonPage(COMPARISON, FACTS, SITE),
};

/** A page with steps, as the site makes it: the attributes stand on an element within. */
const CURRENT = `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>OF-131</title><link rel="icon" href="../../../mark.svg"><script type="module" src="../../../scan-mark.js"></script></head><body><main><h1>OF-131</h1><article data-card-path="C/OF-131/A" data-standing="current" data-doc="OF-131" data-rev="A" data-label="" data-fingerprint="0A0B0C0D" data-as-of="2026-11-25" data-fresh-days="30" data-turns="2026-12-10">Steps</article></main></body></html>`;

const superseded = 'C/OF-204/B/SUPERSEDED/';
const AUDIT = {
  bench: 'heat-exchange',
  benchName: 'Heat exchange',
  started: '2026-11-26T07:00:00.000Z',
  page: '/deep/down/benches/heat-exchange/audit/',
  marks: {},
};

let folder: string;
let served: Served;
let browser: Browser;

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'answers-'));
  cpSync(PUBLIC, folder, { recursive: true });
  for (const [at, html] of Object.entries({ ...PAGES, 'C/OF-131/A/': CURRENT })) {
    mkdirSync(path.join(folder, at), { recursive: true });
    writeFileSync(path.join(folder, at, 'index.html'), html);
  }
  mkdirSync(path.join(folder, 'fonts'));
  for (const [face, woff2] of Object.entries(await makeSiteFonts()))
    writeFileSync(path.join(folder, 'fonts', `${face}.woff2`), Buffer.from(woff2, 'base64'));
  served = await serve(folder);
  browser = await launch();
});

afterAll(async () => {
  await browser.close();
  await served.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** The strips that the script has put at the foot of the page. */
const strips = (page: Page) =>
  page.locator('.scan-strip').evaluateAll((all) => all.map((s) => (s.textContent ?? '').replaceAll('\u00a0', ' ')));

/** Opens a page on a given day, with what the device has kept. */
async function visit(at: string, day: string, kept?: string) {
  const watched = await open(browser, served.home, { viewport: PHONE });
  const { page } = watched;
  await page.clock.setFixedTime(new Date(`${day}T12:00:00`));
  if (kept !== undefined)
    await page.addInitScript(
      ({ key, value }) => {
        if (localStorage.getItem(key) === null) localStorage.setItem(key, value);
      },
      { key: KEY, value: kept },
    );
  await page.goto(`${served.home}${at}`);
  return watched;
}

describe('without a script', () => {
  test('the first screen of a phone says the word, what to do, and where to go', async () => {
    const { page, faults, close } = await open(browser, served.home, { viewport: PHONE, javaScriptEnabled: false });
    await page.goto(`${served.home}${superseded}`);
    const bottom = async (selector: string) => {
      const box = await page.locator(selector).first().boundingBox();
      return box === null ? Number.POSITIVE_INFINITY : box.y + box.height;
    };
    expect(await page.locator('.word').textContent()).toBe('SUPERSEDED');
    expect(await page.locator('.do').textContent()).toBe('Take this card out. Use Rev\u00a0D.');
    for (const selector of ['.sign', '.word', 'h1', '.do', '.action'])
      expect(await bottom(selector), selector).toBeLessThan(PHONE.height * 0.75);
    expect(faults).toEqual([]);
    await close();
  });

  test.each([
    ['phone', PHONE],
    ['desk', DESKTOP],
    ['narrow phone', { width: 320, height: 640 }],
  ] as const)('no page is wider than the screen, and all targets are large: %s', async (_name, viewport) => {
    const { page, faults, close } = await open(browser, served.home, { viewport, javaScriptEnabled: false });
    for (const at of Object.keys(PAGES)) {
      await page.goto(`${served.home}${at}`);
      const [over, small, broken] = await page.evaluate(() => [
        document.documentElement.scrollWidth - document.documentElement.clientWidth,
        [...document.querySelectorAll('a')]
          .filter((a) => a.getBoundingClientRect().height < 48)
          .map((a) => a.textContent ?? ''),
        [...document.querySelectorAll('.word')].some((w) => w.scrollWidth > w.clientWidth),
      ]);
      expect(over, `${at} is wider than the screen`).toBeLessThanOrEqual(0);
      expect(small, at).toEqual([]);
      expect(broken, `${at}: the word does not fit`).toBe(false);
    }
    expect(faults).toEqual([]);
    await close();
  });

  test('on paper every sheet says that it is no controlled copy', async () => {
    const { page, close } = await open(browser, served.home, { viewport: DESKTOP });
    await page.emulateMedia({ media: 'print' });
    await page.goto(`${served.home}${superseded}`);
    expect(await page.locator('.print-mark').isVisible()).toBe(true);
    expect(await page.locator('.print-mark').textContent()).toBe('UNCONTROLLED COPY as of 2026-11-25');
    expect(await page.locator('.action').isVisible()).toBe(false);
    await close();
  });
});

test.each([
  ['phone, light', PHONE, 'light'],
  ['desk, dark', DESKTOP, 'dark'],
] as const)(
  'axe names nothing and the contrast is 7 to 1, with both strips shown: %s',
  async (_name, viewport, colorScheme) => {
    const { page, faults, close } = await open(browser, served.home, { viewport, colorScheme });
    await page.clock.setFixedTime(new Date('2027-02-01T12:00:00'));
    await page.addInitScript(({ key, value }) => localStorage.setItem(key, value), {
      key: KEY,
      value: JSON.stringify(AUDIT),
    });
    for (const at of Object.keys(PAGES)) {
      await page.goto(`${served.home}${at}`);
      await page.evaluate(() => document.fonts.ready.then(() => undefined));
      expect(await strips(page), at).toHaveLength(at.startsWith('C/') ? 2 : 1);
      await page.evaluate(AXE);
      const named = (await page.evaluate(
        `axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice", "wcag2aaa"], rules: { "color-contrast-enhanced": { enabled: true } } })
        .then((r) => r.violations.flatMap((v) => v.nodes.map((n) => v.id + " " + n.html.slice(0, 160) + " " + n.failureSummary)))`,
      )) as string[];
      expect(named.slice(0, 5), at).toEqual([]);
    }
    expect(faults).toEqual([]);
    await close();
  },
);

describe('in a running audit', () => {
  test('each card that is scanned is kept and said, and the way back is shown', async () => {
    const { page, faults, close } = await visit(superseded, '2026-11-26', JSON.stringify(AUDIT));
    expect(await strips(page)).toEqual([
      'Audit of Heat exchange: OF-204 Rev B, Large, left marked as superseded. Scan the next card.Back to the audit',
    ]);
    const link = page.locator('.scan-strip a');
    expect(await link.evaluate((a) => (a as HTMLAnchorElement).pathname)).toBe(AUDIT.page);
    const [box, screen] = [await page.locator('.scan-strip').boundingBox(), page.viewportSize()];
    expect(Math.round((box?.y ?? 0) + (box?.height ?? 0))).toBe(screen?.height);
    expect((await link.boundingBox())?.height).toBeGreaterThanOrEqual(48);

    await page.goto(`${served.home}C/OF-131/A/`);
    expect(await strips(page)).toEqual([
      'Audit of Heat exchange: OF-131 Rev A marked as current. Scan the next card.Back to the audit',
    ]);
    await page.goto(`${served.home}C/OF-204/B/DRAFT/`);
    const kept = JSON.parse((await page.evaluate((key) => localStorage.getItem(key), KEY)) ?? '{}');
    expect(kept).toEqual({
      ...AUDIT,
      marks: {
        'C/OF-204/B/SUPERSEDED': {
          standing: 'superseded',
          doc: 'OF-204',
          rev: 'B',
          label: 'Large, left',
          fingerprint: '7C1E04B1',
          at: new Date('2026-11-26T12:00:00').toISOString(),
        },
        'C/OF-131/A': expect.objectContaining({ standing: 'current', doc: 'OF-131', rev: 'A', label: '' }),
        'C/OF-204/B/DRAFT': expect.objectContaining({ standing: 'draft', rev: '' }),
      },
    });
    expect(faults).toEqual([]);
    await close();
  });

  test.each([
    ['no audit', undefined],
    ['not JSON', '{'],
    ['another form', '{"marks":[],"benchName":"x","page":"/"}'],
    ['a number', '7'],
    ['null', 'null'],
  ])('nothing is shown or kept with %s', async (_name, kept) => {
    const { page, faults, close } = await visit(superseded, '2026-11-26', kept);
    expect(await strips(page)).toEqual([]);
    expect(await page.evaluate((key) => localStorage.getItem(key), KEY)).toBe(kept ?? null);
    expect(faults).toEqual([]);
    await close();
  });

  test('a page that is no card is not marked', async () => {
    const { page, close } = await visit('compare/of-204/b-c/', '2026-11-26', JSON.stringify(AUDIT));
    expect(await strips(page)).toEqual([]);
    await close();
  });

  test('a way back to another host, or one that runs a script, is not offered', async () => {
    for (const to of ['https://elsewhere.example/audit/', 'javascript:alert(1)', '//elsewhere.example/']) {
      const { page, close } = await visit(superseded, '2026-11-26', JSON.stringify({ ...AUDIT, page: to }));
      expect(await strips(page)).toHaveLength(1);
      expect(await page.locator('.scan-strip a').count()).toBe(0);
      await close();
    }
  });

  test('a device that keeps nothing says nothing; one without room says so', async () => {
    const shut = await open(browser, served.home, { viewport: PHONE });
    await shut.page.clock.setFixedTime(new Date('2026-11-26T12:00:00'));
    await shut.page.addInitScript(() =>
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('denied', 'SecurityError');
        },
      }),
    );
    await shut.page.goto(`${served.home}${superseded}`);
    expect(await strips(shut.page)).toEqual([]);
    expect(shut.faults).toEqual([]);
    await shut.close();

    const full = await open(browser, served.home, { viewport: PHONE });
    await full.page.clock.setFixedTime(new Date('2026-11-26T12:00:00'));
    await full.page.addInitScript(
      ({ key, value }) => {
        localStorage.setItem(key, value);
        Storage.prototype.setItem = () => {
          throw new DOMException('full', 'QuotaExceededError');
        };
      },
      { key: KEY, value: JSON.stringify(AUDIT) },
    );
    await full.page.goto(`${served.home}${superseded}`);
    expect((await strips(full.page))[0]).toContain(
      'OF-204 Rev B, Large, left could not be kept, this device has no room. Write it down: superseded.',
    );
    await full.close();
  });
});

describe('the age of a page', () => {
  let watched: Watched;
  beforeAll(async () => {
    watched = await open(browser, served.home, { viewport: PHONE });
  });
  afterAll(() => watched.close());

  test.each([
    ['on its own day', superseded, '2026-11-25', []],
    ['on its last good day', superseded, '2026-12-25', []],
    ['a day later', superseded, '2026-12-26', ['This page is 31 days old. Ask quality before you rely on it.']],
    [
      'a comparison',
      'compare/of-204/b-c/',
      '2027-11-25',
      ['This page is 365 days old. Ask quality before you rely on it.'],
    ],
    [
      'a revision whose day has come meanwhile',
      'C/OF-204/B/COMING/',
      '2026-12-01',
      [
        'This page answers for 2026-11-25. On 2026-12-01 another revision took effect: load the page again, or ask quality before you rely on it.',
      ],
    ],
    ['the day before', 'C/OF-204/B/COMING/', '2026-11-30', []],
    [
      'a page with steps whose successor has come meanwhile',
      'C/OF-131/A/',
      '2026-12-10',
      [
        'This page answers for 2026-11-25. On 2026-12-10 another revision took effect: load the page again, or ask quality before you rely on it.',
      ],
    ],
    ['a device a day behind', superseded, '2026-11-24', []],
    [
      'a device set back',
      superseded,
      '2026-10-01',
      ['This page answers for 2026-11-25, but this device takes today for 2026-10-01. Set its date, or ask quality.'],
    ],
  ])('%s', async (_name, at, day, said) => {
    await watched.page.clock.setFixedTime(new Date(`${day}T12:00:00`));
    await watched.page.goto(`${served.home}${at}`);
    expect(await strips(watched.page)).toEqual(said);
    expect(watched.faults).toEqual([]);
  });
});
