/** The worksheet in a real browser: typing, address, paper, hostile addresses. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { ResolvedShop } from '../../src/resolve/types.ts';
import { worksheetQuery } from '../../src/site/client/worksheet/query-of-joint.ts';
import { formatQuantity } from '../../src/units/index.ts';
import { DESKTOP, open, PHONE } from './browser.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const HOSTILE = '"><img src=x onerror="window.hit=1"><script>window.hit=1</script><svg onload="window.hit=1">';

interface AxeResult {
  readonly violations: readonly { readonly id: string; readonly nodes: readonly { readonly html: string }[] }[];
}

async function named(page: Page): Promise<readonly string[]> {
  await page.evaluate(AXE);
  const result = (await page.evaluate(
    'axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice", "wcag2aaa"], rules: { "color-contrast-enhanced": { enabled: true } } })',
  )) as AxeResult;
  return result.violations.flatMap((v) => v.nodes.map((n) => `${v.id} ${n.html.slice(0, 160)}`));
}

function overflow(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

async function part(page: Page, name: string): Promise<string> {
  return (await page.locator(`[data-part="${name}"]`).textContent()) ?? '';
}

export function worksheetSuite(browser: () => Browser, home: () => string, shop: ResolvedShop): void {
  const at = (query = '') => `${home()}worksheet/${query}`;

  describe('the worksheet', () => {
    test('says what it is, and shows torque, drawing, order, places and checks of a plain joint', async () => {
      const { page, faults, close } = await open(browser(), home(), { viewport: PHONE });
      await page.goto(at());
      expect(await page.locator('.ws-standing').textContent()).toMatch(
        /not a maker's instruction.*Nothing is sent anywhere/su,
      );
      expect(await part(page, 'hero')).toMatch(/162\u00a0N·m.*119\u00a0lbf·ft.*checks hold/su);
      expect(await page.locator('[data-part="figure"] [data-hole]').count()).toBeGreaterThan(7);
      expect(await part(page, 'order')).toContain('1, 5, 3, 7, 2, 6, 4, 8');
      expect(await page.locator('[data-part="holes"] tbody tr').count()).toBe(8);
      expect(await page.locator('[data-part="working"] math').count()).toBeGreaterThan(20);
      expect(await part(page, 'left')).toContain('illustration');
      expect(faults).toEqual([]);
      await close();
    });

    test('follows what is typed, puts it into the address, and comes back from there', async () => {
      const { page, faults, close } = await open(browser(), home(), { viewport: DESKTOP });
      await page.goto(at());
      const before = await part(page, 'hero');
      await page.getByLabel('Number of bolts').fill('12');
      await page.getByLabel('Thread', { exact: true }).fill('M20');
      await page.getByLabel('Bolt circle').fill('240 mm');
      await page.waitForURL(/n=12.*circle=240\+mm/u);
      const typed = await part(page, 'hero');
      expect(typed).not.toBe(before);
      expect(await part(page, 'order')).toContain('1, 7, 4, 10');
      expect(await page.locator('[data-part="figure"] svg').textContent()).toContain('240 mm');
      const address = page.url();
      await page.goto(home());
      await page.goto(address);
      expect(await page.getByLabel('Thread', { exact: true }).inputValue()).toBe('M20');
      expect(await part(page, 'hero')).toBe(typed);
      await page.getByRole('button', { name: 'Start again' }).click();
      expect(new URL(page.url()).search).toBe('');
      expect(await part(page, 'hero')).toBe(before);
      await page.goBack();
      expect(await part(page, 'hero')).toBe(typed);
      expect(await page.getByLabel('Bolt circle').inputValue()).toBe('240 mm');
      expect(faults).toEqual([]);
      await close();
    });

    test('names a fault at its field, keeps the rest, and tells a screen reader', async () => {
      const { page, faults, close } = await open(browser(), home(), { viewport: PHONE });
      await page.goto(at());
      const thread = page.getByLabel('Thread', { exact: true });
      await thread.fill('5/8-10');
      await page.waitForURL(/thread=5\/8-10/u);
      const field = page.locator('[data-field="thread"]');
      expect(await field.locator('.ws-fault').textContent()).toMatch(/5\/8-11 UNC/u);
      expect(await thread.getAttribute('aria-invalid')).toBe('true');
      expect(await part(page, 'hero')).toContain('No torque');
      expect(await page.locator('[data-part="figure"] svg').count()).toBe(1);
      await page.getByLabel('Pattern').selectOption('rectangle');
      await page.waitForURL(/pattern=rectangle/u);
      expect(await page.getByLabel('Bolt circle').isVisible()).toBe(false);
      expect(await page.getByLabel('Bolts on a long side').isVisible()).toBe(true);
      expect(await named(page)).toEqual([]);
      expect(faults).toEqual([]);
      await close();
    });

    test('a hostile address is shown as text, runs nothing and asks nobody', async () => {
      const { page, faults, close } = await open(browser(), home(), { viewport: PHONE });
      const keys = ['name', 'thread', 'grade', 'head', 'circle', 'rounds', 'wrench', 'flange', 'nut', HOSTILE];
      await page.goto(
        at(`?${keys.map((k) => `${encodeURIComponent(k)}=${encodeURIComponent(HOSTILE.slice(0, 78))}`).join('&')}`),
      );
      await page.waitForTimeout(200);
      expect(await page.evaluate(() => (window as { hit?: number }).hit)).toBeUndefined();
      expect(await page.locator('main img, main script:not([src]), main [onload], main [onerror]').count()).toBe(0);
      expect(await page.locator('[data-field="thread"] .ws-fault').textContent()).toContain('<img src=x');
      expect(await page.locator('[data-part="faults"]').textContent()).toContain('no field of the worksheet');
      expect(await overflow(page)).toBeLessThanOrEqual(0);
      await page.goto(at(`?name=${encodeURIComponent(HOSTILE.slice(0, 78))}`));
      expect(await page.locator('[data-part="figure"] svg title').textContent()).toContain('<img src=x');
      await page.goto(at('?%E0%A4%A&n=%FF&__proto__=1'));
      expect(await part(page, 'hero')).not.toBe('');
      expect(faults).toEqual([]);
      await close();
    });

    test('opens with a joint of the shop and shows its torque', async () => {
      const { page, faults, close } = await open(browser(), home(), { viewport: DESKTOP });
      const joints = shop.machines.flatMap((m) => m.joints.map((j) => j.plan)).slice(0, 6);
      for (const plan of joints) {
        await page.goto(at(`?${worksheetQuery(plan, shop.tools)}`));
        expect(await part(page, 'hero'), plan.id).toContain(formatQuantity(plan.setting));
        expect(await part(page, 'order'), plan.id).toContain(plan.sequence.moves.map((m) => m.join(' + ')).join(', '));
        expect(await page.locator('.ws-fault:visible').count(), plan.id).toBe(0);
      }
      expect(faults).toEqual([]);
      await close();
    });

    test.each([
      ['phone, light', PHONE, 'light'],
      ['desk, dark', DESKTOP, 'dark'],
    ] as const)(
      '%s: no overflow, nothing that axe would name, a contrast of 7 to 1',
      async (_name, viewport, colorScheme) => {
        const { page, faults, close } = await open(browser(), home(), { viewport, colorScheme });
        for (const query of [
          '',
          '?pattern=circles&n=24&circle=600+mm&n2=16&circle2=400+mm&tools=2&adapter=60&lever=400&wall=30&wrench=1+to+5+N.m',
        ]) {
          await page.goto(at(query));
          // The working is looked at once: its formulas are many.
          const folds = page.locator(query === '' ? 'main summary' : '.ws-work summary');
          for (const fold of await folds.all())
            if (!(await fold.locator('..').evaluate((d) => d.hasAttribute('open')))) await fold.click();
          await page.evaluate(() => document.fonts.ready.then(() => undefined));
          expect(await overflow(page), query).toBeLessThanOrEqual(0);
          expect((await named(page)).slice(0, 5)).toEqual([]);
        }
        expect(faults).toEqual([]);
        await close();
      },
    );

    test('a phone has targets of 48 px, and the torque stays in sight while the form is filled', async () => {
      const { page, close } = await open(browser(), home(), { viewport: PHONE });
      await page.goto(at());
      const boxes = await page
        .locator('.ws input, .ws select, .ws button, .ws summary')
        .evaluateAll((all) => all.map((e) => e.getBoundingClientRect()).filter((b) => b.width > 0));
      expect(boxes.length).toBeGreaterThan(15);
      for (const box of boxes) expect(box.height).toBeGreaterThanOrEqual(47.5);
      const hero = page.locator('.hero-main');
      for (const label of ['Thread', 'Bolt circle', 'Rounds, %']) {
        await page.getByLabel(label, { exact: true }).scrollIntoViewIfNeeded();
        const box = await hero.boundingBox();
        expect(box !== null && box.y >= 0 && box.y + box.height <= PHONE.height, label).toBe(true);
      }
      await close();
    });

    test('on paper the form is a list of what was typed, and every result stands', async () => {
      const { page, close } = await open(browser(), home(), { viewport: DESKTOP });
      await page.goto(at('?n=12&circle=240+mm'));
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('.ws-form').isVisible()).toBe(false);
      expect(await page.locator('.ws-typed').isVisible()).toBe(true);
      expect(await page.locator('.ws-typed').textContent()).toContain('240 mm');
      expect(await page.locator('[data-part="checks"]').isVisible()).toBe(true);
      expect(await page.locator('.ws-standing').isVisible()).toBe(true);
      await close();
    });

    test('without scripts it says so and leads to the tables and the joints', async () => {
      const { page, close } = await open(browser(), home(), { viewport: PHONE, javaScriptEnabled: false });
      await page.goto(at());
      const note = page.getByText('needs JavaScript');
      expect(await note.isVisible()).toBe(true);
      expect(await page.locator('.ws-form').isVisible()).toBe(false);
      await page.getByRole('link', { name: 'torque tables', exact: true }).click();
      expect(new URL(page.url()).pathname.endsWith('/tables/')).toBe(true);
      await close();
    });
  });
}
