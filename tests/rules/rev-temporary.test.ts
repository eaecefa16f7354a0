/** Marks of revisions by the shop's scheme, temporary changes, copy numbers. */

import { describe, expect, test } from 'vitest';
import type { Edit } from '../../src/rules/index.ts';
import { compareMarks, nextMark } from '../../src/rules/rev/marks.ts';
import { exampleChange } from '../../src/rules/rev/temporary.ts';
import { PROCEDURE, put, told } from './told.ts';

const REVISION =
  '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n';
const NUMBERS = put('shop.yaml', 'safety:', 'control: { revisions: numbers }\nsafety:');

/** Revisions of these marks, a month apart. */
const marked = (...marks: readonly string[]): Edit =>
  put(
    PROCEDURE,
    REVISION,
    marks.map((m, i) => REVISION.replace('rev: A', `rev: "${m}"`).replaceAll('2026-01', `2026-0${i + 1}`)).join(''),
  );

describe('REV010', () => {
  test.each([
    ['letters', ['A', 'B'], []],
    ['letters', ['A', 'D'], []],
    ['letters', ['Y', 'AA'], []],
    ['letters', ['1'], ['"1"']],
    ['letters', ['A', 'B1'], ['"B1"']],
    ['letters', ['C', 'B'], ['"B"']],
    ['letters', ['AA', 'B'], ['"B"']],
    // Letters that are read as figures are of the scheme, and have a check of their own.
    ['letters', ['A', 'O'], []],
    // A mark that is used again is told by the order.
    ['letters', ['A', 'A'], []],
    // What was issued before the scheme was chosen keeps its mark.
    ['letters', ['1', '2', 'A'], []],
    ['letters', ['1', 'A', '3'], ['"3"']],
    ['numbers', ['0', '1'], []],
    ['numbers', ['1', '2', '10'], []],
    ['numbers', ['9', '10'], []],
    ['numbers', ['1', '0'], ['"0"']],
    ['numbers', ['01'], ['"01"']],
    ['numbers', ['1', 'B'], ['"B"']],
    ['numbers', ['A', 'B', '1'], []],
  ])('%s: %j', (scheme, marks, places) => {
    const edits = scheme === 'numbers' ? [NUMBERS, marked(...marks)] : [marked(...marks)];
    expect(told('REV010', ...edits).map((t) => t.at)).toEqual(places);
  });

  test('two revisions exchanged are out of order, and not also off the scheme', () => {
    const late = REVISION.replace('rev: A', 'rev: B').replaceAll('2026-01', '2026-02');
    const exchanged = put(PROCEDURE, REVISION, late + REVISION);
    expect(told('REV001', exchanged)).toHaveLength(1);
    expect(told('REV010', exchanged)).toEqual([]);
  });

  test('the hint gives the mark that comes next', () => {
    const next = (...edits: readonly Edit[]) => /`rev: ([^`]+)`/.exec(told('REV010', ...edits)[0]?.hint ?? '')?.[1];
    expect(next(marked('A', 'B', '3'))).toBe('C');
    expect(next(marked('Y', '2'))).toBe('AA');
    expect(next(NUMBERS, marked('1', '2', 'C'))).toBe('"3"');
    expect(next(NUMBERS, marked('A'))).toBe('"1"');
  });
});

describe('marks', () => {
  test('every letter that may be used, in order, then two of them: ASME Y14.35 (memory)', () => {
    const marks = ['A'];
    while (marks.length < 42) marks.push(nextMark(marks.at(-1), 'letters'));
    expect(marks.join(' ')).toBe(
      'A B C D E F G H J K L M N P R T U V W Y AA AB AC AD AE AF AG AH AJ AK AL AM AN AP AR AT AU AV AW AY BA BB',
    );
    expect([...marks].reverse().sort((a, b) => compareMarks(a, b, 'letters'))).toEqual(marks);
    expect(nextMark('YY', 'letters')).toBe('AAA');
    // After one that ought not to have been used.
    expect([nextMark('S', 'letters'), nextMark('Z', 'letters')]).toEqual(['T', 'AA']);
  });
});

const temporary = (...texts: readonly string[]): Edit => ({ file: 'temporary.yaml', to: texts.join('') });
const limits = (rules: string): Edit => put('shop.yaml', 'safety:', `control: { temporary: { ${rules} } }\nsafety:`);

describe('REV014', () => {
  test.each([
    // 90 days, unless the shop says otherwise: common practice, 30 to 90.
    ['2026-05-04', 'most: 2', 0],
    ['2026-05-05', 'most: 2', 1],
    ['2026-03-05', 'days: 30', 0],
    ['2026-03-06', 'days: 30', 1],
  ])('from 2026-02-03 to %s, with %s', (until, rules, count) => {
    expect(told('REV014', limits(rules), temporary(exampleChange({ until })))).toHaveLength(count);
  });

  test('names the last day that is allowed', () => {
    expect(told('REV014', temporary(exampleChange({ until: '2027-02-03' })))[0]?.hint).toContain('2026-05-04');
  });

  test('a day that no month has is one fault', () => {
    const edit = temporary(exampleChange({ until: '2027-02-30' }));
    expect(told('FLD008', edit)).toHaveLength(1);
    expect(told('REV014', edit)).toEqual([]);
  });
});

describe('REV015', () => {
  test.each([
    [{ from: '2026-02-02' }, []],
    [{ from: '2026-02-01' }, ['2026-02-01']],
    [{ until: '2026-02-03' }, []],
    [{ until: '2026-02-02' }, ['2026-02-02']],
    [{ from: '2026-01-20', until: '2026-01-10' }, ['2026-01-20', '2026-01-10']],
  ])('%j', (changes, places) => {
    expect(told('REV015', temporary(exampleChange(changes))).map((t) => t.at)).toEqual(places);
  });
});

describe('REV016', () => {
  test('the author, somebody without the right, and somebody for minor changes only', () => {
    const minor = put('people.yaml', 'approves: [major, minor]', 'approves: [minor]');
    const at = (...edits: readonly Edit[]) => told('REV016', ...edits).map((t) => t.message);
    expect(at(temporary(exampleChange({ author: 'ben' })))).toEqual(['TC-1 is approved by its author `ben`']);
    expect(at(temporary(exampleChange({ author: 'ben', approver: 'ada' })))).toEqual([
      'TC-1 is approved by `ada`, and people.yaml lets Ada Fern approve nothing',
    ]);
    expect(at(minor, temporary(exampleChange()))).toEqual([
      'TC-1 is approved by `ben`, and people.yaml lets Ben Holt approve minor changes only',
    ]);
  });

  test('an unknown person is told once', () => {
    const edit = temporary(exampleChange({ approver: 'bem' }));
    expect(told('REF009', edit)).toHaveLength(1);
    expect(told('REV016', edit)).toEqual([]);
  });
});

describe('REV017', () => {
  const change = (number: string, from: string, until: string, rev = 'A') =>
    exampleChange({ from, until, rev }, number);
  const A = change('TC-1', '2026-02-03', '2026-03-03');
  const B = change('TC-2', '2026-02-10', '2026-03-10');

  test.each([
    ['a third in both', 'most: 2', change('TC-3', '2026-02-20', '2026-04-01'), ['TC-3']],
    ['a third on the last day of the first', 'most: 2', change('TC-3', '2026-03-03', '2026-04-01'), ['TC-3']],
    ['a third on the day after', 'most: 2', change('TC-3', '2026-03-04', '2026-04-01'), []],
    ['a third that begins first', 'most: 2', change('TC-3', '2026-02-02', '2026-04-01'), ['TC-2']],
    ['a third where three are allowed', 'most: 3', change('TC-3', '2026-02-20', '2026-04-01'), []],
    ['two where one is allowed', 'most: 1', '', ['TC-2']],
    ['a third of another issue', 'most: 2', change('TC-3', '2026-02-20', '2026-04-01', 'B'), []],
  ])('%s', (_, rules, third, places) => {
    expect(told('REV017', limits(rules), temporary(A, B, third)).map((t) => t.at)).toEqual(places);
  });
});

describe('REV018', () => {
  const scope = (text: string) => exampleChange({ scope: text });
  test.each([
    [exampleChange({ doc: 'MW-2' }), ['MW-2']],
    [exampleChange({ rev: 'B' }), ['B']],
    // 14 steps on the small card, 16 on the large one.
    [exampleChange({ step: '14' }), []],
    [exampleChange({ step: '15' }), ['15']],
    [exampleChange({ step: '16', scope: '{ variants: [large] }' }), []],
    [exampleChange({ step: '17', scope: '{ variants: [large] }' }), ['17']],
    [scope('{ variants: [larg] }'), ['larg']],
    [exampleChange({ step: '99', scope: '{ variants: [larg] }' }), ['99', 'larg']],
    [scope('{ benches: [pumps] }'), []],
    [scope('{ serials: { from: 1, to: 99 } }'), []],
    [scope('{ serials: { from: 40, to: 100 } }'), ['{ from: 40, to: 100 }']],
    [scope('{ serials: { from: 50, to: 40 } }'), ['{ from: 50, to: 40 }']],
    [scope('{ variants: [large], serials: { from: 51, to: 60 } }'), []],
    [scope('{ variants: [large], serials: { from: 40, to: 60 } }'), ['{ from: 40, to: 60 }']],
  ])('%j', (text, places) => {
    expect(told('REV018', temporary(text)).map((t) => t.at)).toEqual(places);
  });

  test('a bench whose binder does not hold the document; an unknown one has its own report', () => {
    const store = put('benches.yaml', 'pumps:\n', 'store: { name: Store, place: Hall 2, binder: [MW-9] }\npumps:\n');
    expect(told('REV018', store, temporary(scope('{ benches: [store, pumps] }'))).map((t) => t.at)).toEqual(['store']);
    expect(told('REV018', temporary(scope('{ benches: [stroe] }')))).toEqual([]);
    expect(told('REF008', temporary(scope('{ benches: [stroe] }')))).toHaveLength(1);
  });

  test('steps of an older issue are not looked for in the newer one', () => {
    const later = put(
      PROCEDURE,
      REVISION,
      REVISION + REVISION.replace('rev: A', 'rev: B').replaceAll('2026-01', '2026-02'),
    );
    expect(told('REV018', later, temporary(exampleChange({ rev: 'A', step: '40' })))).toEqual([]);
    expect(told('REV018', later, temporary(exampleChange({ rev: 'B', step: '40' })))).toHaveLength(1);
  });

  test('a procedure that cannot be read may be the one that is meant', () => {
    const broken = put(PROCEDURE, 'title: Renew', 'titel: Renew');
    expect(told('REV018', broken, temporary(exampleChange({ step: '40' })))).toEqual([]);
  });
});

describe('REV019', () => {
  const benches = (...copies: readonly string[]): Edit => ({
    file: 'benches.yaml',
    to: copies.map((c, i) => `bench-${i}: { name: Bench ${i}, place: Hall ${i}, binder: [MW-1]${c} }\n`).join(''),
  });
  test.each([
    [[', copy: 1', ', copy: 2'], 0],
    [[', copy: 2', ', copy: 2'], 1],
    [[', copy: 2', ', copy: 2', ', copy: 2'], 2],
    // Numbers that nobody stated are given so that they are free.
    [['', ', copy: 1', ''], 0],
  ])('%j', (copies, count) => {
    const found = told('REV019', benches(...copies));
    expect(found).toHaveLength(count);
    if (count > 0) expect(found[0]?.hint).toContain('`copy: 1`');
  });
});

test('an affected document that the shop does not have', () => {
  const affects = (doc: string) => put(PROCEDURE, REVISION, REVISION.replace(', what:', `, affects: [${doc}], what:`));
  expect(told('REF005', affects('MW-7')).map((t) => t.at)).toEqual(['MW-7']);
  expect(told('REF005', affects('MW-1'))).toEqual([]);
});
