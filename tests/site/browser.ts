/** Opens pages in the browser and watches them: errors, and requests to anywhere else, are kept for the test to see. */

import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { CHROMIUM_LAUNCH } from '../../scripts/lib/chromium.ts';

export const PHONE = { width: 390, height: 844 } as const;
export const DESKTOP = { width: 1280, height: 800 } as const;

/** Starts Chromium without anything that would use the network by itself. */
export function launch(): Promise<Browser> {
  return chromium.launch(CHROMIUM_LAUNCH);
}

export interface Watched {
  readonly page: Page;
  /** Errors on the console, uncaught errors, failed requests, requests to another origin. */
  readonly faults: readonly string[];
  readonly close: () => Promise<void>;
}

/** A page in a context of its own. home: address of the site. */
export async function open(browser: Browser, home: string, options: BrowserContextOptions = {}): Promise<Watched> {
  const context = await browser.newContext({ viewport: DESKTOP, ...options });
  const page = await context.newPage();
  const faults: string[] = [];
  const { origin } = new URL(home);
  page.on('console', (m) => {
    if (m.type() === 'error' || m.type() === 'warning') faults.push(`console: ${m.text()}`);
  });
  page.on('pageerror', (e) => faults.push(`error: ${e.message}`));
  page.on('request', (r) => {
    if (new URL(r.url()).origin !== origin) faults.push(`request to ${r.url()}`);
  });
  page.on('requestfailed', (r) => {
    // A page that is left while it loads breaks off its own requests.
    const reason = r.failure()?.errorText ?? '';
    if (!reason.includes('ERR_ABORTED')) faults.push(`failed: ${r.url()} ${reason}`);
  });
  return { page, faults, close: () => context.close() };
}
