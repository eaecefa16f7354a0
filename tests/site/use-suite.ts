/** A mechanic's way through the site: find, choose, keep the place, print. */

import type { Browser } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { ResolvedShop } from '../../src/resolve/types.ts';
import { formatQuantity } from '../../src/units/index.ts';
import { DESKTOP, open, PHONE } from './browser.ts';

export function useSuite(browser: () => Browser, home: () => string, shop: ResolvedShop): void {
  const several = shop.documents.find((d) => d.variants.length > 1);
  const variant = several?.variants.find((v) => v.joints.some((j) => j.socket !== undefined));
  const joint = variant?.joints[0];
  if (several === undefined || variant === undefined || joint === undefined)
    throw new Error('the demo has no such document');

  describe('search', () => {
    test('the box of the home page has the focus; a thread is typed, walked to by keys and opened at its steps', async () => {
      const { page, faults, close } = await open(browser(), home(), { viewport: PHONE });
      await page.goto(home());
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('find');
      await page.keyboard.type(joint.thread.designation);
      const results = page.locator('[data-results]');
      await results.locator('a').first().waitFor();
      expect(await page.locator('[data-status]').textContent()).toMatch(/^\d+ found$/u);
      expect(new URL(page.url()).hash).toBe(`#find=${encodeURIComponent(joint.thread.designation)}`);
      expect(await results.textContent()).toContain(`${several.doc} ${several.title}`);
      const button = results.locator('li', { hasText: several.doc }).locator('.variants a', { hasText: variant.label });
      await page.keyboard.press('ArrowDown');
      for (let i = 0; i < 60; i++) {
        if (await button.evaluate((e) => e === document.activeElement)) break;
        await page.keyboard.press('ArrowDown');
      }
      await page.keyboard.press('Enter');
      await page.waitForURL(`**/${variant.path}/#find=*`);
      expect(await page.locator('.step.found').count()).toBeGreaterThan(0);
      expect(await page.locator('.mark-note').isVisible()).toBe(true);
      const texts = await page.locator('.step.found').allTextContents();
      expect(texts.every((t) => t.includes(joint.thread.size))).toBe(true);
      await page.goBack();
      await page.locator('[data-results] a').first().waitFor();
      expect(await page.locator('#find').inputValue()).toBe(joint.thread.designation);
      expect(faults).toEqual([]);
      await close();
    });

    test('the head of every other page finds as well, and escapes', async () => {
      const { page, faults, close } = await open(browser(), home(), { viewport: DESKTOP });
      await page.goto(`${home()}machines/${several.machine}/`);
      const box = page.getByRole('search').getByRole('searchbox');
      await box.fill(formatQuantity(joint.target));
      const results = page.locator('.head-find [data-results]');
      await results.locator('a').first().waitFor();
      expect(await results.textContent()).toContain(several.doc);
      await page.keyboard.press('ArrowDown');
      expect(
        await results
          .locator('a')
          .first()
          .evaluate((e) => e === document.activeElement),
      ).toBe(true);
      await page.keyboard.press('Escape');
      expect(await box.evaluate((e) => e === document.activeElement)).toBe(true);
      await page.keyboard.press('Enter');
      await page.waitForURL(/#find=/u);
      expect(await page.locator('#find').inputValue()).toBe(formatQuantity(joint.target));
      expect(faults).toEqual([]);
      await close();
    });

    test('nothing found is said, and markup in the query stays text', async () => {
      const { page, faults, close } = await open(browser(), home(), {});
      await page.goto(`${home()}#find=${encodeURIComponent('<img src=x onerror=alert(1)> qqqq')}`);
      await page.getByText('Nothing found for').waitFor();
      expect(await page.locator('.find img').count()).toBe(0);
      await page.goto(`${home()}#find=%E0%A4%A`);
      expect(faults).toEqual([]);
      await close();
    });
  });

  test('a register is sorted by its heads and filtered', async () => {
    const { page, close } = await open(browser(), home(), {});
    await page.goto(`${home()}tools/`);
    await page.getByRole('button', { name: 'Calibration due' }).click();
    const dates = await page
      .locator('tbody td[data-label="Calibration due"] time')
      .evaluateAll((all) => all.map((e) => e.getAttribute('datetime')));
    expect(dates.length).toBeGreaterThan(2);
    expect(dates).toEqual([...dates].sort());
    await page.getByRole('searchbox', { name: /^Filter/u }).fill('torque wrench');
    const shown = await page.locator('tbody tr:visible').allTextContents();
    expect(shown.length).toBeGreaterThan(0);
    expect(shown.every((t) => t.toLowerCase().includes('wrench'))).toBe(true);
    await close();
  });

  test('ticks and blanks are kept on the device, for this content only, and can be cleared', async () => {
    const { page, close } = await open(browser(), home(), { viewport: PHONE });
    await page.goto(`${home()}${variant.path}/`);
    await page.locator('#step-1 .tick').click();
    await page.reload();
    expect(await page.locator('#step-1 input[data-step-done]').isChecked()).toBe(true);
    expect(await page.evaluate(() => Object.keys(localStorage))).toEqual([`ticks-${variant.fingerprint}`]);
    await page.getByRole('button', { name: 'Clear ticks and blanks' }).click();
    expect(await page.locator('#step-1 input[data-step-done]').isChecked()).toBe(false);
    expect(await page.evaluate(() => localStorage.length)).toBe(0);
    await close();
  });

  test('a torque fills the screen and goes away again', async () => {
    const { page, close } = await open(browser(), home(), { viewport: PHONE });
    await page.goto(`${home()}${variant.path}/`);
    await page.locator('.torque .hero button').first().click();
    const dialog = page.getByRole('dialog');
    expect(await dialog.textContent()).toContain('N·m');
    const over = await dialog.evaluate((e) => e.scrollWidth - e.clientWidth);
    expect(over).toBeLessThanOrEqual(0);
    await page.keyboard.press('Escape');
    expect(await dialog.count()).toBe(0);
    await close();
  });

  test('the drawing stays beside its steps on a wide screen and under them on a phone', async () => {
    const { page, close } = await open(browser(), home(), {});
    await page.goto(`${home()}${variant.path}/`);
    const step = page.locator('.with-figure').first();
    const places = () =>
      step.evaluate((e) => ({
        body: e.querySelector('.step-body')?.getBoundingClientRect().toJSON() as DOMRect,
        figure: e.querySelector('.figure-place')?.getBoundingClientRect().toJSON() as DOMRect,
      }));
    const wide = await places();
    expect(wide.figure.left).toBeGreaterThanOrEqual(wide.body.right);
    await page.setViewportSize(PHONE);
    const narrow = await places();
    expect(narrow.figure.left).toBeLessThan(narrow.body.right);
    await close();
  });

  describe('print', () => {
    test('gives clean sheets: no site frame, marked and dated, blocks whole', async () => {
      const { page, faults, close } = await open(browser(), home(), {});
      await page.goto(`${home()}${variant.path}/`);
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
      for (const selector of ['.site-head', '.stage-list', '.actions', '.foot-links']) {
        expect(await page.locator(selector).first().isVisible(), selector).toBe(false);
      }
      const mark = page.locator('.print-mark');
      expect(await mark.isVisible()).toBe(true);
      expect(await mark.textContent()).toMatch(/^UNCONTROLLED COPY printed \d{4}-\d{2}-\d{2}/u);
      expect(await page.locator('.status-bar').textContent()).toContain(`Rev\u00a0${several.revision.rev}`);
      const rules = await page
        .locator('.step, .warn, .rounds, .hold, .figure')
        .evaluateAll((all) => all.map((e) => getComputedStyle(e).breakInside));
      expect(new Set(rules)).toEqual(new Set(['avoid']));
      expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe('rgb(255, 255, 255)');
      expect(await page.evaluate(() => getComputedStyle(document.body).color)).toBe('rgb(0, 0, 0)');
      // A4 less margins is 182 by 268 mm: a block that is higher would be split after all.
      await page.setViewportSize({ width: Math.round((182 / 25.4) * 96), height: 1000 });
      const heights = await page
        .locator('.step')
        .evaluateAll((all) => all.map((e) => e.getBoundingClientRect().height));
      expect(Math.max(...heights)).toBeLessThan((268 / 25.4) * 96);
      expect(faults).toEqual([]);
      await close();
    });

    test('opens what was folded', async () => {
      const { page, close } = await open(browser(), home(), {});
      await page.goto(`${home()}${variant.path}/`);
      await page.locator('.fold summary').first().click();
      expect(await page.locator('.fold[open]').count()).toBe((await page.locator('.fold').count()) - 1);
      await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
      expect(await page.locator('.fold[open]').count()).toBe(await page.locator('.fold').count());
      await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
      expect(await page.locator('.fold[open]').count()).toBe((await page.locator('.fold').count()) - 1);
      await close();
    });
  });
}
