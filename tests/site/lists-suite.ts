/** The pages of orders, set-up lists, parts and times: in the files, and in a real browser. */

import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { cardText, orderBook, orderCsv, orderList, partNeeds, setUpList, timesOf } from '../../src/lists/index.ts';
import type { ResolvedShop } from '../../src/resolve/types.ts';
import { DESKTOP, open, PHONE } from './browser.ts';
import { type Built, textOf } from './built.ts';

export function listsSuite(site: () => Built, browser: () => Browser, home: () => string, shop: ResolvedShop): void {
  const book = orderBook(shop);
  const machineName = (id: string) => shop.machines.find((m) => m.id === id)?.name ?? id;
  /** A card with a kit, and another of another machine. */
  const first = book.cards.find((c) => c.kits.length > 0);
  const second = book.cards.find(
    (c) => c.machine !== first?.machine && c.consumables.some((u) => u.amounts.length > 0),
  );
  if (first === undefined || second === undefined) throw new Error('the demo has no such cards');
  const jobs = new Map([
    [first.card, 3],
    [second.card, 2],
  ]);
  const query = `?${first.card}=3&${second.card}=2`;
  const plain = (text: string) => text.replaceAll('\u00a0', ' ').replace(/\s+/gu, ' ');
  const field = (page: Page, card: string) => page.locator(`input[name="${card}"]`);

  describe('lists on built pages', () => {
    test('the order for one job of every card stands on the page of its document', () => {
      for (const card of book.cards) {
        const text = plain(textOf(site().read(`procedures/${card.slug}/index.html`))).toLowerCase();
        const { lines, stock } = orderList(book, new Map([[card.card, 1]]));
        for (const line of [...lines, ...stock]) expect(text, card.card).toContain(plain(line.name).toLowerCase());
        for (const line of lines) if (line.number !== undefined) expect(text).toContain(line.number.toLowerCase());
      }
    });

    test('a procedure lists every part once a role, every kit by name, every wait with its reason', () => {
      for (const d of shop.documents) {
        const machine = shop.machines.find((m) => m.id === d.machine);
        for (const v of d.variants) {
          const html = site().read(`${v.path}/index.html`);
          const text = plain(textOf(html)).toLowerCase();
          const needs = partNeeds(v, machine ?? { parts: [] });
          const rows =
            needs.kits.reduce((n, k) => n + k.contents.length, 0) +
            needs.loose.length +
            needs.inspected.length +
            needs.reused.length +
            needs.dropped.length;
          expect(html.match(/<td><span class="fate fate-/gu)?.length ?? 0, v.path).toBe(rows);
          for (const kit of needs.kits) expect(text).toContain(kit.name.toLowerCase());
          for (const wait of timesOf(v.stages, d.people).waits) expect(text).toContain(plain(wait.why).toLowerCase());
        }
      }
    });

    test('the set-up list of a bench holds the tools of all its cards, and names the one card that needs a tool', () => {
      for (const bench of shop.benches) {
        const html = site().read(`benches/${bench.id}/index.html`);
        const list = setUpList(shop, bench);
        const tools = list.tools.flatMap((g) => g.tools);
        expect(new Set(tools.map((t) => t.id))).toEqual(
          new Set(list.cards.flatMap((c) => c.variant.tools.map((t) => t.id))),
        );
        const named = [
          ...html.matchAll(/<tr>(?:(?!<\/tr>).)*?tools\/([\w-]+)\/"(?:(?!<\/tr>).)*?setup-only[^>]*>([^<]+)</gsu),
        ];
        const wanted = tools.flatMap(({ id, neededBy: { only } }) =>
          only === undefined ? [] : [[id, cardText({ doc: only.document.doc, label: only.variant.label })]],
        );
        expect(named.map((m) => [m[1], m[2]])).toEqual(wanted);
        for (const t of tools) {
          if (t.settings !== undefined) expect(plain(textOf(html))).toContain(plain(`set to ${t.settings.text}`));
        }
      }
    });

    test('the needs of the cards are one file of plain data', () => {
      expect(JSON.parse(site().read('orders/needs.json'))).toEqual(JSON.parse(JSON.stringify(book)));
    });
  });

  describe('the page of orders', () => {
    test('follows the jobs, puts them into the address, and comes back from there', async () => {
      const { page, faults, close } = await open(browser(), home(), { viewport: DESKTOP });
      await page.goto(`${home()}orders/`);
      await page.locator('[data-ready]').waitFor();
      expect(await page.locator('.orders-summary').textContent()).toBe('No jobs yet.');
      expect(await page.getByRole('button', { name: 'Download CSV' }).isDisabled()).toBe(true);
      await field(page, first.card).fill('3');
      await field(page, second.card).fill('2');
      expect(new URL(page.url()).search).toMatch(new RegExp(`${first.card}=3`, 'u'));
      const list = orderList(book, jobs);
      const rows = page.locator('.order-table tbody tr');
      expect(await rows.count()).toBe(list.lines.length);
      const shown = (await rows.allTextContents()).map(plain);
      for (const [i, line] of list.lines.entries()) {
        expect(shown[i]?.toLowerCase()).toContain(plain(line.name).toLowerCase());
        if (line.order !== undefined) expect(shown[i]).toContain(String(line.order));
      }
      expect(await page.locator('.orders-summary').textContent()).toContain('5\u00a0jobs');
      const address = page.url();
      await page.goto(home());
      await page.goto(address);
      await rows.first().waitFor();
      expect((await rows.allTextContents()).map(plain)).toEqual(shown);
      expect(await field(page, first.card).inputValue()).toBe('3');
      await page.getByRole('button', { name: 'Start again' }).click();
      expect(new URL(page.url()).search).toBe('');
      expect(await rows.count()).toBe(0);
      await page.goBack();
      await rows.first().waitFor();
      expect(await field(page, second.card).inputValue()).toBe('2');
      expect(faults).toEqual([]);
      await close();
    });

    test('gives the list as a file, with the same lines and a name without a day', async () => {
      const { page, faults, close } = await open(browser(), home(), { viewport: DESKTOP });
      await page.goto(`${home()}orders/${query}`);
      await page.locator('.order-table').waitFor();
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Download CSV' }).click(),
      ]);
      expect(download.suggestedFilename()).toBe('order-list.csv');
      const bytes = readFileSync(await download.path());
      expect(bytes.toString('utf8')).toBe(orderCsv(orderList(book, jobs), machineName));
      expect(faults).toEqual([]);
      await close();
    });

    test('a number that is none is named at its field and counts for nothing', async () => {
      const { page, close } = await open(browser(), home(), { viewport: PHONE });
      await page.goto(`${home()}orders/`);
      await page.locator('[data-ready]').waitFor();
      await field(page, first.card).fill('2.5');
      expect(await field(page, first.card).getAttribute('aria-invalid')).toBe('true');
      expect(await page.locator('.order-fault:visible').textContent()).toContain('0 to 999');
      expect(await page.locator('.order-table').count()).toBe(0);
      await field(page, first.card).fill('2');
      expect(await page.locator('.order-fault:visible').count()).toBe(0);
      expect(await page.locator('.order-table').count()).toBe(1);
      await close();
    });

    test('a hostile address is shown as text and left out', async () => {
      const { page, faults, close } = await open(browser(), home(), { viewport: PHONE });
      const markup = '<img src=x onerror="window.hit=1">';
      await page.goto(`${home()}orders/${query}&${encodeURIComponent(markup)}=1&__proto__=2&constructor=3`);
      await page.locator('.order-table').waitFor();
      expect(await page.locator('[data-part="faults"]').textContent()).toContain('<img src=x');
      expect(await page.locator('main img').count()).toBe(0);
      expect(await page.evaluate(() => (window as { hit?: number }).hit)).toBeUndefined();
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
      expect(faults).toEqual([]);
      await close();
    });

    test('the filter hides what is not wanted, never what has jobs; targets are 48 px on a phone', async () => {
      const { page, close } = await open(browser(), home(), { viewport: PHONE });
      await page.goto(`${home()}orders/${query}`);
      await page.locator('.order-table').waitFor();
      await page.getByLabel('Filter the procedures').fill('no procedure has such a word');
      expect(await page.locator('[data-card]:visible').count()).toBe(2);
      expect(await field(page, first.card).isVisible()).toBe(true);
      const boxes = await page
        .locator('.orders input:visible, .orders button:visible, .orders summary')
        .evaluateAll((all) => all.map((e) => e.getBoundingClientRect().height));
      expect(boxes.length).toBeGreaterThan(5);
      for (const height of boxes) expect(height).toBeGreaterThanOrEqual(47.5);
      await close();
    });

    test('on paper stand the jobs and the list, without fields and buttons', async () => {
      const { page, close } = await open(browser(), home(), { viewport: DESKTOP });
      await page.goto(`${home()}orders/${query}`);
      await page.locator('.order-table').waitFor();
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('.orders-form').isVisible()).toBe(false);
      expect(await page.getByRole('button', { name: 'Download CSV' }).isVisible()).toBe(false);
      expect(await page.locator('.order-jobs-text').isVisible()).toBe(true);
      expect(plain((await page.locator('.order-jobs-text').textContent()) ?? '')).toContain('× 3');
      expect(await page.locator('.order-table').isVisible()).toBe(true);
      await close();
    });

    test('without scripts it leads to the list of each procedure', async () => {
      const { page, close } = await open(browser(), home(), { viewport: PHONE, javaScriptEnabled: false });
      await page.goto(`${home()}orders/`);
      expect(await page.getByText('Adding up needs JavaScript').isVisible()).toBe(true);
      expect(await field(page, first.card).isVisible()).toBe(false);
      await page.locator(`[data-card] a[href$="#order-${first.card}"]`).click();
      expect(new URL(page.url()).pathname.endsWith(`/procedures/${first.slug}/`)).toBe(true);
      expect(await page.locator('.order-table').first().isVisible()).toBe(true);
      expect(await page.locator('.order-table').first().textContent()).toContain(first.kits[0]?.name.slice(1));
      await close();
    });
  });

  test('the set-up list prints with a box to tick for each tool, on a sheet of its own', async () => {
    const { page, close } = await open(browser(), home(), { viewport: DESKTOP });
    const [bench] = shop.benches;
    await page.goto(`${home()}benches/${bench?.id}/`);
    expect(await page.locator('.setup .setup-box').first().isVisible()).toBe(false);
    await page.emulateMedia({ media: 'print' });
    const tools = await page.locator('.setup tbody tr:not(.group)').count();
    expect(tools).toBeGreaterThan(5);
    expect(await page.locator('.setup .setup-box:visible').count()).toBe(tools);
    expect(await page.locator('.setup-sheet').evaluate((e) => getComputedStyle(e).breakBefore)).toBe('page');
    await close();
  });
}
