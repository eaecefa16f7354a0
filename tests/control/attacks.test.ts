/** Attacks on the issued revisions, after the threats that designers of signed update systems consider, each with its answer. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HEAD, LEDGER } from '../../src/control/files.ts';
import { isPrefix } from '../../src/control/prefix.ts';
import { strangerIn, thaw } from '../../src/control/snapshot.ts';
import type { Entry } from '../../src/control/types.ts';
import { compileFiles } from '../../src/pipeline/index.ts';
import { readMemory } from '../../src/source/index.ts';
import { MINI_SHOP } from '../fixtures/mini-shop.ts';
import {
  append,
  check,
  type Files,
  forged,
  history,
  issueAct,
  issueIn,
  keyOf,
  ledgerText,
  MALLORY,
  pemOf,
  RULES,
  withLedger,
} from './history.ts';

const { entries, files } = history();

function flipped(of: Files, name: string, at: number, bit: number): Files {
  const bytes = Buffer.from(of.get(name) ?? '');
  bytes[at] = (bytes[at] ?? 0) ^ (1 << bit);
  return new Map(of).set(name, new Uint8Array(bytes));
}

const size = (name: string): number => Buffer.from(files.get(name) ?? '').length;
const without = (...seqs: readonly number[]): readonly Entry[] => entries.filter((e) => !seqs.includes(e.seq));
/** Lines as they are put, whether they follow or not; the head is that of the sound ledger. */
const lined = (list: readonly Entry[]): Files => new Map(files).set(LEDGER, ledgerText(list));

test('the history is sound', () => {
  const { said, read } = check(files);
  expect(said).toEqual([]);
  expect(read.sound).toBe(true);
  expect(read.ledger.entries).toEqual(entries);
});

describe('a flipped bit', () => {
  const names = [...files.keys()];

  test('in any file is told, with the name of the file or the line', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.nat(7),
        (name, part, bit) => {
          const at = Math.min(size(name) - 1, Math.floor(part * size(name)));
          const { found, read } = check(flipped(files, name, at, bit));
          expect(read.sound).toBe(false);
          expect(found.some((d) => d.range.file === `shop/${name}` || d.message.includes(`\`${name}\``))).toBe(true);
        },
      ),
      { numRuns: 400 },
    );
  });

  test('in the ledger is told at its line or the one after it', () => {
    const text = Buffer.from(files.get(LEDGER) ?? '');
    fc.assert(
      fc.property(fc.nat(text.length - 1), fc.nat(7), (at, bit) => {
        const { said, found } = check(flipped(files, LEDGER, at, bit));
        expect(found.every((d) => d.severity === 'error')).toBe(true);
        const line = text.subarray(0, at).filter((b) => b === 10).length + 1;
        // Of bytes that are no letters, no line can be told.
        const lines = said.map((s) => Number(/jsonl:(\d+) /.exec(s)?.[1]));
        expect(said[0]?.includes('UTF-8') === true || lines.some((l) => Math.abs(l - line) <= 1)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  test.each([HEAD, 'keys/ben.pem', 'keys/cleo.pem'])('at every place of %s', (name) => {
    const passed: string[] = [];
    for (let at = 0; at < size(name); at++) {
      for (let bit = 0; bit < 8; bit++) {
        const { found } = check(flipped(files, name, at, bit));
        if (!found.some((d) => d.range.file === `shop/${name}` || d.message.includes(`\`${name}\``))) {
          passed.push(`${at}.${bit}`);
        }
      }
    }
    expect(passed).toEqual([]);
  });

  test('at every place of a signature', () => {
    const text = String(files.get(LEDGER));
    const start = text.indexOf('"value":"') + '"value":"'.length;
    for (let at = start; at < start + 88; at++) {
      for (let bit = 0; bit < 8; bit++) {
        expect(check(flipped(files, LEDGER, at, bit)).found.length).toBeGreaterThan(0);
      }
    }
  });

  test('stops the build', () => {
    const content = Object.entries(MINI_SHOP).map(([relative, text]) => ({ relative, content: text }));
    const compile = (issued: Files) =>
      compileFiles((report) => readMemory(content, {}, 'shop', report), 'shop', {
        cards: 'suspect',
        issued: { list: () => [...issued.keys()].sort(), read: (name) => bytesOf(issued.get(name)) },
      });
    const other = compile(withLedger(new Map([...files].filter(([n]) => n.startsWith('keys/'))), []));
    expect(other.checked).toBeDefined();
    for (const name of ['issued/MW-1/A.json', LEDGER, 'keys/ben.pem']) {
      expect(compile(flipped(files, name, 40, 1)).checked, name).toBeUndefined();
    }
  });
});

function bytesOf(content: string | Uint8Array | undefined): Uint8Array | undefined {
  return typeof content === 'string' ? Buffer.from(content) : content;
}

describe('lines taken out, put in another order, or put in', () => {
  test.each([
    ['the first line deleted', without(1), ['LDG003 issued/ledger.jsonl:1 line 1 of the ledger is missing']],
    ['one in the middle deleted', without(5), ['LDG003 issued/ledger.jsonl:5 line 5 of the ledger is missing']],
    [
      'two in the middle deleted',
      without(5, 6),
      ['LDG003 issued/ledger.jsonl:5 lines 5 to 6 of the ledger are missing'],
    ],
    ['the last deleted', without(9), ['LDG003 issued/ledger.jsonl:8 the ledger ends with line 8, and it had 9 lines']],
    ['the last two', without(8, 9), ['LDG003 issued/ledger.jsonl:7 the ledger ends with line 7, and it had 9 lines']],
    ['all', [], ['LDG003 issued/ledger.jsonl:1 the ledger ends with line 0, and it had 9 lines']],
  ])('%s', (_, list, said) => {
    expect(check(lined(list)).said).toEqual(said);
  });

  test('two lines exchanged', () => {
    const list = [...entries.slice(0, 4), ...entries.slice(5, 6), ...entries.slice(4, 5), ...entries.slice(6)];
    expect(check(lined(list)).said).toEqual([
      'LDG003 issued/ledger.jsonl:5 line 5 of the ledger is missing',
      'LDG003 issued/ledger.jsonl:6 line 5 of the ledger stands behind line 6',
      'LDG003 issued/ledger.jsonl:7 line 6 of the ledger is missing',
    ]);
  });

  test('a line copied below itself', () => {
    const list = [...entries.slice(0, 3), ...entries.slice(2)];
    expect(check(lined(list)).said).toEqual(['LDG003 issued/ledger.jsonl:4 line 3 of the ledger stands there twice']);
  });

  test('a line put in between, sealed rightly', () => {
    const act = { kind: 'suspend', doc: 'MW-3', reason: 'Put in', by: 'ada', distribution: [] } as const;
    const list = [...append(entries.slice(0, 7), '2026-02-04', act), ...entries.slice(7)];
    expect(check(lined(list)).said[0]).toMatch(
      /^LDG004 issued\/ledger.jsonl:9 two lines of the ledger both follow line 7/,
    );
  });

  test('the last line cut short, as a broken copy leaves it', () => {
    const text = ledgerText(entries);
    for (const cut of [1, 2, 40, 200]) {
      expect(check(new Map(files).set(LEDGER, text.slice(0, -cut))).said).toEqual([
        'LDG001 issued/ledger.jsonl:9 the last line of the ledger is cut short',
      ]);
    }
  });

  test('the head taken away', () => {
    const less = new Map(files);
    less.delete(HEAD);
    expect(check(less).said[0]).toMatch(/^LDG003 .* `issued\/head` is missing/);
  });

  test('the whole ledger taken away, the snapshots left', () => {
    const less = new Map(files);
    less.delete(LEDGER);
    less.delete(HEAD);
    expect(check(less).said.map((s) => s.slice(0, 6))).toEqual(Array.from({ length: 5 }, () => 'LDG006'));
  });

  test('a made-up lock does not excuse lines that were cut off', () => {
    const lock = {
      pid: 1,
      born: '',
      host: 'x',
      started: '',
      count: 9,
      prev: entries[8]?.seal,
      seq: 7,
      seal: entries[6]?.seal,
      files: [],
    };
    const cut = lined(without(8, 9)).set('issued/.writing', JSON.stringify(lock));
    expect(check(cut).said).toEqual(['LDG003 issued/ledger.jsonl:7 the ledger ends with line 7, and it had 9 lines']);
  });
});

describe('spelling', () => {
  const line = (seq: number): string => ledgerText(entries.slice(seq - 1, seq));
  test.each([
    ['a blank', (l: string) => l.replace('":', '" :')],
    ['keys in another order', (l: string) => `${JSON.stringify({ seq: 5, ...JSON.parse(l) })}\n`],
    ['an escape', (l: string) => l.replace('Sound', '\\u0053ound')],
    ['a key twice', (l: string) => l.replace('{"by":"ada"', '{"by":"ben","by":"ada"')],
    ['a number as 5.0', (l: string) => l.replace('"seq":5', '"seq":5.0')],
    ['half a surrogate pair', (l: string) => l.replace('Sound', 'Sound\\ud800')],
    ['a carriage return', (l: string) => l.replace('\n', '\r\n')],
  ])('%s is another line', (_, change) => {
    const changed = change(line(5));
    expect(changed).not.toBe(line(5));
    const text = ledgerText(entries).replace(line(5), changed);
    expect(check(new Map(files).set(LEDGER, text)).said[0]).toMatch(/^LDG00[12] issued\/ledger.jsonl:5 /);
  });

  test('a key of its own that no command writes', () => {
    const more = forged(entries, 5, () => ({ note: 'x' }));
    expect(check(withLedger(files, more)).said[0]).toMatch(/^LDG001 issued\/ledger.jsonl:5 .*note/i);
  });
});

describe('rewritten history', () => {
  test('all seals made anew without keys: the signature of the next signed line tells', () => {
    const list = forged(entries, 6, () => ({ reason: 'Nothing to worry about' }));
    expect(check(withLedger(files, list)).said).toEqual([
      'LDG007 issued/ledger.jsonl:8 the signature of line 8 of the ledger (reinstatement of MW-2) does not hold: `ben` did not sign these words',
    ]);
  });

  test('after the last signature, the published head tells', () => {
    const published = { entries: entries.length, head: entries.at(-1)?.seal ?? '' };
    const list = forged(entries, 9, () => ({ by: 'ben' }));
    const { read, said } = check(withLedger(files, list));
    expect(said).toEqual([]);
    expect(isPrefix(published, read.ledger)).toBe(false);
    expect(isPrefix(published, check(files).read.ledger)).toBe(true);
  });

  test('roll-back to an older copy of the whole folder: the published head tells', () => {
    const old = entries.slice(0, 3);
    const kept = new Set(['issued/MW-1/A.json', 'issued/MW-2/A.json', 'keys/ben.pem', 'keys/cleo.pem']);
    const older = withLedger(new Map([...files].filter(([name]) => kept.has(name))), old);
    const { read, said } = check(older);
    expect(said).toEqual([]);
    const { ledger } = check(files).read;
    expect(isPrefix({ entries: ledger.entries.length, head: ledger.head }, read.ledger)).toBe(false);
    expect(isPrefix({ entries: 3, head: read.ledger.head }, ledger)).toBe(true);
  });

  test('a ledger begun anew is no continuation, and the first one is of nothing', () => {
    const none = check(new Map()).read.ledger;
    expect(isPrefix({ entries: 9, head: entries[8]?.seal ?? '' }, none)).toBe(false);
    expect(isPrefix({ entries: 0, head: none.head }, none)).toBe(true);
    expect(isPrefix({ entries: 0, head: none.head }, check(files).read.ledger)).toBe(true);
    expect(isPrefix({ entries: 0, head: entries[0]?.seal ?? '' }, none)).toBe(false);
    expect(isPrefix({ entries: -1, head: '' }, none)).toBe(false);
    expect(isPrefix({ entries: 0.5, head: '' }, none)).toBe(false);
  });
});

describe('a forged approval', () => {
  const text = String(files.get('issued/MW-1/B.json')).replaceAll('MW-1/B', 'MW-1/C');
  const act = issueAct('MW-1', 'C', text, { approved: '2026-02-07', effective: '2026-02-20' });
  const withC = (list: readonly Entry[]): Files => withLedger(new Map(files).set('issued/MW-1/C.json', text), list);

  test('signed by the approver, it holds', () => {
    expect(check(withC(append(entries, '2026-02-07', act, 'ben'))).said).toEqual([]);
  });

  test('without a signature', () => {
    expect(check(withC(append(entries, '2026-02-07', act))).said).toEqual([
      'LDG008 issued/ledger.jsonl:10 line 10 of the ledger (issue of MW-1 Rev C) is not signed, and the shop has major changes signed',
    ]);
    expect(check(withC(append(entries, '2026-02-07', act)), { ...RULES, signedSince: '2026-03-01' }).said).toEqual([]);
  });

  test('with a key that the shop does not know', () => {
    const list = append(entries, '2026-02-07', { ...act, approver: 'mallory' }, 'mallory');
    expect(check(withC(list)).said[0]).toMatch(/^LDG009 .*:10 .*`keys\/mallory.pem` does not hold/);
  });

  test('signed by somebody who is not the approver', () => {
    expect(check(withC(append(entries, '2026-02-07', act, 'cleo'))).said).toEqual([
      'LDG007 issued/ledger.jsonl:10 line 10 of the ledger (issue of MW-1 Rev C) is signed by `cleo`, who is not its approver',
    ]);
  });

  test('signed by another one in the approver’s name', () => {
    const list = forged(append(entries, '2026-02-07', act, 'cleo'), 10, (e) => ({
      signature: { ...e.signature, by: 'ben' },
    }));
    expect(check(withC(list)).said[0]).toMatch(/^LDG009 .*:10 /);
  });

  test('the signature stripped', () => {
    const last = append(entries, '2026-02-07', act, 'ben').at(-1);
    const bare = forged([...entries, ...(last === undefined ? [] : [last])], 10, () => ({ signature: undefined }));
    expect(check(withC(bare)).said[0]).toMatch(/^LDG008 .*:10 /);
  });

  test.each([
    ['another line', 4],
    ['another document', 2],
  ])('a signature copied from %s', (_, from) => {
    const copied = entries[from - 1]?.signature;
    const unsigned = append(entries, '2026-02-07', { ...act, approver: copied?.by ?? '' });
    const list = forged(unsigned, 10, () => ({ signature: copied }));
    expect(check(withC(list)).said[0]).toMatch(/^LDG007 .*:10 .*did not sign these words$/);
  });

  test('a signed line copied whole from another ledger', () => {
    const elsewhere = append(entries.slice(0, 5), '2026-02-07', act, 'ben').at(-1);
    const list = forged([...entries, ...(elsewhere === undefined ? [] : [{ ...elsewhere, seq: 10 }])], 0, () => ({}));
    expect(check(withC(list)).said[0]).toMatch(/^LDG007 .*:10 .*did not sign these words$/);
  });

  test('base64 that spells the same bytes otherwise', () => {
    const value = entries[0]?.signature?.value ?? '';
    // The last sign before the padding holds two bits that no byte takes.
    const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
    const other = `${value.slice(0, 85)}${alphabet[alphabet.indexOf(value[85] ?? 'A') ^ 1] ?? ''}==`;
    for (const spelt of [other, value.replace('==', ''), `${value}\n`, value.replaceAll('+', '-')]) {
      if (spelt === value) continue;
      expect(Buffer.from(spelt, 'base64')).toEqual(Buffer.from(value, 'base64'));
      const list = forged(entries, 1, (e) => ({ signature: { ...e.signature, value: spelt } }));
      expect(check(withLedger(files, list)).said[0]).toMatch(/^LDG007 .*:1 /);
    }
  });

  test('the approver is the author', () => {
    const self = { ...act, author: 'ben' };
    expect(check(withC(append(entries, '2026-02-07', self, 'ben'))).said).toEqual([
      'LDG010 issued/ledger.jsonl:10 line 10 of the ledger breaks the rules of control: `ben` approves what `ben` has written',
    ]);
  });
});

describe('keys', () => {
  test('exchanged: what the old key signed no longer holds', () => {
    const { said } = check(new Map(files).set('keys/ben.pem', pemOf(MALLORY)));
    expect(said.map((s) => s.replace(/ \(.*/, ''))).toEqual(
      [1, 4, 8].map((n) => `LDG009 issued/ledger.jsonl:${n} line ${n} of the ledger`),
    );
  });

  test('a new one above the old one: both hold', () => {
    const both = `${pemOf(keyOf(9))}${pemOf(keyOf(1))}`;
    expect(check(new Map(files).set('keys/ben.pem', both)).said).toEqual([]);
  });

  test.each([
    ['taken away', undefined],
    ['empty', ''],
    ['with words beside it', `old key\n${pemOf(keyOf(1))}`],
    ['without its last line end', pemOf(keyOf(1)).trimEnd()],
    ['of another kind', '-----BEGIN PUBLIC KEY-----\nAAAA\n-----END PUBLIC KEY-----\n'],
  ])('%s', (_, text) => {
    const changed = new Map(files);
    if (text === undefined) changed.delete('keys/ben.pem');
    else changed.set('keys/ben.pem', text);
    const { said } = check(changed);
    expect(said.length).toBeGreaterThan(0);
    expect(said.every((s) => s.startsWith('LDG009') && s.includes('keys/ben.pem'))).toBe(true);
  });

  test('a private key that was put among the public ones is told', () => {
    const pem = MALLORY.export({ type: 'pkcs8', format: 'pem' }).toString();
    expect(check(new Map(files).set('keys/mallory.pem', pem)).said).toEqual([
      'LDG009 keys/mallory.pem:1 `keys/mallory.pem` holds something else than Ed25519 public keys',
    ]);
  });
});

describe('dates and states that no command writes', () => {
  const distribution = [{ bench: 'pumps', copy: 1 }];
  const text = String(files.get('issued/MW-1/B.json'));
  const c = issueAct('MW-1', 'C', text, { approved: '2026-02-07', effective: '2026-02-20' });
  const withdraw = {
    kind: 'withdraw',
    doc: 'MW-3',
    reason: 'Scrapped',
    by: 'ada',
    approver: 'ben',
    effective: '2026-02-07',
    distribution,
  } as const;
  const gone = append(entries, '2026-02-07', withdraw, 'ben');
  const again = issueAct('MW-3', 'B', text, { approved: '2026-02-07', effective: '2026-02-20' });
  const temporary = {
    kind: 'temporary',
    number: 'TC-01',
    doc: 'MW-1',
    rev: 'B',
    step: 3,
    text: 'Use the long socket.',
    reason: 'The short one fouls',
    scope: {},
    author: 'ada',
    approver: 'ben',
    approved: '2026-02-07',
    from: '2026-02-08',
    until: '2026-03-01',
    distribution,
  } as const;
  const changed = append(entries, '2026-02-07', temporary, 'ben');
  const cases: readonly (readonly [string, readonly Entry[], RegExp])[] = [
    [
      'recorded before the line above',
      append(entries, '2026-01-01', { ...c, effective: '2026-02-20', approved: '2025-12-30' }, 'ben'),
      /written on 2026-01-01, and the line before it on 2026-02-06/,
    ],
    ['a withdrawn document issued again', append(gone, '2026-02-08', again, 'ben'), /MW-3 was withdrawn before/],
    [
      'withdrawn twice',
      append(gone, '2026-02-08', { ...withdraw, effective: '2026-02-08' }, 'ben'),
      /withdrawn before/,
    ],
    [
      'effective before the approval',
      append(
        entries,
        '2026-02-07',
        issueAct('MW-9', 'A', text, { approved: '2026-02-07', effective: '2026-02-01' }),
        'ben',
      ),
      /before it was approved/,
    ],
    [
      'effective before it was written',
      append(entries, '2026-02-15', { ...c, effective: '2026-02-12' }, 'ben'),
      /takes effect before it was written/,
    ],
    [
      'effective before the issue before it',
      append(entries, '2026-02-07', { ...c, effective: '2026-02-08' }, 'ben'),
      /and the issue before it on 2026-02-10/,
    ],
    [
      'written before it was approved',
      append(entries, '2026-02-07', { ...c, approved: '2026-02-09' }, 'ben'),
      /written before it was approved/,
    ],
    [
      'the same revision twice',
      append(
        entries,
        '2026-02-12',
        { ...c, rev: 'B', ...{ snapshot: { ...c.snapshot, file: 'MW-1/B.json' }, cards: issueIn(entries, 4).cards } },
        'ben',
      ),
      /already has a revision B/,
    ],
    [
      'a day that no calendar has',
      append(entries, '2026-02-07', { ...c, effective: '2026-02-30' }, 'ben'),
      /`2026-02-30` is no day/,
    ],
    [
      'suspended twice',
      append(
        append(entries, '2026-02-07', { kind: 'suspend', doc: 'MW-2', reason: 'x', by: 'ada', distribution }),
        '2026-02-07',
        { kind: 'suspend', doc: 'MW-2', reason: 'x', by: 'ada', distribution },
      ),
      /is suspended already/,
    ],
    [
      'reinstated and not suspended',
      append(
        entries,
        '2026-02-07',
        { kind: 'reinstate', doc: 'MW-2', reason: 'x', by: 'ada', approver: 'ben', distribution },
        'ben',
      ),
      /is not suspended/,
    ],
    [
      'a review of what was never issued',
      append(entries, '2026-02-07', {
        kind: 'review',
        doc: 'MW-9',
        rev: 'A',
        by: 'ada',
        on: '2026-02-07',
        finding: 'x',
      }),
      /MW-9 was never issued/,
    ],
    [
      'a review of another revision',
      append(entries, '2026-02-07', {
        kind: 'review',
        doc: 'MW-1',
        rev: 'Z',
        by: 'ada',
        on: '2026-02-07',
        finding: 'x',
      }),
      /no revision Z/,
    ],
    [
      'a review of a day to come',
      append(entries, '2026-02-07', {
        kind: 'review',
        doc: 'MW-1',
        rev: 'A',
        by: 'ada',
        on: '2026-02-09',
        finding: 'x',
      }),
      /before the day that it tells of/,
    ],
    [
      'a receipt of a notice to come',
      append(entries, '2026-02-07', {
        kind: 'receipt',
        notice: 'CN-10',
        bench: 'pumps',
        copy: 1,
        by: 'ada',
        on: '2026-02-07',
      }),
      /no notice CN-10 yet/,
    ],
    [
      'a receipt of a day to come',
      append(entries, '2026-02-07', {
        kind: 'receipt',
        notice: 'CN-4',
        bench: 'pumps',
        copy: 1,
        by: 'ada',
        on: '2026-02-08',
      }),
      /before the day that it tells of/,
    ],
    ['a number of a temporary change twice', append(changed, '2026-02-07', temporary, 'ben'), /TC-01 is taken already/],
    [
      'the end of a temporary change that was none',
      append(entries, '2026-02-07', { kind: 'temporary-end', number: 'TC-09', reason: 'x', by: 'ada', distribution }),
      /no temporary change TC-09 is open/,
    ],
    [
      'a temporary change that ends before it begins',
      append(entries, '2026-02-07', { ...temporary, until: '2026-02-07' }, 'ben'),
      /dates are out of order/,
    ],
  ];
  test.each(cases)('%s', (_, list, words) => {
    const issuedFiles = new Map(files);
    for (const e of list) if (e.kind === 'issue' && e.seq > 9) issuedFiles.set(`issued/${e.snapshot.file}`, text);
    const { said } = check(withLedger(issuedFiles, list));
    expect(said.length).toBe(1);
    expect(said[0]).toMatch(/^LDG010 /);
    expect(said[0]).toMatch(words);
  });
});

describe('parts of two revisions mixed', () => {
  test('the snapshot of B under the name of A', () => {
    const mixed = new Map(files).set('issued/MW-1/A.json', files.get('issued/MW-1/B.json') ?? '');
    expect(check(mixed).said).toEqual([
      'LDG005 issued/ledger.jsonl:1 `issued/MW-1/A.json` of revision A of MW-1 is not the file that was issued: its bytes differ',
    ]);
  });

  test('another document’s comparison, or none', () => {
    const mixed = new Map(files).set('issued/MW-1/B.changes.json', '{"doc":"MW-2"}\n');
    expect(check(mixed).said[0]).toMatch(
      /^LDG005 issued\/ledger.jsonl:4 `issued\/MW-1\/B.changes.json` .* bytes differ$/,
    );
    mixed.delete('issued/MW-1/B.changes.json');
    expect(check(mixed).said[0]).toMatch(/^LDG005 .*:4 `issued\/MW-1\/B.changes.json` .* is missing/);
  });

  test('a line that names the files of another revision, sealed anew', () => {
    const unsigned = { ...RULES, signed: [] };
    const { snapshot } = issueIn(entries, 1);
    const list = append(entries, '2026-02-07', {
      ...issueAct('MW-1', 'C', '', { approved: '2026-02-07', effective: '2026-02-20' }),
      snapshot,
      comparison: { file: 'MW-1/B.changes.json', sha256: issueIn(entries, 4).comparison?.sha256 ?? '' },
    });
    expect(check(withLedger(files, list), unsigned).said.map((s) => s.replace(/.*control: /, ''))).toEqual([
      'its snapshot is `MW-1/A.json`',
      'its comparison is `MW-1/B.changes.json`',
    ]);
  });

  test('a card at the address of another revision, or with a fingerprint of its own', () => {
    const act = issueAct('MW-3', 'B', 'x', { approved: '2026-02-07', effective: '2026-02-20' });
    const cards = [
      { ...issueIn(entries, 4).cards[0] },
      { ...act.cards[1], fingerprint: '00000000' },
    ] as typeof act.cards;
    const list = append(entries, '2026-02-07', { ...act, cards }, 'ben');
    const { said } = check(withLedger(new Map(files).set('issued/MW-3/B.json', 'x'), list));
    expect(said.map((s) => s.replace(/.*control: /, ''))).toEqual([
      'its card has the address `C/MW-1/B/SMALL`',
      'the fingerprint 00000000 is not of its card',
    ]);
  });

  test('a snapshot that is of another revision inside', () => {
    const text = String(files.get('issued/MW-1/A.json'));
    const snapshot = thaw(text, 'x');
    if (snapshot === undefined) throw new Error('not thawed');
    const cards = snapshot.document.variants.map((v) => ({
      ...issueIn(entries, 1).cards[0],
      variant: v.key,
      digest: v.digest,
    }));
    const own = { ...issueIn(entries, 1), cards } as ReturnType<typeof issueIn>;
    expect(strangerIn(snapshot, own)).toBeUndefined();
    expect(strangerIn(snapshot, { ...own, rev: 'B' })).toBe('it is of MW-1 Rev A');
    expect(strangerIn(snapshot, { ...own, doc: 'MW-2' })).toBe('it is of MW-1 Rev A');
    expect(strangerIn(snapshot, issueIn(entries, 1))).toBe('its cards are others');
    expect(thaw('{', 'x')).toBeUndefined();
    expect(thaw('null', 'x')).toBeUndefined();
  });

  test('a snapshot that no line names', () => {
    expect(check(new Map(files).set('issued/MW-1/C.json', '{}')).said).toEqual([
      'LDG006 issued/MW-1/C.json:1 `issued/MW-1/C.json` is in no line of the ledger',
    ]);
  });
});

describe('two branches that both issued', () => {
  const text = (rev: string): string => String(files.get('issued/MW-1/B.json')).replaceAll('MW-1/B', `MW-1/${rev}`);
  const act = issueAct('MW-1', 'C', text('C'), { approved: '2026-02-07', effective: '2026-02-20' });
  const ours = append(entries, '2026-02-07', act, 'ben');
  const theirs = append(entries, '2026-02-08', {
    kind: 'suspend',
    doc: 'MW-3',
    reason: 'A slip',
    by: 'ada',
    distribution: [],
  });
  const [a, b] = [ours.slice(9), theirs.slice(9)];
  const merged = (text: string): Files =>
    new Map(files)
      .set('issued/MW-1/C.json', String(files.get('issued/MW-1/B.json')).replaceAll('MW-1/B', 'MW-1/C'))
      .set(LEDGER, text);

  test('the marks of a merge are told once, with the way out', () => {
    const conflict = `${ledgerText(entries)}<<<<<<< main\n${ledgerText(a)}=======\n${ledgerText(b)}>>>>>>> stop\n`;
    const { said, found } = check(merged(conflict));
    expect(said).toEqual([
      'LDG004 issued/ledger.jsonl:10 two branches have both issued, and the merge has left its marks in the ledger',
    ]);
    expect(found[0]?.hint).toMatch(/published first.*issue those documents once more/);
  });

  test('lines of both, one below the other', () => {
    const { said, found } = check(merged(`${ledgerText(entries)}${ledgerText(a)}${ledgerText(b)}`));
    expect(said).toEqual([
      'LDG004 issued/ledger.jsonl:11 two lines of the ledger both follow line 9: two branches have both issued',
    ]);
    expect(found[0]?.related?.length).toBe(1);
  });

  test('both branches began the ledger', () => {
    const other = append([], '2026-01-09', issueAct('MW-7', 'A', 'x'), 'ben');
    expect(check(lined([...entries, ...other])).said[0]).toMatch(/^LDG004 .*:10 .* are both its first one/);
  });

  test('resolved as the hint says: ours whole, theirs done once more', () => {
    const head = merged(ledgerText(ours)).set(HEAD, `10 ${theirs[9]?.seal ?? ''}\n`);
    expect(check(head).said[0]).toMatch(/`issued\/head` does not belong to this ledger$/);
    const again = append(ours, '2026-02-09', {
      kind: 'suspend',
      doc: 'MW-3',
      reason: 'A slip',
      by: 'ada',
      distribution: [],
    });
    expect(check(withLedger(merged(''), again)).said).toEqual([]);
  });
});
