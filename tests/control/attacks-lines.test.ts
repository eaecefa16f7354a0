/** Attacks on the ledger line by line: deleted, exchanged, copied, rewritten, set back, or written on two branches. */

import { describe, expect, test } from 'vitest';
import { HEAD, LEDGER } from '../../src/control/files.ts';
import { isPrefix } from '../../src/control/prefix.ts';
import type { Entry } from '../../src/control/types.ts';
import { append, check, type Files, forged, history, issueAct, ledgerText, withLedger } from './history.ts';

const { entries, files } = history();

const without = (...seqs: readonly number[]): readonly Entry[] => entries.filter((e) => !seqs.includes(e.seq));

/** Lines as they are put, whether they follow or not; the head is that of the sound ledger. */
const lined = (list: readonly Entry[]): Files => new Map(files).set(LEDGER, ledgerText(list));

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
