/** `audit-pack` from the command line: a whole folder with checksums, the same bytes for the same day, and what it refuses. */

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { controlShop } from './control-shop.ts';
import { digest, type Ended, temporaryFolder } from './run.ts';

const [DAY, LATER] = ['2026-03-10', '2026-03-11'];

async function done(ended: Promise<Ended>): Promise<string> {
  const { code, stdout, stderr } = await ended;
  expect(code, stderr).toBe(0);
  return stdout;
}

test('an audit pack holds every list, the PDF and the ledger; the same folder gives the same bytes on any day', async () => {
  const shop = controlShop(path.join(temporaryFolder(), 'shop'));
  await done(shop.run('issue.ts', DAY, 'MW-1'));
  await done(shop.run('suspend.ts', LATER, 'MW-1', '--by', 'ada', '--reason', 'Cracked cover found'));
  const [a, b] = [path.join(temporaryFolder(), 'pack'), path.join(temporaryFolder(), 'pack')];
  const days = [LATER, '2026-04-01'];
  const told = await Promise.all(
    [a, b].map((out, i) => done(shop.run('audit-pack.ts', days[i] ?? LATER, '--out', out))),
  );
  expect(told[0]).toBe(`audit pack as of 2026-03-11: 16 files in ${a}\n`);
  expect(digest(a)).toEqual(digest(b));
  const sums = readFileSync(path.join(a, 'checksums.txt'), 'utf8');
  for (const [name, sum] of Object.entries(digest(a))) {
    if (name !== 'checksums.txt') expect(sums).toContain(`${sum}  ${name}\n`);
  }
  expect(readFileSync(path.join(a, 'ledger.jsonl'), 'utf8')).toBe(shop.ledger());
  // A pack may be replaced; a build may not.
  const dist = path.join(temporaryFolder(), 'dist');
  mkdirSync(dist);
  writeFileSync(path.join(dist, 'manifest.json'), '{}');
  const [again, over, none, past] = await Promise.all([
    shop.run('audit-pack.ts', LATER, '--out', a, '--as-of', DAY),
    shop.run('audit-pack.ts', LATER, '--out', dist),
    shop.run('audit-pack.ts', LATER),
    shop.run('audit-pack.ts', LATER, '--out', b, '--as-of', 'monday'),
  ]);
  expect(again.stdout).toContain('audit pack as of 2026-03-10');
  expect(over.stderr).toContain('holds files that are not an audit pack, and an audit pack replaces the whole folder');
  expect(none.stderr).toContain('fault: `--out` is missing');
  expect(past.stderr).toContain('fault: `monday` is not a day');
  expect([again.code, over.code, none.code, past.code]).toEqual([0, 2, 2, 2]);
});
