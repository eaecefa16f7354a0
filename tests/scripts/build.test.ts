/** `build` from the command line: what is written, what is left alone, and how it stops. */

import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { writeMiniShop } from '../fixtures/mini-shop.ts';
import { digest, run, temporaryFolder } from './run.ts';

describe('a build', () => {
  test('writes site, cards, binders, schemas and a manifest that names every file', async () => {
    const out = path.join(temporaryFolder(), 'dist');
    const { code, stdout, stderr } = await run('build.ts', ['--shop', writeMiniShop(), '--out', out]);
    expect(code, stderr).toBe(0);
    expect(stdout).toContain('1 procedure, 2 cards');
    for (const file of [
      'index.html',
      'C/MW-1/A/SMALL/index.html',
      'C/MW-1/A/LARGE/index.html',
      'cards/MW-1-SMALL.pdf',
      'binders/pumps.pdf',
      'posters/torque-tables.pdf',
      'schema/procedure.schema.json',
    ]) {
      expect(existsSync(path.join(out, file)), file).toBe(true);
    }
    const manifest = JSON.parse(readFileSync(path.join(out, 'manifest.json'), 'utf8')) as {
      files: Record<string, string>;
    };
    const { 'manifest.json': _, ...written } = digest(out);
    expect(manifest.files).toEqual(written);
    // A log is plain lines: no carriage returns, no escape codes.
    expect(stderr.includes('\r') || stderr.includes('\u001b')).toBe(false);
    expect(stderr).toMatch(/^cards 2\/2 \(\d+\.\d s\)$/m);
  });

  test('gives the same bytes from another folder into another folder', async () => {
    const [a, b] = [path.join(temporaryFolder(), 'one'), path.join(temporaryFolder(), 'two', 'deeper')];
    expect((await run('build.ts', ['--shop', writeMiniShop(), '--out', a])).code).toBe(0);
    expect((await run('build.ts', ['--shop', writeMiniShop(), '--out', b])).code).toBe(0);
    expect(digest(a)).toEqual(digest(b));
  });

  test('with faults ends with 1, names every place and leaves the earlier build untouched', async () => {
    const folder = temporaryFolder();
    const out = path.join(folder, 'dist');
    expect((await run('build.ts', ['--shop', writeMiniShop(), '--out', out])).code).toBe(0);
    const before = digest(out);
    const shop = writeMiniShop({ 'consumables.yaml': (t) => t.replace('oil:', 'machine-oil:') });
    const { code, stderr } = await run('build.ts', ['--shop', shop, '--out', out]);
    expect(code).toBe(1);
    expect(stderr).toContain(`${shop}/procedures/mw-1.yaml:38:28`);
    expect(stderr).toContain(`${shop}/machines/pump.yaml:25:16`);
    expect(digest(out)).toEqual(before);
    expect(readdirSync(folder)).toEqual(['dist']);
  });

  test('with faults and no earlier build writes nothing at all', async () => {
    const folder = temporaryFolder();
    const shop = writeMiniShop({ 'people.yaml': 'ada: [' });
    expect((await run('build.ts', ['--shop', shop, '--out', path.join(folder, 'dist')])).code).toBe(1);
    expect(readdirSync(folder)).toEqual([]);
  });
});

describe('a build that cannot finish', () => {
  test('stopped by Ctrl-C leaves the earlier build and no trace of its own', async () => {
    const folder = temporaryFolder();
    const out = path.join(folder, 'dist');
    mkdirSync(out);
    writeFileSync(path.join(out, 'manifest.json'), '{}');
    const before = digest(out);
    let sent = false;
    const { code, stderr } = await run('build.ts', ['--shop', writeMiniShop(), '--out', out], {
      onStderr: (text, kill) => {
        if (sent || !/^cards /m.test(text)) return;
        sent = true;
        kill('SIGINT');
      },
    });
    expect(sent).toBe(true);
    expect(code, stderr).toBe(130);
    expect(stderr).toContain('stopped: nothing was changed');
    expect(digest(out)).toEqual(before);
    expect(readdirSync(folder)).toEqual(['dist']);
  });

  test('killed without warning leaves the earlier build, and the next build sweeps up', async () => {
    const folder = temporaryFolder();
    const out = path.join(folder, 'dist');
    let sent = false;
    const killed = await run('build.ts', ['--shop', writeMiniShop(), '--out', out], {
      onStderr: (text, kill) => {
        if (sent || !/^cards /m.test(text)) return;
        sent = true;
        kill('SIGKILL');
      },
    });
    expect(killed.code).toBe(null);
    expect(existsSync(out)).toBe(false);
    expect(readdirSync(folder)).toHaveLength(1);
    expect((await run('build.ts', ['--shop', writeMiniShop(), '--out', out])).code).toBe(0);
    expect(readdirSync(folder)).toEqual(['dist']);
  });

  test('runs out of room: one paragraph, exit 2, nothing half-written', async () => {
    const folder = temporaryFolder();
    const out = path.join(folder, 'dist');
    const { code, stderr } = await run('build.ts', ['--shop', writeMiniShop(), '--out', out], {
      limit: 'trap "" XFSZ; ulimit -f 20',
    });
    expect(code, stderr).toBe(2);
    expect(stderr).toContain('fault:');
    expect(stderr).not.toContain('    at ');
    expect(readdirSync(folder)).toEqual([]);
  });

  test('refuses an output folder that it cannot make', async () => {
    const file = path.join(temporaryFolder(), 'file');
    writeFileSync(file, 'x');
    const { code, stderr } = await run('build.ts', ['--shop', writeMiniShop(), '--out', path.join(file, 'dist')]);
    expect(code).toBe(2);
    expect(stderr).toContain('a file stands where a folder is needed');
    expect(stderr).not.toContain('    at ');
  });

  test('refuses to replace a folder that is not a build, or that holds the shop', async () => {
    const mine = temporaryFolder();
    writeFileSync(path.join(mine, 'letter.txt'), 'dear');
    const other = await run('build.ts', ['--shop', writeMiniShop(), '--out', mine]);
    expect(other.code).toBe(2);
    expect(other.stderr).toContain('holds files that are not a build');
    expect(readFileSync(path.join(mine, 'letter.txt'), 'utf8')).toBe('dear');
    const shop = writeMiniShop();
    const within = await run('build.ts', ['--shop', shop, '--out', path.join(shop, 'dist')]);
    expect(within.code).toBe(2);
    expect(within.stderr).toContain('lie within each other');
  });
});
