/** The binder audit and the fingerprints without a browser: what is current, superseded, missing, strange, and the files. */

import { describe, expect, test } from 'vitest';
import { compareBinder, type Expected, type Mark, type Marks } from '../../src/site/client/audit/compare.ts';
import { auditCsv, auditFile, auditJson } from '../../src/site/client/audit/result.ts';
import { findCards, type PrintedCard, readCardPath, readFingerprint } from '../../src/site/client/control/cards.ts';
import { ageText, leftText, scopeClauses, sentence } from '../../src/site/control-words.ts';

const card = (doc: string, rev: string, label = ''): Expected => ({
  path: `C/${doc}/${rev}${label === '' ? '' : `/${label.toUpperCase()}`}`,
  doc,
  rev,
  label,
  fingerprint: `${doc.slice(3)}0000${rev}`,
});
const BINDER = [card('OF-204', 'D', 'Small'), card('OF-204', 'D', 'Large'), card('OF-131', 'B'), card('OF-240', 'C')];
const mark = (standing: Mark['standing'], { doc, rev, label, fingerprint }: Expected, at: string): Mark => ({
  standing,
  doc,
  rev,
  label,
  fingerprint,
  at: `2026-11-25T${at}:00.000Z`,
});
const marks = (...all: readonly (readonly [Expected, Mark['standing'], string])[]): Marks =>
  Object.fromEntries(all.map(([c, standing, at]) => [c.path, mark(standing, c, at)]));

describe('a binder', () => {
  test('without a scan misses everything', () => {
    const outcome = compareBinder(BINDER, {});
    expect(outcome.rows.map((r) => r.state)).toEqual(['missing', 'missing', 'missing', 'missing']);
    expect(outcome).toMatchObject({ current: 0, wrong: 0, missing: 4, strange: 0, others: [] });
  });

  test('tells current, superseded, missing and strange cards apart, each in its own place', () => {
    const outcome = compareBinder(
      BINDER,
      marks(
        [card('OF-204', 'D', 'Large'), 'current', '10:00'],
        [card('OF-204', 'C', 'Small'), 'superseded', '10:01'],
        [card('OF-155', 'B'), 'current', '10:02'],
        [card('OF-131', 'B'), 'current', '10:03'],
      ),
    );
    expect(outcome.rows.map((r) => r.state)).toEqual(['superseded', 'current', 'current', 'missing']);
    expect(outcome.others.map((o) => [o.path, o.kind])).toEqual([
      ['C/OF-204/C/SMALL', 'old'],
      ['C/OF-155/B', 'strange'],
    ]);
    expect(outcome).toMatchObject({ current: 2, wrong: 1, missing: 1, strange: 1 });
  });

  test('an old card beside the current one does not make it wrong, and must still come out', () => {
    const outcome = compareBinder(
      BINDER,
      marks([card('OF-131', 'A'), 'superseded', '09:00'], [card('OF-131', 'B'), 'current', '10:00']),
    );
    expect(outcome.rows[2]?.state).toBe('current');
    expect(outcome.others.map((o) => o.path)).toEqual(['C/OF-131/A']);
  });

  test('an expected card that was suspended since it was listed does not count as current', () => {
    const outcome = compareBinder(BINDER, marks([card('OF-131', 'B'), 'suspended', '10:00']));
    expect(outcome.rows[2]?.state).toBe('suspended');
    expect(outcome).toMatchObject({ current: 0, wrong: 1, missing: 3 });
    expect(outcome.others.map((o) => o.path)).toEqual(['C/OF-131/B']);
  });

  test('the variant counts: the small card does not stand for the large one', () => {
    const outcome = compareBinder(BINDER, marks([card('OF-204', 'D', 'Small'), 'current', '10:00']));
    expect(outcome.rows.map((r) => r.state)).toEqual(['current', 'missing', 'missing', 'missing']);
  });
});

describe('the result as a file', () => {
  const head = {
    bench: 'heat-exchange',
    benchName: 'Heat exchange',
    copy: 1,
    asOf: '2026-11-25',
    ledger: 'ab'.repeat(32),
    started: '2026-11-25T09:00:00.000Z',
    made: '2026-11-25T11:00:00.000Z',
    by: '=Petr, "P"',
  };
  const outcome = compareBinder(BINDER, {
    ...marks(
      [card('OF-204', 'D', 'Large'), 'current', '10:00'],
      [card('OF-131', 'A'), 'superseded', '10:01'],
      [card('OF-155', 'B'), 'current', '10:02'],
    ),
    '@ABCD0123': { standing: 'unknown', doc: '', rev: '', label: '', fingerprint: '', at: '2026-11-25T10:05:00.000Z' },
  });

  test('CSV has one line a card, and no cell that a spreadsheet would run', () => {
    const [first, ...rows] = auditCsv(head, outcome).trimEnd().split('\r\n');
    expect(first).toBe(
      'Result,Document,Variant,Revision that must hang,Fingerprint that must hang,Revision found,Fingerprint found,Seen at,Bench,Copy,Audited by,Date,Site as of',
    );
    const end = `Heat exchange,1,"'=Petr, ""P""",2026-11-25,2026-11-25`;
    expect(rows).toEqual([
      `missing,OF-204,Small,D,2040000D,,,,${end}`,
      `current,OF-204,Large,D,2040000D,D,2040000D,2026-11-25T10:00:00.000Z,${end}`,
      `superseded,OF-131,,B,1310000B,A,1310000A,2026-11-25T10:01:00.000Z,${end}`,
      `missing,OF-240,,C,2400000C,,,,${end}`,
      `strange,OF-155,,,,B,1550000B,2026-11-25T10:02:00.000Z,${end}`,
      `unknown,,,,,,'@ABCD0123,2026-11-25T10:05:00.000Z,${end}`,
    ]);
  });

  test('JSON says the same, with the counts and the ledger', () => {
    const read = JSON.parse(auditJson(head, outcome));
    expect(read).toMatchObject({ format: 1, bench: 'heat-exchange', copy: 1, by: head.by, ledger: head.ledger });
    expect(read.counts).toEqual({ current: 1, wrong: 1, missing: 2, strange: 2 });
    expect(read.cards.map((c: { result: string }) => c.result)).toEqual([
      'missing',
      'current',
      'superseded',
      'missing',
      'strange',
      'unknown',
    ]);
    expect(auditFile(head, 'csv')).toBe('audit-heat-exchange-2026-11-25.csv');
  });
});

describe('what somebody types', () => {
  test.each([
    ['0a1b 2c3d', '0A1B2C3D'],
    [' 0A1B-2C3D ', '0A1B2C3D'],
    ['0A1B2C3', undefined],
    ['0A1B2C3DE', undefined],
    ['0A1B2C3O', undefined],
  ])('%s is read as the fingerprint %s', (typed, read) => {
    expect(readFingerprint(typed)).toBe(read);
  });

  test.each([
    ['HTTPS://BINDER.OSFW.EXAMPLE/C/OF-204/B/LARGE/', 'C/OF-204/B/LARGE'],
    ['https://binder.osfw.example/deep/C/OF-204/B/', 'C/OF-204/B'],
    ['c/of-204/b/large', 'C/OF-204/B/LARGE'],
    ['C/OF-204/B/LARGE/?x=1#step-3', 'C/OF-204/B/LARGE'],
    ['https://elsewhere.example/', undefined],
    ['OF-204', undefined],
  ])('%s holds the path %s', (typed, read) => {
    expect(readCardPath(typed)).toBe(read);
  });

  test('a card is found by either, and two that share a fingerprint are both named', () => {
    const printed = (path: string, fingerprint: string): PrintedCard => ({
      path,
      fingerprint,
      doc: 'OF-1',
      rev: 'A',
      label: '',
      standing: 'current',
    });
    const all = [printed('C/OF-1/A', '0A1B2C3D'), printed('C/OF-1/B', '0A1B2C3D'), printed('C/OF-2/A', 'FFFFFFFF')];
    expect(findCards('0a1b2c3d', all).map((c) => c.path)).toEqual(['C/OF-1/A', 'C/OF-1/B']);
    expect(findCards('https://host.example/C/OF-2/A/', all).map((c) => c.path)).toEqual(['C/OF-2/A']);
    expect(findCards('https://host.example/C/OF-9/A/', all)).toEqual([]);
    expect(findCards('12345678', all)).toEqual([]);
  });
});

describe('words', () => {
  test('age is told against the limit, and lateness in a word', () => {
    const notice = { due: '2026-11-10', limitDays: 3, age: 1, overdue: false };
    expect(ageText(notice)).toBe('1\u00a0day, 3 allowed');
    expect(ageText({ ...notice, age: 4, overdue: true })).toBe('OVERDUE, 4\u00a0days, 3 allowed');
    const { age: _none, ...before } = notice;
    expect(ageText(before)).toBe('from 2026-11-10');
  });

  test('the last day of a temporary change is named as such', () => {
    expect([1, 2].map(leftText)).toEqual(['last day', '2\u00a0days left']);
  });

  test('a scope names benches, variants and serial numbers, and nothing when it holds everywhere', () => {
    const name = { bench: (id: string) => id.toUpperCase(), variant: (key: string) => key };
    expect(scopeClauses({}, name)).toEqual([]);
    expect(scopeClauses({ benches: ['a', 'b'], variants: ['large'], serials: { from: 1, to: 9 } }, name)).toEqual([
      'at the benches A and B only',
      'large only',
      'serial numbers 1 to 9 only',
    ]);
    expect(sentence(' the cock leaks')).toBe('The cock leaks.');
  });
});
