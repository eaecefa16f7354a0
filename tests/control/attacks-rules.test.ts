/** Lines that no command writes though they are sealed and signed, and parts of two revisions mixed. */

import { describe, expect, test } from 'vitest';
import { strangerIn, thaw } from '../../src/control/snapshot.ts';
import type { Entry } from '../../src/control/types.ts';
import { append, check, history, issueAct, issueIn, RULES, withLedger } from './history.ts';

const { entries, files } = history();

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
