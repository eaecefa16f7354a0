/** The dev server: a saved file is on the page at once, a fault stands in front of the last good page. */

import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';

const folder = mkdtempSync(path.join(tmpdir(), 'fettlebook-dev-'));
const content = path.join(folder, 'content');
const procedure = path.join(content, 'procedures', 'of-204-raw-water-cooler-end-covers.yaml');
const good = readFileSync(procedure.replace(content, path.resolve(import.meta.dirname, '..', '..', 'content')), 'utf8');
let child: ChildProcess;
let address = '';
let lines: string[] = [];

const LONG = { timeout: 30_000, interval: 50 };

beforeAll(async () => {
  cpSync(path.resolve(import.meta.dirname, '..', '..', 'content'), content, { recursive: true });
  const { PATH, HOME } = process.env;
  const port = String(4700 + (process.pid % 200));
  child = spawn(process.execPath, [path.join(import.meta.dirname, 'dev-child.ts'), content, port], {
    env: { PATH, HOME },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  child.stdout?.setEncoding('utf8').on('data', (text: string) => lines.push(...text.trim().split('\n')));
  await vi.waitUntil(() => lines.some((l) => l.startsWith('serves ')), LONG);
  address = lines.find((l) => l.startsWith('serves '))?.slice(7) ?? '';
});

afterAll(() => {
  child?.kill();
  rmSync(folder, { recursive: true, force: true });
});

const get = async (page: string) => (await fetch(`${address}${page}`)).text();

/** Saves, and waits until the server has told of the compilation that follows. */
async function save(text: string): Promise<void> {
  lines = [];
  writeFileSync(procedure, text);
  await expect.poll(() => lines.some((l) => l.startsWith('compiled ')), LONG).toBe(true);
}

test('a saved change is on the page, and text stays text', async () => {
  expect(await get('procedures/of-204/')).toContain('Choose the variant');
  await save(good.replace(/^title: .*$/mu, 'title: Changed & title'));
  await expect.poll(() => get('procedures/of-204/'), LONG).toContain('Changed &amp; title');
});

test('a fault stands in front of the last good page, and goes away with it', async () => {
  await save(good);
  await expect.poll(() => get('procedures/of-204/'), LONG).not.toContain('Changed');
  await save(good.replace(/^owner: /mu, 'ownr: '));
  await expect.poll(() => get('procedures/of-204/'), LONG).toContain('The content does not hold');
  const page = await get('procedures/of-204/');
  expect(page).toContain('`ownr`');
  expect(page).toContain('Choose the variant');
  await save(good);
  await expect.poll(() => get('procedures/of-204/'), LONG).not.toContain('The content does not hold');
});
