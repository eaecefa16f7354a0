/** What must hold in a real browser, on a phone and on a desk, by day and in a dark shop. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { ResolvedShop } from '../../src/resolve/types.ts';
import { DESKTOP, open, PHONE } from './browser.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The coloured field behind DANGER, WARNING, CAUTION or NOTICE. */
const SIGNAL_WORD = /class="signal"|<span>(?:DANGER|WARNING|CAUTION|NOTICE)/u;

interface AxeResult {
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
  }[];
}

/** What axe names on the open page, in words; empty when there is nothing. */
export async function axeFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(AXE);
  const result = (await page.evaluate(
    'axe.run(document, { resultTypes: ["violations"], runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice", "wcag2aaa"], rules: { "color-contrast-enhanced": { enabled: true } } })',
  )) as AxeResult;
  return result.violations.flatMap((v) =>
    v.nodes
      // Of the AAA rules the contrast of 7 to 1 is held, but for signal words, whose colours the sign standards give.
      .filter((n) => v.id !== 'color-contrast-enhanced' || !SIGNAL_WORD.test(n.html))
      .map((n) => `${v.id} ${n.html.slice(0, 160)} ${n.failureSummary ?? ''}`),
  );
}

/** One page of each kind, the longest procedure among them; registers are all of one kind, three of them stand for it. */
export function kinds(shop: ResolvedShop): string[] {
  const machine = shop.machines.find((m) => m.joints.length > 0) ?? shop.machines[0];
  const longest = shop.documents.flatMap((d) => d.variants).sort((a, b) => b.stepCount - a.stepCount)[0];
  const landing = shop.documents.find((d) => d.variants.length > 1) ?? shop.documents[0];
  return [
    '',
    'procedures/',
    `procedures/${landing?.slug}/`,
    `${longest?.path}/`,
    `${landing?.variants[0]?.path}/`,
    `machines/${machine?.id}/`,
    `machines/${machine?.id}/parts/${machine?.joints[0]?.plan.fastener}/`,
    `machines/${machine?.id}/joints/${machine?.joints[0]?.plan.id}/`,
    // With the most to say: an adapter or run-down torque, and a picture of the rounds.
    ...jointPages(shop),
    `benches/${shop.benches[0]?.id}/`,
    'tools/',
    `tools/${shop.tools[0]?.id}/`,
    `consumables/${shop.consumables[0]?.id}/`,
    'tables/',
    `tables/${shop.tables[0]?.id}/`,
    ...shop.statedTables.slice(0, 1).map((t) => `tables/from-manuals/${t.id}/`),
    'worksheet/',
    `orders/?${landing?.variants[0]?.cardName}=2`,
    'revisions/',
    'about/',
    '404.html',
  ];
}

function jointPages(shop: ResolvedShop): readonly string[] {
  const all = shop.machines.flatMap((m) => m.joints.map(({ plan }) => ({ plan, machine: m.id })));
  const found = [all.find((j) => j.plan.adapter !== undefined), all.find((j) => j.plan.interaction !== undefined)];
  return found.flatMap((j) => (j === undefined ? [] : [`machines/${j.machine}/joints/${j.plan.id}/`]));
}

/** Every page whose numbers are set in tables or drawings. */
function figured(shop: ResolvedShop): readonly string[] {
  return [
    ...shop.documents.flatMap((d) => d.variants.map((v) => `${v.path}/`)),
    ...shop.machines.flatMap((m) => [...new Set(m.joints.map((j) => `machines/${m.id}/joints/${j.plan.id}/`))]),
    ...shop.tables.map((t) => `tables/${t.id}/`),
    ...shop.statedTables.map((t) => `tables/from-manuals/${t.id}/`),
  ];
}

export function browserSuite(browser: () => Browser, home: () => string, shop: ResolvedShop): void {
  test('no table, box or drawing is cut at the edge of a small phone, but in a region that scrolls', async () => {
    const { page, close } = await open(browser(), home(), { viewport: { width: 360, height: 740 } });
    for (const path of figured(shop)) {
      await page.goto(`${home()}${path}`);
      const cut = await page.evaluate(() =>
        [...document.querySelectorAll('main table, main td, main input, main svg')]
          .filter((e) => e.closest('.scroll') === null && e.getBoundingClientRect().right > window.innerWidth + 1)
          .map((e) => `${e.tagName} ${e.getAttribute('class') ?? ''}`),
      );
      expect(cut, path).toEqual([]);
    }
    await close();
  });

  describe.each([
    ['phone, light', PHONE, 'light'],
    ['desk, dark', DESKTOP, 'dark'],
  ] as const)('every kind of page, %s', (_name, viewport, colorScheme) => {
    test('has no fault, no overflow, nothing that axe would name, and a contrast of 7 to 1', async () => {
      const { page, faults, close } = await open(browser(), home(), { viewport, colorScheme });
      for (const path of kinds(shop)) {
        if (path === '404.html') continue;
        await page.goto(`${home()}${path}`);
        await page.evaluate(() => document.fonts.ready.then(() => undefined));
        const over = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        expect(over, `${path} is wider than the screen`).toBeLessThanOrEqual(0);
        const named = await axeFaults(page);
        expect(named.slice(0, 5), path).toEqual([]);
      }
      expect(faults).toEqual([]);
      await close();
      // Twenty pages, some of them long: on shared cores that takes its time.
    }, 180_000);
  });

  test('a phone has targets of 48 px where a glove must hit', async () => {
    const { page, close } = await open(browser(), home(), { viewport: PHONE });
    const variant = shop.documents[0]?.variants[0];
    await page.goto(`${home()}${variant?.path}/`);
    for (const selector of [
      '.tick:not(.small)',
      '.action',
      '.find-link',
      '.menu summary',
      '.stage-list summary',
      '.blank input',
    ]) {
      const boxes = await page
        .locator(selector)
        .evaluateAll((all) => all.map((e) => e.getBoundingClientRect()).filter((b) => b.width > 0));
      if (selector !== '.blank input') expect(boxes.length, selector).toBeGreaterThan(0);
      for (const box of boxes) {
        expect(box.height, selector).toBeGreaterThanOrEqual(47.5);
        expect(box.width, selector).toBeGreaterThanOrEqual(47.5);
      }
    }
    await close();
  });

  test('without scripts every page can be read, and the variants chosen', async () => {
    const { page, close } = await open(browser(), home(), { viewport: PHONE, javaScriptEnabled: false });
    const document = shop.documents.find((d) => d.variants.length > 1) ?? shop.documents[0];
    await page.goto(home());
    expect(await page.getByText('Searching needs JavaScript').isVisible()).toBe(true);
    await page.getByRole('link', { name: 'the register of procedures' }).click();
    await page.getByRole('link', { name: document?.doc ?? '', exact: true }).click();
    await page.locator('.choose').nth(1).click();
    const variant = document?.variants[1];
    expect(new URL(page.url()).pathname.endsWith(`/${variant?.path}/`)).toBe(true);
    expect(await page.locator('.step').count()).toBe(variant?.stepCount);
    expect(await page.locator('.step .do').last().isVisible()).toBe(true);
    expect(await page.locator('details.fold table').first().isVisible()).toBe(true);
    await page.locator('.stage-list summary').click();
    expect(await page.locator('.stage-list a').first().isVisible()).toBe(true);
    await close();
  });

  test('a lost address leads back', async () => {
    const { page, close } = await open(browser(), home(), {});
    const answer = await page.goto(`${home()}C/OF-204/A/NOTHING/`);
    expect(answer?.status()).toBe(404);
    expect(await page.locator('h1').textContent()).toBe('No such page');
    await close();
  });
}
