/** Control of documents: review, approval, revision marks, and what is cited from where. */

import { describe, expect, test } from 'vitest';
import { PROCEDURE, PUMP, put, told } from './told.ts';

const REVISION =
  '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n';
const LATER = REVISION.replace('rev: A', 'rev: B').replaceAll('2026-01', '2026-02');

describe('REV004', () => {
  const byAda = (revision: string) => revision.replace('author: ada, approver: ben', 'author: ben, approver: ada');

  test('the revision in force alone is judged: who approved an older one may have been entitled to it', () => {
    expect(told('REV004', put(PROCEDURE, REVISION, byAda(REVISION))).map((t) => t.at)).toEqual(['ada']);
    expect(told('REV004', put(PROCEDURE, REVISION, byAda(REVISION) + LATER))).toEqual([]);
    expect(told('REV004', put(PROCEDURE, REVISION, REVISION + byAda(LATER)))).toHaveLength(1);
  });

  test('names those who may approve, without the author', () => {
    const cleo = put('people.yaml', 'ben: {', 'cleo: { name: Cleo Marsh, role: Shop lead, approves: [major] }\nben: {');
    expect(told('REV004', cleo, put(PROCEDURE, REVISION, byAda(REVISION)))[0]?.hint).toMatch(
      /^have it approved by one who may, and name that person: `cleo`;/,
    );
  });

  test.each([
    // DOE-STD-1073-2003, 6.3.5: major and minor changes are told apart, and major ones need the fuller approval.
    ['[major, minor]', 'major', 0],
    ['[major, minor]', 'minor', 0],
    ['[major]', 'major', 0],
    ['[major]', 'minor', 1],
    ['[minor]', 'minor', 0],
    ['[minor]', 'major', 1],
  ])('a right of %s and a %s change', (approves, of, count) => {
    const people = put('people.yaml', 'approves: [major, minor]', `approves: ${approves}`);
    const change = put(PROCEDURE, REVISION, REVISION.replace(', what:', `, class: ${of}, what:`));
    expect(told('REV004', people, change)).toHaveLength(count);
  });

  test('a change without a class is a major one, and what the person may approve is said', () => {
    const [found] = told('REV004', put('people.yaml', 'approves: [major, minor]', 'approves: [minor]'));
    expect(found?.message).toBe(
      'revision A of MW-1, a major change, is approved by `ben`, and people.yaml lets Ben Holt approve minor changes only',
    );
  });

  test('an author who approves himself is told that alone, and an unknown approver is no second fault', () => {
    const self = REVISION.replace('approver: ben', 'approver: ada');
    expect(told('REV004', put(PROCEDURE, REVISION, self))).toEqual([]);
    expect(told('REV003', put(PROCEDURE, REVISION, self))).toHaveLength(1);
    expect(told('REV004', put(PROCEDURE, REVISION, REVISION.replace('approver: ben', 'approver: bem')))).toEqual([]);
  });
});

describe('REV005', () => {
  test.each([
    // DOE-STD-1051-93, 5.3.2: normally two years.
    ['24 months', 0],
    ['2 years', 0],
    ['1 years', 0],
    ['25 months', 1],
    ['3 years', 1],
  ])('%s', (review, count) => {
    expect(told('REV005', put(PROCEDURE, 'review: 24 months', `review: ${review}`))).toHaveLength(count);
  });
});

describe('REV006', () => {
  const SOURCE = '          source: { document: Pump manual, edition: "3", place: page 14 }\n';
  test.each([
    ['0.05 to 0.30 mm', 1],
    ['at most 0.30 mm', 1],
    ['0 to 0.30 mm', 1],
    // Nothing left of something is a state.
    ['at most 0 mm', 0],
    ['at most 0.0 mm', 0],
  ])('%s', (limit, count) => {
    const edits = [put(PROCEDURE, SOURCE, ''), put(PROCEDURE, 'limit: 0.05 to 0.30 mm', `limit: ${limit}`)];
    expect(told('REV006', ...edits).map((t) => t.at)).toEqual(Array.from({ length: count }, () => limit));
  });

  test('one of two measurements of a step', () => {
    const text = `        measure:
          - what: Cover gap
            limit: 0.05 to 0.30 mm
            with: feeler
            if out: Loosen and repeat this stage.
            source: { document: Pump manual, edition: "3", place: page 14 }
          - what: Widest less narrowest
            limit: at most 0.10 mm
            with: feeler
            if out: Loosen and repeat this stage.
`;
    const measure = `        measure:
          what: Cover gap
          at: [12, 3, 6, 9]
          limit: 0.05 to 0.30 mm
          with: feeler
          if out: Loosen and repeat this stage.
          record: as left
${SOURCE}`;
    expect(told('REV006', put(PROCEDURE, measure, text)).map((t) => t.at)).toEqual(['at most 0.10 mm']);
  });
});

const PAGE_12 = '    source: { document: Pump manual, edition: "3", place: page 12 }\n';
const cite = (source: string) => put(PUMP, PAGE_12, `    source: ${source}\n`);

describe('REV007', () => {
  test.each([
    ['{ document: Pump handbook }', 1],
    ['{ document: Shop standard ST-4, place: table 2 }', 1],
    ['{ document: Shop standard ST-2040 }', 1],
    ['{ document: "ISO 898-1:2013", place: table 5 }', 0],
    ['{ document: Catalogue of 2019 }', 0],
    ['{ document: Pump handbook, edition: "3" }', 0],
  ])('%s', (source, count) => {
    expect(told('REV007', cite(source))).toHaveLength(count);
  });

  test('says how it is cited elsewhere', () => {
    expect(told('REV007', cite('{ document: Pump manual, place: page 12 }'))[0]?.hint).toContain(
      'elsewhere it is cited as `3`',
    );
  });

  test.each([
    ['a manual', put(PUMP, 'bench: pumps\n', 'bench: pumps\nmanual: { document: Pump handbook }\n')],
    [
      'a nut factor',
      put(
        'consumables.yaml',
        'medium: mineral oil,',
        'nut_factor: { low: 0.13, nominal: 0.16, high: 0.20, source: { document: Oil sheet } }, medium: mineral oil,',
      ),
    ],
    ['the list of a procedure', put(PROCEDURE, 'owner: ben\n', 'owner: ben\nsources: [{ document: Pump handbook }]\n')],
    [
      'a shared stage',
      put(
        'stages/isolate.yaml',
        'source: { document: Pump manual, edition: "3", place: page 9 }',
        'source: { document: Pump handbook }',
      ),
    ],
    [
      'a clamp force',
      put(
        PUMP,
        '    socket: socket-24\n',
        '    socket: socket-24\n    clamp: { force: 20 kN, source: { document: Pump handbook } }\n',
      ),
    ],
  ])('%s', (_, edit) => {
    expect(told('REV007', edit)).toHaveLength(1);
  });
});

describe('REV008', () => {
  test.each([
    ['{ document: Pump manual, edition: "2" }', ['"2"']],
    ['{ document: pump  Manual, edition: "2" }', ['"2"']],
    ['{ document: Pump manual, edition: 3rd edition }', []],
    ['{ document: Pump manual, edition: edition 3 }', []],
    ['{ document: Pump manual, edition: "issue 3, sheets 1 to 4" }', []],
    ['{ document: Pump manual, edition: 3A }', ['3A']],
    ['{ document: Pump handbook, edition: "2" }', []],
  ])('%s', (source, places) => {
    expect(told('REV008', cite(source)).map((t) => t.at)).toEqual(places);
  });

  test('the edition that stands at most places is taken for the usual one', () => {
    const [found] = told('REV008', cite('{ document: Pump manual, edition: "2" }'));
    expect(found?.message).toBe('`Pump manual` is cited as `2` here, and as `3` at 2 other places');
  });
});

describe('REV009', () => {
  test.each('ABCDEFGHIJKLMNOPQRSTUVWXYZ'.split(''))('revision %s', (rev) => {
    // ASME Y14.35 (memory).
    const left = ['I', 'O', 'Q', 'S', 'X', 'Z'].includes(rev);
    const found = told('REV009', put(PROCEDURE, 'rev: A', `rev: ${rev}`));
    expect(found.map((t) => t.at)).toEqual(left ? [rev] : []);
  });

  test('the next mark is one that may be used', () => {
    const next = (rev: string) =>
      /`rev: ([^`]+)`/.exec(told('REV009', put(PROCEDURE, 'rev: A', `rev: ${rev}`))[0]?.hint ?? '')?.[1];
    expect(['I', 'O', 'Q', 'S', 'X', 'Z', 'AS'].map(next)).toEqual(['J', 'P', 'R', 'T', 'Y', 'AA', 'AT']);
  });

  test('where the shop has numbers, a letter is told by the scheme alone', () => {
    const numbers = put('shop.yaml', 'safety:', 'control: { revisions: numbers }\nsafety:');
    const edits = [numbers, put(PROCEDURE, 'rev: A', 'rev: S')];
    expect(told('REV009', ...edits)).toEqual([]);
    expect(told('REV010', ...edits).map((t) => t.at)).toEqual(['S']);
  });

  test('numbers are never mistaken, and an older mark stays as it was issued', () => {
    expect(told('REV009', put(PROCEDURE, 'rev: A', 'rev: "10"'))).toEqual([]);
    expect(
      told(
        'REV009',
        put(PROCEDURE, REVISION, REVISION.replace('rev: A', 'rev: S') + LATER.replace('rev: B', 'rev: T')),
      ),
    ).toEqual([]);
  });
});
