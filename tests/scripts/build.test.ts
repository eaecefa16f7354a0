/** `build` from the command line: what is written, what is left alone, and how it stops. */

import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { publishingDay } from '../../scripts/lib/publishing-day.ts';
import { compileShop } from '../../src/pipeline/index.ts';
import { issuedMiniShopIn, writeIssuedMiniShop, writeMiniShop } from '../fixtures/mini-shop.ts';
import { digest, type Ended, keptFolder, run, temporaryFolder } from './run.ts';

/** One build for the tests that only look at what it wrote. */
const built = path.join(keptFolder(), 'dist');
const shopBuilt = keptFolder();
let first: Ended;
beforeAll(async () => {
  first = await run('build.ts', ['--shop', issuedMiniShopIn(shopBuilt), '--out', built]);
});

describe('a build', () => {
  test('writes site, cards, binders, schemas and a manifest that names every file', () => {
    const { code, stdout, stderr } = first;
    expect(code, stderr).toBe(0);
    expect(stdout).toContain('1 in force, 2 cards');
    for (const file of [
      'index.html',
      'C/MW-1/A/SMALL/index.html',
      'C/MW-1/A/LARGE/index.html',
      'cards/MW-1-SMALL.pdf',
      'binders/pumps.pdf',
      'control/master-list.pdf',
      'posters/torque-tables.pdf',
      'schema/procedure.schema.json',
    ]) {
      expect(existsSync(path.join(built, file)), file).toBe(true);
    }
    const manifest = JSON.parse(readFileSync(path.join(built, 'manifest.json'), 'utf8')) as {
      files: Record<string, string>;
    };
    const { 'manifest.json': _, ...written } = digest(built);
    expect(manifest.files).toEqual(written);
    // A log is plain lines: no carriage returns, no escape codes.
    expect(stderr.includes('\r') || stderr.includes('\u001b')).toBe(false);
    expect(stderr).toMatch(/^cards 2\/2 \(\d+\.\d s\)$/m);
  });

  test('gives the same bytes from another folder into another folder', async () => {
    const other = path.join(temporaryFolder(), 'two', 'deeper');
    expect((await run('build.ts', ['--shop', writeIssuedMiniShop(), '--out', other])).code).toBe(0);
    expect(digest(other)).toEqual(digest(built));
  });

  test('with faults ends with 1, names every place and leaves the earlier build untouched', async () => {
    const before = digest(built);
    const shop = writeMiniShop({ 'consumables.yaml': (t) => t.replace('oil:', 'machine-oil:') });
    const { code, stderr } = await run('build.ts', ['--shop', shop, '--out', built]);
    expect(code).toBe(1);
    expect(stderr).toContain(`${shop}/procedures/mw-1.yaml:38:28`);
    expect(stderr).toContain(`${shop}/machines/pump.yaml:25:16`);
    expect(digest(built)).toEqual(before);
    expect(readdirSync(path.dirname(built))).toEqual(['dist']);
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
    const { code, stderr } = await run('build.ts', ['--shop', writeIssuedMiniShop(), '--out', out], {
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
    const killed = await run('build.ts', ['--shop', writeIssuedMiniShop(), '--out', out], {
      onStderr: (text, kill) => {
        if (sent || !/^cards /m.test(text)) return;
        sent = true;
        kill('SIGKILL');
      },
    });
    expect(killed.code).toBe(null);
    expect(existsSync(out)).toBe(false);
    expect(readdirSync(folder)).toHaveLength(1);
    expect((await run('build.ts', ['--shop', writeIssuedMiniShop(), '--out', out])).code).toBe(0);
    expect(readdirSync(folder)).toEqual(['dist']);
  });

  test('runs out of room: one paragraph, exit 2, nothing half-written', async () => {
    const folder = temporaryFolder();
    const out = path.join(folder, 'dist');
    const { code, stderr } = await run('build.ts', ['--shop', writeIssuedMiniShop(), '--out', out], {
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

describe('what is published on which day', () => {
  test('never what was not issued: the folder then has no procedure, and says so', async () => {
    const out = path.join(temporaryFolder(), 'dist');
    const { code, stdout, stderr } = await run('build.ts', ['--shop', writeMiniShop(), '--out', out]);
    expect(code, stderr).toBe(0);
    expect(stdout).toContain('draft MW-1 Rev A was never issued: it is not published');
    expect(stdout).toContain('0 in force');
    expect(readdirSync(out)).not.toContain('cards');
  });

  test('drafts on demand, at addresses of their own', async () => {
    const out = path.join(temporaryFolder(), 'dist');
    const { code, stderr } = await run('build.ts', ['--shop', writeMiniShop(), '--out', out, '--drafts']);
    expect(code, stderr).toBe(0);
    const page = readFileSync(path.join(out, 'C/MW-1/DRAFT/SMALL/index.html'), 'utf8');
    expect(page).toContain('DRAFT');
    expect(existsSync(path.join(out, 'cards/MW-1-SMALL-DRAFT.pdf'))).toBe(true);
    expect(existsSync(path.join(out, 'C/MW-1/A'))).toBe(false);
  });

  test('a day that is none is refused', async () => {
    const out = path.join(temporaryFolder(), 'dist');
    const { code, stderr } = await run('build.ts', ['--shop', writeMiniShop(), '--out', out, '--as-of', '2026-02-30']);
    expect(code).toBe(2);
    expect(stderr).toContain('`2026-02-30` is not a day');
  });

  test('an older ledger does not take the place of a newer one, nor one of another shop', async () => {
    const out = path.join(temporaryFolder(), 'dist');
    const shop = writeIssuedMiniShop();
    const older = writeMiniShop();
    mkdirSync(out, { recursive: true });
    const { control } = compileShop({ folder: shop, shown: 'shop', cards: 'suspect' });
    const { entries, head } = control.ledger;
    writeFileSync(path.join(out, 'manifest.json'), JSON.stringify({ ledger: { entries: entries.length, head } }));
    const back = await run('build.ts', ['--shop', older, '--out', out]);
    expect(back.code).toBe(2);
    expect(back.stderr).toContain('was published from a ledger of 1 lines, and this one has 0');
    const other = writeIssuedMiniShop({ 'procedures/mw-1.yaml': (t) => t.replace('why: New pump', 'why: New line') });
    const foreign = await run('build.ts', ['--shop', other, '--out', out]);
    expect(foreign.code).toBe(2);
    expect(foreign.stderr).toContain('was published from another ledger');
    expect(readdirSync(out)).toEqual(['manifest.json']);
  });

  test('a clock that was set back does not bring back what the last line ended', () => {
    const { control } = compileShop({ folder: writeIssuedMiniShop(), shown: 'shop', cards: 'suspect' });
    const warnings: string[] = [];
    const warn = (text: string): number => warnings.push(text);
    expect(publishingDay(undefined, control.ledger, warn, '2025-12-31')).toBe('2026-01-08');
    expect(warnings).toHaveLength(1);
    expect(publishingDay(undefined, control.ledger, warn, '2026-01-08')).toBe('2026-01-08');
    expect(publishingDay('2025-12-31', control.ledger, warn, '2026-01-09')).toBe('2025-12-31');
    expect(warnings).toHaveLength(1);
  });
});
