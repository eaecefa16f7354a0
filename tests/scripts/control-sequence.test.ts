/**
 * The life of a card by hand: issue B, print, issue C for tomorrow, build today and as of tomorrow, enter a receipt, suspend. And
 * what `verify` says of the folders that were published on the way.
 */

import { createHash } from 'node:crypto';
import { cpSync, existsSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { readPdf } from '../cards/read-pdf.ts';
import { type ControlShop, controlShop, copyOf, RAISED, runOn } from './control-shop.ts';
import { type Ended, keptFolder, temporaryFolder } from './run.ts';

const [BEFORE, TODAY, TOMORROW] = ['2026-03-09', '2026-03-10', '2026-03-11'];

const folder = keptFolder();
const shop = controlShop(path.join(folder, 'shop'));
const built = {
  today: path.join(folder, 'today'),
  tomorrow: path.join(folder, 'tomorrow'),
  suspended: path.join(folder, 'suspended'),
};
/** The shop as it was when the first two were built. */
const asBuilt = path.join(folder, 'as-built');

async function done(ended: Promise<Ended>): Promise<string> {
  const { code, stdout, stderr } = await ended;
  expect(code, stderr).toBe(0);
  return stdout;
}

let issuedC = '';
let early: Ended;
let receipt = '';
let suspended = '';
beforeAll(async () => {
  await done(shop.run('issue.ts', '2026-03-02', 'MW-1'));
  await done(shop.run('issue.ts', '2026-03-02', 'MW-2'));
  shop.edit('machines/pump.yaml', RAISED);
  shop.revise('B', BEFORE);
  await done(shop.run('issue.ts', BEFORE, 'MW-1'));
  shop.edit('procedures/mw-1.yaml', (t) => t.replace('- do: Wipe both faces', '- do: Wipe both faces twice'));
  shop.revise('C', TOMORROW, { approved: TODAY });
  issuedC = await done(shop.run('issue.ts', TODAY, 'MW-1'));
  early = await shop.run('receipt.ts', TODAY, 'CN-4', '--bench', 'pumps', '--by', 'ada', '--on', TODAY);
  await done(shop.run('build.ts', TODAY, '--out', built.today));
  await done(shop.run('build.ts', TODAY, '--out', built.tomorrow, '--as-of', TOMORROW));
  cpSync(shop.folder, asBuilt, { recursive: true });
  receipt = await done(shop.run('receipt.ts', TOMORROW, 'CN-4', '--bench', 'pumps', '--by', 'ada', '--on', TOMORROW));
  suspended = await done(shop.run('suspend.ts', TOMORROW, 'MW-1', '--by', 'ada', '--reason', 'Cracked cover found'));
  await done(shop.run('build.ts', TOMORROW, '--out', built.suspended));
}, 300_000);

/** What the address of a card answers, as words. */
function scanned(dist: string, rev: string): string {
  return readFileSync(path.join(dist, 'C', 'MW-1', rev, 'SMALL', 'index.html'), 'utf8')
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&nbsp;', ' ')
    .replace(/\s+/g, ' ');
}

async function pdfText(dist: string, ...name: readonly string[]): Promise<string> {
  const { pages } = await readPdf(new Uint8Array(readFileSync(path.join(dist, ...name))));
  return pages
    .flatMap((p) => p.texts.map((t) => t.text))
    .join(' ')
    .replace(/\s+/g, ' ');
}

describe('the sequence by hand', () => {
  test('today B is current and its card bears its address; C is not yet effective, and its card is printed beforehand', async () => {
    expect(issuedC).toContain('issued MW-1 Rev C');
    expect(issuedC).toContain('effective        2026-03-11, tomorrow');
    expect(scanned(built.today, 'B')).not.toMatch(/SUPERSEDED|NOT YET EFFECTIVE|SUSPENDED/);
    expect(scanned(built.today, 'B')).toContain('Lay on the new cover gasket');
    expect(scanned(built.today, 'A')).toContain('Take this card out. Use Rev B.');
    expect(scanned(built.today, 'C')).toContain(
      'NOT YET EFFECTIVE MW-1 Rev C Small Renew the cover gasket Do not work from this card before 2026-03-11 . Until then use Rev B.',
    );
    expect(await pdfText(built.today, 'cards', 'MW-1-SMALL.pdf')).toContain('C/MW-1/B/SMALL/');
    expect(await pdfText(built.today, 'cards', 'coming', 'MW-1-SMALL-C.pdf')).toContain('C/MW-1/C/SMALL/');
  });

  test('as of tomorrow the scan of B says superseded by C, and what changed', () => {
    const b = scanned(built.tomorrow, 'B');
    expect(b).toContain('SUPERSEDED');
    expect(b).toContain('Take this card out. Use Rev C.');
    expect(b).toContain('What changed since Rev B Rev C effective 2026-03-11 Torque raised Why: Joint came loose');
    expect(b).toContain('Compare Rev B with Rev C');
    expect(existsSync(path.join(built.tomorrow, 'compare', 'mw-1', 'b-c', 'index.html'))).toBe(true);
    expect(scanned(built.tomorrow, 'C')).not.toMatch(/SUPERSEDED|NOT YET EFFECTIVE|SUSPENDED/);
  });

  test('the notice of each bench lists B out and C in', async () => {
    for (const [bench, copy] of [
      ['pumps', 1],
      ['spares', 2],
    ] as const) {
      const text = await pdfText(built.tomorrow, 'notices', `cn-4-${bench}.pdf`);
      expect(text).toContain('CN-4');
      expect(text).toMatch(/TAKE OUT.* MW-1 B Small .*PUT IN.* MW-1 C Small .*What: Torque raised/);
      expect(text).toContain(`Copy ${copy} of 2`);
    }
    expect(existsSync(path.join(built.tomorrow, 'notices', 'cn-2-spares.pdf'))).toBe(false);
  });

  test('no receipt is taken before the day of the exchange', () => {
    expect(early.code).toBe(1);
    expect(early.stderr).toContain('CN-4 is to be done on 2026-03-11, and the receipt is of 2026-03-10');
  });

  test('one receipt is entered, and the open list shows the others', () => {
    expect(receipt).toContain('receipt of CN-4 from pumps, copy 1, on 2026-03-11\n1 receipt entered\n');
    expect(receipt).toMatch(
      /\n {2}CN-4 {2}spares {2}copy 2 {2}MW-1: take out .*Rev B, put in Rev C {2}open since today; limit 3 days\n/,
    );
    expect(receipt).not.toMatch(/ {2}CN-4 {2}pumps/);
  });

  test('C is suspended: the benches are named, and every scan says stop', () => {
    expect(suspended).toContain('go there now and take the cards out (2 benches)\n  pumps   Pumps, Hall 1   copy 1\n');
    for (const rev of ['A', 'B', 'C']) {
      const text = scanned(built.suspended, rev);
      expect(text, rev).toContain('SUSPENDED');
      expect(text, rev).toContain('Do not use any copy of MW-1.');
      expect(text, rev).toContain('Reason Cracked cover found');
      expect(text, rev).not.toContain('Lay on the new cover gasket');
    }
    expect(existsSync(path.join(built.suspended, 'cards', 'MW-1-SMALL.pdf'))).toBe(false);
  });
});

/** The shop as it was when it was published. */
function publisher(): ControlShop {
  return copyOf({ ...shop, folder: asBuilt });
}

function changedCopy(dist: string): string {
  const copy = path.join(temporaryFolder(), 'dist');
  cpSync(dist, copy, { recursive: true });
  return copy;
}

function flip(file: string, at = 0.5): void {
  const bytes = readFileSync(file);
  const i = Math.floor(bytes.length * at);
  bytes[i] = (bytes[i] ?? 0) ^ 1;
  writeFileSync(file, bytes);
}

describe('verify', () => {
  test('of what was published says that everything holds, and of which day and ledger it is', async () => {
    const { code, stdout } = await publisher().run('verify.ts', TODAY, built.today);
    expect(stdout).toMatch(
      /: \d+ files, published for 2026-03-10 by version \d+\.\d+\.\d+ from 4 lines of the ledger\n/,
    );
    expect(stdout).toMatch(/\neverything holds\n$/);
    expect(code).toBe(0);
  });

  test('names a flipped byte in a page and in a PDF, a missing and every surplus file', async () => {
    const dist = changedCopy(built.today);
    flip(path.join(dist, 'C/MW-1/B/SMALL/index.html'));
    flip(path.join(dist, 'cards/MW-1-LARGE.pdf'));
    rmSync(path.join(dist, 'notices/cn-4-spares.pdf'));
    writeFileSync(path.join(dist, 'C/MW-1/B/SMALL/old.html'), 'x');
    writeFileSync(path.join(dist, '.htaccess'), 'x');
    rmSync(path.join(dist, 'index.html'));
    symlinkSync(path.join(built.today, 'index.html'), path.join(dist, 'index.html'));
    const { code, stdout } = await publisher().run('verify.ts', TODAY, dist);
    expect(stdout.split('\n').filter((l) => /^(differs|missing|surplus)/.test(l))).toEqual([
      'surplus      .htaccess: it was not published',
      'differs      C/MW-1/B/SMALL/index.html: its bytes are not those that were published',
      'surplus      C/MW-1/B/SMALL/old.html: it was not published',
      'differs      cards/MW-1-LARGE.pdf: its bytes are not those that were published',
      'differs      index.html: its bytes are not those that were published',
      'missing      notices/cn-4-spares.pdf: it was published, and it is not there',
    ]);
    expect(stdout).toMatch(/\n6 faults: this folder is not to be relied on as it is\n$/);
    expect(code).toBe(1);
  });

  test('names a flipped byte in a snapshot and in the ledger', async () => {
    const [snapshot, line] = [publisher(), publisher()];
    flip(path.join(snapshot.folder, 'issued/MW-1/B.json'));
    line.edit('issued/ledger.jsonl', (t) => t.replace('Torque raised', 'Torque raisex'));
    const [a, b] = await Promise.all([
      snapshot.run('verify.ts', TODAY, built.today),
      line.run('verify.ts', TODAY, built.today),
    ]);
    expect(a.stdout).toContain('`issued/MW-1/B.json` of revision B of MW-1 is not the file that was issued');
    expect(b.stdout).toContain('line 3 of the ledger was altered after it was written');
    expect([a.code, b.code]).toEqual([1, 1]);
  });

  test('with --rebuild names a page that was altered together with its manifest', async () => {
    const dist = changedCopy(built.suspended);
    const page = 'C/MW-1/C/SMALL/index.html';
    const altered = readFileSync(path.join(dist, page), 'utf8').replace('Do not use any copy', 'Do use any copy');
    writeFileSync(path.join(dist, page), altered);
    const manifest = path.join(dist, 'manifest.json');
    const sum = createHash('sha256').update(altered).digest('hex');
    writeFileSync(
      manifest,
      readFileSync(manifest, 'utf8').replace(new RegExp(`("${page}": )"[0-9a-f]{64}"`), `$1"${sum}"`),
    );
    const plain = await shop.run('verify.ts', TOMORROW, dist);
    expect(plain.stdout).toContain('the manifest bears no seal of its own: `--rebuild` compares every byte');
    expect(plain.code).toBe(0);
    const { code, stdout } = await shop.run('verify.ts', TOMORROW, dist, '--rebuild');
    expect(stdout).toContain(`differs      ${page}: a second build makes other bytes\n`);
    expect(stdout).toContain('differs      manifest.json: a second build makes other bytes\n2 faults');
    expect(code).toBe(1);
  }, 180_000);

  test('of an older folder says what came after it and what the bench would see otherwise', async () => {
    const { code, stdout } = await shop.run('verify.ts', TOMORROW, built.today);
    expect(stdout).toContain(
      'the folder is older than the ledger: 2 lines came after it (receipt of CN-4 from pumps; suspension of MW-1)\n',
    );
    expect(stdout).toContain(
      'out of date  MW-1: the folder shows in force Rev B, Rev C not yet effective, and now it is suspended\n',
    );
    expect(code).toBe(1);
  });

  test('of a folder from a longer ledger, or from another one, says so', async () => {
    const other = controlShop(path.join(temporaryFolder(), 'shop'));
    await done(other.run('issue.ts', '2026-03-05', 'MW-2'));
    const [older, another] = await Promise.all([
      publisher().run('verify.ts', TOMORROW, built.suspended),
      other.run('verify.ts', TODAY, built.today),
    ]);
    expect(older.stdout).toContain(
      'ledger       it was published from 6 lines of a ledger, and the ledger of this shop has 4: the shop’s folder is older',
    );
    expect(another.stdout).toContain('it was published from 4 lines of a ledger, and the ledger of this shop has 1');
    expect([older.code, another.code]).toEqual([1, 1]);
  });

  test('answers the fingerprint at the foot of a card', async () => {
    const cards = shop
      .ledger()
      .trimEnd()
      .split('\n')
      .map((l) => JSON.parse(l) as { doc?: string; cards?: { fingerprint: string; label: string }[] });
    const [a = '', b = '', c = ''] = cards.flatMap((e) => (e.doc === 'MW-1' ? [e.cards?.[0]?.fingerprint ?? ''] : []));
    const was = publisher();
    const [old, now, coming, stopped, none] = await Promise.all([
      was.run('verify.ts', TODAY, '--fingerprint', a),
      was.run('verify.ts', TODAY, '--fingerprint', `${b.slice(0, 4).toLowerCase()} ${b.slice(4)}`),
      was.run('verify.ts', TODAY, '--fingerprint', c),
      shop.run('verify.ts', TOMORROW, '--fingerprint', c),
      was.run('verify.ts', TODAY, '--fingerprint', '00000000'),
    ]);
    expect(old.stdout).toBe(
      `${a}: MW-1 Rev A, Small, Renew the cover gasket. As of 2026-03-10 it is superseded by Rev B: take it out\n`,
    );
    expect(now.stdout).toContain(`${b}: MW-1 Rev B, Small, Renew the cover gasket. As of 2026-03-10 it is current`);
    expect(coming.stdout).toContain('it is not yet effective: it holds from 2026-03-11 on');
    expect(stopped.stdout).toContain('it is suspended: do not use it (Cracked cover found)');
    expect(none.stdout).toContain('00000000: no card of this shop bears it. Do not use the card.');
    expect([old, now, coming, stopped, none].map((e) => e.code)).toEqual([0, 0, 0, 0, 1]);
  });

  test('of no published folder, or with a word too many, says so', async () => {
    const [none, many, sign] = await Promise.all([
      runOn(TODAY, 'verify.ts', ['--shop', asBuilt, temporaryFolder()]),
      runOn(TODAY, 'verify.ts', ['a', 'b']),
      runOn(TODAY, 'verify.ts', ['--fingerprint', '1A2B']),
    ]);
    expect(none.stderr).toContain('is not a published folder: it holds no manifest.json\n  hint: name the folder');
    expect(many.stderr).toContain('fault: `b` is one word too many');
    expect(sign.stderr).toContain('fault: `1A2B` is no fingerprint\n  hint: it stands at the foot of the card');
    expect([none, many, sign].map((e) => e.code)).toEqual([2, 2, 2]);
  });
});
