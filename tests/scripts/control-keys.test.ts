/** `new-key`, and signed acts from the command line: the right key, the wrong key, none. */

import { existsSync, mkdirSync, readFileSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { controlShop, copyOf } from './control-shop.ts';
import { digest, keptFolder } from './run.ts';

const DAY = '2026-03-02';

const folder = keptFolder();
const shop = controlShop(path.join(folder, 'shop'));
const key = path.join(folder, 'ben.key');
beforeAll(async () => {
  shop.edit('shop.yaml', (t) => `${t}control: { signed: [major] }\n`);
  const { code, stdout, stderr } = await shop.run('new-key.ts', DAY, 'ben', '--out', key);
  expect(code, stderr).toBe(0);
  expect(stdout).toContain('made a pair of keys for Ben Holt, Quality lead\n');
  expect(stdout).toMatch(/\n {2}key {11}[0-9a-f]{16}\n/);
});

test('the private half is its owner’s alone, the public half lies in the shop', () => {
  expect(readFileSync(key, 'utf8')).toContain('BEGIN PRIVATE KEY');
  expect(statSync(key).mode & 0o777).toBe(0o600);
  const open = readFileSync(path.join(shop.folder, 'keys', 'ben.pem'), 'utf8');
  expect(open).toContain('BEGIN PUBLIC KEY');
  expect(open).not.toContain('PRIVATE');
});

test('an act of a class that the shop has signed needs the key of its approver', async () => {
  const own = copyOf(shop);
  const other = path.join(folder, 'cal.key');
  const none = path.join(folder, 'ben.txt');
  writeFileSync(none, 'secret\n');
  const inside = path.join(shop.folder, 'ben.key');
  const made = await shop.run('new-key.ts', DAY, 'cal', '--out', other);
  expect(made.code, made.stderr).toBe(0);
  writeFileSync(inside, readFileSync(key));
  const cases = [
    [own, [], 1, 'fault: the shop has major changes signed, and `ben` has not signed'],
    [own, ['--key', other], 1, 'fault: the key is not one of `ben`: `keys/ben.pem` does not hold its public half'],
    [own, ['--key', none], 2, `fault: \`${none}\` holds no private Ed25519 key`],
    [own, ['--key', path.join(folder, 'no.key')], 2, 'is not there or cannot be read'],
    [shop, ['--key', inside], 2, 'lies in the shop’s folder, which others can read'],
  ] as const;
  // Each in a copy of its own: two commands at once would be refused for that.
  const ended = await Promise.all(
    cases.map(([of, args]) => (of === own ? copyOf(own) : of).run('issue.ts', DAY, 'MW-1', ...args)),
  );
  for (const [i, { code, stdout, stderr }] of ended.entries()) {
    expect(stderr).toContain(cases[i]?.[3]);
    expect(stderr).toContain('\n  hint: ');
    expect(stdout).toBe('');
    expect(code).toBe(cases[i]?.[2]);
  }

  const signed = await own.run('issue.ts', DAY, 'MW-1', '--key', key);
  expect(signed.code, signed.stderr).toBe(0);
  expect(signed.stdout).toMatch(/ {2}signature {8}signed by Ben Holt, Quality lead \(key [0-9a-f]{16}\)\n/);
  const entry = JSON.parse(own.ledger()) as { signature?: { by: string } };
  expect(entry.signature?.by).toBe('ben');

  // A safety stop waits for nobody's key.
  const stopped = await own.run('suspend.ts', DAY, 'MW-1', '--by', 'ada', '--reason', 'Crack');
  expect(stopped.code, stopped.stderr).toBe(0);
  const lift = ['MW-1', '--by', 'ada', '--approver', 'ben', '--reason', 'Checked'];
  const unsigned = await own.run('reinstate.ts', DAY, ...lift);
  expect(unsigned.code).toBe(1);
  expect(unsigned.stderr).toContain('`ben` has not signed');
  const lifted = await own.run('reinstate.ts', DAY, ...lift, '--key', key);
  expect(lifted.code, lifted.stderr).toBe(0);

  // A second key stands above the first, whose signatures are still verified.
  const newer = path.join(folder, 'ben-2.key');
  const second = await own.run('new-key.ts', DAY, 'ben', '--out', newer);
  expect(second.stdout).toContain('above the older ones, which stay');
  expect(readFileSync(path.join(own.folder, 'keys', 'ben.pem'), 'utf8').match(/BEGIN PUBLIC KEY/g)).toHaveLength(2);
  const checked = await own.run('check.ts', DAY);
  expect(checked.code, checked.stdout).toBe(0);
});

test('a key in the shop’s folder, over another file, of nobody or nowhere is not made', async () => {
  const own = copyOf(shop);
  const link = path.join(path.dirname(own.folder), 'link');
  symlinkSync(own.folder, link);
  mkdirSync(path.join(own.folder, 'notes'));
  const taken = path.join(path.dirname(own.folder), 'taken.key');
  writeFileSync(taken, 'mine');
  const before = digest(own.folder);
  const cases = [
    [['ben', '--out', path.join(own.folder, 'ben.key')], 'lies in the shop’s folder'],
    [['ben', '--out', path.join(own.folder, 'notes', 'ben.key')], 'lies in the shop’s folder'],
    [['ben', '--out', path.join(link, 'ben.key')], 'lies in the shop’s folder'],
    [['ben', '--out', taken], `\`${taken}\` is there already`],
    [['ben', '--out', path.join(own.folder, '..', 'no', 'ben.key')], 'is not there'],
    [['bem', '--out', path.join(folder, 'bem.key')], '`bem` is not in people.yaml\n  hint: did you mean `ben`?'],
    [['ben'], '`--out` is missing'],
  ] as const;
  const ended = await Promise.all(cases.map(([args]) => own.run('new-key.ts', DAY, ...args)));
  for (const [i, { code, stdout, stderr }] of ended.entries()) {
    expect(stderr).toContain(cases[i]?.[1]);
    expect(stdout).toBe('');
    expect(code).toBe(2);
  }
  expect(readFileSync(taken, 'utf8')).toBe('mine');
  expect(existsSync(path.join(folder, 'bem.key'))).toBe(false);
  expect(digest(own.folder)).toEqual(before);
});
